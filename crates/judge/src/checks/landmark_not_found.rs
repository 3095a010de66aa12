//! `landmark-not-found`: a landmark could not be made out.

use super::shared::landmarks::{findings, named};
use crate::check::Check;
use crate::finding::Finding;
use crate::landmarks::LandmarkStatus;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::Frame;

pub(super) fn judge(subject: &Subject<'_>, _: &Frame) -> Vec<Finding> {
    findings(
        subject,
        Check::LandmarkNotFound,
        |judged| judged.status == LandmarkStatus::NotFound,
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
