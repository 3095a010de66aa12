//! `tissue-stop`: a declared tissue stop that does not show.

use crate::case::Stage;
use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Place};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Cover, StopReading};
use messages::message;

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover) -> Vec<Finding> {
    subject
        .measurement()
        .stops
        .iter()
        .filter_map(|stop| {
            let finding = match stop.min_mm {
                Some(measured) => of_cover(subject, measured, cover.uncertainty_mm)?,
                None => subject.finding(
                    Check::TissueStop,
                    Severity::Borderline,
                    message!("tissue-stop-not-scanned"),
                ),
            };
            Some(Finding {
                place: Some(place(stop)),
                ..finding
            })
        })
        .collect()
}

/// The finding on a stop that does not clearly show.
fn of_cover(subject: &Subject<'_>, measured: f64, uncertainty_mm: f64) -> Option<Finding> {
    let limit = subject.limit(LimitKey::StopCover);
    let conformity = decide(measured, uncertainty_mm, Bound::AtMost(limit.value));
    let severity = Severity::of(conformity, limit.level)?;
    let is_covered = conformity == Conformity::NotConforming;
    let is_wash = subject.input().stage == Stage::Wash;
    let (severity, instruction) = match (is_wash, is_covered) {
        // Whether the tray was seated shows before the wash, which may lie over the stop.
        (true, _) if subject.pair().is_some() => {
            (Severity::Note, message!("tissue-stop-under-wash"))
        }
        (true, true) => (
            Severity::Borderline,
            message!("tissue-stop-covered-in-wash"),
        ),
        (false, true) => (severity, message!("tissue-stop-covered")),
        (_, false) => (severity, message!("tissue-stop-unsure")),
    };
    let figure = Figure::beside(limit, Bound::AtMost, measured, Some(uncertainty_mm));
    Some(
        subject
            .finding(Check::TissueStop, severity, instruction)
            .with(figure),
    )
}

fn place(stop: &StopReading) -> Place {
    Place {
        at: stop.at,
        zone: stop.zone,
        side: stop.side,
    }
}
