//! Double layers: where scanning went over a place twice and the two sheets
//! were stitched together badly, one sheet lies a little over the other.
//!
//! From the middle of each triangle one looks along its normal, both ways. What
//! is first met a short way off, and faces the same way, is a second sheet. The
//! far side of a thin wall faces the other way; so does the back of a fold,
//! which is met before its front; and a smooth surface is never over itself
//! within so short a way.

use mesh::{Mesh, SpatialIndex, Topology};
use nalgebra::Point3;
use rayon::prelude::*;

/// Sheets this far apart and less are one surface scanned twice, mm (common
/// practice, no source: stitching errors are a few tenths of a millimetre).
pub const DOUBLE_LAYER_REACH_MM: f64 = 0.5;
/// Sheets nearer than this are told from one by no figure here, mm.
const TOUCHING_MM: f64 = 0.005;
/// Cosine of the greatest angle between two sheets that face the same way.
const SAME_WAY: f64 = 0.7;

/// The double layers of a mesh.
#[derive(Debug, Clone, PartialEq)]
pub struct DoubleLayers {
    /// For each triangle: whether another sheet lies close over or under it.
    pub is_doubled: Vec<bool>,
    /// Area of the triangles that have another sheet over or under them, mm²;
    /// both sheets count.
    pub area_mm2: f64,
    /// That area as a share of the whole, 0 to 1.
    pub share: f64,
}

/// Finds the double layers of a mesh in mm.
///
/// A closed surface in one piece is not searched: it cannot lie over itself
/// facing the same way without cutting through itself.
#[must_use]
pub fn double_layers(mesh: &Mesh, topology: &Topology) -> DoubleLayers {
    double_layers_over(mesh, topology, |_| true)
}

/// The same, of which only the triangles that `looked_at` accepts are told;
/// any other may lie over them.
#[must_use]
pub fn double_layers_over(
    mesh: &Mesh,
    topology: &Topology,
    looked_at: impl Fn(usize) -> bool + Sync,
) -> DoubleLayers {
    let triangles = mesh.triangles().len();
    if topology.is_closed() && topology.components() == 1 {
        return DoubleLayers {
            is_doubled: vec![false; triangles],
            area_mm2: 0.0,
            share: 0.0,
        };
    }
    let index = SpatialIndex::new(mesh);
    let is_doubled: Vec<bool> = (0..triangles)
        .into_par_iter()
        .map(|t| looked_at(t) && has_another_sheet(mesh, &index, t))
        .collect();
    let area_of = |chosen: &dyn Fn(usize) -> bool| -> f64 {
        (0..triangles)
            .filter(|&t| chosen(t))
            .map(|t| mesh.area_vector(t).norm())
            .sum()
    };
    let area_mm2 = area_of(&|t| is_doubled[t]);
    DoubleLayers {
        share: area_mm2 / area_of(&|_| true).max(f64::MIN_POSITIVE),
        area_mm2,
        is_doubled,
    }
}

fn has_another_sheet(mesh: &Mesh, index: &SpatialIndex, triangle: usize) -> bool {
    let Some(normal) = mesh.area_vector(triangle).try_normalize(0.0) else {
        return false;
    };
    let [a, b, c] = mesh.corners(triangle);
    let middle = Point3::from((a.coords + b.coords + c.coords) / 3.0);
    let own = mesh.triangles()[triangle];
    [normal, -normal].into_iter().any(|way| {
        let from = middle + way * TOUCHING_MM;
        index
            .first_hit(&from, &way, DOUBLE_LAYER_REACH_MM - TOUCHING_MM)
            .map(|hit| hit.triangle as usize)
            // Noise tilts neighbours over one another; they are one sheet.
            .filter(|&met| mesh.triangles()[met].iter().all(|v| !own.contains(v)))
            .is_some_and(|met| {
                let other = mesh.area_vector(met);
                other.dot(&normal) > SAME_WAY * other.norm()
            })
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Vector3;

    type Sheet = (Vec<Point3<f64>>, Vec<[u32; 3]>);

    /// A gently curved sheet of `side` by `side` mm with its lower left corner
    /// at a place, in squares of half a millimetre.
    fn sheet(side: u32, at: [f64; 3], turned: bool) -> Sheet {
        let count = 2 * side + 1;
        let vertices = (0..count * count)
            .map(|k| {
                let (x, y) = (f64::from(k % count) * 0.5, f64::from(k / count) * 0.5);
                let place = Vector3::from(at) + Vector3::new(x, y, 0.0);
                let z = (place.x.powi(2) + place.y.powi(2)) / 200.0;
                Point3::new(place.x, place.y, place.z + z)
            })
            .collect();
        let corner = |i: u32, j: u32| j * count + i;
        let triangles = (0..count - 1)
            .flat_map(|j| (0..count - 1).map(move |i| (i, j)))
            .flat_map(|(i, j)| {
                let [a, b] = [corner(i, j), corner(i + 1, j)];
                let [c, d] = [corner(i, j + 1), corner(i + 1, j + 1)];
                [[a, b, d], [a, d, c]]
            })
            .map(|[a, b, c]| if turned { [a, c, b] } else { [a, b, c] })
            .collect();
        (vertices, triangles)
    }

    fn together(parts: &[Sheet]) -> Mesh {
        let (mut vertices, mut triangles) = (Vec::new(), Vec::new());
        for (own_vertices, own_triangles) in parts {
            let first = vertices.len() as u32;
            vertices.extend(own_vertices);
            triangles.extend(own_triangles.iter().map(|t| t.map(|v| v + first)));
        }
        Mesh::new(vertices, triangles, None).expect("indices are in range")
    }

    fn found(mesh: &Mesh) -> DoubleLayers {
        double_layers(mesh, &Topology::of(mesh))
    }

    #[test]
    fn a_sheet_over_a_part_of_another_marks_both_there() {
        // 6 by 6 mm over 20 by 20 mm, 0.2 mm up.
        let mesh = together(&[sheet(20, [0.0; 3], false), sheet(6, [7.0, 7.0, 0.2], false)]);
        let layers = found(&mesh);
        // By the formula of the sheets: twice 36 mm² in plan, a little sloped.
        assert!(
            (layers.area_mm2 / 72.0 - 1.0).abs() < 0.1,
            "{}",
            layers.area_mm2
        );
        for t in (0..mesh.triangles().len()).filter(|&t| layers.is_doubled[t]) {
            for p in mesh.corners(t) {
                assert!((6.5..13.5).contains(&p.x) && (6.5..13.5).contains(&p.y));
            }
        }
    }

    #[test]
    fn one_sheet_a_far_one_and_the_other_side_of_a_wall_are_none() {
        for mesh in [
            together(&[sheet(20, [0.0; 3], false)]),
            together(&[sheet(20, [0.0; 3], false), sheet(6, [7.0, 7.0, 0.8], false)]),
            together(&[sheet(20, [0.0; 3], false), sheet(6, [7.0, 7.0, 0.3], true)]),
        ] {
            let layers = found(&mesh);
            assert_eq!(layers.area_mm2, 0.0);
            assert!(layers.is_doubled.iter().all(|d| !d));
        }
    }

    /// A fold pressed flat: its top faces as its bottom does, but from there
    /// the back of its middle is met first.
    #[test]
    fn a_fold_is_none() {
        let mesh = together(&[
            sheet(20, [0.0; 3], false),
            sheet(6, [7.0, 7.0, 0.15], true),
            sheet(6, [7.0, 7.0, 0.3], false),
        ]);
        assert_eq!(found(&mesh).area_mm2, 0.0);
    }
}
