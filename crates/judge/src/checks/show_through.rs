//! `show-through`: tray shows through the material.

use super::needs::TrayShown;
use super::shared::relief::{if_relieved, relieve, relieve_spot};
use super::shared::spots::{area_conformity, judged_by, place, places};
use super::shared::stations::then_wash;
use crate::case::Stage;
use crate::check::Check;
use crate::decision::{Bound, Conformity};
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words::tenths_mm;
use measure::{Cover, Spot};
use messages::{Message, message};

/// Below this confidence a patch may be of another colour than the tray's.
const LEAST_CONFIDENCE: f64 = 0.5;

pub(super) fn judge(subject: &Subject<'_>, shown: TrayShown<'_>) -> Vec<Finding> {
    match shown {
        TrayShown::ByCover(cover) => places(subject)
            .filter_map(|(number, spot)| match (spot.is_by_colour(), spot.min_mm) {
                (false, _) => by_cover(subject, cover, number),
                (true, Some(_)) => beside_cover(subject, number, spot),
                (true, None) => by_colour(subject, number, spot),
            })
            .collect(),
        TrayShown::ByColour(_) => (subject.measurement().spots.iter().enumerate())
            .filter_map(|(number, spot)| by_colour(subject, number, spot))
            .collect(),
    }
}

fn by_cover(subject: &Subject<'_>, cover: &Cover, number: usize) -> Option<Finding> {
    let mut least = judged_by(LimitKey::ShowThrough, subject, cover, number)?;
    if is_altered(subject, cover, &least.figure) {
        // No material can be there: the tray was not as its scan shows it.
        least.severity = least.severity.max(Severity::Borderline);
        return Some(least.finding(
            subject,
            Check::ShowThrough,
            number,
            message!("show-through-altered"),
        ));
    }
    let relieve = relieve_spot(subject, number, then_wash(subject.input().stage));
    let edge = subject.measurement().spots[number].edge;
    let edge_mm = edge.map(|edge| tenths_mm(edge.length_mm.value, edge.length_mm.uncertainty));
    let shows = match (least.conformity, edge_mm) {
        (Conformity::NotConforming, None) => Message::default(),
        (Conformity::NotConforming, Some(length)) => {
            message!("show-through-edge", length = length)
        }
        (Conformity::Borderline | Conformity::Conforming, None) => message!("show-through-unsure"),
        (Conformity::Borderline | Conformity::Conforming, Some(length)) => {
            message!("show-through-unsure-edge", length = length)
        }
    };
    let is_wash = subject.input().stage == Stage::Wash;
    let instruction = shows.then(relieve).then(is_wash.then(if_relieved));
    Some(least.finding(subject, Check::ShowThrough, number, instruction))
}

/// Whether a patch lies deeper inside the wall of the scanned tray than any uncertainty
/// explains, on an impression whose tray may have changed since its scan: trays are relieved
/// between the passes, and a tray of the shelf was scanned once, long ago.
fn is_altered(subject: &Subject<'_>, cover: &Cover, least: &Figure) -> bool {
    let input = subject.input();
    let may_have_changed = input.stage == Stage::Wash || input.is_from_shelf();
    if !may_have_changed || cover.registration.is_none() {
        return false;
    }
    let level_mm = subject.limit(LimitKey::ShowThrough).value;
    least.measured + least.uncertainty.unwrap_or(0.0) < -level_mm
}

/// A patch of the tray's colour: judged by its area, for its cover is not known.
fn by_colour(subject: &Subject<'_>, number: usize, spot: &Spot) -> Option<Finding> {
    let limit = subject.limit(LimitKey::LeastSpotArea);
    let level = subject.limit(LimitKey::ShowThrough).level;
    let mut severity = Severity::of(area_conformity(subject, spot), level)?;
    if spot
        .confidence
        .is_none_or(|confidence| confidence < LEAST_CONFIDENCE)
    {
        severity = severity.max(Severity::Borderline);
    }
    let shows = match severity {
        Severity::Fail => message!("show-through-colour"),
        Severity::Borderline | Severity::Note => message!("show-through-colour-unsure"),
    };
    let instruction = shows.then(relieve(then_wash(subject.input().stage)));
    let area = Figure::beside(
        limit,
        Bound::AtMost,
        spot.area_mm2,
        Some(spot.area_uncertainty_mm2),
    );
    Some(Finding {
        place: Some(place(spot)),
        spot: Some(number),
        ..subject
            .finding(Check::ShowThrough, severity, instruction)
            .with(area)
    })
}

/// A patch of the tray's colour where the cover map finds none: one of the two
/// errs, so nothing is sure.
fn beside_cover(subject: &Subject<'_>, number: usize, spot: &Spot) -> Option<Finding> {
    let found = by_colour(subject, number, spot)?;
    let relieve = relieve(then_wash(subject.input().stage));
    Some(Finding {
        severity: found.severity.max(Severity::Borderline),
        instruction: message!("colour-beside-cover").then(relieve),
        ..found
    })
}
