//! Where a surface may lie that is a small part of what the target shows.

use super::coarse::{FIRST_WIDTH, ROUNDS, approached, met};
use super::evenly::evenly_apart;
use super::fine::{ENDS, FINISHING_POINTS, SAME_MM, apart_mm, finished, thinned};
use super::point_pairs;
use super::registered::Registered;
use super::slide;
use super::starts::{Scatter, around};
use super::target::Target;
use crate::sampling::{SurfacePoint, centre_of};
use nalgebra::{Isometry3, Vector3};
use rayon::prelude::*;

/// Poses in which a surface that is a small part of what the target shows may lie on it, the
/// closest first: those that most pairs of points agree on, and that fit closely with next
/// to nothing behind the target. Several may, where the target is even or symmetrical.
#[must_use]
pub fn candidates(source: &[SurfacePoint], target: &Target) -> Vec<Registered> {
    const VOTED: usize = 120;
    /// How many go on after each round.
    const KEPT: [usize; 3] = [40, 16, 8];
    /// A small part of an even surface has poses close to each other that only more points
    /// than usual distinguish.
    const TIMES_THE_POINTS: usize = 2;
    const MET: f64 = 0.1;
    let size = size_of(source).min(target.size_mm()) * FIRST_WIDTH;
    let spaced = evenly_apart(source, target.spacing_mm());
    let mut poses = point_pairs::voted(&spaced, target.pairs());
    let ends = thinned(source, ENDS);
    poses.truncate(VOTED);
    for (round, kept) in ROUNDS.iter().zip(KEPT) {
        let points = thinned(source, TIMES_THE_POINTS * round.points);
        let mut scored: Vec<(f64, Isometry3<f64>)> = (poses.par_iter())
            .filter_map(|start| approached(&points, target, start, round, size))
            .collect();
        scored.sort_by(|a, b| b.0.total_cmp(&a.0));
        let mut apart = met(scored, &ends, MET * round.widths.1 * size);
        apart.truncate(kept);
        poses = apart.into_iter().map(|(_, pose)| pose).collect();
    }
    let points = thinned(source, FINISHING_POINTS);
    let finished: Vec<Registered> = (poses.into_par_iter())
        .filter_map(|pose| finished(&points, target, pose))
        .collect();
    let mut finished = distinct(finished, &ends);
    finished.sort_by(|a, b| b.agreement().total_cmp(&a.agreement()));
    let mut found = slid_closely(&points, target, finished);
    found.sort_by(|a, b| b.agreement().total_cmp(&a.agreement()));
    if let Some(best) = found.first_mut() {
        *best = settled(&points, target, best);
    }
    distinct(found, &ends)
}

/// Poses, those that agree best first, slid along the surfaces; those that fit closely with next
/// to nothing behind the target. Where the best of them is beyond doubt, those that agree far less
/// are left out: they lie elsewhere, or would slide to that one.
fn slid_closely(
    points: &[SurfacePoint],
    target: &Target,
    poses: Vec<Registered>,
) -> Vec<Registered> {
    const CLOSE_MM: f64 = 0.06;
    const MOST_BEHIND: f64 = 0.1;
    /// A share of what fits that lies behind the target by chance.
    const CHANCE_BEHIND: f64 = 0.01;
    const FAR_LESS: f64 = 0.5;
    let is_close = |found: &Registered, most_behind: f64| {
        found.rms_mm <= CLOSE_MM && found.behind_share <= most_behind * found.fitting_share
    };
    let mut others = poses.into_iter();
    let Some(first) = others.next() else {
        return Vec::new();
    };
    let best = slide::slid(points, target, &first);
    let least = if is_close(&best, CHANCE_BEHIND) {
        FAR_LESS * best.agreement()
    } else {
        f64::NEG_INFINITY
    };
    let rivals: Vec<Registered> = others.filter(|one| one.agreement() >= least).collect();
    let slid: Vec<Registered> = (rivals.into_par_iter())
        .map(|one| slide::slid(points, target, &one))
        .collect();
    (std::iter::once(best).chain(slid))
        .filter(|found| is_close(found, MOST_BEHIND))
        .collect()
}

/// Those that lie apart, the first of each place.
pub(super) fn distinct(found: Vec<Registered>, ends: &[SurfacePoint]) -> Vec<Registered> {
    let mut distinct: Vec<Registered> = Vec::new();
    for one in found {
        let is_known = |other: &Registered| {
            apart_mm(ends, &one.target_from_source, &other.target_from_source) < SAME_MM
        };
        if !distinct.iter().any(is_known) {
            distinct.push(one);
        }
    }
    distinct
}

/// The pose nearby that leaves least behind the target, where a surface that could slide
/// along the target has more than one that fits; its spread is how far those lie apart that
/// are as good.
pub(super) fn settled(points: &[SurfacePoint], target: &Target, found: &Registered) -> Registered {
    const SCATTERS: [Scatter; 2] = [
        Scatter {
            turn: 0.01,
            step_mm: 0.3,
        },
        Scatter {
            turn: 0.03,
            step_mm: 0.8,
        },
    ];
    const POINTS: usize = 4000;
    /// Shares of the points by which poses as good as each other differ, by chance.
    const AS_GOOD: f64 = 0.01;
    let score = Registered::agreement;
    let (pose, few) = (found.target_from_source, thinned(points, POINTS));
    let about = pose * centre_of(points);
    let axes = [&Vector3::z(), &Vector3::y()];
    let nearby: Vec<Registered> = SCATTERS
        .into_par_iter()
        .flat_map_iter(|scatter| around(&pose, &about, axes, scatter))
        .filter_map(|start| finished(&few, target, start))
        .collect();
    let best = nearby.iter().max_by(|a, b| score(a).total_cmp(&score(b)));
    let Some(best) = best else {
        return found.clone();
    };
    let ends = thinned(points, ENDS);
    let as_good = nearby
        .iter()
        .filter(|other| score(other) > score(best) - AS_GOOD);
    let spread_mm = as_good
        .map(|other| apart_mm(&ends, &other.target_from_source, &best.target_from_source))
        .fold(0.0, f64::max);
    let settled = finished(points, target, best.target_from_source);
    Registered {
        spread_mm,
        ..settled.unwrap_or_else(|| found.clone())
    }
}

/// Diagonal of the box around points, mm.
pub(super) fn size_of(points: &[SurfacePoint]) -> f64 {
    let ends = points.iter().fold(None, |ends, s| match ends {
        None => Some((s.point, s.point)),
        Some((low, high)) => Some((s.point.inf(&low), s.point.sup(&high))),
    });
    ends.map_or(0.0, |(low, high)| (high - low).norm())
}
