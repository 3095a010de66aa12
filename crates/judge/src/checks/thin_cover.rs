//! `thin-cover`: material is thin.

use super::shared::relief::{IF_RELIEVED, SAFELY};
use super::shared::spots::{judged_by, places};
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
            let instruction = instruction(least.severity, subject.input.stage);
            Some(least.finding(subject, Check::ThinCover, number, instruction))
        })
        .collect()
}

fn instruction(severity: Severity, stage: Stage) -> String {
    let is_wash = stage == Stage::Wash;
    match severity {
        Severity::Fail if is_wash => {
            format!("Relieve the tray here ({SAFELY}) and take the wash again.{IF_RELIEVED}")
        }
        Severity::Fail => format!("Relieve the tray here ({SAFELY}), then take a wash."),
        Severity::Borderline => format!(
            "Too close to the limit to tell from the scan: look at the impression here. If the \
             material is thin, relieve the tray ({SAFELY}) and take a wash; if not, scan this \
             place again, finer."
        ),
        Severity::Note if is_wash => {
            format!("Thin here: look whether the wash has torn or tray shows.{IF_RELIEVED}")
        }
        Severity::Note => format!(
            "Thin here: if a wash is to follow, give it room by relieving the tray a little \
             ({SAFELY})."
        ),
    }
}
