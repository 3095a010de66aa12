//! `landmark-not-found`: a landmark could not be made out.

use super::Check;
use super::landmarks::{findings, named};
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::landmarks::LandmarkStatus;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    findings(
        subject,
        Check::LandmarkNotFound,
        LandmarkStatus::NotFound,
        |landmark, _| {
            let why = match &landmark.seen {
                Ok(_) => String::new(),
                Err(why) => format!(": {why}"),
            };
            let name = named(landmark);
            let instruction = format!(
                "Look for {name} on the impression; it was not made out on the scan{why}. If you \
                 see it, mark it in a landmarks file."
            );
            (Severity::Note, instruction)
        },
    )
}
