//! From a solid to what a scanner gives of it: place in space, noise.

use crate::options::Pose;
use mesh::Mesh;
use nalgebra::{Isometry3, Point3, Translation3, UnitQuaternion, Vector3};
use rand::{Rng, RngExt};
use std::f64::consts::TAU;

/// How far from the origin a random pose may move a scan along each axis, mm.
const WANDER_MM: f64 = 60.0;

/// The motion of a pose.
pub fn motion(pose: Pose, rng: &mut impl Rng) -> Isometry3<f64> {
    match pose {
        Pose::AsMade => Isometry3::identity(),
        Pose::Given(motion) => motion,
        Pose::Random => {
            let axis = Vector3::from_fn(|_, _| gauss(rng));
            let shift = Vector3::from_fn(|_, _| rng.random_range(-WANDER_MM..WANDER_MM));
            let turn = axis.try_normalize(1e-9).unwrap_or_else(Vector3::z)
                * rng.random_range(0.0..TAU / 2.0);
            Isometry3::from_parts(Translation3::from(shift), UnitQuaternion::new(turn))
        }
    }
}

/// Moves each vertex along its normal by Gaussian noise.
pub fn roughened(mesh: Mesh, sd_mm: f64, rng: &mut impl Rng) -> Mesh {
    if sd_mm <= 0.0 {
        return mesh;
    }
    let vertices: Vec<Point3<f64>> = mesh
        .vertices()
        .iter()
        .zip(mesh.vertex_normals())
        .map(|(p, normal)| p + normal * (sd_mm * gauss(rng)))
        .collect();
    let colours = mesh.colours().map(<[_]>::to_vec);
    rebuilt(vertices, mesh.triangles().to_vec(), colours)
}

/// A mesh from parts that are sound by construction.
pub fn rebuilt(
    vertices: Vec<Point3<f64>>,
    triangles: Vec<[u32; 3]>,
    colours: Option<Vec<[u8; 3]>>,
) -> Mesh {
    Mesh::new(vertices, triangles, colours).unwrap_or_default()
}

/// A standard normal number (Box-Muller).
pub fn gauss(rng: &mut impl Rng) -> f64 {
    let radius = (-2.0 * rng.random_range(f64::EPSILON..1.0).ln()).sqrt();
    radius * (TAU * rng.random_range(0.0..1.0)).cos()
}
