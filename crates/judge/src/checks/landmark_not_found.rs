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
                "{} was not detected{why}. Look for it on the impression and, if it is there, mark \
                 it (key L in the window, or a landmarks file).",
                capital(&name)
            );
            (Severity::Note, instruction)
        },
    )
}

fn capital(sentence: &str) -> String {
    let mut letters = sentence.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
