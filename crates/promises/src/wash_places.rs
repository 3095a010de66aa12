//! What became of the bare and thin places of a first pass under its wash, over
//! phantoms whose tissue surface is raised by a formula, at some places hardly at
//! all.

use crate::{Asked, Population};
use fixtures::impression::{evidence, one};
use judge::{LimitKey, PlaceState, Protocol, Stage, judge_case};
use measure::wash::PlaceNow;
use measure::{ImpressionMeasurement, MeasureSettings, SpotKind, cover, measure, passes};
use mesh::Mesh;
use nalgebra::Point3;
use phantom::{Arch, Options, Phantom, PlantedSpot, Pose, SpotTruth};
use std::f64::consts::PI;

/// Thickness of the wash, mm: 0.15 to 0.8 in waves over the arch, but pressed
/// away to 0.03 at every other planted place.
fn planted_mm(p: &Point3<f64>, spots: &[SpotTruth]) -> f64 {
    let pressed = (spots.iter().step_by(2))
        .map(|spot| (p - spot.centre).norm())
        .fold(f64::INFINITY, f64::min);
    let part = ((pressed - 4.0) / 3.0).clamp(0.0, 1.0);
    let wave = 0.475 + 0.325 * (p.x / 9.0).sin() * (p.y / 13.0).cos();
    0.03 + (wave - 0.03) * part * part * (3.0 - 2.0 * part)
}

/// The points of a phantom with its tissue surface raised along its normals.
fn raised_points(phantom: &Phantom) -> Vec<Point3<f64>> {
    let mesh = &phantom.impression;
    (mesh.vertices().iter())
        .zip(cover::angle_weighted_normals(mesh))
        .map(|(p, normal)| {
            let on_tissue = phantom.truth.is_tissue_side(p);
            let mm = on_tissue.then(|| planted_mm(p, &phantom.truth.spots));
            p + normal.normalize() * mm.unwrap_or(0.0)
        })
        .collect()
}

/// Cover that a place must have to be resolved, mm.
fn limit_mm(kind: SpotKind) -> f64 {
    let key = match kind {
        SpotKind::ShowThrough => LimitKey::ShowThrough,
        SpotKind::Thin => LimitKey::ThinCover,
    };
    Protocol::default().limit(key).value
}

/// What is kept of a place: the number of its state, whether that is right, and
/// both in words.
type Row = (usize, bool, String);

/// A place of the first pass: its state as judged, its figures, and its least
/// cover under the wash by formula (over some half a square millimetre), mm.
struct Told {
    state: PlaceState,
    place: PlaceNow,
    truth_mm: f64,
}

