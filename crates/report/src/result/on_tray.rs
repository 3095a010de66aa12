//! A patch of little cover as it lies on the tray, in a result.

use super::common::Point;
use crate::text::rounding::{figure, point};
use check::CheckedCase;
use judge::Relief;
use mesh::Unit;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Where the tray is to be relieved under a patch of little cover, and how deep;
/// uncertainties are expanded (k = 2).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct OnTray {
    /// Where the patch's centre lies on the tray's surface, in the numbers of the tray's scan.
    pub at: Point,
    /// Depth to take off at the least cover, mm; `null` where the cover is not known in figures.
    pub relief_mm: Option<f64>,
    /// Its uncertainty, mm.
    pub relief_uncertainty_mm: Option<f64>,
    /// Thickness of the tray's wall there, mm; `null` where the tray's scan does not show both
    /// faces of the wall.
    pub wall_mm: Option<f64>,
    /// Its uncertainty, mm.
    pub wall_uncertainty_mm: Option<f64>,
    /// What relief leaves of the wall, mm.
    pub left_mm: Option<f64>,
    /// Its uncertainty, mm.
    pub left_uncertainty_mm: Option<f64>,
    /// Straight distance to the nearest place of the tray's rim on the side of lip and cheek, mm.
    pub to_outer_rim_mm: Option<f64>,
    /// Its uncertainty, mm.
    pub to_outer_rim_uncertainty_mm: Option<f64>,
    /// Straight distance to the middle of that rim at the front, mm.
    pub to_front_mm: Option<f64>,
    /// Its uncertainty, mm.
    pub to_front_uncertainty_mm: Option<f64>,
    /// Greatest depth that was taken off, by the scan of the relieved tray, mm; `null` without
    /// one.
    pub taken_off_mm: Option<f64>,
    /// Its uncertainty, mm.
    pub taken_off_uncertainty_mm: Option<f64>,
    /// Least room that this makes, from the relieved tray to the surface recorded before, mm.
    pub room_mm: Option<f64>,
    /// Its uncertainty, mm.
    pub room_uncertainty_mm: Option<f64>,
}

impl OnTray {
    /// Of the spot of a number in its impression; `None` where no tray scan was placed.
    pub(super) fn of(checked: &CheckedCase, impression: usize, spot: usize) -> Option<Self> {
        let one = &checked.impressions[impression];
        let unit = one
            .tray
            .as_ref()
            .map_or(Unit::Millimetre, |tray| tray.unit.unit());
        let measured = one.measured()?;
        let found = measured.on_tray.get(spot)?.as_ref()?;
        let relief = Relief::of(&measured.spots[spot], Some(found), &checked.protocol);
        let left = relief.and_then(|relief| relief.left_mm);
        let taken = one.relief.as_ref().and_then(|relief| {
            let places = relief.places.as_ref().ok()?;
            places.get(spot)?.as_ref()
        });
        let amounts = [
            relief.map(|relief| relief.depth_mm),
            found.wall_mm,
            left,
            found.to_outer_rim_mm,
            found.to_front_mm,
            taken.map(|taken| taken.deepest_mm),
            taken.map(|taken| taken.least_room_mm),
        ];
        let [
            relief_mm,
            wall_mm,
            left_mm,
            to_outer_rim_mm,
            to_front_mm,
            taken_off_mm,
            room_mm,
        ] = amounts.map(|amount| amount.map(|amount| figure(amount.value)));
        let [
            relief_doubt,
            wall_doubt,
            left_doubt,
            rim_doubt,
            front_doubt,
            taken_doubt,
            room_doubt,
        ] = amounts.map(|amount| amount.map(|amount| figure(amount.uncertainty)));
        Some(Self {
            at: point(&found.at, unit),
            relief_mm,
            relief_uncertainty_mm: relief_doubt,
            wall_mm,
            wall_uncertainty_mm: wall_doubt,
            left_mm,
            left_uncertainty_mm: left_doubt,
            to_outer_rim_mm,
            to_outer_rim_uncertainty_mm: rim_doubt,
            to_front_mm,
            to_front_uncertainty_mm: front_doubt,
            taken_off_mm,
            taken_off_uncertainty_mm: taken_doubt,
            room_mm,
            room_uncertainty_mm: room_doubt,
        })
    }
}
