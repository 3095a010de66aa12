//! A tray in pieces, placed piece by piece, with joints that were closed or open.

use crate::Population;
use fixtures::quantile;
use measure::{AssembledTray, Cover, MeasureSettings, Measuring};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3, Vector3};
use phantom::{Arch, HalfSpace, Options, Phantom, Pose, part};

/// How far the back piece lay behind where it belongs, mm.
const OPEN_MM: [f64; 3] = [0.0, 0.2, 0.5];
/// The material stretches over so much beside the joint, mm.
const STRETCH_MM: f64 = 3.0;

fn made(arch: Arch, seed: u64) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        edge_mm: 0.5,
        tray_edge_mm: 0.8,
        noise_sd_mm: 0.01,
        pose: Pose::AsMade,
        ..Options::default()
    })
}

/// Cover of an impression in its tray.
fn cover_in(impression: &Mesh, tray: &Mesh) -> Cover {
    let settings = MeasureSettings::default();
    let measuring = Measuring::new(impression, Some(tray), &settings);
    let cover = measuring.cover().expect("a phantom is an impression");
    cover.expect("the tray is placed").clone()
}

/// The impression in a tray of which the back piece lay farther back.
fn pulled_apart(impression: &Mesh, y: f64, open_mm: f64) -> Mesh {
    impression.mapped(|p| {
        let share = ((y + STRETCH_MM / 2.0 - p.y) / STRETCH_MM).clamp(0.0, 1.0);
        Point3::new(p.x, p.y - open_mm * share, p.z)
    })
}

/// The pieces of a tray cut across, each in a pose of its own.
pub(crate) fn pieces(tray: &Mesh, made_from_tray: &Isometry3<f64>, y: f64) -> [Mesh; 2] {
    let as_made = tray.moved(made_from_tray);
    let halves = [HalfSpace::above(1, y), HalfSpace::below(1, y)];
    let turns = [[0.4, -1.2, 0.3], [1.9, 0.2, -0.8]].map(Vector3::from);
    [0, 1].map(|k| {
        let elsewhere = Isometry3::new(turns[k] * 20.0, turns[k]);
        part(&as_made, &[halves[k]]).moved(&elsewhere)
    })
}

/// For each width of the joint: error and uncertainty of its gap, and error of the median
/// cover, mm.
fn joints_of(arch: Arch, seed: u64) -> [(f64, f64, f64); 3] {
    let made = made(arch, seed);
    let y = 12.0 + (seed % 3) as f64;
    let whole = cover_in(&made.impression, &made.tray);
    let placed = whole.registration.as_ref().expect("by its scan");
    let pieces = pieces(&made.tray, &placed.impression_from_tray, y);
    OPEN_MM.map(|open_mm| {
        let impression = pulled_apart(&made.impression, y, open_mm);
        let found = AssembledTray::on(&impression, &pieces.each_ref(), 0.0)
            .unwrap_or_else(|why| panic!("{arch:?} {seed} {open_mm}: {why}"));
        let joint = found.joints.first().expect("the pieces meet");
        let apart_mm = cover_in(&impression, &found.mesh).median_mm;
        println!(
            "{arch:?} {seed}: open by {open_mm}: gap {:.3}, step {:.3} ± {:.3} mm; cover {apart_mm:.3}, whole {:.3} mm",
            joint.gap_mm, joint.step_mm, joint.uncertainty_mm, whole.median_mm
        );
        let error_mm = (joint.gap_mm - open_mm).abs();
        (error_mm, joint.uncertainty_mm, (apart_mm - whole.median_mm).abs())
    })
}

/// The pieces of a tray are found on the impression, the joint's gap is measured, and cover
/// is that of the whole tray.
pub fn the_joint_of_a_tray_in_pieces_is_measured(population: Population) {
    let promise = population.asked("tray-in-pieces");
    let mouths = population.both_jaws(0, 1);
    let outcomes = promise
        .rows(mouths, |&(arch, seed)| joints_of(arch, seed))
        .concat();
    let held = outcomes
        .iter()
        .filter(|(error, doubt, _)| error <= doubt)
        .count();
    let mut errors: Vec<f64> = outcomes.iter().map(|o| o.0).collect();
    let mut cover: Vec<f64> = outcomes.iter().map(|o| o.2).collect();
    promise.figure(
        "joints open by 0, 0.2 and 0.5 mm: error of the gap, of the median thickness, at most; U holds",
        "0.1, 0.1 mm; 93 %",
        format!(
            "{:.3}, {:.3} mm; {} of {}",
            quantile(&mut errors, 1.0),
            quantile(&mut cover, 1.0),
            held,
            outcomes.len()
        ),
    );
    assert!(quantile(&mut errors, 1.0) <= 0.1 && quantile(&mut cover, 1.0) <= 0.1);
}
