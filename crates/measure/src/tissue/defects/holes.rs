//! Holes: places where no surface was scanned.

use mesh::{Mesh, Topology};
use nalgebra::{Point3, Vector3};

/// A hole in a surface.
#[derive(Debug, Clone)]
pub struct Gap {
    /// Middle of its rim.
    pub centre: Point3<f64>,
    /// Area of the hole as the sum of the triangles between its rim and the
    /// rim's middle, laid in its mean plane, mm².
    pub area_mm2: f64,
    /// Its rim.
    pub rim: Vec<Point3<f64>>,
}

/// The holes whose rims lie, for the most part, on chosen triangles. The outer
/// rim of a surface is none, nor is what is cut away at its edge: walked with
/// the surface on the left, a rim turns about the surface's normal, a hole
/// against it.
pub fn find(
    mesh: &Mesh,
    topology: &Topology,
    chosen: &[bool],
    normals: &[Vector3<f64>],
) -> Vec<Gap> {
    const LEAST_CHOSEN: f64 = 0.75;
    if topology.boundary_loops().is_empty() {
        return Vec::new();
    }
    let mut on_chosen = vec![false; mesh.vertices().len()];
    let mut on_other = vec![false; mesh.vertices().len()];
    for (corners, &chosen) in mesh.triangles().iter().zip(chosen) {
        for &v in corners {
            let mark = if chosen {
                &mut on_chosen
            } else {
                &mut on_other
            };
            mark[v as usize] = true;
        }
    }
    topology
        .boundary_loops()
        .iter()
        .filter(|rim| {
            let on = rim
                .iter()
                .filter(|&&v| on_chosen[v as usize] && !on_other[v as usize]);
            on.count() as f64 >= LEAST_CHOSEN * rim.len() as f64
        })
        .filter_map(|rim| measured(mesh, rim, normals))
        .collect()
}

fn measured(mesh: &Mesh, rim: &[u32], normals: &[Vector3<f64>]) -> Option<Gap> {
    let points: Vec<Point3<f64>> = rim.iter().map(|&v| mesh.vertices()[v as usize]).collect();
    let centre =
        Point3::from(points.iter().map(|p| p.coords).sum::<Vector3<f64>>() / points.len() as f64);
    let mut vector = Vector3::zeros();
    for (i, a) in points.iter().enumerate() {
        let b = &points[(i + 1) % points.len()];
        vector += (a - centre).cross(&(b - centre)) / 2.0;
    }
    let facing: Vector3<f64> = rim.iter().map(|&v| normals[v as usize]).sum();
    (vector.dot(&facing) < 0.0).then_some(Gap {
        centre,
        area_mm2: vector.norm(),
        rim: points,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A square sheet of 10 mm with a window of 2 by 3 mm, and another piece cut
    /// out at its edge.
    #[test]
    fn a_window_is_a_hole_and_a_bay_is_none() {
        let mut vertices = Vec::new();
        let mut triangles = Vec::new();
        for j in 0..=10_u32 {
            for i in 0..=10_u32 {
                vertices.push(Point3::new(f64::from(i), f64::from(j), 0.0));
            }
        }
        for j in 0..10_u32 {
            for i in 0..10_u32 {
                let window = (3..5).contains(&i) && (4..7).contains(&j);
                let bay = i >= 7 && (2..5).contains(&j);
                if !window && !bay {
                    let a = j * 11 + i;
                    triangles.extend([[a, a + 1, a + 12], [a, a + 12, a + 11]]);
                }
            }
        }
        let mesh = Mesh::new(vertices, triangles, None).expect("grid indices are in range");
        let topology = Topology::of(&mesh);
        let chosen = vec![true; mesh.triangles().len()];
        let found = find(&mesh, &topology, &chosen, &mesh.vertex_normals());
        assert_eq!(found.len(), 1);
        assert!((found[0].area_mm2 - 6.0).abs() < 1e-12);
        assert_eq!(found[0].rim.len(), 10);
        assert!((found[0].centre - Point3::new(4.0, 5.5, 0.0)).norm() < 1e-12);
    }
}
