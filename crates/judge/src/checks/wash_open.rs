//! `wash-open`: a bare or thin place of the first pass is still so under the wash.

use super::shared::relief::relieve;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::{Figure, Finding, Place};
use crate::severity::Severity;
use crate::subject::Subject;
use crate::wash::{PlaceState, limit_of, state};
use measure::pair::Wash;
use messages::message;

/// Where the wash's own cover was measured, other checks name its show-through
/// and thin places; here those that are known through the first pass alone.
pub(super) fn judge(subject: &Subject<'_>, wash: &Wash) -> Vec<Finding> {
    if subject.measurement().cover.is_ok() {
        return Vec::new();
    }
    wash.places
        .iter()
        .filter_map(|place| {
            let limit = limit_of(place.kind, subject.protocol());
            let (state, conformity) = state(place, subject.protocol());
            let severity = Severity::of(conformity?, limit.level)?;
            let instruction = if state == PlaceState::StillOpen {
                message!("wash-open")
                    .then(relieve(message!("then-repeat-wash")))
                    .then(message!("wash-open-relieved"))
            } else {
                message!("wash-open-unsure")
            };
            Some(Finding {
                place: Some(Place {
                    at: place.at,
                    zone: place.zone,
                    side: place.side,
                }),
                figure: place.cover_mm.map(|mm| {
                    Figure::beside(limit, Bound::AtLeast, mm, Some(place.uncertainty_mm))
                }),
                ..subject.finding(Check::WashOpen, severity, instruction)
            })
        })
        .collect()
}
