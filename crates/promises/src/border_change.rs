//! How far a border moved between two passes, over phantoms that differ by what
//! was planted.

use crate::Population;
use fixtures::quantile;
use measure::pair::{Pass, changes, laid};
use measure::{Border, Frame, MeasureSettings, Measuring, frame};
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

fn pass<'a>(mesh: &'a Mesh, frame: &'a Frame) -> Pass<'a> {
    Pass {
        mesh,
        frame,
        scan_from_tray: None,
    }
}

fn frame_of<'a>(measuring: &'a Measuring<'_>) -> &'a Frame {
    &measuring.frame().expect("an impression").frame
}

fn border_of<'a>(measuring: &'a Measuring<'_>) -> &'a Border {
    let border = measuring.border().expect("an impression");
    border.expect("and a border")
}

/// Unmoved and lowered stations: how far each is off, and how many of the
/// unmoved the stated uncertainty holds.
type Row = (Vec<f64>, Vec<f64>, usize);

/// A stretch that was lowered by 3 mm is seen so, and nothing else moves.
pub fn a_lowered_stretch_is_seen_and_nothing_else_moves(population: Population) {
    let promise = population.asked("border-of-a-wash");
    let rows: Vec<Row> = promise.rows(population.both_jaws(20, 2), |&(arch, seed)| {
        let (mut unmoved, mut lowered, mut held) = (Vec::new(), Vec::new(), 0);
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
        let settings = MeasureSettings::default();
        let [one, two] =
            [&earlier, &wash.impression].map(|scan| Measuring::new(scan, None, &settings));
        let later = pass(&wash.impression, frame_of(&two));
        let laid = laid(pass(&earlier, frame_of(&one)), later, &|| {}).expect("they fit");
        let border = border_of(&two);
        let found = changes(border_of(&one), border, later.frame, &laid);
        let centre = wash.truth.blemishes[0].centre;
        for (change, station) in found.iter().zip(&border.stations) {
            let Some(change) = change else { continue };
            let from = (station.point - centre).norm();
            // Ramps lie between what is lowered and what is not.
            if from > 14.0 {
                unmoved.push(change.mm.abs());
                held += usize::from(change.mm.abs() <= change.uncertainty_mm);
            } else if from < 4.0 {
                lowered.push((change.mm + LOWER_MM).abs());
            }
        }
        (unmoved, lowered, held)
    });
    let mut unmoved: Vec<f64> = rows.iter().flat_map(|row| row.0.clone()).collect();
    let mut lowered: Vec<f64> = rows.iter().flat_map(|row| row.1.clone()).collect();
    let held: usize = rows.iter().map(|row| row.2).sum();
    let share = held as f64 / unmoved.len() as f64;
    promise.figure(
        "edges 0.4 mm: unmoved, 95 % within; lowered by 3 mm, 95 % within; stated uncertainty holds the unmoved",
        "0.25 mm; 0.5 mm; 90 %",
        format!(
            "{:.3} mm; {:.3} mm; {:.0} %",
            quantile(&mut unmoved, 0.95),
            quantile(&mut lowered, 0.95),
            100.0 * share
        ),
    );
    assert!(quantile(&mut unmoved, 0.95) <= 0.25);
    assert!(quantile(&mut lowered, 0.95) <= 0.5);
    assert!(share >= 0.9);
}

/// The first pass of another mouth is refused.
pub fn another_mouth_does_not_fit() {
    let scans = [25, 26].map(|seed| made(Arch::Maxillary, seed, Vec::new()).impression);
    let frames = [0, 1].map(|k| frame::find(&scans[k]).expect("an impression").frame);
    let [first, other] = [0, 1].map(|k| pass(&scans[k], &frames[k]));
    let found = laid(first, other, &|| {});
    assert!(found.is_err(), "{:?}", found.map(|f| f.fitting_share));
}
