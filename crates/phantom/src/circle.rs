//! The least-squares circle through points of a plane.

use crate::shaping::norm;
use nalgebra::{Matrix3, Vector3};

/// Radius of the circle whose distances to the points have the least sum of
/// squares; `None` for fewer than three points or points on a line.
pub(crate) fn fitted_radius(points: &[[f64; 2]]) -> Option<f64> {
    let mut circle = algebraic(points)?;
    for _ in 0..12 {
        let (mut normal, mut right) = (Matrix3::zeros(), Vector3::zeros());
        for &[x, y] in points {
            let (dx, dy) = (x - circle.x, y - circle.y);
            let reach = norm(dx, dy).max(1e-12);
            let row = Vector3::new(-dx / reach, -dy / reach, -1.0);
            normal += row * row.transpose();
            right -= row * (reach - circle.z);
        }
        let change = normal.lu().solve(&right)?;
        circle += change;
        if change.norm() < 1e-12 {
            break;
        }
    }
    circle.z.is_finite().then_some(circle.z)
}

/// Centre and radius by the linear fit of x² + y² + ax + by + c = 0.
fn algebraic(points: &[[f64; 2]]) -> Option<Vector3<f64>> {
    let (mut normal, mut right) = (Matrix3::zeros(), Vector3::zeros());
    for &[x, y] in points {
        let row = Vector3::new(x, y, 1.0);
        normal += row * row.transpose();
        right -= row * (x * x + y * y);
    }
    let solution = normal.lu().solve(&right)?;
    let (x, y) = (-solution.x / 2.0, -solution.y / 2.0);
    Some(Vector3::new(
        x,
        y,
        (x * x + y * y - solution.z).max(0.0).sqrt(),
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn points_of_a_circle_give_its_radius() {
        let points: Vec<_> = (0..9)
            .map(|i| {
                let (sin, cos) = (0.2 * f64::from(i)).sin_cos();
                [3.0 + 1.7 * cos, -2.0 + 1.7 * sin]
            })
            .collect();
        let radius = fitted_radius(&points).expect("a circle");
        assert!((radius - 1.7).abs() < 1e-9);
    }

    #[test]
    fn two_points_have_no_circle() {
        assert_eq!(fitted_radius(&[[0.0, 0.0], [1.0, 0.0]]), None);
    }
}
