//! How far a registered pose may be off.

use super::icp::{NormalEquations, jacobian, weight};
use super::target::Match;
use nalgebra::{Matrix3x6, Matrix6, Point3, SymmetricEigen, Vector6};
use std::collections::BTreeMap;

/// Residuals nearer to each other than this, mm, are taken as one observation:
/// feathered material, tray wear and facets err together over such patches.
const CORRELATED_MM: f64 = 6.0;

/// Covariance of a pose: rotation (rad) about a centre, then translation (mm).
#[derive(Debug, Clone)]
pub(super) struct PoseCovariance {
    matrix: Matrix6<f64>,
    centre: Point3<f64>,
}

impl PoseCovariance {
    /// The sandwich estimate for a robust fit with correlated residuals (Huber
    /// 1967; clusters after Liang and Zeger 1986): the spread of whole patches
    /// decides, not the number of points. `None` where a freedom is not held.
    pub(super) fn of(matches: &[Match], width: f64) -> Option<Self> {
        let equations = NormalEquations::of(matches, width);
        let centre = equations.centre;
        let mut curvature = Matrix6::zeros();
        let mut patches: BTreeMap<[i64; 3], Vector6<f64>> = BTreeMap::new();
        for m in matches {
            let residual = m.off_plane();
            let row = jacobian(m, &centre);
            let own = weight(residual, width);
            let bend = own * (1.0 - 2.0 * (residual / width).powi(2));
            curvature.ger(bend, &row, &row, 1.0);
            let patch =
                [m.moved.x, m.moved.y, m.moved.z].map(|c| (c / CORRELATED_MM).floor() as i64);
            patches
                .entry(patch)
                .or_insert_with(Vector6::zeros)
                .axpy(own * residual, &row, 1.0);
        }
        let count = patches.len() as f64;
        if count <= 6.0 {
            return None;
        }
        let scatter = patches
            .values()
            .fold(Matrix6::zeros(), |sum, g| sum + g * g.transpose());
        let inverse = inverse_of_curvature(&curvature, &equations.matrix)?;
        Some(Self {
            matrix: inverse * scatter * inverse * (count / (count - 6.0)),
            centre,
        })
    }

    /// Standard deviation of where points (target coordinates) lie, mm: the
    /// given quantile over the points of the root of summed variances.
    pub(super) fn displacement_sd(&self, points: &[Point3<f64>], quantile: f64) -> f64 {
        let mut deviations: Vec<f64> = points
            .iter()
            .map(|p| {
                let arm = p - self.centre;
                let mut by_pose = Matrix3x6::zeros();
                by_pose
                    .fixed_view_mut::<3, 3>(0, 0)
                    .copy_from(&(-arm.cross_matrix()));
                by_pose
                    .fixed_view_mut::<3, 3>(0, 3)
                    .copy_from(&nalgebra::Matrix3::identity());
                (by_pose * self.matrix * by_pose.transpose())
                    .trace()
                    .max(0.0)
                    .sqrt()
            })
            .collect();
        if deviations.is_empty() {
            return 0.0;
        }
        let at = ((deviations.len() - 1) as f64 * quantile) as usize;
        *deviations.select_nth_unstable_by(at, f64::total_cmp).1
    }
}

/// Inverse of the curvature of the fit. Where much lies in the kernel's flanks, the true
/// curvature fails in some freedom, or nearly: there a part of the weighted normal matrix
/// takes its place. `None` where a freedom is not held.
fn inverse_of_curvature(curvature: &Matrix6<f64>, normal: &Matrix6<f64>) -> Option<Matrix6<f64>> {
    /// Least curvature in any freedom, as a share of the normal matrix.
    const LEAST: f64 = 0.25;
    let root = normal.cholesky()?.l().try_inverse()?;
    let beside_normal = SymmetricEigen::new(root * curvature * root.transpose());
    if beside_normal.eigenvalues.min() >= LEAST {
        return Some(curvature.cholesky()?.inverse());
    }
    let inverse = (beside_normal.eigenvalues).map(|share| 1.0 / share.max(LEAST));
    let freedoms = root.transpose() * beside_normal.eigenvectors;
    Some(freedoms * Matrix6::from_diagonal(&inverse) * freedoms.transpose())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_freedom_that_the_flanks_take_away_is_held_by_the_normal_matrix() {
        let diagonal = |values: [f64; 6]| Matrix6::from_diagonal(&Vector6::from(values));
        let normal = diagonal([4.0, 4.0, 1.0, 1.0, 1.0, 1.0]);
        let sound = diagonal([2.0, 4.0, 0.5, 1.0, 0.5, 1.0]);
        let inverse = inverse_of_curvature(&sound, &normal).expect("all freedoms are held");
        assert!((inverse * sound - Matrix6::identity()).norm() < 1e-12);
        // Nearly flat in one freedom, bent the wrong way in another.
        let failing = diagonal([2.0, 1e-6, 0.5, 1.0, -0.5, 1.0]);
        let inverse = inverse_of_curvature(&failing, &normal).expect("all freedoms are held");
        let expected = diagonal([0.5, 1.0, 2.0, 1.0, 4.0, 1.0]);
        assert!((inverse - expected).norm() < 1e-12);
    }
}
