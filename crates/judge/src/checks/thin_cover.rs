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
    let limit = subject.limit(LimitKey::ThinCover);
    let conformity = decide(
        spot.min_mm,
        cover.uncertainty_mm,
        Bound::AtLeast(limit.value),
    );
    let severity = Severity::of(conformity, limit.level)?;
    let instruction = match (severity, subject.input.stage) {
        (Severity::Note, Stage::Wash) => {
            format!("Thin here: look whether the wash has torn or tray shows.{IF_RELIEVED}")
        }
        (Severity::Note, _) => format!(
            "Thin here: if a wash is to follow, give it room by relieving the tray a little \
             ({SAFELY})."
        ),
        (_, Stage::Wash) => {
            format!("Relieve the tray here ({SAFELY}) and take the wash again.{IF_RELIEVED}")
        }
        (_, _) => format!("Relieve the tray here ({SAFELY}), then take a wash."),
    };
    Some(Finding {
        place: Some(place(spot)),
        figure: Some(figure(spot.min_mm, Some(cover.uncertainty_mm), limit)),
        spot: Some(number),
        ..subject.finding(Check::ThinCover, severity, instruction)
    })
}
