//! How far a border moved between two passes, over phantoms that differ by what
//! was planted. Run with `--nocapture` to see the figures.

#![allow(clippy::print_stdout, reason = "the figures are what the test is for")]

mod common;

use common::{ARCHES, quantile, settings};
use measure::border::changes;
use measure::passes::{Pass, laid};
use measure::{ImpressionMeasurement, measure};
use mesh::Mesh;
use nalgebra::{Isometry3, Translation3, UnitQuaternion};
use phantom::{Arch, Blemish, FlangeSide, Options, Phantom};

const LOWER_MM: f64 = 3.0;

fn made(arch: Arch, seed: u64, blemishes: Vec<Blemish>) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        edge_mm: 0.4,
        tray_edge_mm: 2.5,
        noise_sd_mm: 0.02,
        blemishes,
        ..Options::default()
    })
}

fn measured(mesh: &Mesh) -> ImpressionMeasurement {
    measure(mesh, None, &settings(), &|_| {})
}

fn pass<'a>(mesh: &'a Mesh, measured: &'a ImpressionMeasurement) -> Pass<'a> {
    Pass {
        mesh,
        frame: measured.frame.as_ref().expect("an impression has a frame"),
    }
}

#[test]
fn a_lowered_stretch_is_seen_and_nothing_else_moves() {
    let (mut unmoved, mut lowered, mut held, mut all) = (Vec::new(), Vec::new(), 0, 0);
    for arch in ARCHES {
        for seed in 20..24 {
            let first = made(arch, seed, Vec::new());
            let wash = made(
                arch,
                seed,
                vec![Blemish::ShortBorder {
                    flange: FlangeSide::Outer,
                    station: 0.6,
                    length_mm: 14.0,
                    by_mm: LOWER_MM,
                }],
            );
            let turned = Isometry3::from_parts(
                Translation3::new(30.0, -12.0, 5.0),
                UnitQuaternion::from_euler_angles(0.4, 1.9, -0.7),
            );
            let earlier = first.impression.moved(&turned);
            let (one, two) = (measured(&earlier), measured(&wash.impression));
            let later = pass(&wash.impression, &two);
            let laid = laid(pass(&earlier, &one), later).expect("they fit");
            let border = two.border.as_ref().expect("and a border");
            let before = one.border.as_ref().expect("and a border");
            let found = changes(before, border, later.frame, &laid);
            let centre = wash.truth.blemishes[0].centre;
            for (change, station) in found.iter().zip(&border.stations) {
                let Some(change) = change else { continue };
                let from = (station.point - centre).norm();
                // Ramps lie between what is lowered and what is not.
                if from > 14.0 {
                    unmoved.push(change.mm.abs());
                    held += usize::from(change.mm.abs() <= change.uncertainty_mm);
                    all += 1;
                } else if from < 4.0 {
                    lowered.push((change.mm + LOWER_MM).abs());
                }
            }
        }
    }
    let share = held as f64 / all as f64;
    println!(
        "border of two passes, 8 pairs: unmoved, 95 % within {:.3} mm, stated uncertainty holds \
         {:.0} %; lowered by 3 mm: 95 % within {:.3} mm of it",
        quantile(&mut unmoved, 0.95),
        100.0 * share,
        quantile(&mut lowered, 0.95)
    );
    assert!(quantile(&mut unmoved, 0.95) <= 0.25);
    assert!(quantile(&mut lowered, 0.95) <= 0.5);
    assert!(share >= 0.9);
}

#[test]
fn another_mouth_does_not_fit() {
    let (first, other) = (
        made(Arch::Maxillary, 25, Vec::new()),
        made(Arch::Maxillary, 26, Vec::new()),
    );
    let (one, two) = (measured(&first.impression), measured(&other.impression));
    let found = laid(pass(&first.impression, &one), pass(&other.impression, &two));
    assert!(found.is_err(), "{:?}", found.map(|f| f.fitting_share));
}
