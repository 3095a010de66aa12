//! How far material goes past the tray's edge, where the tray should end short
//! of the border.

use super::stations::{on_flange, was_not_seen};
use crate::decision::{Bound, Conformity, decide};
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::{Border, Measured, Station, Zone};

/// The overlap at a station where the tray should end short of the border.
pub(crate) fn overlap(border: &Border, number: usize) -> Option<Measured> {
    let station = &border.stations[number];
    let overlap = station.overlap.ok()?;
    (!tray_reaches(station) && !was_not_seen(station)).then_some(overlap)
}

/// Whether a tray is left long here: at the back and over the pads (BORDER-01).
fn tray_reaches(station: &Station) -> bool {
    !on_flange(station)
        || matches!(
            station.zone,
            Zone::HamularNotch | Zone::RetromolarPad | Zone::PosteriorPalatalSeal
        )
}

/// Whether tray surely does not show at a border point.
pub(crate) fn is_clear(subject: &Subject<'_>, overlap: Measured) -> bool {
    let least = Bound::AtLeast(subject.limit(LimitKey::ShowThrough).value);
    decide(overlap.mm, overlap.uncertainty_mm, least) == Conformity::Conforming
}
