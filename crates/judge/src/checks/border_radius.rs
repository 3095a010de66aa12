//! `border-radius`: the border is sharp instead of rounded.

use super::Check;
use super::along_border::{StationCheck, Told, on_flange, runs_out};
use crate::decision::Bound;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(border) = &subject.measurement().border else {
        return Vec::new();
    };
    let reading = |number: usize| {
        let station = &border.stations[number];
        let radius = station.border_radius.ok()?;
        (on_flange(station) && !station.scan_ends && !runs_out(border, number)).then_some(radius)
    };
    let check = StationCheck {
        check: Check::BorderRadius,
        key: LimitKey::BorderRadius,
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
        ..
    } = told;
    match severity {
        Severity::Fail => format!(
            "Knife edge: the border is sharp {range}. Add border material there and repeat the \
             {movement} so that it rolls over, {then}."
        ),
        Severity::Borderline | Severity::Note => format!(
            "The border may be sharp {range}: feel it. If it is a knife edge, add border material \
             there and repeat the {movement}, {then}."
        ),
    }
}
