//! `wash-open`: a bare or thin place of the first pass is still so under the wash.

use super::Check;
use super::show_through::SAFELY;
use crate::finding::{Finding, Place, Severity};
use crate::judging::{Subject, figure};
use crate::wash::{PlaceState, limit_of, state};

/// Where the wash's own cover was measured, its own show-through and thin
/// places are told; here those that are known through the first pass alone.
pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let measurement = subject.measurement();
    let (Some(Ok(wash)), Err(_)) = (&measurement.wash, &measurement.cover) else {
        return Vec::new();
    };
    wash.places
        .iter()
        .filter_map(|place| {
            let limit = limit_of(place.kind, subject.protocol);
            let (state, conformity) = state(place, subject.protocol);
            let severity = Severity::of(conformity?, limit.level)?;
            let instruction = if state == PlaceState::StillOpen {
                format!(
                    "The wash did not mend this place of the first pass: relieve the tray here \
                     ({SAFELY}) and take the wash again. If it was relieved after the first pass was \
                     scanned, there is more material than this figure says: look at it."
                )
            } else {
                "Too close to tell whether the wash mended this place of the first pass: look at it."
                    .to_owned()
            };
            Some(Finding {
                place: Some(Place {
                    at: place.at,
                    zone: place.zone,
                    side: place.side,
                }),
                figure: place
                    .cover_mm
                    .map(|mm| figure(mm, Some(place.uncertainty_mm), limit)),
                ..subject.finding(Check::WashOpen, severity, instruction)
            })
        })
        .collect()
}
