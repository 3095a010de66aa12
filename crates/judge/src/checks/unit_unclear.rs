//! `unit-unclear`: the unit of a scan cannot be told from its size.

use super::Check;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::scale::UnitReading;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let tray = subject.evidence.tray.as_ref();
    [
        ("impression scan", Some(&subject.evidence.scan)),
        ("tray scan", tray),
    ]
    .into_iter()
    .filter_map(|(which, facts)| {
        let instruction = match &facts?.unit {
            UnitReading::Given(_) | UnitReading::Assumed | UnitReading::Implausible => return None,
            UnitReading::Inferred(unit) => format!(
                "The size of the {which} is not that of an impression in mm, but is in {unit}, and \
                 it was read so. If that is right, check again with --unit {unit}; else export it in mm."
            ),
            UnitReading::Ambiguous(units) => {
                let names: Vec<&str> = units.iter().map(|unit| unit.symbol()).collect();
                format!(
                    "The size of the {which} is not that of an impression in mm, but could be in \
                     {}. Check again with --unit and the right one, or export it in mm.",
                    names.join(" or ")
                )
            }
        };
        Some(subject.finding(Check::UnitUnclear, Severity::Fail, instruction))
    })
    .collect()
}
