//! Bare strips along the tray's own edges: its rims, its openings, its stops, the joint
//! between its pieces. Such a strip is narrower than what smoothing averages over and smaller
//! than the least patch, so it is known by its length, and by lying on an edge of the tray.

use super::figures::BareEdge;
use crate::amount::Amount;
use crate::impression::Impression;
use crate::tray::PreparedTray;
use geometry::patches::{Patch, patches};
use geometry::signed_distance::Beside;
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use std::f64::consts::TAU;

/// Shorter strips are not called an edge, mm: what the outline of a strip of 3 mm may lose to
/// triangles of half a millimetre. Own choice.
const LEAST_LENGTH_MM: f64 = 2.4;
/// Wider patches are no strip, mm, nor those less than so many times as long as wide. Own
/// choice: a strip of 1 mm with the thin brim on both sides.
const GREATEST_WIDTH_MM: f64 = 2.0;
const LEAST_SLENDERNESS: f64 = 2.0;
/// So much of a strip must lie on an edge of the tray.
const LEAST_ON_EDGE: f64 = 0.6;
/// An edge is where the tray falls away or rises by so much, mm, so far to one side, mm: where
/// its surface bends on a radius of 2.8 mm or less, or another piece of it begins. Own choice:
/// a wall's top is rounded on 1 to 1.5 mm, its floor and its corners on 4 mm and more.
const BENDS_MM: f64 = 0.25;
const ASIDE_MM: f64 = 1.2;

/// The strips where values at vertices, not averaged, are at or below a level (mm). `beside`
/// says how a vertex lies beside the tray.
pub(super) fn find<'a>(
    impression: &Impression,
    tray: &PreparedTray,
    raw_mm: &[Option<f64>],
    beside: impl Fn(u32) -> Option<&'a Beside>,
    level_mm: f64,
) -> Vec<BareEdge> {
    let (mesh, edge_mm) = (&impression.local, impression.edge_mm);
    let outlined = patches(mesh, raw_mm, f64::NEG_INFINITY, level_mm);
    let strips = outlined.iter().filter_map(|patch| {
        let length_mm = slender(mesh, edge_mm, patch)?;
        let places: Vec<&Beside> = patch.vertices.iter().filter_map(|&v| beside(v)).collect();
        let on_edge = on_edges(tray, &places);
        (on_edge as f64 >= LEAST_ON_EDGE * places.len() as f64).then(|| BareEdge {
            vertices: patch.vertices.clone(),
            length_mm: Amount {
                value: length_mm,
                uncertainty: edge_mm,
            },
        })
    });
    strips.collect()
}

/// Length of a patch that is long and narrow.
fn slender(mesh: &Mesh, edge_mm: f64, patch: &Patch) -> Option<f64> {
    /// No strip along a tray is larger than this: length of an arch by the greatest width.
    const GREATEST_AREA_MM2: f64 = 150.0 * GREATEST_WIDTH_MM;
    if patch.area_mm2 > GREATEST_AREA_MM2 {
        return None;
    }
    let at = |&v: &u32| mesh.vertices()[v as usize];
    let places: Vec<Point3<f64>> = patch.vertices.iter().map(at).collect();
    // The outline passes the outermost vertices by a part of a triangle's side.
    let length = length_along(&places, edge_mm) + edge_mm / 2.0;
    let width = patch.area_mm2 / length;
    let is_strip = width <= GREATEST_WIDTH_MM && length >= LEAST_SLENDERNESS * width;
    (length >= LEAST_LENGTH_MM && is_strip).then_some(length)
}

/// Greatest distance between two of the places by steps from place to place, mm: along a
/// strip, whatever way it bends. Steps are longer than triangles, so that the way does not
/// zigzag, and shorter than what a strip bends over.
fn length_along(places: &[Point3<f64>], edge_mm: f64) -> f64 {
    let step = (3.0 * edge_mm).max(1.0);
    let farthest = |from: usize| {
        let mut gone = vec![f64::INFINITY; places.len()];
        let mut open: Vec<usize> = (0..places.len()).collect();
        gone[from] = 0.0;
        let mut last = (from, 0.0);
        while let Some(next) = (0..open.len())
            .min_by(|&a, &b| gone[open[a]].total_cmp(&gone[open[b]]))
            .filter(|&next| gone[open[next]].is_finite())
        {
            let here = open.swap_remove(next);
            last = (here, gone[here]);
            for &other in &open {
                let by = (places[other] - places[here]).norm();
                if by <= step {
                    gone[other] = gone[other].min(gone[here] + by);
                }
            }
        }
        last
    };
    if places.is_empty() {
        return 0.0;
    }
    farthest(farthest(0).0).1
}

/// How many of the places lie on an edge of the tray.
fn on_edges(tray: &PreparedTray, places: &[&Beside]) -> usize {
    const DIRECTIONS: usize = 8;
    let probes: Vec<Point3<f64>> = (places.iter())
        .flat_map(|beside| {
            let [e1, e2] = across(&beside.away);
            (0..DIRECTIONS).map(move |k| {
                let (sin, cos) = (TAU * k as f64 / DIRECTIONS as f64).sin_cos();
                beside.place + (e1 * cos + e2 * sin) * ASIDE_MM
            })
        })
        .collect();
    let aside = tray.solid().distances(&probes);
    let around = places.iter().zip(aside.chunks(DIRECTIONS));
    around
        .filter(|(beside, aside)| {
            beside.on_open_edge
                || aside.iter().flatten().any(|mm| mm.abs() >= BENDS_MM)
                || tray.is_at_joint(beside, ASIDE_MM)
        })
        .count()
}

/// Two unit vectors at right angles to a unit vector and to each other.
fn across(axis: &Vector3<f64>) -> [Vector3<f64>; 2] {
    let other = if axis.x.abs() < 0.8 {
        Vector3::x()
    } else {
        Vector3::y()
    };
    let e1 = axis.cross(&other).normalize();
    [e1, axis.cross(&e1)]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_bent_strip_is_as_long_as_its_middle_line() {
        // Three rows of places along half a circle of 4 mm.
        let places: Vec<Point3<f64>> = (0..=60)
            .flat_map(|i| [3.8, 4.0, 4.2].map(|radius| (f64::from(i), radius)))
            .map(|(i, radius)| {
                let (sin, cos) = (std::f64::consts::PI * i / 60.0).sin_cos();
                Point3::new(radius * cos, radius * sin, 0.0)
            })
            .collect();
        let length = length_along(&places, 0.2);
        // The shortest way keeps to the inner row, save for its two ends.
        assert!(
            (length / (std::f64::consts::PI * 3.9) - 1.0).abs() < 0.04,
            "{length}"
        );
        assert!(length_along(&[], 0.2) == 0.0);
    }
}
