//! From a solid to what a scanner gives of it: place in space, noise.

use crate::gauss::gauss;
use crate::impression::Impression;
use crate::options::Pose;
use crate::rebuilt::rebuilt;
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
pub(crate) fn motion(pose: Pose, rng: &mut impl Rng) -> Isometry3<f64> {
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
pub(crate) fn roughened(mesh: Mesh, sd_mm: f64, rng: &mut impl Rng) -> Mesh {
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
pub(crate) fn seen_from_tissue(
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
    let is_seen = |t: usize| mesh.triangles()[t].iter().all(|&v| seen[v as usize]);
    // What is not seen is one piece, the outer surface; slits between the
    // tissue surface and a narrow rim would be no scanner's.
    let (part, sizes) = parts(mesh, is_seen);
    let unseen = (0..part.len()).filter(|&t| !is_seen(t)).map(|t| part[t]);
    let outer = unseen.max_by_key(|&p| (sizes[p as usize], std::cmp::Reverse(p)));
    let kept = mesh.filtered(|t| Some(part[t]) != outer);
    let (part, sizes) = parts(&kept, |_| true);
    let largest =
        (0..sizes.len() as u32).max_by_key(|&p| (sizes[p as usize], std::cmp::Reverse(p)));
    kept.filtered(|t| Some(part[t]) == largest)
}

/// Connected parts of equal label, as a number for each triangle, and their sizes.
fn parts(mesh: &Mesh, label: impl Fn(usize) -> bool) -> (Vec<u32>, Vec<usize>) {
    let (part, count) = Topology::of(mesh).parts(|a, b| label(a) == label(b));
    let mut sizes = vec![0; count];
    for &p in &part {
        sizes[p as usize] += 1;
    }
    (part, sizes)
}
