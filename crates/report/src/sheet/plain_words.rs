//! Instructions in words that need no program. What speaks of the program and its files is
//! for whoever runs it; a clinic is asked in words of its own.

use crate::result::Finding;
use judge::Check;
use messages::{Language, Message, message};

/// What a finding asks of the clinic.
pub(super) fn in_plain_words(finding: &Finding, language: Language) -> String {
    match of_check(finding) {
        Some(own) => own.text(language),
        None => turned(finding.instruction_in(language), language),
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

/// Sentences for whoever runs the program, by their English text, and what they are to a
/// clinic.
fn sentences() -> [(&'static str, Message); 8] {
    [
        (
            "The case holds no jaw relation: give the scan of the record or the vertical dimension under \
             [jaw_relation], or say why there is none (no_jaw_relation_because under [parcel]).",
            message!("clinic-jaw-relation"),
        ),
        (
            "There is no list of what must be in the parcel: give it as `expected` under [parcel].",
            message!("clinic-list"),
        ),
        (
            "The case holds one jaw only: add the impression of the other, or say why there is none \
             (one_arch_because under [parcel]).",
            message!("clinic-one-jaw"),
        ),
        (
            "State what the set was disinfected with (disinfectant).",
            message!("clinic-disinfectant"),
        ),
        (
            "State what the set was disinfected with, and for how long (disinfectant, disinfection_min). If it was \
             not yet, clean and disinfect it before it is handled.",
            message!("clinic-disinfection"),
        ),
        (
            "State for how many minutes the set was disinfected (disinfection_min).",
            message!("clinic-disinfection-time"),
        ),
        (
            "Say whether the written prescription is enclosed (prescription = true), and enclose it.",
            message!("clinic-prescription"),
        ),
        (
            "Too close to the limit to tell. Measure both vertical dimensions three times and give the readings \
             (vertical_dimension_readings_mm, rest_vertical_dimension_readings_mm).",
            message!("clinic-readings"),
        ),
    ]
}

/// Parts of English sentences that hold figures or belong to several instructions.
const PARTS: [(&str, &str); 5] = [
    ("this figure is too low: scan", "scan"),
    ("and check again", "and send that scan"),
    ("Too close to the limit to tell", "Too close to tell"),
    ("thicker than the limit", "thick"),
    ("say so (stops_relieved = true)", "tell us"),
];

fn turned(instruction: String, language: Language) -> String {
    let whole = sentences()
        .into_iter()
        .fold(instruction, |text, (ours, theirs)| {
            text.replace(ours, &theirs.text(language))
        });
    PARTS
        .iter()
        .fold(whole, |text, (ours, theirs)| text.replace(ours, theirs))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sentence_for_the_program_is_one_for_the_clinic_in_each_language() {
        let ours = "State what the set was disinfected with (disinfectant).";
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
            assert_eq!(turned(ours.to_owned(), language), theirs);
        }
        let other = "Relieve the tray here.";
        assert_eq!(turned(other.to_owned(), Language::German), other);
    }
}
