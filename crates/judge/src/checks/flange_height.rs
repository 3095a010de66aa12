//! `flange-height`: a flange is lower than its zone's least height.

use super::along_border::{StationCheck, Told, in_dip, in_notch, on_flange, runs_out};
use super::scan_ends::was_not_seen;
use super::{Check, under_extension};
use crate::decision::Bound;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;

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
            && !runs_out(border, number);
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
