//! Parts of a scan that hang together: two scans in one file, stray islands.

use crate::impression::Surface;
use crate::not_an_impression::NotAnImpression;
use mesh::{Mesh, Topology};
use nalgebra::{Point3, Vector3};

/// Least area of a second scan, as a share of the first's.
const LEAST_SHARE: f64 = 0.3;
/// How far two scans may reach into one another along the line between their
/// middles, as a share of the shorter: the tissue side and the back of one
/// impression, or two sheets of one surface, lie far deeper in each other.
const MOST_OVERLAP: f64 = 0.25;

/// The two scans of a mesh in mm, if there are two.
pub fn two_scans(mesh: &Mesh, topology: &Topology) -> Option<NotAnImpression> {
    if topology.components() < 2 {
        return None;
    }
    let label = topology.component_of_triangle();
    let mut parts = vec![Part::default(); topology.components()];
    for (t, &part) in label.iter().enumerate() {
        parts[part as usize].add(mesh, t);
    }
    let mut order: Vec<usize> = (0..parts.len()).collect();
    order.sort_by(|&a, &b| parts[b].area.total_cmp(&parts[a].area));
    let [first, second] = [order[0], order[1]];
    if parts[second].area < LEAST_SHARE * parts[first].area {
        return None;
    }
    let axis = (parts[second].middle() - parts[first].middle()).try_normalize(0.0)?;
    let reach = |part: usize| {
        mesh.triangles()
            .iter()
            .zip(label)
            .filter(|(_, own)| **own as usize == part)
            .flat_map(|(corners, _)| corners)
            .map(|&v| mesh.vertices()[v as usize].coords.dot(&axis))
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), x| {
                (low.min(x), high.max(x))
            })
    };
    let (near, far) = (reach(first), reach(second));
    let overlap = near.1.min(far.1) - near.0.max(far.0);
    let shorter = (near.1 - near.0).min(far.1 - far.0);
    (overlap <= MOST_OVERLAP * shorter).then_some(NotAnImpression::TwoScans {
        larger_mm2: parts[first].area,
        smaller_mm2: parts[second].area,
    })
}

/// Pieces of surface smaller than this part of the largest are stray data.
const LEAST_PART: f64 = 0.05;

/// Which triangles belong to the impression, and not to stray islands.
pub fn main_parts(surface: &Surface) -> Vec<bool> {
    let component = surface.topology.component_of_triangle();
    let mut areas = vec![0.0; surface.topology.components()];
    for (triangle, &own) in component.iter().enumerate() {
        areas[own as usize] += surface.mesh.area_vector(triangle).norm();
    }
    let largest = areas.iter().copied().fold(0.0, f64::max);
    component
        .iter()
        .map(|&own| areas[own as usize] >= LEAST_PART * largest)
        .collect()
}

#[derive(Clone, Default)]
struct Part {
    area: f64,
    /// Sum of the middles of triangles, each times its area.
    moment: Vector3<f64>,
}

impl Part {
    fn add(&mut self, mesh: &Mesh, triangle: usize) {
        let [a, b, c] = mesh.corners(triangle).map(|p| p.coords);
        let area = mesh.area_vector(triangle).norm();
        self.area += area;
        self.moment += (a + b + c) / 3.0 * area;
    }

    fn middle(&self) -> Point3<f64> {
        Point3::from(self.moment / self.area.max(f64::MIN_POSITIVE))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two plates of 20 by 10 mm, the second moved and scaled.
    fn plates(by: [f64; 3], scale: f64) -> Mesh {
        let plate = [[0.0, 0.0], [20.0, 0.0], [20.0, 10.0], [0.0, 10.0]];
        let vertices = plate
            .iter()
            .map(|[x, y]| Point3::new(*x, *y, 0.0))
            .chain(
                plate
                    .iter()
                    .map(|[x, y]| Point3::new(x * scale, y * scale, 0.0) + Vector3::from(by)),
            )
            .collect();
        let triangles = vec![[0, 1, 2], [0, 2, 3], [4, 5, 6], [4, 6, 7]];
        Mesh::new(vertices, triangles, None).expect("indices are in range")
    }

    fn are_two(mesh: &Mesh) -> bool {
        two_scans(mesh, &Topology::of(mesh)).is_some()
    }

    #[test]
    fn side_by_side_is_two_and_over_one_another_or_small_is_one() {
        assert!(are_two(&plates([25.0, 3.0, 0.0], 1.0)));
        assert!(are_two(&plates([0.0, 0.0, 30.0], 0.7)));
        assert!(!are_two(&plates([2.0, 1.0, 1.0], 1.0)));
        assert!(!are_two(&plates([25.0, 3.0, 0.0], 0.4)));
    }
}
