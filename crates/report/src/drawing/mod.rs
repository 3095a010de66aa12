//! Drawings of the border as SVG: the unrolled chart and dimensioned sections.
//!
//! They must be read in grey and by the colour-blind: lines differ by dashes
//! and width, marks by shape, and everything is labelled where it is.

mod canvas;
mod chart;
mod lanes;
mod rows;
mod section;
mod track;

pub(crate) use chart::border_chart;
pub(crate) use section::finding_section;

use crate::road::CheckedCase;
use measure::{Missing, Side};

/// The heading that every drawing begins with: whose case, which impression.
fn heading(checked: &CheckedCase, impression: usize) -> String {
    let name = crate::names::impression(checked, impression).replace('-', " ");
    format!("Case {}, {name}", checked.case.id)
}

/// A reason in few words.
fn short_reason(missing: Missing) -> &'static str {
    match missing {
        Missing::TissueSideOnly => "tissue side only",
        Missing::ScanEnds => "scan ends here",
        Missing::NoSurface => "not scanned",
        Missing::NoCrest => "no crest line here",
        Missing::FlangeTooLow => "flange too low",
        Missing::NoRoll => "no roll",
        Missing::NoTray => "no tray scan",
    }
}

fn patient_side(side: Option<Side>) -> &'static str {
    match side {
        Some(Side::Right) => "patient's right",
        Some(Side::Left) => "patient's left",
        None => "midline",
    }
}

/// A figure with its uncertainty: `8.12 ± 0.10 mm`.
fn told(measured: measure::Measured) -> String {
    format!("{:.2} ± {:.2} mm", measured.mm, measured.uncertainty_mm)
}
