//! `thin-cover`: material is thin.

use super::shared::relief::{if_relieved, relieve_spot};
use super::shared::spots::{judged_by, places};
use super::shared::stations::then_wash;
use crate::case::Stage;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::Cover;
use messages::{Message, message};

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover) -> Vec<Finding> {
    places(subject)
        .filter(|(_, spot)| !spot.is_by_colour())
        .filter_map(|(number, _)| {
            let least = judged_by(LimitKey::ThinCover, subject, cover, number)?;
            let stage = subject.input().stage;
            let relieve = relieve_spot(subject, number, then_wash(stage));
            let instruction = instruction(least.severity, stage, relieve);
            Some(least.finding(subject, Check::ThinCover, number, instruction))
        })
        .collect()
}

fn instruction(severity: Severity, stage: Stage, relieve: Message) -> Message {
    let if_relieved = (stage == Stage::Wash).then(if_relieved);
    match severity {
        Severity::Fail => relieve.then(if_relieved),
        Severity::Borderline => message!("thin-cover-unsure").then(relieve),
        // Good material is not ground away for being thin.
        Severity::Note => message!("thin-cover").then(if_relieved),
    }
}
