//! Closed lines in space.

use nalgebra::{Point2, Point3, Vector2, Vector3};

/// Length of a closed line, mm.
pub fn length(points: &[Point3<f64>]) -> f64 {
    steps(points).sum()
}

/// Lengths of the steps from each point to the next, round to the first.
pub fn steps(points: &[Point3<f64>]) -> impl Iterator<Item = f64> + '_ {
    (0..points.len()).map(|i| (points[(i + 1) % points.len()] - points[i]).norm())
}

/// A closed line made even and smooth: points at equal steps of at most
/// `step_mm`, averaged along the line over `reach_mm` to either side with
/// weights that fall off linearly.
pub fn smooth_and_even(points: &[Point3<f64>], step_mm: f64, reach_mm: f64) -> Vec<Point3<f64>> {
    let even = evenly(points, step_mm);
    let reach = (reach_mm / step_mm).round() as isize;
    let count = even.len() as isize;
    let smooth: Vec<Point3<f64>> = (0..count)
        .map(|i| {
            let (mut sum, mut weights) = (Vector3::zeros(), 0.0);
            for k in -reach..=reach {
                let weight = 1.0 - k.unsigned_abs() as f64 / (reach + 1) as f64;
                sum += even[(i + k).rem_euclid(count) as usize].coords * weight;
                weights += weight;
            }
            Point3::from(sum / weights)
        })
        .collect();
    evenly(&smooth, step_mm)
}

/// A closed line as points at equal steps of at most `step_mm`, the first kept.
fn evenly(points: &[Point3<f64>], step_mm: f64) -> Vec<Point3<f64>> {
    let whole = length(points);
    let count = (whole / step_mm).ceil().max(3.0) as usize;
    let step = whole / count as f64;
    let mut out = Vec::with_capacity(count);
    let mut next = 0.0;
    let mut passed = 0.0;
    for (i, length) in steps(points).enumerate() {
        let (a, b) = (points[i], points[(i + 1) % points.len()]);
        while next <= passed + length && out.len() < count {
            out.push(a + (b - a) * ((next - passed) / length.max(f64::MIN_POSITIVE)));
            next += step;
        }
        passed += length;
    }
    out
}

/// Distance in plan from a point to a closed line, mm: above 0 inside it, below 0
/// outside (even-odd rule). `None` for a line without points.
pub fn inside_by_in_plan(line: &[Point3<f64>], point: Point2<f64>) -> Option<f64> {
    let mut nearest = f64::INFINITY;
    let mut is_inside = false;
    for (i, from) in line.iter().enumerate() {
        let (a, b) = (from.xy(), line[(i + 1) % line.len()].xy());
        let (along, to) = (b - a, point - a);
        let share = (to.dot(&along) / along.norm_squared().max(f64::MIN_POSITIVE)).clamp(0.0, 1.0);
        nearest = nearest.min((to - along * share).norm());
        if (a.y > point.y) != (b.y > point.y) {
            let crosses_x = a.x + along.x * (point.y - a.y) / along.y;
            is_inside ^= point.x < crosses_x;
        }
    }
    let signed = if is_inside { nearest } else { -nearest };
    nearest.is_finite().then_some(signed)
}

/// Unit vector in plan along a closed line at each point, over `reach` points
/// to either side.
pub fn directions(points: &[Point3<f64>], reach: usize) -> Vec<Vector2<f64>> {
    let count = points.len();
    (0..count)
        .map(|i| {
            let (ahead, behind) = (
                points[(i + reach) % count],
                points[(i + count - reach) % count],
            );
            (ahead - behind)
                .xy()
                .try_normalize(0.0)
                .unwrap_or_else(Vector2::y)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::f64::consts::TAU;

    #[test]
    fn a_square_comes_out_even() {
        let square: Vec<Point3<f64>> = [[0.0, 0.0], [2.0, 0.0], [2.0, 2.0], [0.0, 2.0]]
            .map(|[x, y]| Point3::new(x, y, 1.0))
            .to_vec();
        let even = evenly(&square, 0.4);
        assert_eq!(even.len(), 20);
        assert!((length(&even) - 8.0).abs() < 1e-12);
        assert!(steps(&even).all(|step| (step - 0.4).abs() < 1e-12));
        assert_eq!(even[0], square[0]);
    }

    #[test]
    fn smoothing_keeps_a_wide_circle_and_its_directions() {
        let circle: Vec<Point3<f64>> = (0..700)
            .map(|i| {
                let (sin, cos) = (TAU * f64::from(i) / 700.0).sin_cos();
                Point3::new(30.0 * cos, 30.0 * sin, 0.0)
            })
            .collect();
        let smooth = smooth_and_even(&circle, 0.5, 1.0);
        assert!(smooth.iter().all(|p| (p.coords.norm() - 30.0).abs() < 0.02));
        let along = directions(&smooth, 4);
        for (point, along) in smooth.iter().zip(along) {
            assert!(point.xy().coords.normalize().dot(&along).abs() < 1e-3);
        }
    }

    #[test]
    fn a_point_lies_inside_or_outside_a_square_by_its_distance() {
        let square = [(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)]
            .map(|(x, y)| Point3::new(x, y, x * y));
        let by = |x, y| inside_by_in_plan(&square, Point2::new(x, y)).unwrap_or(f64::NAN);
        assert!((by(5.0, 2.0) - 2.0).abs() < 1e-12);
        assert!((by(13.0, 14.0) + 5.0).abs() < 1e-12);
        assert!((by(-1.5, 5.0) + 1.5).abs() < 1e-12);
        assert_eq!(inside_by_in_plan(&[], Point2::origin()), None);
    }
}
