//! Words that several drawings share.

use crate::text::words::{check_name, side_word};
use check::CheckedCase;
use judge::{Check, Stage, words};
use measure::{Missing, Side};
use messages::{Language, Value, text};

/// The heading that every drawing begins with: whose case, which impression.
pub(super) fn heading(checked: &CheckedCase, impression: usize, language: Language) -> String {
    let input = &checked.case.impressions[impression];
    let measured = checked.impressions[impression].measured();
    let arch = (input.declared).or(measured.map(|found| found.frame.arch));
    text!(
        language,
        "drawing-heading",
        case = checked.case.id.as_str(),
        jaw = arch.map_or("unknown", words::arch),
        stage = match input.stage {
            Stage::FirstPass => "first-pass",
            Stage::Wash => "wash",
            Stage::Single => "single",
        }
    )
}

/// `F1 border radius`.
pub(super) fn numbered(name: &str, check: Check, language: Language) -> String {
    format!("{name} {}", check_name(check.code(), language))
}

/// A reason in few words.
pub(super) fn short_reason(missing: Missing, language: Language) -> String {
    match missing {
        Missing::TissueSideOnly => text!(language, "gap-tissue-side-only"),
        Missing::ScanEnds => text!(language, "gap-scan-ends"),
        Missing::NoSurface => text!(language, "gap-no-surface"),
        Missing::NoCrest => text!(language, "gap-no-crest"),
        Missing::FlangeTooLow => text!(language, "gap-flange-too-low"),
        Missing::NoRoll => text!(language, "gap-no-roll"),
        Missing::NoTray => text!(language, "gap-no-tray"),
        Missing::AtTheCut => text!(language, "gap-at-the-cut"),
        Missing::OffTheSummit => text!(language, "gap-off-the-summit"),
    }
}

pub(super) fn patient_side(side: Option<Side>, language: Language) -> String {
    match side {
        Some(side) => side_word(side.into(), language),
        None => text!(language, "drawing-midline"),
    }
}

/// After a distance along the border, and beside the small arch.
pub(super) fn side_letter(side: Side, language: Language) -> String {
    text!(language, "side-letter", side = words::side(side))
}

/// A limit from below, with its unit.
pub(super) fn at_least(language: Language, limit: String) -> String {
    text!(language, "cell-at-least", limit = Value::figure(limit))
}

/// A limit from above, with its unit.
pub(super) fn at_most(language: Language, limit: String) -> String {
    text!(language, "cell-at-most", limit = Value::figure(limit))
}
