//! Cover from the scan of the empty tray.

use super::figures::{Cover, CoverMethod, NoCover};
use crate::impression::Impression;
use crate::tray::{PlacedTray, PreparedTray};
use geometry::field::{smoothed, smoothing_rounds};
use nalgebra::Point3;

/// Part of the tissue surface over which cover may be unknown: show-through
/// there would pass unseen.
const MOST_MISSING: f64 = 0.05;

/// Cover at every tissue vertex.
pub(crate) fn over_tissue(
    impression: &Impression,
    tray: &PreparedTray,
    placed: &PlacedTray,
    noise_mm: f64,
) -> Result<Cover, NoCover> {
    let mesh = &impression.local;
    let weights = impression.tissue_weights();
    let tissue: Vec<usize> = (0..weights.len()).filter(|&v| weights[v] > 0.0).collect();
    let points: Vec<Point3<f64>> = tissue.iter().map(|&v| mesh.vertices()[v]).collect();
    let tray = tray.solid();
    let mut raw = vec![None; weights.len()];
    for (&v, distance) in tissue
        .iter()
        .zip(tray.distances(&points, &placed.tray_from_local))
    {
        raw[v] = distance;
    }
    let at_vertex_mm = smoothed(mesh, &raw, smoothing_rounds(impression.edge_mm));
    let area =
        |vertices: &mut dyn Iterator<Item = &usize>| vertices.map(|&v| weights[v]).sum::<f64>();
    let missing =
        area(&mut tissue.iter().filter(|&&v| raw[v].is_none())) / area(&mut tissue.iter());
    // Without any tissue surface the share is not a number.
    if missing.is_nan() || missing > MOST_MISSING {
        return Err(NoCover::TrayInsideMissing {
            missing_percent: if missing.is_nan() {
                100.0
            } else {
                100.0 * missing
            },
        });
    }
    // The pose's doubt and what smoothing leaves of the scan's noise are
    // independent of each other.
    let uncertainty_mm = placed.registration.uncertainty_mm.hypot(2.0 * noise_mm);
    let found = Cover::of(CoverMethod::TrayScan, at_vertex_mm, weights, uncertainty_mm);
    found
        .map(|cover| Cover {
            registration: Some(placed.registration.clone()),
            ..cover
        })
        .ok_or(NoCover::TrayInsideMissing {
            missing_percent: 100.0,
        })
}
