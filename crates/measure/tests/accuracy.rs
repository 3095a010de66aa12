//! How well an impression is measured, over many phantoms whose truth is known
//! by formula. Run with `--nocapture` to see the figures; `ARCHPROOF_SEEDS=50` looks
//! at so many impressions an arch.

#![allow(clippy::print_stdout, reason = "the figures are what the test is for")]

mod common;

use common::{ARCHES, quantile, seeds, settings};
use measure::{ImpressionMeasurement, NotMeasured, SpotKind, frame, measure};
use nalgebra::Vector3;
use phantom::{Arch, Options, Phantom, PlantedSpot, Sides};
use rayon::prelude::*;

fn measured(phantom: &Phantom) -> ImpressionMeasurement {
    measure(
        &phantom.impression,
        Some(&phantom.tray),
        &settings(),
        &|_| {},
    )
}

fn degrees(a: &Vector3<f64>, b: &Vector3<f64>) -> f64 {
    a.angle(b).to_degrees()
}

fn is(found: measure::Arch, made: Arch) -> bool {
    matches!(
        (found, made),
        (measure::Arch::Maxillary, Arch::Maxillary) | (measure::Arch::Mandibular, Arch::Mandibular)
    )
}

/// Seating and anterior axis within 3 degrees, right and jaw correct in all.
fn frames_are_right(sides: Sides) {
    let trials: Vec<(Arch, u64)> = ARCHES
        .iter()
        .flat_map(|&arch| (0..seeds(16)).map(move |seed| (arch, seed)))
        .collect();
    let errors: Vec<[f64; 2]> = trials
        .into_par_iter()
        .map(|(arch, seed)| {
            let phantom = Phantom::new(&Options {
                arch,
                seed,
                sides,
                edge_mm: 0.7,
                tray_edge_mm: 2.5,
                noise_sd_mm: 0.02,
                handle: seed % 3 != 0,
                ..Options::default()
            });
            let scan = &phantom.impression;
            let found = frame::find(scan).expect("a phantom is an impression");
            let (found, truth) = (found.frame, &phantom.truth.axes);
            assert!(is(found.arch, arch), "{arch:?} {seed}: {:?}", found.arch);
            assert!(found.right.dot(&truth.right) > 0.9, "{arch:?} {seed}: side");
            [
                degrees(&found.seating, &truth.seating),
                degrees(&found.anterior, &truth.anterior),
            ]
        })
        .collect();
    let greatest = |i: usize| errors.iter().map(|e| e[i]).fold(0.0, f64::max);
    let (seating, anterior) = (greatest(0), greatest(1));
    println!(
        "frame, {sides:?}, {} seeds an arch: greatest error of seating axis {seating:.2} deg, \
         of anterior axis {anterior:.2} deg (3 allowed); right and jaw correct in all",
        seeds(16)
    );
    assert!(seating < 3.0 && anterior < 3.0);
}

#[test]
fn frames_of_two_sided_scans_are_within_three_degrees() {
    frames_are_right(Sides::Both);
}

#[test]
fn frames_of_tissue_side_scans_are_within_three_degrees() {
    frames_are_right(Sides::Tissue);
}

/// 95th percentile of the tray's displacement over many poses, and whether the
/// stated uncertainty holds it.
fn trays_are_registered(noise_sd_mm: f64, allowed_mm: f64) {
    let outcomes: Vec<[f64; 2]> = (0..2 * seeds(16))
        .into_par_iter()
        .map(|seed| {
            let phantom = Phantom::new(&Options {
                arch: ARCHES[(seed % 2) as usize],
                seed,
                noise_sd_mm,
                edge_mm: 0.6,
                tray_edge_mm: 0.6,
                handle: seed % 3 != 0,
                overflow: 0.6 + 0.3 * (seed % 4) as f64,
                ..Options::default()
            });
            let cover = measured(&phantom)
                .cover
                .unwrap_or_else(|why| panic!("{seed}: {why}"));
            let placed = cover.registration.expect("cover is from the tray's scan");
            let truth = &phantom.truth.impression_from_tray;
            let mut errors: Vec<f64> = phantom
                .tray
                .vertices()
                .iter()
                .map(|p| (placed.impression_from_tray * p - truth * p).norm())
                .collect();
            [quantile(&mut errors, 0.95), placed.uncertainty_mm]
        })
        .collect();
    let poses = outcomes.len();
    let held = outcomes
        .iter()
        .filter(|[error, stated]| error <= stated)
        .count();
    let [mut errors, mut stated] =
        [0, 1].map(|i| outcomes.iter().map(|o| o[i]).collect::<Vec<f64>>());
    let greatest = errors.iter().copied().fold(0.0, f64::max);
    println!(
        "registration, noise {noise_sd_mm} mm, {poses} poses: all converge; 95th percentile of surface \
         error median {:.4}, greatest {greatest:.4} mm ({allowed_mm} allowed); stated uncertainty \
         median {:.4} mm, holds the error in {held} of {poses} (90 % needed)",
        quantile(&mut errors, 0.5),
        quantile(&mut stated, 0.5),
    );
    assert!(greatest <= allowed_mm);
    assert!(10 * held >= 9 * poses);
}

#[test]
fn trays_are_registered_without_noise() {
    trays_are_registered(0.0, 0.05);
}

#[test]
fn trays_are_registered_with_noise() {
    trays_are_registered(0.02, 0.08);
}

