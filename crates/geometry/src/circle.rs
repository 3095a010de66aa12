//! The least-squares circle through points of a plane.

use nalgebra::{Matrix3, Vector3};

/// A circle and how well it is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Circle {
    /// Centre.
    pub centre: [f64; 2],
    /// Radius.
    pub radius: f64,
    /// Root mean square distance of the points from it.
    pub rms: f64,
    /// Standard uncertainty of the radius for points that are off by 1 (same
    /// unit, independently of each other).
    pub radius_per_noise: f64,
}

impl Circle {
    /// The circle whose distances to the points have the least sum of squares
    /// (Gauss-Newton from the fit of Pratt, SIGGRAPH 1987, in the simpler form
    /// of Kasa 1976). `None` for fewer than four points or points on a line.
    pub fn fit(points: &[[f64; 2]]) -> Option<Self> {
        if points.len() < 4 {
            return None;
        }
        let count = points.len() as f64;
        let middle = [0, 1].map(|axis| points.iter().map(|p| p[axis]).sum::<f64>() / count);
        let near: Vec<[f64; 2]> = points
            .iter()
            .map(|p| [p[0] - middle[0], p[1] - middle[1]])
            .collect();
        let mut circle = algebraic(&near)?;
        for _ in 0..20 {
            let (normal, right) = normal_equations(&near, &circle);
            let change = normal.lu().solve(&right)?;
            circle += change;
            if change.norm() < 1e-12 * circle.z.abs() {
                break;
            }
        }
        let (normal, _) = normal_equations(&near, &circle);
        let squares: f64 = near.iter().map(|p| off(p, &circle).powi(2)).sum();
        let fitted = Self {
            centre: [circle.x + middle[0], circle.y + middle[1]],
            radius: circle.z,
            rms: (squares / count).sqrt(),
            radius_per_noise: normal.try_inverse()?[(2, 2)].sqrt(),
        };
        (fitted.radius > 0.0 && fitted.radius.is_finite() && fitted.radius_per_noise.is_finite())
            .then_some(fitted)
    }
}

/// Distance of a point from a circle, positive outside.
fn off(point: &[f64; 2], circle: &Vector3<f64>) -> f64 {
    (point[0] - circle.x).hypot(point[1] - circle.y) - circle.z
}

fn normal_equations(points: &[[f64; 2]], circle: &Vector3<f64>) -> (Matrix3<f64>, Vector3<f64>) {
    let (mut normal, mut right) = (Matrix3::zeros(), Vector3::zeros());
    for point in points {
        let (dx, dy) = (point[0] - circle.x, point[1] - circle.y);
        let reach = dx.hypot(dy).max(f64::MIN_POSITIVE);
        let row = Vector3::new(-dx / reach, -dy / reach, -1.0);
        normal += row * row.transpose();
        right -= row * (reach - circle.z);
    }
    (normal, right)
}

/// Centre and radius by the linear fit of x² + y² + ax + by + c = 0 (Kasa 1976).
fn algebraic(points: &[[f64; 2]]) -> Option<Vector3<f64>> {
    let (mut normal, mut right) = (Matrix3::zeros(), Vector3::zeros());
    for [x, y] in points {
        let row = Vector3::new(*x, *y, 1.0);
        normal += row * row.transpose();
        right -= row * (x * x + y * y);
    }
    let solution = normal.lu().solve(&right)?;
    let (x, y) = (-solution.x / 2.0, -solution.y / 2.0);
    let squared = x * x + y * y - solution.z;
    (squared > 0.0 && squared.is_finite()).then(|| Vector3::new(x, y, squared.sqrt()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn points_of_an_arc_give_their_circle() {
        for (radius, angle) in [(0.8, 3.5), (1.7, 1.8), (3.0, 1.0_f64)] {
            let points: Vec<[f64; 2]> = (0..31)
                .map(|i| {
                    let (sin, cos) = (angle * f64::from(i) / 30.0).sin_cos();
                    [30.0 + radius * cos, -20.0 + radius * sin]
                })
                .collect();
            let circle = Circle::fit(&points).expect("a circle");
            assert!((circle.radius - radius).abs() < 1e-9 && circle.rms < 1e-9);
            assert!((circle.centre[0] - 30.0).hypot(circle.centre[1] + 20.0) < 1e-9);
        }
    }

    /// Gander, Golub and Strebel, Least-squares fitting of circles and
    /// ellipses, BIT 34 (1994), 558-578: the geometric fit to their six points.
    #[test]
    fn the_published_example_comes_out() {
        let points = [
            [1.0, 7.0],
            [2.0, 6.0],
            [5.0, 8.0],
            [7.0, 7.0],
            [9.0, 5.0],
            [3.0, 7.0],
        ];
        let circle = Circle::fit(&points).expect("a circle");
        let [x, y] = circle.centre;
        assert!(
            (x - 4.7398).abs() < 1e-4 && (y - 2.9835).abs() < 1e-4,
            "{circle:?}"
        );
        assert!((circle.radius - 4.7142).abs() < 1e-4);
        assert!((circle.rms.powi(2) * 6.0 - 1.2276).abs() < 1e-4);
    }

    /// Four points at right angles on a circle: the radius is the mean of four
    /// distances, so its standard uncertainty is half of a point's.
    #[test]
    fn the_uncertainty_of_a_full_circle_has_a_closed_form() {
        let points = [[1.0, 0.0], [0.0, 1.0], [-1.0, 0.0], [0.0, -1.0]];
        let circle = Circle::fit(&points).expect("a circle");
        assert!((circle.radius_per_noise - 0.5).abs() < 1e-12);
    }

    #[test]
    fn a_line_has_no_circle() {
        let line: Vec<[f64; 2]> = (0..9).map(|i| [f64::from(i), 2.0 * f64::from(i)]).collect();
        assert_eq!(Circle::fit(&line), None);
        assert_eq!(Circle::fit(&[[0.0, 0.0], [1.0, 0.0], [0.0, 1.0]]), None);
    }
}
