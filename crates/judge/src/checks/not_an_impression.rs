//! `not-an-impression`: the scan shows something else.

use super::Check;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use measure::{NotAnImpression, NotMeasured};

/// What the scan is instead of an impression.
pub(super) fn kind<'a>(subject: &'a Subject<'_>) -> Option<&'a NotAnImpression> {
    let measurement = subject.measurement();
    [
        measurement.frame.as_ref().err(),
        measurement.cover.as_ref().err(),
    ]
    .into_iter()
    .flatten()
    .find_map(|why| match why {
        NotMeasured::NotAnImpression(kind) => Some(kind),
        _ => None,
    })
}

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    kind(subject)
        .map(|kind| {
            let what_to_do = match kind {
                NotAnImpression::WrongSize { .. } => {
                    "Check that the right file was given, and its unit (--unit)."
                }
                NotAnImpression::Positive => {
                    "Give the scan of the impression itself, not of a cast, a denture or the mouth."
                }
                NotAnImpression::Teeth { .. } | NotAnImpression::Sockets { .. } => {
                    "This check is made for edentulous arches; look at this one by eye."
                }
                NotAnImpression::TwoScans { .. } => "Export each scan into a file of its own.",
                _ => "Give the scan of an edentulous impression in its tray.",
            };
            let instruction = format!("Not an impression: {kind}. {what_to_do}");
            subject.finding(Check::NotAnImpression, Severity::Fail, instruction)
        })
        .into_iter()
        .collect()
}
