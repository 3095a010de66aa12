//! What a wash added over its first pass, in the words of the contract.

use super::{Before, spot_id, spot_kind};
use crate::result::{Wash, WashPlace};
use crate::rounding::{figure, point};
use crate::wash_map;
use check::CheckedCase;
use judge::{PlaceState, words};
use measure::Spot;
use measure::wash::PlaceNow;

/// Each wash that was measured over its first pass.
pub(super) fn washes(checked: &CheckedCase, before: &[Before]) -> Vec<Wash> {
    (0..checked.impressions.len())
        .filter_map(|number| wash(checked, number, before))
        .collect()
}

fn wash(checked: &CheckedCase, number: usize, before: &[Before]) -> Option<Wash> {
    let one = &checked.impressions[number];
    let unit = one.scan.unit.unit();
    let measured = one.measurement.wash.as_ref()?.as_ref().ok()?;
    let first_pass = checked.case.first_pass_of(number)?;
    let arch = one.measurement.frame.as_ref().ok()?.arch;
    let id = |place: &PlaceNow| spot_id(before[first_pass].spots + place.spot);
    let states = &checked.judged.impressions[number].wash_places;
    let of = |wanted: &[PlaceState]| -> Vec<String> {
        (measured.places.iter().zip(states))
            .filter(|(_, state)| wanted.contains(state))
            .map(|(place, _)| id(place))
            .collect()
    };
    let own = one.measurement.spots.iter().enumerate();
    Some(Wash {
        arch: checked.case.impressions[number]
            .declared
            .unwrap_or(arch)
            .into(),
        impression: number as u64,
        first_pass: first_pass as u64,
        median_mm: figure(measured.median_mm),
        p05_mm: figure(measured.p05_mm),
        p95_mm: figure(measured.p95_mm),
        uncertainty_mm: figure(measured.uncertainty_mm),
        area_judged_mm2: figure(measured.area_judged_mm2),
        added_share: figure(measured.added_share),
        lowered_share: figure(measured.lowered_share),
        resolved: of(&[PlaceState::Resolved]),
        still_open: of(&[PlaceState::StillOpen]),
        unclear: of(&[PlaceState::Unclear, PlaceState::NotSeen]),
        new: own
            .filter(|(_, spot)| spot.around.is_none() && spot.stop.is_none())
            .filter(|(_, spot)| !measured.places.iter().any(|place| is_at(spot, place)))
            .map(|(spot, _)| spot_id(before[number].spots + spot))
            .collect(),
        places: (measured.places.iter())
            .map(|place| WashPlace {
                spot: id(place),
                kind: spot_kind(place.kind),
                zone: words::zone(place.zone).to_owned(),
                side: place.side.map(Into::into),
                at: point(&place.at, unit),
                was_mm: place.was_mm.map(figure),
                was_uncertainty_mm: figure(place.was_uncertainty_mm),
                cover_mm: place.cover_mm.map(figure),
                uncertainty_mm: figure(place.uncertainty_mm),
            })
            .collect(),
        map: Some(wash_map::described(checked, number)),
    })
}

/// Whether a spot of the wash lies where the first pass had one.
fn is_at(spot: &Spot, place: &PlaceNow) -> bool {
    let radius_mm = |area_mm2: f64| (area_mm2 / std::f64::consts::PI).sqrt();
    (spot.centre - place.at).norm() <= radius_mm(spot.area_mm2) + radius_mm(place.area_mm2)
}
