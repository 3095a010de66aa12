//! Instructions in words that need no program. What speaks of the program and its files is
//! for whoever runs it; a clinic is asked in words of its own.

use crate::result::Finding;
use judge::Check;
use messages::{Language, Message, Sentence, message};

/// What a finding asks of the clinic.
pub(super) fn in_plain_words(finding: &Finding, language: Language) -> String {
    match of_check(finding) {
        Some(own) => own.text(language),
        None if finding.instruction_messages.sentences().is_empty() => {
            finding.instruction_in(language)
        }
        None => (finding.instruction_messages.replaced(of_sentence)).text(language),
    }
}

/// What checks that ask for another file or another statement ask of a clinic.
fn of_check(finding: &Finding) -> Option<Message> {
    Some(match finding.check.parse().ok()? {
        Check::FileUnclear => message!("clinic-file-unclear"),
        Check::UnitUnclear => message!("clinic-unit-unclear"),
        Check::NotAnImpression => message!("clinic-not-an-impression"),
        Check::ArchMismatch | Check::OrientationUnclear => message!("clinic-which-jaw"),
        Check::OtherColour => message!("clinic-other-colour"),
        Check::CoverNotJudged | Check::CoverUncertainty => message!("clinic-scan-tray"),
        Check::WashMissing => message!("clinic-send-wash"),
        _ => return None,
    })
}

/// What a sentence for whoever runs the program is to a clinic; `None` of a sentence that
/// needs no program.
fn of_sentence(sentence: &Sentence) -> Option<Message> {
    Some(match sentence.key.as_ref() {
        "parcel-no-record" => message!("clinic-jaw-relation"),
        "parcel-no-list" => message!("clinic-list"),
        "parcel-one-jaw" => message!("clinic-one-jaw"),
        "disinfectant-not-stated" => message!("clinic-disinfectant"),
        "disinfection-not-stated" => message!("clinic-disinfection"),
        "disinfection-time-not-stated" => message!("clinic-disinfection-time"),
        "prescription-not-stated" => message!("clinic-prescription"),
        "interocclusal-unsure" => message!("clinic-readings"),
        "relief-unknown" => message!("clinic-relief-unknown"),
        "show-through-altered" => message!("clinic-altered"),
        "too-close-to-tell" => message!("clinic-too-close"),
        "wash-thick" => message!("clinic-wash-thick"),
        "scan-coarse" => message!("clinic-scan-coarse"),
        "border-scan-arch" => message!("clinic-scan-arch"),
        "cover-uncertain" => message!("clinic-cover-uncertain"),
        "thin-cover-unsure" => message!("clinic-thin-unsure"),
        "tissue-stop-covered-in-wash" => message!("clinic-stop-covered"),
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sentence_for_the_program_is_one_for_the_clinic_in_each_language() {
        let ours = message!("disinfectant-not-stated").then(message!("relief-unknown"));
        let asked = ours.replaced(of_sentence);
        for (language, theirs) in [
            (
                Language::English,
                "State what the set was disinfected with.",
            ),
            (
                Language::German,
                "Angeben, womit die Sendung desinfiziert wurde.",
            ),
            (
                Language::Spanish,
                "Indique con qué se desinfectó el conjunto.",
            ),
        ] {
            let text = asked.text(language);
            assert!(text.starts_with(theirs), "{text}");
            assert!(!text.contains("clinic-"), "{text}");
        }
        let other = message!("safety");
        assert_eq!(other.replaced(of_sentence), other);
    }

    /// Words that name the program, its files or their keys.
    #[test]
    fn what_a_clinic_reads_names_no_key_of_a_file() {
        for language in Language::ALL {
            for key in [
                "clinic-relief-unknown",
                "clinic-altered",
                "clinic-stop-covered",
                "clinic-readings",
                "clinic-jaw-relation",
            ] {
                let text = Message::new(key).text(language);
                assert!(
                    text != key && !text.contains(['_', '=', '[', '`']),
                    "{text}"
                );
            }
        }
    }
}
