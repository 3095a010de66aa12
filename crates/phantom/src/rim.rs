//! What spoils the rim of a scan: bites, stray islands, small holes.

use crate::options::RimFaults;
use crate::rebuilt::rebuilt;
use crate::truth::Truth;
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use rand::{Rng, RngExt};
use std::collections::BTreeMap;
use std::f64::consts::TAU;

/// Mean distance between bites along the border, mm.
const BITE_EVERY_MM: f64 = 5.0;
/// Bites leave this much beyond the border, so that it still turns over, mm.
const LEFT_BY_BITES_MM: f64 = 0.6;
/// How far below the border a bite has its middle, mm.
const BITE_BELOW_MM: f64 = 2.0;

/// A ball that is missing from the rim.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Bite {
    middle: Point3<f64>,
    radius: f64,
}

impl Bite {
    /// Whether a point beyond the border is lost to the bite.
    #[must_use]
    pub(crate) fn takes(&self, p: &Point3<f64>, border: &[Point3<f64>]) -> bool {
        (p - self.middle).norm() < self.radius
            && border.iter().all(|b| (b - p).norm() > LEFT_BY_BITES_MM)
    }
}

/// Random bites below the border, in made coordinates; none where they would
/// have no depth.
pub(crate) fn bites(border: &[Point3<f64>], depth_mm: f64, rng: &mut impl Rng) -> Vec<Bite> {
    if depth_mm <= 0.0 || border.is_empty() {
        return Vec::new();
    }
    let length: f64 = border.windows(2).map(|w| (w[1] - w[0]).norm()).sum();
    (0..(length / BITE_EVERY_MM) as usize)
        .map(|_| Bite {
            middle: border[rng.random_range(0..border.len())] - Vector3::z() * BITE_BELOW_MM,
            radius: depth_mm * rng.random_range(0.4..1.0),
        })
        .collect()
}

/// The scan with small holes near the border and stray islands off it.
pub(crate) fn spoilt(mesh: &Mesh, faults: &RimFaults, truth: &Truth, rng: &mut impl Rng) -> Mesh {
    let border: Vec<Point3<f64>> = truth
        .border
        .iter()
        .filter(|b| b.scanned)
        .map(|b| truth.made_from_scan * b.point)
        .collect();
    let mut scan = mesh.clone();
    if border.is_empty() {
        return scan;
    }
    for _ in 0..faults.holes {
        scan = with_hole(&scan, &border, rng);
    }
    let islands: Vec<Island> = (0..faults.islands)
        .map(|_| Island::random(&border, rng))
        .collect();
    with_islands(&scan, &islands)
}

/// The scan without the triangles around a random vertex near the border.
fn with_hole(scan: &Mesh, border: &[Point3<f64>], rng: &mut impl Rng) -> Mesh {
    let gone = |p: &Point3<f64>| {
        border
            .iter()
            .map(|b| (b - p).norm())
            .fold(f64::INFINITY, f64::min)
    };
    let radius = rng.random_range(0.3..0.8);
    let beside = border[rng.random_range(0..border.len())];
    let near: Vec<Point3<f64>> = scan
        .vertices()
        .iter()
        .filter(|v| (*v - beside).norm() < 4.0 && gone(v) > 1.5)
        .copied()
        .collect();
    if near.is_empty() {
        return scan.clone();
    }
    let middle = near[rng.random_range(0..near.len())];
    scan.filtered(|t| {
        scan.corners(t)
            .iter()
            .all(|p| (p - middle).norm() >= radius)
    })
}

/// A patch of the border's surface that appears a second time, out of place.
#[derive(Debug, Clone, Copy)]
struct Island {
    middle: Point3<f64>,
    radius: f64,
    shift: Vector3<f64>,
}

impl Island {
    fn random(border: &[Point3<f64>], rng: &mut impl Rng) -> Self {
        let turn = rng.random_range(0.0..TAU);
        let away = Vector3::new(turn.cos(), turn.sin(), rng.random_range(0.8..2.0));
        Self {
            middle: border[rng.random_range(0..border.len())],
            radius: rng.random_range(0.6..1.6),
            shift: away.normalize() * rng.random_range(2.0..5.0),
        }
    }
}

fn with_islands(scan: &Mesh, islands: &[Island]) -> Mesh {
    let mut vertices = scan.vertices().to_vec();
    let mut triangles = scan.triangles().to_vec();
    let mut colours = scan.colours().map(<[_]>::to_vec);
    for island in islands {
        let mut copies = BTreeMap::new();
        let near = |p: &Point3<f64>| (p - island.middle).norm() < island.radius;
        let patch = (0..scan.triangles().len()).filter(|&t| scan.corners(t).iter().all(near));
        for t in patch {
            triangles.push(scan.triangles()[t].map(|original| {
                *copies.entry(original).or_insert_with(|| {
                    vertices.push(scan.vertices()[original as usize] + island.shift);
                    if let Some(colours) = &mut colours {
                        colours.push(colours[original as usize]);
                    }
                    vertices.len() as u32 - 1
                })
            }));
        }
    }
    rebuilt(vertices, triangles, colours)
}
