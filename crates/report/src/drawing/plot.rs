//! What a border chart is drawn of, and where things lie along it.

use super::track::Track;
use check::CheckedCase;
use judge::Finding;
use measure::{Arch, Border};
use messages::Language;

pub(super) const WIDTH: f64 = 1280.0;
pub(super) const LEFT: f64 = 62.0;
pub(super) const RIGHT: f64 = WIDTH - 26.0;
/// Size of small lettering, px.
pub(super) const SMALL: f64 = 11.0;

/// From distances along a track to the sheet.
#[derive(Debug, Clone, Copy)]
pub(super) struct Across {
    from_mm: f64,
    px_per_mm: f64,
}

impl Across {
    pub(super) fn of(track: &Track) -> Self {
        let (from, to) = track.reach();
        Self {
            from_mm: from,
            px_per_mm: (RIGHT - LEFT) / (to - from).max(1.0),
        }
    }

    pub(super) fn px(&self, mm: f64) -> f64 {
        LEFT + (mm - self.from_mm) * self.px_per_mm
    }
}

/// What a chart is drawn of.
pub(super) struct Chart<'a> {
    pub language: Language,
    pub checked: &'a CheckedCase,
    pub border: &'a Border,
    pub arch: Arch,
    /// Findings on the border with their numbers in the case.
    pub findings: Vec<(usize, &'a Finding)>,
}
