//! Areas of planted spots by quadrature over the formula surface.

use crate::impression::Impression;
use crate::spots::Spot;
use nalgebra::{Isometry3, Point3, Vector3};
use rayon::prelude::*;
use serde::Serialize;

/// Cover at or below which the tray counts as showing through, mm.
pub(crate) const SHOW_THROUGH_MM: f64 = 0.2;
/// Cover below which material counts as thin, mm.
pub(crate) const THIN_MM: f64 = 1.0;
/// From how far above the tray the surface is looked for, mm.
const ABOVE_MM: f64 = 4.5;
const CELLS: usize = 80;

/// A surface point and its cover.
type Sample = (Point3<f64>, f64);

/// A planted spot as it is, by quadrature over the formula surface.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SpotTruth {
    /// Middle, on the tissue surface.
    pub centre: Point3<f64>,
    /// Unit vector from the tray toward the tissue there.
    pub toward_tissue: Vector3<f64>,
    /// Least cover, mm.
    pub least_cover_mm: f64,
    /// Area of the surface whose cover is at most 0.2 mm, mm².
    pub show_through_area_mm2: f64,
    /// Area of the surface whose cover is below 1 mm, show-through included, mm².
    pub thin_area_mm2: f64,
}

/// What is true of a planted spot, in scan coordinates.
pub(crate) fn measured(impression: &Impression, spot: &Spot, pose: &Isometry3<f64>) -> SpotTruth {
    let reach = spot.radius_below(THIN_MM) + 0.6;
    let samples = surface_around(impression, spot, reach);
    let area = |limit: f64| {
        (0..CELLS * CELLS)
            .map(|cell| {
                let first = cell / CELLS * (CELLS + 1) + cell % CELLS;
                let [a, b, c, d] =
                    [first, first + 1, first + CELLS + 1, first + CELLS + 2].map(|i| samples[i]);
                below([a, b, c], limit) + below([b, d, c], limit)
            })
            .sum()
    };
    let least = samples
        .iter()
        .flatten()
        .map(|s| s.1)
        .fold(f64::INFINITY, f64::min);
    let middle = samples[samples.len() / 2].map_or(spot.foot + spot.axis * spot.least, |s| s.0);
    SpotTruth {
        centre: pose * middle,
        toward_tissue: pose * spot.axis,
        least_cover_mm: least.max(0.0),
        show_through_area_mm2: area(SHOW_THROUGH_MM),
        thin_area_mm2: area(THIN_MM),
    }
}

/// Points of the surface over a square grid across the spot's axis.
fn surface_around(impression: &Impression, spot: &Spot, reach: f64) -> Vec<Option<Sample>> {
    let e1 = spot
        .axis
        .cross(&Vector3::x())
        .try_normalize(0.1)
        .unwrap_or_else(|| spot.axis.cross(&Vector3::y()));
    let e2 = spot.axis.cross(&e1);
    (0..(CELLS + 1) * (CELLS + 1))
        .into_par_iter()
        .map(|i| {
            let offset = |n: usize| (2.0 * n as f64 / CELLS as f64 - 1.0) * reach;
            let start = spot.foot
                + e1 * offset(i % (CELLS + 1))
                + e2 * offset(i / (CELLS + 1))
                + spot.axis * ABOVE_MM;
            let p = impression.hit(&start, &-spot.axis, 2.0 * ABOVE_MM)?;
            Some((p, impression.tray.exact_distance(&p)))
        })
        .collect()
}

/// Area of the part of a triangle whose cover, linear between the corners, is
/// at most `limit`.
fn below(corners: [Option<Sample>; 3], limit: f64) -> f64 {
    let [Some(a), Some(b), Some(c)] = corners else {
        return 0.0;
    };
    let area = (b.0 - a.0).cross(&(c.0 - a.0)).norm() / 2.0;
    let mut over = [a.1 - limit, b.1 - limit, c.1 - limit];
    over.sort_by(f64::total_cmp);
    let [low, middle, high] = over;
    area * if high <= 0.0 {
        1.0
    } else if low > 0.0 {
        0.0
    } else if middle > 0.0 {
        low * low / ((middle - low) * (high - low))
    } else {
        1.0 - high * high / ((high - low) * (high - middle))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cut_triangle_has_the_area_of_its_part() {
        let corner = |x: f64, y: f64, c: f64| Some((Point3::new(x, y, 0.0), c));
        // Cover equals x: the part below 0.5 of a right triangle with legs 2.
        let triangle = [
            corner(0.0, 0.0, 0.0),
            corner(2.0, 0.0, 2.0),
            corner(0.0, 2.0, 0.0),
        ];
        assert!((below(triangle, 0.5) - (2.0 - 1.5 * 1.5 / 2.0)).abs() < 1e-12);
        assert!((below(triangle, 3.0) - 2.0).abs() < 1e-12);
        assert_eq!(below(triangle, -1.0), 0.0);
    }
}
