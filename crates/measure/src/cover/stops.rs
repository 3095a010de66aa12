//! Declared tissue stops: places where the tray is meant to touch.

use super::figures::{Cover, StopReading};
use crate::impression::Impression;
use crate::settings::MeasureSettings;
use crate::tray::PlacedTray;
use nalgebra::Point3;

/// Tray that shows so far below the face of a stop, along the seating axis, shows at its foot
/// and not on the stop, mm: less than a stop is high and more than its face slopes. Common
/// practice, no source.
const FOOT_BELOW_MM: f64 = 1.5;

/// Where a patch is parted, its end is put half way to vertices that lie this much above its
/// level, mm: as thick as the level of show-through that is usual.
pub(super) const OFF_STRIP_MM: f64 = 0.2;

/// A declared stop with the vertices of tissue surface that belong to it.
pub(crate) struct Stop {
    pub reading: StopReading,
    pub place: Point3<f64>,
    pub reach_mm: f64,
}

impl Stop {
    /// Whether a patch with its centre here (local coordinates) is of the stop.
    pub(super) fn is_at(&self, centre: &Point3<f64>) -> bool {
        (centre - self.place).norm() <= self.reach_mm
    }

    /// Whether a place of such a patch lies at the stop's foot.
    pub(super) fn is_at_foot(&self, place: &Point3<f64>) -> bool {
        is_below(&self.place, place)
    }
}

fn is_below(face: &Point3<f64>, place: &Point3<f64>) -> bool {
    face.z - place.z > FOOT_BELOW_MM
}

/// How far from the middle of its face a declared stop may show, mm: a square of this half
/// side reaches so far at its corners, and material creeps a little over a stop's rim.
fn reach_mm(settings: &MeasureSettings) -> f64 {
    settings.stop_radius_mm * 2f64.sqrt() + 0.5
}

/// Whether a place (local coordinates) lies on one of the declared stops, not at its foot.
pub(super) fn on_stop<'a>(
    placed: &PlacedTray,
    settings: &'a MeasureSettings,
) -> impl Fn(&Point3<f64>) -> bool + use<'a> {
    let reach = reach_mm(settings);
    let faces: Vec<Point3<f64>> = (settings.stops.iter())
        .map(|stop| placed.out_of_tray(stop))
        .collect();
    move |place| {
        let mut faces = faces.iter();
        faces.any(|face| (place - face).norm() <= reach && !is_below(face, place))
    }
}

/// Looks for the declared tissue stops.
pub(crate) fn stops(
    impression: &Impression,
    placed: &PlacedTray,
    cover: &Cover,
    settings: &MeasureSettings,
) -> Vec<Stop> {
    let scan_from_local = impression.frame.local_from_scan().inverse();
    let reach_mm = reach_mm(settings);
    settings
        .stops
        .iter()
        .map(|stop| {
            let place = placed.out_of_tray(stop);
            let min_mm = impression
                .local
                .vertices()
                .iter()
                .zip(&cover.at_vertex_mm)
                // The tissue surface over a missing stop stands off the tray.
                .filter(|(p, _)| (*p - place).xy().norm() <= settings.stop_radius_mm)
                .filter(|(p, _)| (*p - place).norm() <= settings.stop_radius_mm + 8.0)
                .filter_map(|(_, cover)| *cover)
                .reduce(f64::min);
            Stop {
                reading: StopReading {
                    at: scan_from_local * place,
                    min_mm,
                    zone: impression.zones.zone(&place),
                    side: impression.zones.side(&place),
                },
                place,
                reach_mm,
            }
        })
        .collect()
}
