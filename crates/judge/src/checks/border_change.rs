//! `border-change`: the border is lower than on the first pass.

use super::Check;
use super::along_border::{StationCheck, Told};
use crate::decision::Bound;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::Measured;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(border) = &subject.measurement().border else {
        return Vec::new();
    };
    let lower_by = |number: usize| {
        border.stations[number].change.map(|change| Measured {
            mm: -change.mm,
            ..change
        })
    };
    let check = StationCheck {
        check: Check::BorderChange,
        key: LimitKey::BorderDrop,
        bound: Bound::AtMost,
        reading: &lower_by,
        instruction: &instruction,
    };
    check.findings(subject, border)
}

fn instruction(_: Severity, told: &Told) -> String {
    let Told {
        range, movement, ..
    } = told;
    format!(
        "The border is lower {range} than on the first pass: it was cut back, or the wash displaced \
         it. If that was not meant, add border material there and repeat the {movement}."
    )
}
