//! `landmark-not-found`: a landmark could not be made out.

use super::shared::landmarks::findings;
use crate::check::Check;
use crate::finding::Finding;
use crate::landmarks::LandmarkStatus;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words::the_landmark;
use measure::Frame;
use messages::{Value, message};

pub(super) fn judge(subject: &Subject<'_>, _: &Frame) -> Vec<Finding> {
    findings(
        subject,
        Check::LandmarkNotFound,
        |judged| judged.status == LandmarkStatus::NotFound,
        |landmark, _| {
            // What was seen is never not found.
            let why = landmark.seen.as_ref().err();
            let instruction = message!(
                "not-detected",
                landmark = the_landmark(landmark),
                why = why.map_or_else(|| Value::from(""), Value::from)
            );
            (Severity::Note, instruction)
        },
    )
}
