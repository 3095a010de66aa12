//! Planted spots against closed forms, and their absence in sound phantoms.

use mesh::Topology;
use nalgebra::Point3;
use phantom::{Across, Arch, Options, Phantom, Place, PlantedSpot, SpotKind, SpotTruth};
use std::f64::consts::PI;

#[test]
fn a_round_spot_on_the_level_palate_has_the_areas_of_a_disc_and_a_cone() {
    let middle = Place::Palate {
        right_mm: 1.0,
        anterior_mm: -3.0,
    };
    let options = |kind| Options {
        seed: 11,
        edge_mm: 1.0,
        spots: vec![PlantedSpot {
            place: middle,
            kind,
        }],
        ..Options::default()
    };
    // Cover grows by half a millimetre for each millimetre outside the even disc.
    let (ramp, slant) = (0.5, 1.25f64.sqrt());
    let on_cone = |even: f64, to: f64| PI * (even * even + (to * to - even * even) * slant);

    let outer = (20.0 / PI).sqrt();
    let even = outer - 0.2 / ramp;
    let spot = Phantom::new(&options(SpotKind::ShowThrough { area_mm2: 20.0 }))
        .truth
        .spots[0];
    let expected = on_cone(even, outer);
    assert!(
        (spot.show_through_area_mm2 / expected - 1.0).abs() < 0.003,
        "{spot:?} {expected}"
    );
    let expected = on_cone(even, even + 1.0 / ramp);
    assert!(
        (spot.thin_area_mm2 / expected - 1.0).abs() < 0.003,
        "{spot:?} {expected}"
    );
    assert!(spot.least_cover_mm.abs() < 1e-6);

    let outer = (15.0 / PI).sqrt();
    let even = outer - 0.4 / ramp;
    let spot = Phantom::new(&options(SpotKind::Thin {
        least_mm: 0.6,
        area_mm2: 15.0,
    }))
    .truth
    .spots[0];
    let expected = on_cone(even, outer);
    assert!(
        (spot.thin_area_mm2 / expected - 1.0).abs() < 0.003,
        "{spot:?} {expected}"
    );
    assert_eq!(spot.show_through_area_mm2, 0.0);
    assert!((spot.least_cover_mm - 0.6).abs() < 1e-6);
}

#[test]
fn spots_anywhere_on_the_arch_are_about_as_large_as_wanted() {
    for arch in [Arch::Maxillary, Arch::Mandibular] {
        let places = [
            (-0.6, Across::Crest, 12.0),
            (0.4, Across::OuterSlope, 6.0),
            (0.7, Across::InnerSlope, 6.0),
        ];
        let spots = places
            .map(|(station, across, area_mm2)| PlantedSpot {
                place: Place::Arch { station, across },
                kind: SpotKind::ShowThrough { area_mm2 },
            })
            .to_vec();
        for seed in 0..4 {
            let made = Phantom::new(&Options {
                arch,
                seed,
                edge_mm: 1.0,
                spots: spots.clone(),
                ..Options::default()
            });
            for (spot, (.., wanted)) in made.truth.spots.iter().zip(places) {
                let share = spot.show_through_area_mm2 / wanted;
                assert!(
                    (0.8..1.4).contains(&share),
                    "{arch:?} {seed} {wanted}: {spot:?}"
                );
                assert!(
                    made.truth.cover_at(&spot.centre).abs() < 1e-6,
                    "{arch:?} {seed}: {spot:?}"
                );
            }
        }
    }
}

#[test]
fn a_sound_phantom_covers_its_tray_everywhere() {
    for arch in [Arch::Maxillary, Arch::Mandibular] {
        for seed in 0..8 {
            let made = Phantom::new(&Options {
                arch,
                seed,
                edge_mm: 0.7,
                tray_edge_mm: 3.0,
                ..Options::default()
            });
            let tissue = made
                .impression
                .vertices()
                .iter()
                .filter(|p| made.truth.is_tissue_side(p));
            let covers: Vec<f64> = tissue.map(|p| made.truth.cover_at(p)).collect();
            assert!(covers.len() > 5000, "{arch:?} {seed}: {}", covers.len());
            let least = covers.iter().copied().fold(f64::INFINITY, f64::min);
            assert!(least > 1.3, "{arch:?} {seed}: {least}");
        }
    }
}

#[test]
fn random_spots_are_as_many_and_as_large_in_the_mesh_as_in_the_truth() {
    for (arch, seed) in [(Arch::Maxillary, 31), (Arch::Mandibular, 32)] {
        let spots = PlantedSpot::random(arch, seed, 4, 3);
        assert_eq!(spots.len(), 7);
        let made = Phantom::new(&Options {
            arch,
            seed,
            edge_mm: 0.25,
            tray_edge_mm: 3.0,
            spots,
            ..Options::default()
        });
        for limit in [0.2, 1.0] {
            let area = |s: &SpotTruth| {
                if limit < 0.5 {
                    s.show_through_area_mm2
                } else {
                    s.thin_area_mm2
                }
            };
            let mut expected: Vec<f64> = made
                .truth
                .spots
                .iter()
                .map(area)
                .filter(|&a| a > 0.0)
                .collect();
            let mut found = patches_below(&made, limit);
            expected.sort_by(f64::total_cmp);
            found.sort_by(f64::total_cmp);
            assert_eq!(
                found.len(),
                expected.len(),
                "{arch:?} {limit}: {found:?} {expected:?}"
            );
            for (found, expected) in found.iter().zip(&expected) {
                // A triangle counts or does not, so half an edge of the rim is open.
                let rim = 0.125 * 2.0 * (PI * expected).sqrt();
                assert!(
                    (found - expected).abs() < rim,
                    "{arch:?} {limit}: {found} {expected}"
                );
            }
        }
    }
}

/// Areas of the connected patches of tissue-side triangles with less cover.
fn patches_below(made: &Phantom, limit: f64) -> Vec<f64> {
    let scan = &made.impression;
    let low: Vec<bool> = (0..scan.triangles().len())
        .map(|t| {
            let [a, b, c] = scan.corners(t);
            let middle = Point3::from((a.coords + b.coords + c.coords) / 3.0);
            made.truth.cover_at(&middle) < limit && made.truth.is_tissue_side(&middle)
        })
        .collect();
    let (part, count) = Topology::of(scan).parts(|t, u| low[t] == low[u]);
    let mut areas = vec![0.0; count];
    for (t, &part) in part.iter().enumerate() {
        if low[t] {
            areas[part as usize] += scan.area_vector(t).norm();
        }
    }
    areas.retain(|&a| a > 0.0);
    areas
}
