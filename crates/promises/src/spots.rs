//! Places of show-through planted in phantoms.

use crate::Population;
use measure::{MeasureSettings, Measuring, SpotKind};
use phantom::{Options, Phantom, PlantedSpot};
use serde::{Deserialize, Serialize};

/// What became of one planted show-through of 3 mm² or more.
#[derive(Serialize, Deserialize)]
struct Found {
    off_mm: f64,
    area_ratio: f64,
}

/// Show-through of 3 mm² and more: all found where it is and as large as it is,
/// none invented.
pub fn planted_are_found_and_none_is_invented(population: Population) {
    let asked = population.asked("planted-spots");
    let outcomes: Vec<(Vec<Found>, usize)> =
        asked.rows(population.jaws_in_turn(10), |&(arch, seed)| {
            let sound = seed % 5 == 0;
            let phantom = Phantom::new(&Options {
                arch,
                seed: 300 + seed,
                edge_mm: 0.4,
                tray_edge_mm: 0.5,
                noise_sd_mm: 0.02,
                handle: seed % 3 != 0,
                spots: if sound {
                    Vec::new()
                } else {
                    PlantedSpot::random(arch, seed, 3, 1)
                },
                ..Options::default()
            });
            let settings = MeasureSettings::default();
            let measuring = Measuring::new(&phantom.impression, Some(&phantom.tray), &settings);
            assert!(
                measuring.cover().is_some_and(|cover| cover.is_ok()),
                "{seed}"
            );
            let spots = measuring.spots();
            let planted = &phantom.truth.spots;
            let found = planted
                .iter()
                .filter(|p| p.show_through_area_mm2 >= 3.0)
                .map(|p| {
                    let spot = spots
                        .iter()
                        .filter(|s| s.kind == SpotKind::ShowThrough)
                        .min_by(|a, b| {
                            let off = |s: &&measure::Spot| (s.centre - p.centre).norm();
                            off(a).total_cmp(&off(b))
                        })
                        .unwrap_or_else(|| panic!("seed {seed}: nothing found for {p:?}"));
                    Found {
                        off_mm: (spot.centre - p.centre).norm(),
                        area_ratio: spot.area_mm2 / p.show_through_area_mm2,
                    }
                })
                .collect();
            let invented = spots
                .iter()
                .filter(|s| {
                    // The truth of every planted patch reaches this far.
                    !planted.iter().any(|p| {
                        let reach = (p.thin_area_mm2 / std::f64::consts::PI).sqrt() + 2.0;
                        (s.centre - p.centre).norm() <= reach
                    })
                })
                .count();
            (found, invented)
        });
    let invented: usize = outcomes.iter().map(|o| o.1).sum();
    let found: Vec<&Found> = outcomes.iter().flat_map(|o| &o.0).collect();
    let farthest = found.iter().map(|f| f.off_mm).fold(0.0, f64::max);
    let ratios = found.iter().map(|f| f.area_ratio);
    let (least, most) = (
        ratios.clone().fold(9.0, f64::min),
        ratios.fold(0.0, f64::max),
    );
    asked.figure(
        "edges 0.4 mm, noise 0.02 mm, show-through of 3 mm² and more: found; invented; centre off; area over the truth's",
        "all; 0; 2 mm; 0.80 to 1.20",
        format!("{0} of {0}; {invented}; {farthest:.2} mm; {least:.2} to {most:.2}", found.len()),
    );
    assert!(found.len() >= outcomes.len());
    assert!(farthest <= 2.0);
    assert!(least >= 0.8 && most <= 1.2);
    assert_eq!(invented, 0);
}