/// All places of one pair. Without its own tray scan, the wash's cover is that
/// of the first pass and what the wash added.
fn places(arch: Arch, seed: u64, wash_has_tray: bool) -> Vec<Told> {
    let options = Options {
        arch,
        seed,
        edge_mm: 0.4,
        tray_edge_mm: 0.5,
        noise_sd_mm: 0.02,
        spots: PlantedSpot::random(arch, seed, 3, 3),
        ..Options::default()
    };
    let first = Phantom::new(&options);
    // The same surface, triangulated anew, elsewhere.
    let wash = Phantom::new(&Options {
        edge_mm: 0.45,
        pose: Pose::AsMade,
        ..options
    });
    let raised = raised_points(&wash);
    let triangles = wash.impression.triangles().to_vec();
    let scan = Mesh::new(raised.clone(), triangles, None).expect("the same triangles");
    let measured = |scan: &Mesh, tray: Option<&Mesh>| -> ImpressionMeasurement {
        measure(scan, tray, &MeasureSettings::default(), &|_| {})
    };
    let before = measured(&first.impression, Some(&first.tray));
    let mut now = measured(&scan, wash_has_tray.then_some(&wash.tray));
    let compared = passes::compare((&first.impression, &before), (&scan, &now))
        .and_then(|comparison| comparison.wash)
        .unwrap_or_else(|why| panic!("{arch:?} {seed}: {why}"));
    now.wash = Some(Ok(compared.clone()));
    let judged = judge_case(
        &one(None, Stage::Wash),
        &[evidence(&now, 0)],
        None,
        &Protocol::default(),
    );
    (compared.places.into_iter())
        .zip(&judged.impressions[0].wash_places)
        .map(|(place, &state)| {
            // Planted spots that touch are one place.
            let reach_mm = (place.area_mm2 / PI).sqrt() + 2.0;
            let (own, other): (Vec<&SpotTruth>, Vec<&SpotTruth>) = (wash.truth.spots.iter())
                .partition(|spot| (spot.centre - place.at).norm() <= reach_mm);
            assert!(
                !own.is_empty(),
                "{arch:?} {seed}: {place:?} was not planted"
            );
            let limit_mm = limit_mm(place.kind);
            let to = |p: &Point3<f64>, spots: &[&SpotTruth]| -> f64 {
                let off = spots.iter().map(|spot| (spot.centre - p).norm());
                off.fold(f64::INFINITY, f64::min)
            };
            let mut below: Vec<f64> = (raised.iter().zip(wash.impression.vertices()))
                .filter(|(_, made)| to(made, &own) <= (1.5 * reach_mm).min(to(made, &other)))
                .filter(|(_, made)| wash.truth.is_tissue_side(made))
                .filter(|(_, made)| wash.truth.cover_at(made) <= limit_mm)
                .map(|(p, _)| wash.truth.cover_at(p))
                .collect();
            below.sort_by(f64::total_cmp);
            // Single vertices are raised into spikes where the surface bends.
            let truth_mm = below[2.min(below.len() - 1)];
            Told {
                state,
                place,
                truth_mm,
            }
        })
        .collect()
}

fn row(told: &Told) -> Row {
    let Told {
        state,
        place,
        truth_mm,
    } = told;
    let above_mm = truth_mm - limit_mm(place.kind);
    let (number, right) = match state {
        PlaceState::Resolved => (0, above_mm >= -place.uncertainty_mm),
        PlaceState::StillOpen => (1, above_mm < place.uncertainty_mm),
        PlaceState::Unclear => (2, above_mm.abs() <= 2.0 * place.uncertainty_mm),
        PlaceState::NotSeen => (3, false),
    };
    let words = format!("{state:?}, by formula {truth_mm:.3} mm: {place:?}");
    (number, right, words)
}

fn are_told(promise: &Asked, population: Population, wash_has_tray: bool) {
    let trials = population.both_jaws(400, 2);
    let told: Vec<Vec<Row>> = promise.rows(trials, |&(arch, seed)| {
        places(arch, seed, wash_has_tray).iter().map(row).collect()
    });
    let told: Vec<Row> = told.into_iter().flatten().collect();
    let [resolved, open, unclear, unseen] =
        [0, 1, 2, 3].map(|number| told.iter().filter(|row| row.0 == number).count());
    let wrong: Vec<&String> = (told.iter().filter(|row| !row.1).map(|row| &row.2)).collect();
    promise.figure(
        "wash of 0.03 to 0.8 mm, edges 0.45 mm: resolved; still open; too near the limit to tell; not seen; wrong",
        "wrong 0",
        format!("{resolved}; {open}; {unclear}; {unseen}; {}", wrong.len()),
    );
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(resolved > 0 && open > 0);
    assert!(unclear * 4 <= told.len());
}

/// Places under a wash that has its own tray scan.
pub fn with_its_tray_are_told(population: Population) {
    are_told(
        &population.asked("places-under-a-wash-its-tray-given"),
        population,
        true,
    );
}

/// Places under a wash whose cover follows from that of the first pass.
pub fn are_told_through_the_first_pass(population: Population) {
    are_told(
        &population.asked("places-under-a-wash-first-tray-alone"),
        population,
        false,
    );
}
