//! `thin-cover`: material is thin.

use super::shared::relief::{IF_RELIEVED, relieve_spot};
use super::shared::spots::{judged_by, places};
use super::shared::stations::then_wash;
use crate::case::Stage;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::Cover;

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover) -> Vec<Finding> {
    places(subject)
        .filter(|(_, spot)| !spot.is_by_colour())
        .filter_map(|(number, _)| {
            let least = judged_by(LimitKey::ThinCover, subject, cover, number)?;
            let stage = subject.input().stage;
            let relieve = relieve_spot(subject, number, then_wash(stage));
            let instruction = instruction(least.severity, stage, &relieve);
            Some(least.finding(subject, Check::ThinCover, number, instruction))
        })
        .collect()
}

fn instruction(severity: Severity, stage: Stage, relieve: &str) -> String {
    let if_relieved = if stage == Stage::Wash {
        IF_RELIEVED
    } else {
        ""
    };
    match severity {
        Severity::Fail => format!("{relieve}{if_relieved}"),
        Severity::Borderline => format!(
            "Too close to the limit to tell from the scan: look at the impression here. If the \
             material is not thin, scan this place again at higher resolution. If it is: {relieve}"
        ),
        // Good material is not ground away for being thin.
        Severity::Note => format!(
            "The material is thin here. Look whether it is torn, lifted off the tray, or pressed the \
             mucosa aside. If not, leave it as it is.{if_relieved}"
        ),
    }
}
