//! Open lines through points of the plane or of space.

use nalgebra::{Point, SVector};

/// Mean over `reach` points to either side; toward the ends, which stay, over
/// fewer.
pub fn smoothed<const D: usize>(points: &[Point<f64, D>], reach: usize) -> Vec<Point<f64, D>> {
    (0..points.len())
        .map(|i| {
            let reach = reach.min(i).min(points.len() - 1 - i);
            let window = &points[i - reach..=i + reach];
            let sum: SVector<f64, D> = window.iter().map(|p| p.coords).sum();
            Point::from(sum / window.len() as f64)
        })
        .collect()
}

/// Points `step` apart along a line, from its first one on; none for none.
pub fn evenly<const D: usize>(points: &[Point<f64, D>], step: f64) -> Vec<Point<f64, D>> {
    let mut out: Vec<Point<f64, D>> = points.iter().take(1).copied().collect();
    let mut left = step;
    for pair in points.windows(2) {
        let length = (pair[1] - pair[0]).norm();
        let mut at = left;
        while at <= length {
            out.push(pair[0] + (pair[1] - pair[0]) * (at / length));
            at += step;
        }
        left = at - length;
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Point2;

    #[test]
    fn a_line_round_a_corner_comes_out_even() {
        let corner = [[0.0, 0.0], [1.0, 0.0], [1.0, 2.0]].map(Point2::from);
        let even = evenly(&corner, 0.75);
        let expected = [[0.0, 0.0], [0.75, 0.0], [1.0, 0.5], [1.0, 1.25], [1.0, 2.0]];
        assert_eq!(even, expected.map(Point2::from));
        assert!(evenly::<2>(&[], 1.0).is_empty());
    }

    #[test]
    fn smoothing_keeps_straight_lines_and_ends() {
        let line: Vec<Point2<f64>> = (0..9)
            .map(|i| Point2::new(f64::from(i), 2.0 * f64::from(i)))
            .collect();
        for (before, after) in line.iter().zip(smoothed(&line, 3)) {
            assert!((before - after).norm() < 1e-12);
        }
    }
}
