//! Starts brought closer on few points under a wide kernel.

use super::fine::{apart_mm, thinned};
use super::icp;
use super::target::Target;
use crate::sampling::SurfacePoint;
use nalgebra::Isometry3;

/// One round of narrowing down: so many points, so many steps, kernel widths
/// from first to last (in parts of the largest), and how many go on.
pub(super) struct Round {
    pub(super) points: usize,
    pub(super) steps: usize,
    pub(super) by_planes_from: usize,
    pub(super) widths: (f64, f64),
    pub(super) kept: usize,
    pub(super) one_in: usize,
}

/// Kernel width at the start, as a part of the target's size: what a start may
/// be off.
pub(super) const FIRST_WIDTH: f64 = 1.0 / 16.0;

/// Before the first round, where there are starts in every orientation: most of
/// them are far off, which few points tell.
pub(super) const SIFTING: Round = Round {
    points: 100,
    steps: 4,
    by_planes_from: 4,
    widths: (1.0, 0.5),
    kept: 50,
    one_in: 8,
};

/// So many starts are sifted first.
pub(super) const MANY_STARTS: usize = 100;

pub(super) const ROUNDS: [Round; 3] = [
    Round {
        points: 250,
        steps: 10,
        by_planes_from: 5,
        widths: (1.0, 0.25),
        kept: 8,
        one_in: 10,
    },
    Round {
        points: 500,
        steps: 12,
        by_planes_from: 0,
        widths: (0.25, 0.06),
        kept: 3,
        one_in: 8,
    },
    Round {
        points: 1000,
        steps: 8,
        by_planes_from: 0,
        widths: (0.06, 0.03),
        kept: 3,
        one_in: 8,
    },
];

/// Poses that are nearer to each other than this part of a round's last kernel
/// have met: they end in one place.
pub(super) const MET: f64 = 0.2;

/// Of poses that have met, the one with the best score; the best come first.
pub(super) fn met(
    scored: Vec<(f64, Isometry3<f64>)>,
    ends: &[SurfacePoint],
    within_mm: f64,
) -> Vec<(f64, Isometry3<f64>)> {
    let mut kept: Vec<(f64, Isometry3<f64>)> = Vec::new();
    for one in scored {
        let is_near = |other: &(f64, Isometry3<f64>)| apart_mm(ends, &one.1, &other.1) < within_mm;
        if !kept.iter().any(is_near) {
            kept.push(one);
        }
    }
    kept
}

/// A start brought closer, with its score: the mean weight under the round's
/// last kernel.
pub(super) fn approached(
    points: &[SurfacePoint],
    target: &Target,
    start: &Isometry3<f64>,
    round: &Round,
    size: f64,
) -> Option<(f64, Isometry3<f64>)> {
    let (first, last) = (round.widths.0 * size, round.widths.1 * size);
    let mut pose = *start;
    for step in 0..round.steps {
        let part = step as f64 / (round.steps - 1) as f64;
        let width = first * (last / first).powf(part);
        let take = if step < round.by_planes_from {
            icp::step_by_points
        } else {
            icp::step_by_planes
        };
        pose = take(points, target, &pose, width)?;
    }
    Some((fit(points, target, &pose, last), pose))
}

/// Mean weight of the points under a kernel.
pub(super) fn fit(
    points: &[SurfacePoint],
    target: &Target,
    pose: &Isometry3<f64>,
    width: f64,
) -> f64 {
    let matches = icp::matches_within(points, target, pose, width);
    let sum: f64 = matches
        .iter()
        .map(|m| icp::weight(m.distance(), width))
        .sum();
    sum / points.len().max(1) as f64
}

/// A pose brought closer on few points, from as far off as a start of
/// [`register`] may be. `None` where nothing fits.
#[must_use]
pub fn brought_closer(
    source: &[SurfacePoint],
    target: &Target,
    start: &Isometry3<f64>,
) -> Option<Isometry3<f64>> {
    let size = target.size_mm() * FIRST_WIDTH;
    ROUNDS[..2].iter().try_fold(*start, |pose, round| {
        let points = thinned(source, round.points);
        Some(approached(&points, target, &pose, round, size)?.1)
    })
}
