//! `show-through`: tray shows through the material.

use super::Check;
use crate::case::Stage;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Finding, Place, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;
use measure::{Cover, Spot};

/// How a tray is relieved without harm to the operator or the patient.
pub(super) const SAFELY: &str =
    "out of the mouth, with eye and dust protection, then feel for sharp edges";

/// After relief the old scan of the tray no longer tells the truth there.
pub(super) const IF_RELIEVED: &str = " If the tray was relieved here after it was scanned, this \
     figure is too low: scan the relieved tray and check again.";

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover, number: usize) -> Option<Finding> {
    let spot = &subject.measurement().spots[number];
    let min_mm = spot.min_mm?;
    let limit = subject.limit(LimitKey::ShowThrough);
    let conformity = decide(min_mm, cover.uncertainty_mm, Bound::AtLeast(limit.value));
    let severity = Severity::of(conformity, limit.level)?;
    let mut instruction = match conformity {
        Conformity::NotConforming => format!("Relieve the tray here ({SAFELY}), then take a wash."),
        Conformity::Borderline | Conformity::Conforming => format!(
            "Too close to tell from the scan: look at the impression here. If tray shows, relieve \
             it ({SAFELY}) and take a wash; if not, scan this place again, finer."
        ),
    };
    if subject.input.stage == Stage::Wash {
        instruction.push_str(IF_RELIEVED);
    }
    Some(Finding {
        place: Some(place(spot)),
        figure: Some(figure(min_mm, Some(cover.uncertainty_mm), limit)),
        spot: Some(number),
        ..subject.finding(Check::ShowThrough, severity, instruction)
    })
}

/// Below this confidence a patch may be of another colour than the tray's.
const LEAST_CONFIDENCE: f64 = 0.5;

/// A patch of the tray's colour: judged by its area, for its cover is not known.
pub(super) fn by_colour(subject: &Subject<'_>, number: usize) -> Option<Finding> {
    let spot = &subject.measurement().spots[number];
    let limit = subject.limit(LimitKey::LeastSpotArea);
    let level = subject.limit(LimitKey::ShowThrough).level;
    let mut severity = Severity::of(area_conformity(subject, spot), level)?;
    if spot
        .confidence
        .is_none_or(|confidence| confidence < LEAST_CONFIDENCE)
    {
        severity = severity.max(Severity::Borderline);
    }
    let instruction = match severity {
        Severity::Fail => format!(
            "The tray's colour shows here. Look at it; where it is the tray, relieve it ({SAFELY}) \
             and take a wash."
        ),
        Severity::Borderline | Severity::Note => format!(
            "By its colour tray may show here: look at the impression. If it does, relieve it \
             ({SAFELY}) and take a wash."
        ),
    };
    Some(Finding {
        place: Some(place(spot)),
        figure: Some(figure(
            spot.area_mm2,
            Some(spot.area_uncertainty_mm2),
            limit,
        )),
        spot: Some(number),
        ..subject.finding(Check::ShowThrough, severity, instruction)
    })
}

/// A patch of the tray's colour where the cover map finds none: one of the two
/// errs, so nothing is sure.
pub(super) fn beside_cover(subject: &Subject<'_>, number: usize) -> Option<Finding> {
    let found = by_colour(subject, number)?;
    Some(Finding {
        severity: found.severity.max(Severity::Borderline),
        instruction: format!(
            "The tray's colour shows here, but the cover map finds material over it. Look at the \
             impression: if tray shows, relieve it ({SAFELY}), take a wash, and see whether scan \
             or thickness are those of this tray; if not, something else has its colour."
        ),
        ..found
    })
}

/// Whether a patch of the tray's colour is surely more than a speck.
pub(super) fn area_conformity(subject: &Subject<'_>, spot: &Spot) -> Conformity {
    let most = Bound::AtMost(subject.limit(LimitKey::LeastSpotArea).value);
    decide(spot.area_mm2, spot.area_uncertainty_mm2, most)
}

/// Where a spot is.
pub(super) fn place(spot: &Spot) -> Place {
    Place {
        at: spot.centre,
        zone: spot.zone,
        side: spot.side,
    }
}
