//! `border-overlap`: the tray ends too near to the border or too far from it.

use super::along_border::{StationCheck, Told, on_flange};
use super::scan_ends::was_not_seen;
use super::show_through::SAFELY;
use super::{Check, tray_at_border};
use crate::decision::Bound;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::{Border, Measured, Station, Zone};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(border) = &subject.measurement().border else {
        return Vec::new();
    };
    let near_reading = |number: usize| {
        // Where tray may show at the border itself, `tray-at-border` speaks.
        overlap(border, number).filter(|&o| tray_at_border::is_clear(subject, o))
    };
    let far_reading = |number: usize| overlap(border, number);
    let near = StationCheck {
        check: Check::BorderOverlap,
        key: LimitKey::OverlapLeast,
        bound: Bound::AtLeast,
        reading: &near_reading,
        instruction: &when_near,
    };
    let far = StationCheck {
        key: LimitKey::OverlapMost,
        bound: Bound::AtMost,
        reading: &far_reading,
        instruction: &when_far,
        ..near
    };
    let mut findings = near.findings(subject, border);
    findings.extend(far.findings(subject, border));
    findings
}

/// The overlap at a station where the tray should end short of the border.
pub(super) fn overlap(border: &Border, number: usize) -> Option<Measured> {
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

fn when_near(_: Severity, told: &Told) -> String {
    let Told {
        range, movement, ..
    } = told;
    format!(
        "The tray ends close to the border {range}. Before the border is moulded again, shorten \
         the tray there to 2 to 3 mm short of the vestibule ({SAFELY}), then repeat the {movement}."
    )
}

fn when_far(_: Severity, told: &Told) -> String {
    let Told {
        range, movement, ..
    } = told;
    format!(
        "Material goes far past the tray {range}. If it bends under a finger, lengthen the tray \
         there or take a larger one, and repeat the {movement}."
    )
}
