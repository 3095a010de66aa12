//! Words that several drawings share.

use crate::text::names;
use check::CheckedCase;
use measure::{Missing, Side};
use messages::{Language, text};

/// The heading that every drawing begins with: whose case, which impression.
pub(super) fn heading(checked: &CheckedCase, impression: usize, language: Language) -> String {
    let name = names::impression(checked, impression).replace('-', " ");
    text!(
        language,
        "drawing-heading",
        case = checked.case.id.as_str(),
        impression = name
    )
}

/// A reason in few words.
pub(super) fn short_reason(missing: Missing) -> &'static str {
    match missing {
        Missing::TissueSideOnly => "tissue side only",
        Missing::ScanEnds => "scan ends here",
        Missing::NoSurface => "not scanned",
        Missing::NoCrest => "no crest line here",
        Missing::FlangeTooLow => "flange too low",
        Missing::NoRoll => "no roll",
        Missing::NoTray => "no tray scan",
        Missing::AtTheCut => "cut apart here",
        Missing::OffTheSummit => "line off the summit",
    }
}

pub(super) fn patient_side(side: Option<Side>) -> &'static str {
    match side {
        Some(Side::Right) => "patient's right",
        Some(Side::Left) => "patient's left",
        None => "midline",
    }
}
