//! A cast poured from an impression: its positive, with a land around it.

use crate::Phantom;
use mesh::{Mesh, Topology};
use nalgebra::{Point3, Vector3};

/// Width of the land around the sulcus, mm.
const LAND_MM: f64 = 4.0;
/// Height of the base over the deepest tissue, mm.
const BASE_MM: f64 = 8.0;
/// Border points on either side that give the border's direction.
const ALONG: usize = 6;

/// The scan of a cast that was poured from a phantom's impression, in the
/// coordinates of the impression's scan: tissue surface, a flat land around its
/// border, and walls. The underside was not scanned.
#[must_use]
pub fn cast_from(made: &Phantom) -> Mesh {
    let scan = &made.impression;
    let tissue = scan.filtered(|t| {
        let corners = scan.corners(t);
        corners.iter().all(|p| made.truth.is_tissue_side(p))
    });
    let topology = Topology::of(&tissue);
    let part = topology.component_of_triangle();
    let mut size = vec![0; topology.components()];
    for &p in part {
        size[p as usize] += 1;
    }
    let largest = (0..size.len()).max_by_key(|&p| size[p]).unwrap_or(0);
    let positive = tissue
        .filtered(|t| part[t] as usize == largest)
        .turned_inside_out();
    with_land_and_walls(&positive, &made.truth.axes.seating)
}

fn with_land_and_walls(positive: &Mesh, up: &Vector3<f64>) -> Mesh {
    let topology = Topology::of(positive);
    let Some(border) = topology.boundary_loops().first() else {
        return positive.clone();
    };
    let at = |k: usize| positive.vertices()[border[k % border.len()] as usize];
    let count = border.len();
    let turn: f64 = (0..count)
        .map(|k| up.dot(&at(k).coords.cross(&at(k + 1).coords)))
        .sum();
    let base = positive
        .vertices()
        .iter()
        .map(|p| up.dot(&p.coords))
        .fold(f64::NEG_INFINITY, f64::max)
        + BASE_MM;
    let mut vertices = positive.vertices().to_vec();
    let first = vertices.len() as u32;
    for k in 0..count {
        let along = at(k + ALONG) - at(k + count - ALONG);
        let outward = along.cross(up) * turn.signum();
        let land: Point3<f64> = at(k) + outward.try_normalize(1e-9).unwrap_or_default() * LAND_MM;
        vertices.extend([land, land + up * (base - up.dot(&land.coords))]);
    }
    let mut triangles = positive.triangles().to_vec();
    for k in 0..count as u32 {
        let next = (k + 1) % count as u32;
        let (rim, next_rim) = (border[k as usize], border[next as usize]);
        let (land, next_land) = (first + 2 * k, first + 2 * next);
        for [a, b, c, d] in [
            [rim, land, next_land, next_rim],
            [land, land + 1, next_land + 1, next_land],
        ] {
            // The border runs along triangles as they wind, so what joins it
            // winds against it.
            triangles.extend([[a, b, c], [a, c, d]]);
        }
    }
    Mesh::new(vertices, triangles, None).unwrap_or_default()
}
