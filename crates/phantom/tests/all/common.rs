//! What several tests share.

use mesh::Mesh;
use nalgebra::Point3;

/// Distance from a point to the nearest triangle, by trying them all.
pub fn distance_to(mesh: &Mesh, p: &Point3<f64>) -> f64 {
    (0..mesh.triangles().len())
        .map(|t| to_triangle(p, &mesh.corners(t)))
        .fold(f64::INFINITY, f64::min)
}

fn to_triangle(p: &Point3<f64>, [a, b, c]: &[Point3<f64>; 3]) -> f64 {
    let (u, v, w) = (b - a, c - a, p - a);
    let normal = u.cross(&v);
    let area = normal.norm_squared();
    if area > 0.0 {
        let (s, t) = (
            w.cross(&v).dot(&normal) / area,
            u.cross(&w).dot(&normal) / area,
        );
        if s >= 0.0 && t >= 0.0 && s + t <= 1.0 {
            return w.dot(&normal).abs() / area.sqrt();
        }
    }
    [(a, b), (b, c), (c, a)]
        .map(|(from, to)| {
            let run = to - from;
            let share = ((p - from).dot(&run) / run.norm_squared()).clamp(0.0, 1.0);
            (p - (from + run * share)).norm()
        })
        .into_iter()
        .fold(f64::INFINITY, f64::min)
}
