//! From a solid to what a scanner gives of it: place in space, noise.

use crate::impression::Impression;
use crate::options::Pose;
use crate::rim::Bite;
use crate::stations::Wave;
use mesh::{Mesh, Topology};
use nalgebra::{Isometry3, Point3, Translation3, UnitQuaternion, Vector3};
use rand::{Rng, RngExt};
use rayon::prelude::*;
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

/// What a scanner that looks from the tissue's side sees: the tissue surface
/// and a rim of uneven width beyond the border, less what is bitten off.
/// All in made coordinates.
pub fn seen_from_tissue(
    mesh: &Mesh,
    impression: &Impression,
    border: &[Point3<f64>],
    bites: &[Bite],
    rng: &mut impl Rng,
) -> Mesh {
    let wave = Wave::random(rng, 17.0);
    let mean = rng.random_range(1.2..2.0);
    let seen: Vec<bool> = mesh
        .vertices()
        .par_iter()
        .map(|p| {
            let rim = mean + 0.5 * wave.at(impression.mouth.arch.place(p.x, p.y).along);
            impression.is_tissue_side(p)
                || border.iter().any(|b| (b - p).norm_squared() < rim * rim)
                    && !bites.iter().any(|b| b.takes(p, border))
        })
        .collect();
    let kept = mesh.filtered(|t| mesh.triangles()[t].iter().all(|&v| seen[v as usize]));
    largest_part(&kept)
}

fn largest_part(mesh: &Mesh) -> Mesh {
    let topology = Topology::of(mesh);
    let mut sizes = vec![0usize; topology.components()];
    for &part in topology.component_of_triangle() {
        sizes[part as usize] += 1;
    }
    let largest = (0..sizes.len()).max_by_key(|&i| sizes[i]).unwrap_or(0);
    mesh.filtered(|t| topology.component_of_triangle()[t] as usize == largest)
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
