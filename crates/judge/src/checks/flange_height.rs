//! `flange-height`: a flange is lower than its zone's least height.

use super::along_border::{StationCheck, Told, in_dip, in_notch, on_flange};
use super::scan_ends::was_not_seen;
use super::{Check, under_extension};
use crate::decision::Bound;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::Border;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(border) = &subject.measurement().border else {
        return Vec::new();
    };
    // A frenum's notch is right, and a short stretch is one finding already.
    let told_elsewhere = |number| {
        in_notch(border, number)
            || in_dip(border, number, |dip| {
                under_extension::severity(subject, border, dip).is_some()
            })
    };
    let reading = |number: usize| {
        let station = &border.stations[number];
        let height = station.flange_height.ok()?;
        let judged = on_flange(station)
            && !was_not_seen(station)
            && !told_elsewhere(number)
            && !ends_soon(border, number);
        judged.then_some(height)
    };
    let check = StationCheck {
        check: Check::FlangeHeight,
        key: LimitKey::FlangeHeight,
        bound: Bound::AtLeast,
        reading: &reading,
        instruction: &instruction,
    };
    check.findings(subject, border)
}

/// Toward hamular notches and pads every flange runs out.
fn ends_soon(border: &Border, number: usize) -> bool {
    const RUNS_OUT_MM: f64 = 10.0;
    let step_mm = border.length_mm / border.stations.len().max(1) as f64;
    let reach = (RUNS_OUT_MM / step_mm.max(1e-3)).ceil() as usize;
    let count = border.stations.len();
    let around = (number + count).saturating_sub(reach)..=number + count + reach;
    around
        .map(|n| &border.stations[n % count])
        .any(|station| !on_flange(station))
}

fn instruction(severity: Severity, told: &Told) -> String {
    let Told {
        range,
        movement,
        then,
    } = told;
    match severity {
        Severity::Fail => format!(
            "The flange is low {range}. Add border material there and repeat the {movement}, \
             {then}."
        ),
        Severity::Borderline | Severity::Note => format!(
            "The flange is low {range}: look in the mouth. If the vestibule is deeper than the \
             border reaches, add border material there and repeat the {movement}, {then}; if the \
             ridge itself is low, it is right as it is."
        ),
    }
}
