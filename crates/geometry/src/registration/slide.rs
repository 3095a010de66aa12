//! A pose caught beside the true one, where the surfaces slide along each other.

use super::fine::{FINISHING_POINTS, finished, thinned};
use super::icp::{NormalEquations, matches_within};
use super::registered::Registered;
use super::target::Target;
use crate::sampling::SurfacePoint;
use nalgebra::{Isometry3, Matrix6, SymmetricEigen, Vector6};
use rayon::prelude::*;

/// Points by which poses are compared.
const POINTS: usize = 800;
/// Kernel under which the freedoms of a pose are told, mm.
const WIDTH_MM: f64 = 0.1;

/// A pose that [`register`](super::register) found, moved along the surfaces for as long as
/// more of the source fits and less of it lies behind the target.
#[must_use]
pub fn slid_on(source: &[SurfacePoint], target: &Target, found: &Registered) -> Registered {
    slid(&thinned(source, FINISHING_POINTS), target, found)
}

/// Moves a pose along the freedoms that the surfaces hold least, by ever shorter steps, for
/// as long as more of the source fits and less of it lies behind the target.
pub(super) fn slid(points: &[SurfacePoint], target: &Target, found: &Registered) -> Registered {
    const FIRST_MM: f64 = 3.0;
    const LAST_MM: f64 = 0.15;
    /// A share of the points that is more than chance.
    const BETTER: f64 = 0.004;
    let few = thinned(points, POINTS);
    let tried = |pose: Isometry3<f64>| finished(&few, target, pose).map(|to| (to.agreement(), to));
    let Some((mut score, mut best)) = tried(found.target_from_source) else {
        return found.clone();
    };
    let mut step_mm = FIRST_MM;
    while step_mm >= LAST_MM {
        let steps = loosest(&few, target, &best.target_from_source, step_mm);
        let tries: Vec<_> = (steps.into_par_iter())
            .filter_map(|step| tried(step * best.target_from_source))
            .collect();
        let next = (tries.into_iter()).max_by(|a, b| a.0.total_cmp(&b.0));
        match next {
            Some(next) if next.0 > score + BETTER => (score, best) = next,
            _ => step_mm *= 0.5,
        }
    }
    finished(points, target, best.target_from_source)
        .filter(|slid| slid.agreement() > found.agreement())
        .unwrap_or_else(|| found.clone())
}

/// Motions both ways along the three freedoms that are held least, each of which moves the
/// points by about `step_mm`.
fn loosest(
    points: &[SurfacePoint],
    target: &Target,
    pose: &Isometry3<f64>,
    step_mm: f64,
) -> Vec<Isometry3<f64>> {
    let matches = matches_within(points, target, pose, WIDTH_MM);
    let equations = NormalEquations::of(&matches, WIDTH_MM);
    let squares = (points.iter()).map(|s| (pose * s.point - equations.centre).norm_squared());
    let arm_mm = (squares.sum::<f64>() / points.len().max(1) as f64).sqrt();
    if arm_mm < f64::EPSILON {
        return Vec::new();
    }
    // Turns in units that move the points by a millimetre.
    let units = Vector6::new(1.0, 1.0, 1.0, arm_mm, arm_mm, arm_mm) / arm_mm;
    let scale = Matrix6::from_diagonal(&units);
    let held = SymmetricEigen::new(scale * equations.matrix * scale);
    let mut order: [usize; 6] = [0, 1, 2, 3, 4, 5];
    order.sort_by(|&a, &b| held.eigenvalues[a].total_cmp(&held.eigenvalues[b]));
    (order[..3].iter())
        .flat_map(|&freedom| {
            let along = scale * held.eigenvectors.column(freedom) * step_mm;
            [along, -along].map(|motion| equations.as_motion(&motion))
        })
        .collect()
}
