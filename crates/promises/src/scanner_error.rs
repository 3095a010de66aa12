//! Scans that err as scanners do, and the term of the uncertainty that belongs to it.

use crate::Population;
use measure::{MeasureSettings, Measuring};
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use phantom::{Options, Phantom};
use rand::{RngExt, SeedableRng};
use rand_pcg::Pcg64Mcg;
use serde::{Deserialize, Serialize};
use std::f64::consts::TAU;

/// How a scan errs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
enum Kind {
    /// Warped in waves of 30 to 80 mm.
    Waves,
    /// By 0.15 % too large or too small.
    Scale,
    /// Two views that lie 0.08 mm beside each other.
    Step,
}
const KINDS: [(Kind, &str); 3] = [
    (Kind::Waves, "in long waves"),
    (Kind::Scale, "in scale"),
    (Kind::Step, "by a step between two views"),
];

/// Shares of cover values that the uncertainty holds, with the scanner's term and
/// without.
#[derive(Serialize, Deserialize)]
struct Row {
    kind: Kind,
    held: f64,
    held_without: f64,
    scanner_mm: f64,
}

type Displacement = Box<dyn Fn(&Point3<f64>) -> Vector3<f64> + Sync + Send>;

/// The errors of one scan, as displacements of its places, mm.
fn error(kind: Kind, seed: u64, centre: Point3<f64>) -> Displacement {
    let mut draw = Pcg64Mcg::seed_from_u64(seed);
    let mut direction = || {
        let part = |draw: &mut Pcg64Mcg| draw.random_range(-1.0..1.0_f64);
        let drawn = Vector3::new(part(&mut draw), part(&mut draw), part(&mut draw));
        (drawn.normalize(), draw.random_range(0.0..1.0_f64))
    };
    match kind {
        Kind::Waves => {
            /// Six waves of this amplitude have the root mean square of SCAN-01 (0.0242 mm)
            /// along each axis: √(6 / 2 / 3) times the amplitude.
            const AMPLITUDE_MM: f64 = 0.0242;
            let waves: Vec<_> = (0..6)
                .map(|_| (direction(), direction()))
                .map(|((along, length), (moves, phase))| {
                    (along * (TAU / (30.0 + 50.0 * length)), moves, TAU * phase)
                })
                .collect();
            Box::new(move |p| {
                let moved = waves.iter().map(|(wave, moves, phase)| {
                    moves * (AMPLITUDE_MM * (wave.dot(&p.coords) + phase).sin())
                });
                moved.sum()
            })
        }
        Kind::Scale => {
            let by = if direction().1 < 0.5 { -0.0015 } else { 0.0015 };
            Box::new(move |p| (p - centre) * by)
        }
        Kind::Step => {
            let ((across, _), (moves, _)) = (direction(), direction());
            Box::new(move |p| moves * (0.04 * ((p - centre).dot(&across) / 0.5).tanh()))
        }
    }
}

/// Root mean square displacement along an axis, about the mean, mm.
fn root_mean_square(moved: &[Vector3<f64>]) -> f64 {
    let count = moved.len() as f64;
    let mean = moved.iter().sum::<Vector3<f64>>() / count;
    let squares: f64 = moved.iter().map(|one| (one - mean).norm_squared()).sum();
    (squares / (3.0 * count)).sqrt()
}

/// A scan that errs, and by how much.
fn erring(scan: &Mesh, kind: Kind, seed: u64) -> (Mesh, f64) {
    let count = scan.vertices().len() as f64;
    let centre = Point3::from(
        scan.vertices()
            .iter()
            .map(|p| p.coords)
            .sum::<Vector3<f64>>()
            / count,
    );
    let error = error(kind, seed, centre);
    let moved: Vec<Vector3<f64>> = scan.vertices().iter().map(&error).collect();
    (scan.mapped(|p| p + error(p)), root_mean_square(&moved))
}

/// Share of the cover values of a scan that errs which their uncertainty holds.
fn held(made: &Phantom, [impression, tray]: [&Mesh; 2], scanner_uncertainty_mm: f64) -> f64 {
    let settings = MeasureSettings {
        scanner_uncertainty_mm,
        ..MeasureSettings::default()
    };
    let measuring = Measuring::new(impression, Some(tray), &settings);
    let cover = measuring.cover().expect("an impression");
    let cover = cover.expect("the tray is its own");
    let mut seen = 0;
    let mut within = 0;
    for ((mm, doubt), true_place) in (cover.at_vertex_mm.iter())
        .zip(&cover.uncertainty_at_vertex_mm)
        .zip(made.impression.vertices())
    {
        if let Some(mm) = mm
            && made.truth.is_tissue_side(true_place)
        {
            seen += 1;
            within += usize::from((mm - made.truth.cover_at(true_place)).abs() <= *doubt);
        }
    }
    f64::from(within as u32) / f64::from(seen.max(1))
}

/// Where the scans err by a known amount, the uncertainty of cover with the scanner's
/// term holds the error; what is claimed without it shows in the figure.
pub fn cover_with_the_scanners_own_term(population: Population) {
    let asked = population.asked("scanner-error");
    let trials: Vec<_> = (population.jaws_in_turn(2).into_iter())
        .flat_map(|(arch, seed)| KINDS.map(|(kind, _)| (arch, seed, kind)))
        .collect();
    let rows: Vec<Row> = asked.rows(trials, |&(arch, seed, kind)| {
        let made = Phantom::new(&Options {
            arch,
            seed: 970 + seed,
            edge_mm: 0.6,
            tray_edge_mm: 0.6,
            noise_sd_mm: 0.01,
            ..Options::default()
        });
        let (impression, one_mm) = erring(&made.impression, kind, 2 * seed);
        let (tray, other_mm) = erring(&made.tray, kind, 2 * seed + 1);
        let scanner_mm = one_mm.hypot(other_mm) / 2f64.sqrt();
        Row {
            kind,
            held: held(&made, [&impression, &tray], 2.0 * scanner_mm),
            held_without: held(&made, [&impression, &tray], 0.0),
            scanner_mm,
        }
    });
    for (kind, words) in KINDS {
        let of: Vec<&Row> = rows.iter().filter(|row| row.kind == kind).collect();
        let mean = |of_row: fn(&Row) -> f64| {
            of.iter().map(|row| of_row(row)).sum::<f64>() / of.len().max(1) as f64
        };
        asked.figure(
            &format!("scans err {words}: cover's uncertainty holds, with the scanner's term; without; root mean square of the error"),
            "93 to 100 %; -; -",
            format!(
                "{:.0} %; {:.0} %; {:.3} mm",
                100.0 * mean(|row| row.held),
                100.0 * mean(|row| row.held_without),
                mean(|row| row.scanner_mm)
            ),
        );
        assert!(mean(|row| row.held) >= 0.93, "{words}");
    }
}
