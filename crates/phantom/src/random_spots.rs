//! Random sets of planted spots.

use crate::jaw::Arch;
use crate::options::{Across, Place, PlantedSpot, SpotKind};
use rand::seq::SliceRandom;
use rand::{Rng, RngExt, SeedableRng};
use rand_pcg::Pcg64;

impl PlantedSpot {
    /// Up to `show_through` bare and `thin` thin spots at random places that
    /// do not touch each other.
    #[must_use]
    pub fn random(arch: Arch, seed: u64, show_through: usize, thin: usize) -> Vec<Self> {
        let mut rng = Pcg64::seed_from_u64(seed);
        let mut places = places(arch);
        places.shuffle(&mut rng);
        let bare = [true].repeat(show_through).into_iter();
        let kinds = bare.chain([false].repeat(thin));
        places
            .into_iter()
            .zip(kinds)
            .map(|((place, largest_mm2), bare)| Self {
                place,
                kind: random_kind(&mut rng, bare, largest_mm2),
            })
            .collect()
    }
}

fn random_kind(rng: &mut impl Rng, bare: bool, largest_mm2: f64) -> SpotKind {
    let area_mm2 = rng.random_range(3.0..largest_mm2);
    if bare {
        SpotKind::ShowThrough { area_mm2 }
    } else {
        let least_mm = rng.random_range(0.3..0.9);
        SpotKind::Thin {
            least_mm,
            area_mm2: area_mm2.max(4.0),
        }
    }
}

/// Places far enough from each other, with the largest area that each has room for, mm².
fn places(arch: Arch) -> Vec<(Place, f64)> {
    let at = |across, stations: &[f64], largest: f64| -> Vec<(Place, f64)> {
        stations
            .iter()
            .map(|&station| (Place::Arch { station, across }, largest))
            .collect()
    };
    let mut places = at(
        Across::Crest,
        &[-0.75, -0.45, -0.15, 0.15, 0.45, 0.75],
        20.0,
    );
    places.extend(at(Across::OuterSlope, &[-0.6, -0.3, 0.3, 0.6], 8.0));
    match arch {
        Arch::Maxillary => {
            let palate = [(-6.0, 4.0), (6.0, 4.0), (-6.0, -7.0), (6.0, -7.0)];
            places.extend(palate.map(|(right_mm, anterior_mm)| {
                (
                    Place::Palate {
                        right_mm,
                        anterior_mm,
                    },
                    40.0,
                )
            }));
        }
        Arch::Mandibular => places.extend(at(Across::InnerSlope, &[-0.6, 0.6], 8.0)),
    }
    places
}
