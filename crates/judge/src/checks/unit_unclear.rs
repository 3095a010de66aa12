//! `unit-unclear`: the size of a scan does not show its unit.

use crate::check::Check;
use crate::finding::Finding;
use crate::scale::UnitReading;
use crate::severity::Severity;
use crate::subject::ScanSubject;

pub(super) fn judge(subject: &ScanSubject<'_>) -> Vec<Finding> {
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
                "The size of the {which} is not that of an impression in mm, but of one in \
                 {unit}, and it was read so. If that is right, check again with --unit {unit}; if \
                 not, export it in mm."
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
        Some(subject.finding(Check::UnitUnclear, Severity::Borderline, instruction))
    })
    .collect()
}
