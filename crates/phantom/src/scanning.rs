//! What a scanner's program makes of a surface: it smooths and thins it, joins
//! two views with a step, and leaves spikes.

use crate::decimate::decimated;
use crate::family::ranges::SPIKE;
use crate::options::Scanning;
use crate::rebuilt::rebuilt;
use crate::shaping::rise;
use mesh::{Mesh, Topology};
use nalgebra::{Point3, Vector3};
use rand::{Rng, RngExt};
use std::f64::consts::TAU;

/// The two steps of a pass of smoothing, which leave slow changes alone.
const SMOOTHING: [f64; 2] = [0.33, -0.34];
/// Over this much the step between two views is taken, mm.
const STITCH_WIDTH_MM: f64 = 0.6;

/// The scan as the program gives it, as made.
pub(crate) fn scanned(mesh: Mesh, how: &Scanning, rng: &mut impl Rng) -> Mesh {
    if *how == Scanning::default() {
        return mesh;
    }
    let mut vertices = mesh.vertices().to_vec();
    if how.smoothing > 0 {
        let neighbours = neighbours(&mesh);
        for _ in 0..how.smoothing {
            for share in SMOOTHING {
                vertices = moved_to_mean(&vertices, &neighbours, share);
            }
        }
    }
    stitch(&mut vertices, how.stitch_mm, rng);
    let normals = mesh.vertex_normals();
    for _ in 0..how.spikes.min(vertices.len()) {
        let at = rng.random_range(0..vertices.len());
        vertices[at] += normals[at] * SPIKE.draw(rng);
    }
    let colours = mesh.colours().map(<[_]>::to_vec);
    let scan = rebuilt(vertices, mesh.triangles().to_vec(), colours);
    match how.longest_edge_mm {
        Some(longest_mm) => decimated(&scan, longest_mm),
        None => scan,
    }
}

/// The neighbours of each vertex; none of those on an open rim, which stay.
fn neighbours(mesh: &Mesh) -> Vec<Vec<u32>> {
    let mut neighbours = vec![Vec::new(); mesh.vertices().len()];
    for triangle in mesh.triangles() {
        for k in 0..3 {
            // Around a vertex inside the surface, each neighbour follows once.
            neighbours[triangle[k] as usize].push(triangle[(k + 1) % 3]);
        }
    }
    for rim in Topology::of(mesh).boundary_loops() {
        for &vertex in rim {
            neighbours[vertex as usize].clear();
        }
    }
    neighbours
}

fn moved_to_mean(
    vertices: &[Point3<f64>],
    neighbours: &[Vec<u32>],
    share: f64,
) -> Vec<Point3<f64>> {
    (vertices.iter().zip(neighbours))
        .map(|(p, near)| {
            let offsets = near.iter().map(|&n| vertices[n as usize] - p);
            let sum: Vector3<f64> = offsets.sum();
            p + sum * (share / near.len().max(1) as f64)
        })
        .collect()
}

/// Lifts what lies on one side of an upright plane through the arch.
fn stitch(vertices: &mut [Point3<f64>], step_mm: f64, rng: &mut impl Rng) {
    if step_mm <= 0.0 {
        return;
    }
    let turn = rng.random_range(0.0..TAU);
    let across = Vector3::new(turn.cos(), turn.sin(), 0.0);
    let place = rng.random_range(-12.0..12.0);
    for p in vertices {
        let aside = p.coords.dot(&across) - place;
        p.z += step_mm * rise(aside, -STITCH_WIDTH_MM / 2.0, STITCH_WIDTH_MM / 2.0);
    }
}
