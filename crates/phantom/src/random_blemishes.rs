//! Random sets of planted blemishes of the surface.

use crate::jaw::Arch;
use crate::options::{Across, Blemish, Place};
use rand::seq::SliceRandom;
use rand::{Rng, RngExt, SeedableRng};
use rand_pcg::Pcg64;

impl Blemish {
    /// The diameter of the ball that leaves a pit of this width at the surface
    /// and this depth, mm.
    #[must_use]
    pub fn ball_of_mouth(width_mm: f64, depth_mm: f64) -> f64 {
        width_mm * width_mm / (4.0 * depth_mm) + depth_mm
    }

    /// Up to `count` voids at random places that do not touch each other: 1 to
    /// 3 mm across at the surface, 0.4 mm deep or more, from shallow dishes to
    /// bubbles that are nearly closed.
    #[must_use]
    pub fn random_voids(arch: Arch, seed: u64, count: usize) -> Vec<Self> {
        let mut rng = Pcg64::seed_from_u64(seed);
        let places = random_places(&mut rng, arch, count);
        places
            .into_iter()
            .map(|place| {
                let [width_mm, depth_mm] = random_mouth(&mut rng);
                Self::Void {
                    place,
                    diameter_mm: Self::ball_of_mouth(width_mm, depth_mm),
                    depth_mm,
                }
            })
            .collect()
    }

    /// The same of nodules.
    #[must_use]
    pub fn random_nodules(arch: Arch, seed: u64, count: usize) -> Vec<Self> {
        let mut rng = Pcg64::seed_from_u64(seed);
        let places = random_places(&mut rng, arch, count);
        places
            .into_iter()
            .map(|place| {
                let [width_mm, height_mm] = random_mouth(&mut rng);
                Self::Nodule {
                    place,
                    diameter_mm: Self::ball_of_mouth(width_mm, height_mm),
                    height_mm,
                }
            })
            .collect()
    }

    /// Up to `count` folds at random places that do not touch each other, 4 to
    /// 8 mm long, 0.5 to 0.9 mm wide and 0.3 to 0.6 mm deep.
    #[must_use]
    pub fn random_folds(arch: Arch, seed: u64, count: usize) -> Vec<Self> {
        let mut rng = Pcg64::seed_from_u64(seed);
        let places = random_places(&mut rng, arch, count);
        places
            .into_iter()
            .map(|place| Self::Fold {
                place,
                heading_deg: match place {
                    // A slope is not high enough for a fold that runs up it.
                    Place::Arch {
                        across: Across::OuterSlope | Across::InnerSlope,
                        ..
                    } => rng.random_range(-20.0..20.0),
                    _ => rng.random_range(-90.0..90.0),
                },
                length_mm: rng.random_range(4.0..8.0),
                width_mm: rng.random_range(0.5..0.9),
                depth_mm: rng.random_range(0.3..0.6),
            })
            .collect()
    }
}

/// Width at the surface and depth, mm.
fn random_mouth(rng: &mut impl Rng) -> [f64; 2] {
    let width = rng.random_range(1.0..3.0);
    let depth = rng.random_range(0.4..f64::min(0.9 * width, 1.2));
    [width, depth]
}

/// Places at least some 7 mm from each other.
fn random_places(rng: &mut impl Rng, arch: Arch, count: usize) -> Vec<Place> {
    let rows: &[(Across, f64)] = match arch {
        Arch::Maxillary => &[
            (Across::Crest, 0.85),
            (Across::OuterSlope, 0.8),
            (Across::InnerSlope, 0.6),
        ],
        Arch::Mandibular => &[
            (Across::Crest, 0.8),
            (Across::OuterSlope, 0.8),
            (Across::InnerSlope, 0.75),
        ],
    };
    let mut places = Vec::new();
    for (row, &(across, reach)) in rows.iter().enumerate() {
        // The rows are staggered, and each place strays a little.
        let mut station = -reach + 0.06 * row as f64;
        while station < reach {
            places.push(Place::Arch { station, across });
            station += rng.random_range(0.16..0.22);
        }
    }
    if arch == Arch::Maxillary {
        for right in [-6.0, 0.0, 6.0] {
            for anterior in [-7.0, 1.0, 9.0] {
                places.push(Place::Palate {
                    right_mm: right + rng.random_range(-1.0..1.0),
                    anterior_mm: anterior + rng.random_range(-1.0..1.0),
                });
            }
        }
    }
    places.shuffle(rng);
    places.truncate(count);
    places
}
