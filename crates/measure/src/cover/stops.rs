//! Declared tissue stops: places where the tray is meant to touch.

use super::figures::{Cover, StopReading};
use crate::impression::Impression;
use crate::settings::MeasureSettings;
use crate::tray::PlacedTray;
use nalgebra::Point3;

/// A declared stop with the vertices of tissue surface that belong to it.
pub(crate) struct Stop {
    pub reading: StopReading,
    pub place: Point3<f64>,
    pub reach_mm: f64,
}

/// Looks for the declared tissue stops.
pub(crate) fn stops(
    impression: &Impression,
    placed: &PlacedTray,
    cover: &Cover,
    settings: &MeasureSettings,
) -> Vec<Stop> {
    let scan_from_local = impression.frame.local_from_scan().inverse();
    // A square of this half side reaches so far at its corners, and material
    // creeps a little over a stop's rim.
    let reach_mm = settings.stop_radius_mm * 2f64.sqrt() + 0.5;
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
