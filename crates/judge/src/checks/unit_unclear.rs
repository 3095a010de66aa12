//! `unit-unclear`: the size of a scan does not show its unit.

use crate::check::Check;
use crate::finding::Finding;
use crate::scale::UnitReading;
use crate::severity::Severity;
use crate::subject::ScanSubject;
use crate::words;
use messages::message;

pub(super) fn judge(subject: &ScanSubject<'_>) -> Vec<Finding> {
    let tray = subject.evidence.tray.as_ref();
    [("impression", Some(&subject.evidence.scan)), ("tray", tray)]
        .into_iter()
        .filter_map(|(which, facts)| {
            let instruction = match &facts?.unit {
                UnitReading::Given(_) | UnitReading::Assumed | UnitReading::Implausible => {
                    return None;
                }
                UnitReading::Inferred(unit) => {
                    message!("unit-inferred", which = which, unit = unit.symbol())
                }
                UnitReading::Ambiguous(units) => {
                    let units = words::either(units.iter().map(|unit| unit.symbol()));
                    message!("unit-ambiguous", which = which, units = units)
                }
            };
            Some(subject.finding(Check::UnitUnclear, Severity::Borderline, instruction))
        })
        .collect()
}
