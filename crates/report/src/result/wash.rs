//! A wash over its first pass, in a result.

use super::common::{Arch, Point, Side};
use super::cover::{CoverMap, SpotKind};
use super::numbering::{Before, spot_id};
use crate::text::rounding::{figure, point};
use check::CheckedCase;
use judge::{PlaceState, words};
use measure::Spot;
use measure::wash::PlaceNow;
use mesh::Unit;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Wash against first pass of one jaw.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Wash {
    /// Which jaw.
    pub arch: Arch,
    /// Number of the wash among the impressions, from 0.
    pub impression: u64,
    /// Number of its first pass among the impressions, from 0.
    pub first_pass: u64,
    /// Median thickness, mm.
    pub median_mm: f64,
    /// 5th percentile of the thickness by area, mm.
    pub p05_mm: f64,
    /// 95th percentile of the thickness by area, mm.
    pub p95_mm: f64,
    /// Expanded uncertainty (k = 2) of a thickness, mm; differences within it do not count.
    pub uncertainty_mm: f64,
    /// Tissue surface over which thickness is known, mm².
    pub area_judged_mm2: f64,
    /// Share of it over which material was surely added, 0 to 1.
    pub added_share: f64,
    /// Share of it over which the surface surely lies lower than before, 0 to 1.
    pub lowered_share: f64,
    /// Spots of the first pass that are resolved.
    pub resolved: Vec<String>,
    /// Spots of the first pass that are still open.
    pub still_open: Vec<String>,
    /// Spots of the first pass of which that cannot be told: too near the limit
    /// for its uncertainty, or not scanned.
    pub unclear: Vec<String>,
    /// Spots of the wash where the first pass had none.
    pub new: Vec<String>,
    /// Each place of the first pass with its cover before and now.
    pub places: Vec<WashPlace>,
    /// The wash's scan coloured by thickness.
    pub map: Option<CoverMap>,
}

/// A bare or thin place of the first pass, seen again under the wash.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct WashPlace {
    /// The spot of the first pass.
    pub spot: String,
    /// What it was.
    pub kind: SpotKind,
    /// Part of the arch.
    pub zone: String,
    /// Patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Where it lies on the wash, in the wash scan's coordinates.
    pub at: Point,
    /// Least cover on the first pass, mm; `null` where colour alone told of it.
    pub was_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the cover on the first pass, mm.
    pub was_uncertainty_mm: f64,
    /// Least cover under the wash, mm; `null` where the wash was not scanned.
    pub cover_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the cover under the wash, mm.
    pub uncertainty_mm: f64,
}

impl Wash {
    /// Each wash that was measured over its first pass.
    pub(super) fn each(checked: &CheckedCase, before: &[Before]) -> Vec<Self> {
        (0..checked.impressions.len())
            .filter_map(|number| Self::of(checked, number, before))
            .collect()
    }

    fn of(checked: &CheckedCase, number: usize, before: &[Before]) -> Option<Self> {
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
        Some(Self {
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
                .map(|place| WashPlace::of(place, id(place), unit))
                .collect(),
            map: Some(CoverMap::of_wash(checked, number)),
        })
    }
}

impl WashPlace {
    fn of(place: &PlaceNow, spot: String, unit: Unit) -> Self {
        Self {
            spot,
            kind: place.kind.into(),
            zone: words::zone(place.zone).to_owned(),
            side: place.side.map(Into::into),
            at: point(&place.at, unit),
            was_mm: place.was_mm.map(figure),
            was_uncertainty_mm: figure(place.was_uncertainty_mm),
            cover_mm: place.cover_mm.map(figure),
            uncertainty_mm: figure(place.uncertainty_mm),
        }
    }
}

/// Whether a spot of the wash lies where the first pass had one.
fn is_at(spot: &Spot, place: &PlaceNow) -> bool {
    let radius_mm = |area_mm2: f64| (area_mm2 / std::f64::consts::PI).sqrt();
    (spot.centre - place.at).norm() <= radius_mm(spot.area_mm2) + radius_mm(place.area_mm2)
}
