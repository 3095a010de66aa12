//! The sentence on safe grinding, which lists and tables of findings print once.

use crate::result::Finding;
use judge::words::safety;
use messages::Language;

/// Whether an instruction says how a tray is ground safely. That of a result of an earlier
/// version holds no messages.
pub(crate) fn speaks_of_safety(finding: &Finding) -> bool {
    let in_english = || finding.instruction.contains(&safety().to_string());
    finding.instruction_messages.holds(safety().key()) || in_english()
}

/// An instruction without the sentence on safe grinding.
pub(crate) fn without_safety(finding: &Finding, language: Language) -> String {
    let messages = &finding.instruction_messages;
    if messages.holds(safety().key()) {
        return messages.without(safety().key()).text(language);
    }
    let instruction = finding.instruction_in(language);
    instruction.replace(&format!(" {}", safety()), "")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::result::CaseResult;
    use crate::testing::checked_with_spots;
    use messages::Message;

    #[test]
    fn the_sentence_on_safe_grinding_is_taken_out_of_messages_and_of_english_text() {
        let result = CaseResult::of(&checked_with_spots());
        let mut finding = result.findings[0].clone();
        let relieve = "Relieve the tray here.";
        finding.instruction = format!("{relieve} {}", safety());
        for messages in [
            Message::default(),
            Message::verbatim(finding.instruction.as_str()),
            Message::verbatim(relieve).then(safety()),
        ] {
            finding.instruction_messages = messages;
            assert!(speaks_of_safety(&finding));
            for language in Language::ALL {
                assert_eq!(without_safety(&finding, language), relieve);
            }
        }
    }
}
