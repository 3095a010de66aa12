//! Iterated closest points with a robust kernel.

use super::rigid::{self, Pair};
use super::target::{Match, Target};
use crate::sampling::SurfacePoint;
use nalgebra::{Isometry3, Matrix6, Point3, Translation3, UnitQuaternion, Vector3, Vector6};

/// Pairs farther apart than this many kernel widths weigh nothing.
const CUT: f64 = 3.0;

/// Weight of a residual under the kernel of Welsch (Holland and Welsch 1977):
/// 1 at zero, falling fast beyond `width`, so that material standing proud of
/// the tray does not pull.
pub fn weight(residual: f64, width: f64) -> f64 {
    (-(residual / width).powi(2)).exp()
}

/// One step by paired points (Besl and McKay 1992; closed form of Arun): slow
/// and sure, for poses that are still far off.
pub fn step_by_points(
    source: &[SurfacePoint],
    target: &Target,
    pose: &Isometry3<f64>,
    width: f64,
) -> Option<Isometry3<f64>> {
    let pairs: Vec<Pair> = target
        .matches(source, pose, CUT * width)
        .into_iter()
        .flatten()
        .map(|m| Pair {
            from: m.moved,
            to: m.place,
            weight: weight(m.distance(), width),
        })
        .collect();
    (pairs.len() >= 3)
        .then(|| rigid::fit(&pairs))?
        .map(|step| step * pose)
}

/// One step by tangent planes (Chen and Medioni 1992), for poses nearly right.
pub fn step_by_planes(
    source: &[SurfacePoint],
    target: &Target,
    pose: &Isometry3<f64>,
    width: f64,
) -> Option<Isometry3<f64>> {
    let matches = matches_within(source, target, pose, width);
    Some(motion_by_planes(&matches, width)? * pose)
}

/// The matches that weigh anything under a kernel.
pub fn matches_within(
    source: &[SurfacePoint],
    target: &Target,
    pose: &Isometry3<f64>,
    width: f64,
) -> Vec<Match> {
    let matches = target.matches(source, pose, CUT * width);
    matches.into_iter().flatten().collect()
}

/// The small motion that brings matches nearer to their tangent planes. `None`
/// where they leave a freedom open.
pub fn motion_by_planes(matches: &[Match], width: f64) -> Option<Isometry3<f64>> {
    if matches.len() < 6 {
        return None;
    }
    let system = NormalEquations::of(matches, width);
    let step = system.matrix.cholesky()?.solve(&system.right_side);
    Some(system.as_motion(&step))
}

/// Normal equations of the plane distances, with rotations about the centroid
/// of the matches so that turning and moving are told apart as well as can be.
pub struct NormalEquations {
    /// 6 x 6 matrix: rotation (rad), then translation (mm).
    pub matrix: Matrix6<f64>,
    /// Right side.
    pub right_side: Vector6<f64>,
    /// What rotations turn about, target coordinates.
    pub centre: Point3<f64>,
}

impl NormalEquations {
    /// The equations of matches under the kernel.
    pub fn of(matches: &[Match], width: f64) -> Self {
        let centre = Point3::from(
            matches.iter().map(|m| m.moved.coords).sum::<Vector3<f64>>()
                / matches.len().max(1) as f64,
        );
        let (mut matrix, mut right_side) = (Matrix6::zeros(), Vector6::zeros());
        for m in matches {
            let row = jacobian(m, &centre);
            let weight = weight(m.off_plane(), width);
            matrix.ger(weight, &row, &row, 1.0);
            right_side.axpy(-weight * m.off_plane(), &row, 1.0);
        }
        Self {
            matrix,
            right_side,
            centre,
        }
    }

    /// The motion of a solution.
    pub fn as_motion(&self, step: &Vector6<f64>) -> Isometry3<f64> {
        let rotation = UnitQuaternion::from_scaled_axis(step.fixed_rows::<3>(0).into_owned());
        let shift = step.fixed_rows::<3>(3).into_owned();
        Isometry3::from_parts(
            Translation3::from(self.centre.coords + shift - rotation * self.centre.coords),
            rotation,
        )
    }
}

/// Derivative of a match's plane distance by rotation about `centre` and by
/// translation.
pub fn jacobian(m: &Match, centre: &Point3<f64>) -> Vector6<f64> {
    let turning = (m.moved - centre).cross(&m.normal);
    Vector6::new(
        turning.x, turning.y, turning.z, m.normal.x, m.normal.y, m.normal.z,
    )
}
