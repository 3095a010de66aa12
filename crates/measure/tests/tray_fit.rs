//! How the tray was seated, and cover without its scan, on phantoms. Run with
//! `--nocapture` to see the figures.

#![allow(clippy::print_stdout, reason = "the figures are what the test is for")]

mod common;

use common::{ARCHES, quantile, seeds, settings};
use measure::tray_fit::{Amount, Seating};
use measure::{CoverMethod, ImpressionMeasurement, MeasureSettings, TrayThickness, measure};
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use phantom::{Arch, Options, Phantom, PlantedSpot};
use rayon::prelude::*;

fn phantom(arch: Arch, seed: u64) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        edge_mm: 0.5,
        tray_edge_mm: 0.5,
        noise_sd_mm: 0.02,
        spots: PlantedSpot::random(arch, seed, 2, 1),
        ..Options::default()
    })
}

/// The impression as if the tray had been moved: the tissue surface goes the
/// other way. `shift` in mm and `turn` in radians along the patient's right,
/// the front and the seating axis.
fn with_tray_moved(made: &Phantom, shift: [f64; 3], turn: [f64; 3]) -> Mesh {
    let axes = made.truth.axes;
    let along = |by: [f64; 3]| axes.right * by[0] + axes.anterior * by[1] + axes.seating * by[2];
    let (shift, turn) = (along(shift), along(turn));
    let crest = &made.truth.crest_line;
    let centre = crest.iter().map(|p| p.coords).sum::<Vector3<f64>>() / crest.len() as f64;
    let mesh = &made.impression;
    let moved: Vec<Point3<f64>> = (mesh.vertices().iter())
        .map(|p| {
            if made.truth.is_tissue_side(p) {
                p - shift - turn.cross(&(p.coords - centre))
            } else {
                *p
            }
        })
        .collect();
    Mesh::new(moved, mesh.triangles().to_vec(), None).expect("the same triangles")
}

fn seating(scan: &Mesh, tray: &Mesh) -> Seating {
    let found = measure(scan, Some(tray), &settings(), &|_| {});
    let cover = found.cover.as_ref().map(|_| ()).map_err(Clone::clone);
    let fit = found.tray_fit;
    let fit = fit.unwrap_or_else(|| panic!("{cover:?}"));
    assert!(fit.zones.len() > 5);
    fit.seating.expect("cover is known widely")
}

/// The five figures: right, anterior, front up, right up, turned right.
fn figures(of: &Seating) -> [Amount; 5] {
    [
        of.right_mm,
        of.anterior_mm,
        of.front_up_deg,
        of.right_up_deg,
        of.turned_right_deg,
    ]
}

#[test]
fn a_tray_that_stood_askew_is_found_out() {
    let trials: Vec<(Arch, u64)> = ARCHES
        .iter()
        .flat_map(|&arch| (0..seeds(2)).map(move |seed| (arch, seed)))
        .collect();
    // Shifts in mm, tilts in degrees, both by the patient's sides. A turn about
    // the right axis lifts the front where right, front and seating are a
    // right-handed triple; so they are in the upper jaw, and not in the lower.
    let outcomes: Vec<[[f64; 3]; 5]> = trials
        .par_iter()
        .map(|&(arch, seed)| {
            let made = phantom(arch, seed);
            let hand = if arch == Arch::Maxillary { 1.0 } else { -1.0 };
            let (right, anterior, front_up, right_up, turned) =
                (0.8, -0.5, 1.2f64, -0.9f64, 0.7f64);
            let turn = [
                front_up.to_radians() * hand,
                -right_up.to_radians() * hand,
                -turned.to_radians() * hand,
            ];
            let plain = figures(&seating(&made.impression, &made.tray));
            let scan = with_tray_moved(&made, [right, anterior, 0.0], turn);
            let moved = figures(&seating(&scan, &made.tray));
            let planted = [right, anterior, front_up, right_up, turned];
            std::array::from_fn(|k| [planted[k], moved[k].value - plain[k].value, plain[k].value])
        })
        .collect();
    for (trial, outcome) in trials.iter().zip(&outcomes) {
        println!("{trial:?} [planted, found, plain]: {outcome:.2?}");
    }
    for (k, allowed) in [(0, 0.2), (1, 0.2), (2, 0.3), (3, 0.3), (4, 0.3)] {
        for (trial, outcome) in trials.iter().zip(&outcomes) {
            let [planted, found, _] = outcome[k];
            assert!(
                (found - planted).abs() <= allowed,
                "{trial:?}, {k}: {outcome:?}"
            );
        }
    }
}

fn two_sided(made: &Phantom, uncertainty_mm: f64) -> ImpressionMeasurement {
    let settings = MeasureSettings {
        tray_thickness: Some(TrayThickness {
            mm: made.truth.tray_thickness_mm,
            uncertainty_mm,
        }),
        ..settings()
    };
    measure(&made.impression, None, &settings, &|_| {})
}

#[test]
fn cover_without_a_tray_scan_agrees_with_the_formula() {
    for arch in ARCHES {
        for seed in 0..seeds(2) {
            let made = phantom(arch, seed);
            let found = two_sided(&made, 0.05);
            let cover = found
                .cover
                .unwrap_or_else(|why| panic!("{arch:?} {seed}: {why}"));
            assert!(matches!(cover.method, CoverMethod::TwoSided { .. }));
            assert!(cover.registration.is_none());
            let mut signed: Vec<f64> = (made.impression.vertices().iter())
                .zip(&cover.at_vertex_mm)
                .filter_map(|(p, mm)| Some((*mm)? - made.truth.cover_at(p)))
                .collect();
            let bias = quantile(&mut signed, 0.5);
            let mut errors: Vec<f64> = signed.iter().map(|e| e.abs()).collect();
            let held = errors
                .iter()
                .filter(|e| **e <= cover.uncertainty_mm)
                .count();
            let share = held as f64 / errors.len() as f64;
            let (median, p95) = (quantile(&mut errors, 0.5), quantile(&mut errors, 0.95));
            println!(
                "{arch:?} {seed}: bias {bias:.3}, median {median:.3}, 95 % {p95:.3} mm, stated {:.3}, holds {:.1} %, over {:.0} mm2",
                cover.uncertainty_mm,
                100.0 * share,
                cover.area_judged_mm2
            );
            assert!(median <= 0.1, "{arch:?} {seed}");
            assert!(share >= 0.9, "{arch:?} {seed}");
        }
    }
}

#[test]
fn without_a_stated_thickness_nothing_is_taken_for_cover() {
    let made = phantom(Arch::Maxillary, 3);
    let found = measure(&made.impression, None, &settings(), &|_| {});
    assert!(found.cover.is_err() && found.spots.is_empty() && found.tray_fit.is_none());
}
