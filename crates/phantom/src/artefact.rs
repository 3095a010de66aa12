//! A reference artefact: balls and level faces over a plate, made by formula.

use crate::scan::roughened;
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use rand::SeedableRng;
use rand_pcg::Pcg64;

/// How much of a ball, as a share of its radius, is scanned below its middle.
const SEEN_BELOW: f64 = 0.5;

/// A scan of balls (centre and radius, mm) that stand on a plate below them all,
/// seen from above down to half a radius below their middles, and of level square
/// faces (middle and half a side, mm). Before the noise along the normal, the
/// vertices of balls and faces lie exactly on them.
#[must_use]
pub fn artefact(
    balls: &[(Point3<f64>, f64)],
    faces: &[(Point3<f64>, f64)],
    edge_mm: f64,
    noise_sd_mm: f64,
    seed: u64,
) -> Mesh {
    let mut vertices = Vec::new();
    let mut triangles = Vec::new();
    for &(centre, radius) in balls {
        let steps = (2.0 * radius / edge_mm).ceil().max(4.0) as u32;
        let place = |u: f64, v: f64| centre + on_octahedron(u, v).normalize() * radius;
        let is_seen = |p: &Point3<f64>| p.z > centre.z - SEEN_BELOW * radius;
        add_sheet(&mut vertices, &mut triangles, steps, place, is_seen);
    }
    for &(middle, half) in faces {
        let steps = (2.0 * half / edge_mm).ceil() as u32;
        let place = |u: f64, v: f64| middle + Vector3::new(u, v, 0.0) * half;
        add_sheet(&mut vertices, &mut triangles, steps.max(1), place, |_| true);
    }
    let corner = |pick: fn(f64, f64) -> f64, from: f64, reach: f64| {
        let of = |k: usize| balls.iter().map(move |(c, r)| c[k] + reach * r);
        [0, 1, 2].map(|k| of(k).fold(from, pick))
    };
    let low = corner(f64::min, f64::INFINITY, -1.5);
    let high = corner(f64::max, f64::NEG_INFINITY, 1.5);
    let steps = ((high[0] - low[0]).max(high[1] - low[1]) / (2.0 * edge_mm)) as u32;
    let plate = |u: f64, v: f64| {
        let between = |k: usize, share: f64| low[k] + (high[k] - low[k]) * (share + 1.0) / 2.0;
        Point3::new(between(0, u), between(1, v), low[2])
    };
    add_sheet(&mut vertices, &mut triangles, steps.max(1), plate, |_| true);
    let mesh = Mesh::new(vertices, triangles, None).unwrap_or_default();
    roughened(mesh, noise_sd_mm, &mut Pcg64::seed_from_u64(seed))
}

/// The square from -1 to 1 laid over an octahedron, its middle on top.
fn on_octahedron(u: f64, v: f64) -> Vector3<f64> {
    let z = 1.0 - u.abs() - v.abs();
    if z >= 0.0 {
        Vector3::new(u, v, z)
    } else {
        Vector3::new((1.0 - v.abs()).copysign(u), (1.0 - u.abs()).copysign(v), z)
    }
}

/// Adds those triangles of a sheet over the square from -1 to 1 of which all
/// corners are seen.
fn add_sheet(
    vertices: &mut Vec<Point3<f64>>,
    triangles: &mut Vec<[u32; 3]>,
    steps: u32,
    place: impl Fn(f64, f64) -> Point3<f64>,
    is_seen: impl Fn(&Point3<f64>) -> bool,
) {
    let first = vertices.len() as u32;
    let at = |step: u32| 2.0 * f64::from(step) / f64::from(steps) - 1.0;
    for j in 0..=steps {
        vertices.extend((0..=steps).map(|i| place(at(i), at(j))));
    }
    let row = steps + 1;
    for j in 0..steps {
        for i in 0..steps {
            let a = first + j * row + i;
            let (b, c, d) = (a + 1, a + row, a + row + 1);
            for corners in [[a, b, d], [a, d, c]] {
                if corners.iter().all(|&v| is_seen(&vertices[v as usize])) {
                    triangles.push(corners);
                }
            }
        }
    }
}
