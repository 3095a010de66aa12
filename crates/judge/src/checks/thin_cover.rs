//! `thin-cover`: material is thin.

use super::Check;
use super::show_through::{IF_RELIEVED, SAFELY, place};
use crate::case::Stage;
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;
use measure::Cover;

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover, number: usize) -> Option<Finding> {
    let spot = &subject.measurement().spots[number];
    let min_mm = spot.min_mm?;
    let limit = subject.limit(LimitKey::ThinCover);
    let conformity = decide(min_mm, cover.uncertainty_mm, Bound::AtLeast(limit.value));
    let severity = Severity::of(conformity, limit.level)?;
    let instruction = instruction(severity, subject.input.stage);
    Some(Finding {
        place: Some(place(spot)),
        figure: Some(figure(min_mm, Some(cover.uncertainty_mm), limit)),
        spot: Some(number),
        ..subject.finding(Check::ThinCover, severity, instruction)
    })
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
