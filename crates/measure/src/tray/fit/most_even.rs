//! The place of a tray in which its clearance from the tissue is most even.

use crate::anatomy;
use geometry::order::median;
use geometry::signed_distance::{Beside, Solid};
use nalgebra::{Isometry3, Point3, SMatrix, SVector, Translation3, UnitQuaternion, Vector3};
use rayon::prelude::*;

/// Of the places of the tissue, every so many are used while it is moved.
const MOVED_BY: usize = 6;
/// And every so many while a start is looked for.
const SIFTED_BY: usize = 24;
/// Steps of moving a tray at most, and of each start.
const STEPS: usize = 60;
const SIFTING_STEPS: usize = 20;
/// Places farther from the even clearance than this, mm, count less: recesses that no stock
/// tray follows.
const FAR_MM: f64 = 1.5;
/// The even clearance that is aimed at is this at least, mm: a tray could else lie evenly
/// within the tissue. Own choice, no source.
const LEAST_EVEN_MM: f64 = 1.5;
/// How much more a place counts that touches.
const TOUCHING: f64 = 20.0;

/// The places of the tissue that lie over a tray, not past its edge, and how.
pub(super) fn over_tray(
    tissue: &[Point3<f64>],
    solid: &Solid<'_>,
    tray_from_local: &Isometry3<f64>,
) -> Vec<(Point3<f64>, Beside)> {
    let moved: Vec<Point3<f64>> = tissue.iter().map(|p| tray_from_local * p).collect();
    let beside = solid.beside(&moved).into_iter().zip(tissue);
    beside
        .filter_map(|(beside, place)| Some((*place, beside.filter(is_over)?)))
        .collect()
}

/// Whether a place lies over the tray, not past its edge.
pub(super) fn is_over(beside: &Beside) -> bool {
    !beside.on_open_edge && beside.mm < anatomy::GREATEST_MATERIAL_MM
}

/// Unknowns: shift, turn, and the even clearance.
const UNKNOWNS: usize = 7;

/// The pose near one of the starts in which the clearance is most even.
pub(super) fn most_even_of(
    tissue: &[Point3<f64>],
    solid: &Solid<'_>,
    starts: &[Isometry3<f64>],
) -> Option<Isometry3<f64>> {
    let every =
        |step: usize| -> Vec<Point3<f64>> { tissue.iter().step_by(step).copied().collect() };
    let (few, more) = (every(SIFTED_BY), every(MOVED_BY));
    let sifted = starts.par_iter().filter_map(|start| {
        let pose = most_even(&few, solid, *start, SIFTING_STEPS)?;
        Some((unevenness(&few, solid, &pose)?, pose))
    });
    let best = sifted.min_by(|a, b| a.0.total_cmp(&b.0))?;
    most_even(&more, solid, best.1, STEPS)
}

/// How uneven the clearance is in a pose, mm²; places that touch, and places that do not lie
/// over the tray, count against it.
fn unevenness(tissue: &[Point3<f64>], solid: &Solid<'_>, pose: &Isometry3<f64>) -> Option<f64> {
    let over = over_tray(tissue, solid, pose);
    let mut mm: Vec<f64> = over.iter().map(|(_, beside)| beside.mm).collect();
    let usual = median(&mut mm)?.max(LEAST_EVEN_MM);
    let off = |mm: &f64| (mm - usual).powi(2).min(FAR_MM.powi(2)) + TOUCHING * mm.min(0.0).powi(2);
    let mean = mm.iter().map(off).sum::<f64>() / mm.len() as f64;
    Some(mean * (tissue.len() as f64 / over.len() as f64).powi(2))
}

/// The pose near a start in which the clearance is most even. `None` where too little of the
/// tissue lies over the tray.
fn most_even(
    tissue: &[Point3<f64>],
    solid: &Solid<'_>,
    start: Isometry3<f64>,
    steps: usize,
) -> Option<Isometry3<f64>> {
    const LEAST_PLACES: usize = 100;
    const STILL_MM: f64 = 0.002;
    /// So far a step may turn the tray, rad, and move it, mm.
    const FARTHEST: [f64; 2] = [0.03, 1.0];
    let mut pose = start;
    for _ in 0..steps {
        let over = over_tray(tissue, solid, &pose);
        if over.len() < LEAST_PLACES {
            return None;
        }
        let places: Vec<Point3<f64>> = over.iter().map(|(place, _)| pose * place).collect();
        let centre = places.iter().map(|p| p.coords).sum::<Vector3<f64>>() / places.len() as f64;
        let found = step(&over, &places, &centre)?;
        let (shift, turn) = (
            Vector3::new(found[0], found[1], found[2]),
            Vector3::new(found[3], found[4], found[5]),
        );
        let shorter = (FARTHEST[1] / shift.norm())
            .min(FARTHEST[0] / turn.norm())
            .min(1.0);
        let about = Translation3::from(centre);
        let motion = Translation3::from(shift * shorter)
            * about
            * UnitQuaternion::from_scaled_axis(turn * shorter)
            * about.inverse();
        pose = motion * pose;
        if shift.norm() < STILL_MM && turn.norm() * 30.0 < STILL_MM {
            break;
        }
    }
    Some(pose)
}

/// The motion of the tissue beside the tray that leaves the least squares of what the
/// clearance differs from an even one.
fn step(
    over: &[(Point3<f64>, Beside)],
    places: &[Point3<f64>],
    centre: &Vector3<f64>,
) -> Option<SVector<f64, UNKNOWNS>> {
    /// Keeps motions small that the clearance does not depend on.
    const DAMPING: f64 = 1e-4;
    /// Number of the even clearance among the unknowns, and what holds it to its least.
    const EVEN: usize = UNKNOWNS - 1;
    const HELD: f64 = 1e4;
    let mut mm: Vec<f64> = over.iter().map(|(_, beside)| beside.mm).collect();
    let usual = median(&mut mm)?.max(LEAST_EVEN_MM);
    let count = over.len() as f64;
    let mut normal = SMatrix::<f64, UNKNOWNS, UNKNOWNS>::identity() * DAMPING;
    let mut right = SVector::<f64, UNKNOWNS>::zeros();
    for ((_, beside), place) in over.iter().zip(places) {
        let away = beside.away.into_inner();
        let turn = (place.coords - centre).cross(&away);
        let row =
            SVector::<f64, UNKNOWNS>::from([away.x, away.y, away.z, turn.x, turn.y, turn.z, -1.0]);
        let off = beside.mm - usual;
        let weight = if off < 0.0 {
            1.0 + TOUCHING * (off / usual).powi(2)
        } else {
            (FAR_MM / off).min(1.0)
        } / count;
        normal.ger(weight, &row, &row, 1.0);
        right.axpy(-beside.mm * weight, &row, 1.0);
    }
    let found = normal.cholesky()?.solve(&right);
    if found[EVEN] >= LEAST_EVEN_MM {
        return Some(found);
    }
    normal[(EVEN, EVEN)] += HELD;
    right[EVEN] += HELD * LEAST_EVEN_MM;
    Some(normal.cholesky()?.solve(&right))
}
