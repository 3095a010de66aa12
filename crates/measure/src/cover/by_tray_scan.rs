//! Cover from the scan of the empty tray.

use super::figures::{Cover, CoverMethod, NoCover, NoCoverHere};
use super::gaps;
use crate::impression::Impression;
use crate::tray::{PlacedTray, PreparedTray};
use geometry::field::{smoothed, smoothing_rounds};
use geometry::signed_distance::Beside;
use nalgebra::Point3;
use rayon::prelude::*;
use std::f64::consts::SQRT_2;

/// Part of the tissue surface over which the tray may show its back: show-through
/// there would pass unseen.
const MOST_MISSING: f64 = 0.05;

/// Cover at every tissue vertex that is not at a cut. The scan's noise is a standard deviation, what the
/// scanner itself adds to a length an expanded uncertainty (k = 2), mm.
pub(crate) fn over_tissue(
    impression: &Impression,
    tray: &PreparedTray,
    placed: &PlacedTray,
    at_cut: Option<&[bool]>,
    [noise_mm, of_scanner_mm]: [f64; 2],
) -> Result<Cover, NoCover> {
    let mesh = &impression.local;
    let weights = impression.tissue_weights();
    let tissue: Vec<usize> = (0..weights.len()).filter(|&v| weights[v] > 0.0).collect();
    let in_tray: Vec<Point3<f64>> = tissue
        .par_iter()
        .map(|&v| placed.in_tray_scan(&mesh.vertices()[v]))
        .collect();
    let beside = tray.solid().beside(&in_tray);
    let area_of = |chosen: &dyn Fn(usize) -> bool| -> f64 {
        let chosen = (0..tissue.len()).filter(|&i| chosen(i));
        chosen.map(|i| weights[tissue[i]]).sum()
    };
    let missing = area_of(&|i| beside[i].is_none()) / area_of(&|_| true);
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
    let mut here: Vec<Option<Result<Beside, NoCoverHere>>> = vec![None; weights.len()];
    let found = gaps::known(placed, &tissue, &in_tray, &beside, weights);
    for (&v, known) in tissue.iter().zip(found) {
        here[v] = known.filter(|_| !at_cut.is_some_and(|at_cut| at_cut[v]));
    }
    let raw: Vec<Option<f64>> = here
        .iter()
        .map(|known| Some(known.as_ref()?.as_ref().ok()?.mm))
        .collect();
    let rounds = smoothing_rounds(impression.edge_mm);
    let at_vertex_mm = smoothed(mesh, &raw, rounds);
    // What smoothing takes off a curved course of values it takes off again when
    // it is repeated (the residual that Tukey's twicing adds back).
    let smoothed_again = smoothed(mesh, &at_vertex_mm, rounds);
    // What smoothing leaves of the scan's noise; impression and tray are one scan each.
    let everywhere_mm = placed
        .registration
        .uncertainty_mm
        .hypot(2.0 * noise_mm)
        .hypot(SQRT_2 * of_scanner_mm);
    let uncertainty_at_vertex_mm = (0..weights.len())
        .into_par_iter()
        .map(|v| {
            let Some(Ok(beside)) = &here[v] else {
                return everywhere_mm;
            };
            let smoothing = at_vertex_mm[v].zip(smoothed_again[v]);
            let parts_mm = [
                everywhere_mm,
                placed.bend_uncertainty_mm(&mesh.vertices()[v], &beside.away),
                smoothing.map_or(0.0, |(once, twice)| once - twice),
                tray.edge_doubt_mm(beside),
            ];
            parts_mm.iter().map(|mm| mm * mm).sum::<f64>().sqrt()
        })
        .collect();
    let gaps = gaps::gaps(impression, &here);
    Cover::of(
        CoverMethod::TrayScan,
        at_vertex_mm,
        weights,
        uncertainty_at_vertex_mm,
    )
    .map(|cover| Cover {
        registration: Some(placed.registration.clone()),
        gaps,
        ..cover
    })
    .ok_or(NoCover::TrayInsideMissing {
        missing_percent: 100.0,
    })
}
