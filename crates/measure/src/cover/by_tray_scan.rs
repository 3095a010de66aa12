//! Cover from the scan of the empty tray.

use super::figures::{BareEdge, Cover, CoverMethod, NoCover, NoCoverHere};
use super::{bare_edges, gaps, stops};
use crate::impression::Impression;
use crate::settings::MeasureSettings;
use crate::tray::{PlacedTray, PreparedTray};
use geometry::field::{smoothed, smoothing_rounds};
use geometry::signed_distance::Beside;
use nalgebra::Point3;
use rayon::prelude::*;
use std::f64::consts::SQRT_2;

/// Part of the tissue surface over which the tray may show its back: show-through
/// there would pass unseen.
const MOST_MISSING: f64 = 0.05;

/// Places that are measured between two looks.
const BETWEEN_LOOKS: usize = 50_000;

/// Cover at every tissue vertex that is not at a cut, with the strips of bare tray edge. The
/// scan's noise is a standard deviation, mm. `look` is called between the parts.
pub(crate) fn over_tissue(
    impression: &Impression,
    tray: &PreparedTray,
    placed: &PlacedTray,
    at_cut: Option<&[bool]>,
    noise_mm: f64,
    settings: &MeasureSettings,
    look: &(dyn Fn() + Sync),
) -> Result<Cover, NoCover> {
    let mesh = &impression.local;
    let weights = impression.tissue_weights();
    let tissue: Vec<usize> = (0..weights.len()).filter(|&v| weights[v] > 0.0).collect();
    let in_tray: Vec<Point3<f64>> = tissue
        .par_iter()
        .map(|&v| placed.in_tray_scan(&mesh.vertices()[v]))
        .collect();
    let solid = tray.solid();
    let beside_each = in_tray.chunks(BETWEEN_LOOKS).flat_map(|some| {
        look();
        solid.beside(some)
    });
    let beside: Vec<Option<Beside>> = beside_each.collect();
    look();
    tray_lies_below(&tissue, weights, &beside)?;
    let mut here: Vec<Option<Result<Beside, NoCoverHere>>> = vec![None; weights.len()];
    let found = gaps::known(placed, &tissue, &in_tray, &beside, weights);
    for (&v, known) in tissue.iter().zip(found) {
        here[v] = known.filter(|_| !at_cut.is_some_and(|at_cut| at_cut[v]));
    }
    look();
    let beside_of = |v: u32| here[v as usize].as_ref()?.as_ref().ok();
    let raw: Vec<Option<f64>> = (0..here.len() as u32)
        .map(|v| Some(beside_of(v)?.mm))
        .collect();
    let (off_stops, level_mm) = off_stops(impression, placed, &raw, settings);
    let bare_edges = bare_edges::find(impression, tray, &off_stops, beside_of, level_mm);
    look();
    let [at_vertex_mm, smoothed_again] = averaged_twice(impression, &raw, &bare_edges);
    look();
    // What smoothing leaves of the scan's noise; impression and tray are one scan each.
    let everywhere_mm = placed
        .registration
        .uncertainty_mm
        .hypot(2.0 * noise_mm)
        .hypot(SQRT_2 * settings.scanner_uncertainty_mm);
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
    look();
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
        bare_edges,
        ..cover
    })
    .ok_or(NoCover::TrayInsideMissing {
        missing_percent: 100.0,
    })
}

/// Values at vertices without what shows on declared stops: that is no strip, but may reach down
/// to one at a stop's foot. With the level at which a strip is outlined, mm.
fn off_stops(
    impression: &Impression,
    placed: &PlacedTray,
    raw_mm: &[Option<f64>],
    settings: &MeasureSettings,
) -> (Vec<Option<f64>>, f64) {
    let on_stop = stops::on_stop(placed, settings);
    let level_mm = settings.show_through_mm;
    let least_on_stop = level_mm + stops::OFF_STRIP_MM;
    let off_stops =
        (raw_mm.iter().zip(impression.local.vertices())).map(|(mm, place)| match on_stop(place) {
            true => mm.map(|mm| mm.max(least_on_stop)),
            false => *mm,
        });
    (off_stops.collect(), level_mm)
}

/// Refuses a tray scan that lacks the inside over too much of the tissue surface.
fn tray_lies_below(
    tissue: &[usize],
    weights: &[f64],
    beside: &[Option<Beside>],
) -> Result<(), NoCover> {
    let area_of = |chosen: &dyn Fn(usize) -> bool| -> f64 {
        let chosen = (0..tissue.len()).filter(|&i| chosen(i));
        chosen.map(|i| weights[tissue[i]]).sum()
    };
    let missing = area_of(&|i| beside[i].is_none()) / area_of(&|_| true);
    // Without any tissue surface the share is not a number.
    if missing <= MOST_MISSING {
        return Ok(());
    }
    let share = if missing.is_nan() { 1.0 } else { missing };
    Err(NoCover::TrayInsideMissing {
        missing_percent: 100.0 * share,
    })
}

/// Values at vertices averaged over the scan's noise once and twice, those in a strip of bare
/// tray edge along the strip alone. What averaging takes off a curved course of values it
/// takes off again when it is repeated (the residual that Tukey's twicing adds back).
fn averaged_twice(
    impression: &Impression,
    raw_mm: &[Option<f64>],
    bare_edges: &[BareEdge],
) -> [Vec<Option<f64>>; 2] {
    let rounds = smoothing_rounds(impression.edge_mm);
    let averaged = |values: &[Option<f64>]| smoothed(&impression.local, values, rounds);
    let once = averaged(raw_mm);
    let twice = averaged(&once);
    let mut in_strips = vec![None; raw_mm.len()];
    for &v in bare_edges.iter().flat_map(|strip| &strip.vertices) {
        in_strips[v as usize] = raw_mm[v as usize];
    }
    let along_once = averaged(&in_strips);
    let along_twice = averaged(&along_once);
    [(along_once, once), (along_twice, twice)].map(|(along, around)| {
        let both = along.into_iter().zip(around);
        both.map(|(along, around)| along.or(around)).collect()
    })
}
