//! `tissue-stop`: a declared tissue stop that does not show.

use crate::case::Stage;
use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Place};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Cover, StopReading};

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
                    "No surface was scanned at this tissue stop. Scan this place again.",
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
        (true, _) if subject.pair().is_some() => (
            Severity::Note,
            "The wash lies over this tissue stop. Whether the tray was fully seated is judged on \
             the impression before the wash.",
        ),
        (true, true) => (
            Severity::Borderline,
            "Material covers this tissue stop. If the stop was relieved before the wash, say so \
             (stops_relieved = true); if it was not, the tray was not fully seated here and the \
             impression must be taken again.",
        ),
        (false, true) => (
            severity,
            "Tray not fully seated here: material covers the tissue stop. Take the impression \
             again and seat the tray until this stop touches.",
        ),
        (_, false) => (
            severity,
            "Look at this tissue stop: the tray should show. If material covers it, the tray was \
             not fully seated here and the impression must be taken again.",
        ),
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
