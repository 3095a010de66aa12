//! Holes: places where no surface was scanned.

use mesh::{Mesh, Topology};
use nalgebra::{Point3, Vector3};

/// A hole in a surface.
#[derive(Debug, Clone)]
pub(super) struct Gap {
    /// Middle of its rim.
    pub centre: Point3<f64>,
    /// Area of the hole as the sum of the triangles between its rim and the
    /// rim's middle, laid in its mean plane, mm².
    pub area_mm2: f64,
    /// How far its rim lies off its mean plane, root mean square, mm.
    pub off_plane_mm: f64,
    /// Its rim.
    pub rim: Vec<Point3<f64>>,
}

impl Gap {
    /// Diameter of the circle of its area, mm.
    pub(super) fn across_mm(&self) -> f64 {
        2.0 * (self.area_mm2 / std::f64::consts::PI).sqrt()
    }

    /// Expanded uncertainty (k = 2) of [`across_mm`](Self::across_mm), mm. What a mesh lacks
    /// ends at vertices of the mesh: it is known to their noise, and not to an edge as the
    /// rim of a void is. Each of n vertices round a circle moves the diameter by 2/n of its
    /// way outward. What is missing bends out of the mean plane as its rim does, and is
    /// wider by up to the square of that height over its radius.
    pub(super) fn across_uncertainty_mm(&self, noise_mm: f64) -> f64 {
        let by_noise = 2.0 * noise_mm / (self.rim.len() as f64).sqrt();
        let across_mm = self.across_mm();
        let height = 2.0 * self.off_plane_mm / across_mm.max(f64::MIN_POSITIVE);
        let by_bend = across_mm * height * height / 3.0_f64.sqrt();
        2.0 * by_noise.hypot(by_bend)
    }
}

/// The holes whose rims lie, for the most part, on chosen triangles. The outer
/// rim of a surface is none, nor is what is cut away at its edge: walked with
/// the surface on the left, a rim turns about the surface's normal, a hole
/// against it.
pub(super) fn find(
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
    let normal = vector.try_normalize(0.0)?;
    let off_plane = points.iter().map(|p| (p - centre).dot(&normal).powi(2));
    let off_plane_mm = (off_plane.sum::<f64>() / points.len() as f64).sqrt();
    let facing: Vector3<f64> = rim.iter().map(|&v| normals[v as usize]).sum();
    (vector.dot(&facing) < 0.0).then_some(Gap {
        centre,
        area_mm2: vector.norm(),
        off_plane_mm,
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
        let circle_mm = (24.0 / std::f64::consts::PI).sqrt();
        assert!((found[0].across_mm() - circle_mm).abs() < 1e-12);
    }

    /// A rim of `count` vertices on a circle of radius 1 mm, moved out and up by formula.
    fn ring(count: u32, out: impl Fn(f64) -> f64, up: impl Fn(f64) -> f64) -> Gap {
        let place = |angle: f64| {
            let (sin, cos) = angle.sin_cos();
            let radius = 1.0 + out(angle);
            Point3::new(-radius * sin, radius * cos, up(angle))
        };
        let step = std::f64::consts::TAU / f64::from(count);
        let rim: Vec<Point3<f64>> = (0..count).map(|k| place(f64::from(k) * step)).collect();
        let sheet = Mesh::new(rim, Vec::new(), None).expect("it has no triangles");
        let numbers: Vec<u32> = (0..count).collect();
        let down = vec![-Vector3::z(); count as usize];
        measured(&sheet, &numbers, &down).expect("it turns against the surface")
    }

    /// One of 48 vertices moves the diameter by a 24th of its way out, and 48 that move
    /// each for itself by the root of 48 times that.
    #[test]
    fn the_uncertainty_of_a_width_is_that_of_its_vertices() {
        let one_moved = |by_mm: f64| {
            let out = move |angle: f64| if angle == 0.0 { by_mm } else { 0.0 };
            ring(48, out, |_| 0.0).across_mm()
        };
        let by_one = (one_moved(0.05) - one_moved(-0.05)) / 0.1;
        assert!((by_one - 1.0 / 24.0).abs() < 1e-3, "{by_one}");
        let standard = 0.02 * by_one * 48.0_f64.sqrt();
        let stated = ring(48, |_| 0.0, |_| 0.0).across_uncertainty_mm(0.02);
        assert!((stated / (2.0 * standard) - 1.0).abs() < 0.02, "{stated}");
    }

    #[test]
    fn a_hole_in_a_curved_surface_is_wider_than_its_plane_within_the_uncertainty() {
        // A saddle of 0.2 mm over a radius of 1 mm; its area by quadrature of its formula.
        let gap = ring(48, |_| 0.0, |angle| 0.2 * (2.0 * angle).cos());
        let (mut area, steps) = (0.0, 400);
        for i in 0..steps {
            let r = (f64::from(i) + 0.5) / f64::from(steps);
            // The slope of z = 0.2 (x² - y²) is 0.4 r.
            area += std::f64::consts::TAU * r * (1.0 + 0.16 * r * r).sqrt() / f64::from(steps);
        }
        let true_mm = 2.0 * (area / std::f64::consts::PI).sqrt();
        let error = true_mm - gap.across_mm();
        assert!(
            error > 0.0 && error < gap.across_uncertainty_mm(0.0),
            "{error}"
        );
    }
}
