//! How the tray was seated, and cover without its scan.

use crate::Population;
use crate::errors::Errors;
use fixtures::quantile;
use measure::tray_fit::{Amount, Seating};
use measure::{Cover, CoverMethod, MeasureSettings, Measuring, TrayThickness};
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use phantom::{Arch, Options, Phantom, PlantedSpot};
use serde::{Deserialize, Serialize};

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
    let settings = MeasureSettings::default();
    let measuring = Measuring::new(scan, Some(tray), &settings);
    let cover = || measuring.cover().map(|cover| cover.map(|_| ()));
    let fit = (measuring.tray_fit()).unwrap_or_else(|| panic!("{:?}", cover()));
    assert!(fit.zones.len() > 5);
    fit.seating.clone().expect("cover is known widely")
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

/// A tray that was moved and turned in its impression, beside the same tray
/// unmoved.
pub fn a_tray_that_stood_askew_is_found_out(population: Population) {
    let promise = population.asked("tray-seated-askew");
    let trials = population.both_jaws(0, 2);
    // Shifts in mm, tilts in degrees, both by the patient's sides. A turn about
    // the right axis lifts the front where right, front and seating are a
    // right-handed triple; so they are in the upper jaw, and not in the lower.
    let outcomes: Vec<[[f64; 3]; 5]> = promise.rows(trials.clone(), |&(arch, seed)| {
        let made = phantom(arch, seed);
        let hand = if arch == Arch::Maxillary { 1.0 } else { -1.0 };
        let (right, anterior, front_up, right_up, turned) = (0.8, -0.5, 1.2f64, -0.9f64, 0.7f64);
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
    });
    for (trial, outcome) in trials.iter().zip(&outcomes) {
        println!("{trial:?} [planted, found, plain]: {outcome:.2?}");
    }
    let worst = |figures: std::ops::Range<usize>| {
        let all = outcomes
            .iter()
            .flat_map(|outcome| &outcome[figures.clone()]);
        let errors = all.map(|[planted, found, _]| (found - planted).abs());
        errors.fold(0.0, f64::max)
    };
    promise.figure(
        "moved by 0.8 and -0.5 mm, tilted and turned by 0.7 to 1.2°: worst error beside the same tray unmoved",
        "0.2 mm, 0.3°",
        format!("{:.2} mm, {:.2}°", worst(0..2), worst(2..5)),
    );
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

fn two_sided(made: &Phantom, uncertainty_mm: f64) -> Cover {
    let settings = MeasureSettings {
        tray_thickness: Some(TrayThickness {
            mm: made.truth.tray_thickness_mm,
            uncertainty_mm,
        }),
        ..MeasureSettings::default()
    };
    Measuring::new(&made.impression, None, &settings)
        .cover()
        .expect("a phantom is an impression")
        .cloned()
        .unwrap_or_else(|why| panic!("{:?} {}: {why}", made.truth.arch, made.truth.seed))
}

/// What is kept of one impression whose tray's thickness was stated.
#[derive(Serialize, Deserialize)]
struct Row {
    bias_mm: f64,
    median_mm: f64,
    p95_mm: f64,
    stated_mm: f64,
    held: f64,
}

/// Cover by a stated thickness of the tray, at every vertex.
pub fn cover_by_a_stated_thickness_agrees_with_the_formula(population: Population) {
    let promise = population.asked("cover-by-a-stated-thickness");
    let trials = population.both_jaws(0, 2);
    let rows: Vec<Row> = promise.rows(trials.clone(), |&(arch, seed)| {
        let made = phantom(arch, seed);
        let cover = two_sided(&made, 0.05);
        assert!(matches!(cover.method, CoverMethod::TwoSided { .. }));
        assert!(cover.registration.is_none());
        let mut signed: Vec<f64> = (made.impression.vertices().iter())
            .zip(&cover.at_vertex_mm)
            .filter_map(|(p, mm)| Some((*mm)? - made.truth.cover_at(p)))
            .collect();
        let held = signed
            .iter()
            .filter(|e| e.abs() <= cover.uncertainty_mm)
            .count();
        let errors: Errors = signed.iter().copied().collect();
        Row {
            bias_mm: quantile(&mut signed, 0.5),
            median_mm: errors.quantile(0.5),
            p95_mm: errors.quantile(0.95),
            stated_mm: cover.uncertainty_mm,
            held: held as f64 / signed.len() as f64,
        }
    });
    let worst = |of: fn(&Row) -> f64| rows.iter().map(of).fold(0.0, f64::max);
    promise.figure(
        "edges 0.5 mm, noise 0.02 mm: absolute error, median and 95th percentile of the worst; bias at most; stated at most",
        "median 0.1 mm",
        format!(
            "{:.3}, {:.2} mm; {:.3} mm; {:.3} mm",
            worst(|row| row.median_mm),
            worst(|row| row.p95_mm),
            worst(|row| row.bias_mm.abs()),
            worst(|row| row.stated_mm),
        ),
    );
    let least_held = rows.iter().map(|row| row.held).fold(1.0, f64::min);
    promise.figure(
        "stated uncertainty holds the error, least",
        "90 %",
        format!("{:.0} %", 100.0 * least_held),
    );
    for (row, trial) in rows.iter().zip(&trials) {
        assert!(row.median_mm <= 0.1, "{trial:?}");
        assert!(row.held >= 0.9, "{trial:?}");
    }
}

/// Without a stated thickness or a tray's scan there is no cover.
pub fn without_a_stated_thickness_nothing_is_taken_for_cover() {
    let made = phantom(Arch::Maxillary, 3);
    let settings = MeasureSettings::default();
    let measuring = Measuring::new(&made.impression, None, &settings);
    assert!(measuring.cover().is_some_and(|cover| cover.is_err()));
    assert!(measuring.spots().is_empty() && measuring.tray_fit().is_none());
}
