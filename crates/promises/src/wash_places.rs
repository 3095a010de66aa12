//! What became of the bare and thin places of a first pass under its wash, over
//! phantoms whose tissue surface is raised by a formula, at some places hardly at
//! all.

use crate::wash_pair::WashPair;
use crate::{Asked, Population};
use fixtures::impression::{evidence, one};
use judge::{Evidence, LimitKey, PlaceState, Protocol, Stage, judge_case};
use measure::pair::PlaceNow;
use measure::{Scanned, SpotKind};
use nalgebra::Point3;
use phantom::{PlantedSpot, SpotTruth};
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
fn places(pair: &WashPair, before: &Scanned, wash_has_tray: bool) -> Vec<Told> {
    let truth = &pair.wash.truth;
    let name = format!("{:?} {}", truth.arch, truth.seed);
    let now = pair.second_pass(wash_has_tray);
    let passes = pair.compared(before, &now);
    let found = (passes.as_ref()).unwrap_or_else(|why| panic!("{name}: {why}"));
    let compared = (found.wash.as_ref()).unwrap_or_else(|why| panic!("{name}: {why}"));
    let judged = judge_case(
        &one(None, Stage::Wash),
        &[Evidence {
            pair: Some(&passes),
            ..evidence(&now, 0)
        }],
        None,
        &Protocol::default(),
    );
    (compared.places.iter().cloned())
        .zip(&judged.impressions[0].wash_places)
        .map(|(place, &state)| {
            // Planted spots that touch are one place.
            let reach_mm = (place.area_mm2 / PI).sqrt() + 2.0;
            let (own, other): (Vec<&SpotTruth>, Vec<&SpotTruth>) =
                (truth.spots.iter()).partition(|spot| (spot.centre - place.at).norm() <= reach_mm);
            assert!(!own.is_empty(), "{name}: {place:?} was not planted");
            let limit_mm = limit_mm(place.kind);
            let to = |p: &Point3<f64>, spots: &[&SpotTruth]| -> f64 {
                let off = spots.iter().map(|spot| (spot.centre - p).norm());
                off.fold(f64::INFINITY, f64::min)
            };
            let mut below: Vec<f64> = (pair.raised())
                .filter(|(_, made)| to(made, &own) <= (1.5 * reach_mm).min(to(made, &other)))
                .filter(|(_, made)| truth.is_tissue_side(made))
                .filter(|(_, made)| truth.cover_at(made) <= limit_mm)
                .map(|(p, _)| truth.cover_at(p))
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

/// Places under a wash that has its own tray scan, and under one whose cover
/// follows from that of the first pass.
pub fn are_told_with_its_tray_and_through_the_first_pass(population: Population) {
    let promise = population.asked("places-under-a-wash");
    let trials = population.both_jaws(400, 2);
    let told: Vec<[Vec<Row>; 2]> = promise.rows(trials, |&(arch, seed)| {
        let spots = PlantedSpot::random(arch, seed, 3, 3);
        let pair = WashPair::new((arch, seed), spots, planted_mm);
        let before = pair.first_pass();
        [true, false].map(|wash_has_tray| {
            let told = places(&pair, &before, wash_has_tray);
            told.iter().map(row).collect()
        })
    });
    let (with_its_tray, through_the_first): (Vec<_>, Vec<_>) =
        told.into_iter().map(<(Vec<Row>, Vec<Row>)>::from).unzip();
    are_told(&promise, "its tray given", with_its_tray.concat());
    are_told(&promise, "first tray alone", through_the_first.concat());
}

fn are_told(promise: &Asked, trays: &str, told: Vec<Row>) {
    let [resolved, open, unclear, unseen] =
        [0, 1, 2, 3].map(|number| told.iter().filter(|row| row.0 == number).count());
    let wrong: Vec<&String> = (told.iter().filter(|row| !row.1).map(|row| &row.2)).collect();
    promise.figure(
        &format!("{trays}, wash of 0.03 to 0.8 mm, edges 0.45 mm: resolved; still open; too near the limit to tell; not seen; wrong"),
        "wrong 0",
        format!("{resolved}; {open}; {unclear}; {unseen}; {}", wrong.len()),
    );
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(resolved > 0 && open > 0);
    assert!(unclear * 4 <= told.len());
}