#[test]
fn cover_agrees_with_the_formula() {
    let mut errors: Vec<f64> = (0..8_u64)
        .into_par_iter()
        .flat_map_iter(|seed| {
            let phantom = Phantom::new(&Options {
                arch: ARCHES[(seed % 2) as usize],
                seed: 200 + seed,
                edge_mm: 0.25,
                tray_edge_mm: 0.35,
                noise_sd_mm: 0.02,
                handle: seed % 3 != 0,
                ..Options::default()
            });
            let cover = measured(&phantom).cover.expect("the tray is there");
            let errors: Vec<f64> = cover
                .at_vertex_mm
                .iter()
                .zip(phantom.impression.vertices())
                .filter_map(|(cover, p)| Some((cover.as_ref()? - phantom.truth.cover_at(p)).abs()))
                .collect();
            errors
        })
        .collect();
    let (middle, most) = (quantile(&mut errors, 0.5), quantile(&mut errors, 0.95));
    println!(
        "cover, 8 phantoms, edge 0.25 mm, noise 0.02 mm, {} places: absolute error median \
         {middle:.4} (0.03 allowed), 95th percentile {most:.4} mm (0.10 allowed)",
        errors.len()
    );
    assert!(middle <= 0.03 && most <= 0.10);
}

/// What became of one planted show-through of 3 mm² or more.
struct Found {
    off_mm: f64,
    area_ratio: f64,
}

#[test]
fn planted_spots_are_found_and_none_is_invented() {
    let outcomes: Vec<(Vec<Found>, usize)> = (0..2 * seeds(10))
        .into_par_iter()
        .map(|seed| {
            let arch = ARCHES[(seed % 2) as usize];
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
            let result = measured(&phantom);
            assert!(result.cover.is_ok(), "{seed}");
            let planted = &phantom.truth.spots;
            let found = planted
                .iter()
                .filter(|p| p.show_through_area_mm2 >= 3.0)
                .map(|p| {
                    let spot = result
                        .spots
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
            let invented = result
                .spots
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
        })
        .collect();
    let invented: usize = outcomes.iter().map(|o| o.1).sum();
    let found: Vec<&Found> = outcomes.iter().flat_map(|o| &o.0).collect();
    let farthest = found.iter().map(|f| f.off_mm).fold(0.0, f64::max);
    let ratios = found.iter().map(|f| f.area_ratio);
    let (least, most) = (
        ratios.clone().fold(9.0, f64::min),
        ratios.fold(0.0, f64::max),
    );
    println!(
        "spots, {} seeds, edge 0.4 mm, noise 0.02 mm: {} show-through of 3 mm² and more planted, \
         all found; centre off by {farthest:.2} mm at most (2 allowed); area {least:.2} to {most:.2} \
         of the truth (0.80 to 1.20 allowed); {invented} invented (0 allowed)",
        outcomes.len(),
        found.len()
    );
    assert!(found.len() >= outcomes.len());
    assert!(farthest <= 2.0);
    assert!(least >= 0.8 && most <= 1.2);
    assert_eq!(invented, 0);
}

#[test]
fn a_tissue_side_scan_alone_gives_no_cover_and_says_why() {
    for arch in ARCHES {
        let phantom = Phantom::new(&Options {
            arch,
            seed: 5,
            sides: Sides::Tissue,
            ..Options::default()
        });
        let result = measured(&phantom);
        assert_eq!(result.has_outer_surface, Some(false));
        assert_eq!(result.cover, Err(NotMeasured::NoOuterSurface));
        assert!(result.spots.is_empty());
    }
}

#[test]
fn another_mouths_tray_is_refused() {
    let made = |arch, seed| {
        Phantom::new(&Options {
            arch,
            seed,
            noise_sd_mm: 0.02,
            ..Options::default()
        })
    };
    for arch in ARCHES {
        for seed in 0..3 {
            let (one, other) = (made(arch, seed), made(arch, seed + 50));
            let result = measure(&one.impression, Some(&other.tray), &settings(), &|_| {});
            assert!(
                matches!(
                    result.cover,
                    Err(NotMeasured::TrayDoesNotFit { .. }
                        | NotMeasured::TrayOtherSize { .. }
                        | NotMeasured::AmbiguousRegistration { .. })
                ),
                "{arch:?} {seed}: {:?}",
                result.cover.map(|c| c.registration)
            );
        }
    }
}

#[test]
fn an_empty_tray_and_a_surface_seen_from_behind_are_no_impressions() {
    let phantom = Phantom::new(&Options::default());
    let tray = measure(&phantom.tray, Some(&phantom.tray), &settings(), &|_| {});
    assert!(matches!(tray.cover, Err(NotMeasured::NotAnImpression(_))));
    let one_sided = Phantom::new(&Options {
        sides: Sides::Tissue,
        ..Options::default()
    });
    let cast = one_sided.impression.turned_inside_out();
    let result = measure(&cast, None, &settings(), &|_| {});
    assert!(matches!(result.frame, Err(NotMeasured::NotAnImpression(_))));
}

#[test]
fn one_thread_and_many_give_the_same_measurement() {
    let phantom = Phantom::new(&Options {
        spots: PlantedSpot::random(Arch::Maxillary, 1, 2, 1),
        noise_sd_mm: 0.02,
        ..Options::default()
    });
    let with_threads = |count| {
        rayon::ThreadPoolBuilder::new()
            .num_threads(count)
            .build()
            .expect("threads can be had")
            .install(|| measured(&phantom))
    };
    assert_eq!(with_threads(1), with_threads(4));
}
