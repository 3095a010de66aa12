//! The finest fit of a pose that is nearly right.

use super::icp;
use super::registered::Registered;
use super::target::{Match, Target};
use super::uncertainty::PoseCovariance;
use crate::order::robust_sd;
use crate::sampling::SurfacePoint;
use nalgebra::Isometry3;

/// Points of the last, finest fit.
pub(super) const FINISHING_POINTS: usize = 12_000;

/// Poses farther apart than this, mm, are different placings.
pub(super) const SAME_MM: f64 = 0.5;

/// Points by which poses are compared.
pub(super) const ENDS: usize = 200;

/// Root mean square distance between where two poses put points, mm.
pub(super) fn apart_mm(
    points: &[SurfacePoint],
    one: &Isometry3<f64>,
    other: &Isometry3<f64>,
) -> f64 {
    let squares = points
        .iter()
        .map(|s| (one * s.point - other * s.point).norm_squared());
    (squares.sum::<f64>() / points.len().max(1) as f64).sqrt()
}

/// The finest fit: the kernel shrinks to what the residuals themselves spread,
/// on few points until the pose stands still, then on all.
pub(super) fn finished(
    points: &[SurfacePoint],
    target: &Target,
    start: Isometry3<f64>,
) -> Option<Registered> {
    const BEHIND_MM: f64 = 2.0;
    const PLAY_MM: f64 = 0.05;
    let few = thinned(points, 2000);
    let (pose, width) = narrowed(&few, target, start, 0.3, 12)?;
    let (pose, width) = narrowed(points, target, pose, width, 2)?;
    let near: Vec<_> = target
        .matches(points, &pose, BEHIND_MM)
        .into_iter()
        .flatten()
        .collect();
    let off: Vec<f64> = near.iter().map(Match::off_plane).collect();
    let fitting: Vec<f64> = off.iter().copied().filter(|r| r.abs() <= width).collect();
    let behind = off.iter().filter(|&&r| r < -(width + PLAY_MM)).count();
    let squares: f64 = fitting.iter().map(|r| r * r).sum();
    let matches: Vec<_> = near
        .into_iter()
        .filter(|m| m.distance() <= 3.0 * width)
        .collect();
    Some(Registered {
        target_from_source: pose,
        rms_mm: (squares / fitting.len().max(1) as f64).sqrt(),
        fitting_share: fitting.len() as f64 / points.len() as f64,
        behind_share: behind as f64 / points.len() as f64,
        covariance: PoseCovariance::of(&matches, width)?,
        spread_mm: 0.0,
    })
}

/// Steps under a kernel that narrows from a width, at most so many; gives the
/// pose and the last width.
pub(super) fn narrowed(
    points: &[SurfacePoint],
    target: &Target,
    start: Isometry3<f64>,
    first_width: f64,
    steps: usize,
) -> Option<(Isometry3<f64>, f64)> {
    const NARROWEST_MM: f64 = 0.03;
    const STILL_MM: f64 = 1e-4;
    let (mut pose, mut width) = (start, first_width);
    for _ in 0..steps {
        let matches = icp::matches_within(points, target, &pose, width);
        let motion = icp::motion_by_planes(&matches, width)?;
        let moved = matches
            .iter()
            .step_by(97)
            .map(|m| (motion * m.moved - m.moved).norm());
        let still = moved.fold(0.0, f64::max) < STILL_MM;
        pose = motion * pose;
        let close = matches
            .iter()
            .map(Match::off_plane)
            .filter(|r| r.abs() <= width);
        let own = (3.0 * robust_sd(close).unwrap_or(0.0)).clamp(NARROWEST_MM, first_width);
        if still && own > 0.95 * width {
            break;
        }
        width = own.min(width).max(0.6 * width);
    }
    Some((pose, width))
}

/// Every so many-th point, about `count` of them.
pub(super) fn thinned(points: &[SurfacePoint], count: usize) -> Vec<SurfacePoint> {
    points
        .iter()
        .step_by((points.len() / count.max(1)).max(1))
        .copied()
        .collect()
}

/// The finest fit from a pose that is known to some tenths of a millimetre.
/// `None` where the surface does not fit closely from there.
#[must_use]
pub fn refined(
    source: &[SurfacePoint],
    target: &Target,
    pose: &Isometry3<f64>,
) -> Option<Registered> {
    finest(source, target, pose).filter(Registered::is_close)
}

/// As [`refined`], however close the fit is. `None` where nothing fits.
#[must_use]
pub fn finest(
    source: &[SurfacePoint],
    target: &Target,
    pose: &Isometry3<f64>,
) -> Option<Registered> {
    finished(&thinned(source, FINISHING_POINTS), target, *pose)
}
