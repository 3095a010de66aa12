//! Landmarks of sound impressions: found, where they are, on their sides.

use crate::{Asked, Population};
use fixtures::quantile;
use measure::landmarks::{Landmark, LandmarkMark, LandmarkName, LandmarkSource, Unseen};
use measure::{MeasureSettings, Measuring, Side};
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use phantom::{Arch, Options, Phantom, Sides};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

fn made(arch: Arch, seed: u64, sides: Sides) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        sides,
        edge_mm: 0.3,
        tray_edge_mm: 2.5,
        noise_sd_mm: 0.02,
        handle: !seed.is_multiple_of(3),
        ..Options::default()
    })
}

fn landmarks_of(scan: &Mesh, settings: &MeasureSettings) -> Vec<Landmark> {
    Measuring::new(scan, None, settings).landmarks().to_vec()
}

/// What the phantom says of a landmark: its places on the sides that are asked
/// for, and those of its fellow on the other side.
fn truths(phantom: &Phantom, landmark: &Landmark) -> [Vec<Point3<f64>>; 2] {
    let own_side = |side: Option<phantom::Side>| match (landmark.side, side) {
        (None, _) => true,
        (Some(Side::Right), side) => side == Some(phantom::Side::Right),
        (Some(Side::Left), side) => side == Some(phantom::Side::Left),
    };
    let named = phantom
        .truth
        .landmarks
        .iter()
        .filter(|truth| truth.name == landmark.name.in_words());
    let (own, other): (Vec<&phantom::Landmark>, Vec<&phantom::Landmark>) =
        named.partition(|truth| own_side(truth.side));
    [own, other].map(|places| places.iter().map(|truth| truth.point).collect())
}

fn nearest_mm(places: &[Point3<f64>], to: &Point3<f64>) -> Option<f64> {
    places
        .iter()
        .map(|place: &Point3<f64>| (place - to).norm())
        .min_by(f64::total_cmp)
}

/// A landmark that the phantom has.
#[derive(Serialize, Deserialize)]
struct Row {
    name: String,
    seen: Option<Seen>,
}

#[derive(Serialize, Deserialize)]
struct Seen {
    error_mm: f64,
    held: bool,
    wrong_side: bool,
}

fn rows(phantom: &Phantom) -> Vec<Row> {
    let landmarks = landmarks_of(&phantom.impression, &MeasureSettings::default());
    let there = landmarks.iter().filter_map(|landmark| {
        let [own, other] = truths(phantom, landmark);
        if own.is_empty() {
            return None;
        }
        let seen = landmark.seen.as_ref().ok().and_then(|seen| {
            let error_mm = nearest_mm(&own, &seen.point)?;
            let off = nearest_mm(&other, &seen.point);
            Some(Seen {
                error_mm,
                held: error_mm <= seen.uncertainty_mm,
                wrong_side: off.is_some_and(|off| off < error_mm),
            })
        });
        Some(Row {
            name: landmark.name.in_words().to_owned(),
            seen,
        })
    });
    there.collect()
}

/// Landmarks are found near enough and on their sides; random pose, noise
/// 0.02 mm, edges 0.3 mm.
pub fn are_found_on_their_sides(population: Population) {
    for (sides, usual) in [(Sides::Both, 8), (Sides::Tissue, 4)] {
        for (arch, promise) in population.asked_of_each_jaw(&format!("landmarks-{sides:?}")) {
            let rows: Vec<Vec<Row>> = promise.rows(population.seeds(0, usual), |&seed| {
                rows(&made(arch, seed, sides))
            });
            let mut by_name: BTreeMap<String, Vec<Option<Seen>>> = BTreeMap::new();
            for row in rows.into_iter().flatten() {
                by_name.entry(row.name).or_default().push(row.seen);
            }
            let missed: Vec<String> = by_name
                .into_iter()
                .filter(|(name, tally)| !is_found(&promise, name, tally))
                .map(|(name, _)| name)
                .collect();
            assert!(missed.is_empty(), "{arch:?} {sides:?}: {missed:?}");
        }
    }
}

fn is_found(promise: &Asked, name: &str, tally: &[Option<Seen>]) -> bool {
    let seen: Vec<&Seen> = tally.iter().flatten().collect();
    let mut errors_mm: Vec<f64> = seen.iter().map(|seen| seen.error_mm).collect();
    let recall = seen.len() as f64 / tally.len() as f64;
    let [median, p95] = [0.5, 0.95].map(|part| match errors_mm.is_empty() {
        true => f64::NAN,
        false => quantile(&mut errors_mm, part),
    });
    let held = seen.iter().filter(|seen| seen.held).count();
    let wrong_side = seen.iter().filter(|seen| seen.wrong_side).count();
    // Foveae are pimples of 0.3 mm: found or not, they are never guessed.
    let is_bound = name != LandmarkName::FoveaePalatini.in_words();
    let least = if name == LandmarkName::IncisivePapilla.in_words() {
        0.90
    } else {
        0.95
    };
    let bar = match is_bound {
        true => format!("{:.0} %; 1.5 mm; none; 90 %; 0", 100.0 * least),
        false => "none".to_owned(),
    };
    promise.figure(
        &format!(
            "{name}: found; error, median; 95th percentile; stated uncertainty holds it; on the wrong side"
        ),
        &bar,
        format!(
            "{} of {}; {median:.2} mm; {p95:.2} mm; {held}; {wrong_side}",
            seen.len(),
            tally.len(),
        ),
    );
    !is_bound
        || recall >= least
            && median <= 1.5
            && wrong_side == 0
            && held as f64 >= 0.9 * seen.len() as f64
}

/// Pads and notches behind which nothing was scanned.
pub fn a_trough_that_does_not_close_is_told_from_one_that_does() {
    for (arch, name) in [
        (Arch::Maxillary, LandmarkName::HamularNotch),
        (Arch::Mandibular, LandmarkName::RetromolarPad),
    ] {
        let phantom = made(arch, 3, Sides::Both);
        let anterior = phantom.truth.axes.anterior;
        // Everything behind the middle of the limbs is gone.
        let along = |p: &Point3<f64>| p.coords.dot(&anterior);
        let ends = phantom.truth.landmarks.iter();
        let back = ends
            .filter(|l| l.name == name.in_words())
            .map(|l| along(&l.point))
            .fold(f64::INFINITY, f64::min);
        let mesh = &phantom.impression;
        let cut = mesh.filtered(|t| {
            let [a, b, c] = mesh.corners(t);
            [a, b, c].iter().all(|p| along(p) > back + 8.0)
        });
        let found = landmarks_of(&cut, &MeasureSettings::default());
        for landmark in found.iter().filter(|l| l.name == name) {
            assert!(
                matches!(landmark.seen, Err(Unseen::TroughOpen { .. })),
                "{landmark:?}"
            );
        }
    }
}

/// A landmark that someone has marked.
pub fn marks_take_precedence_and_are_looked_at_only_for_surface() {
    let phantom = made(Arch::Maxillary, 5, Sides::Both);
    let papilla = phantom
        .truth
        .landmarks
        .iter()
        .find(|l| l.name == "incisive papilla")
        .expect("maxillary phantoms have one");
    let mark = |point: Point3<f64>| LandmarkMark {
        name: LandmarkName::IncisivePapilla,
        side: None,
        point,
    };
    let with = |mark: LandmarkMark| {
        let settings = MeasureSettings {
            marks: vec![mark],
            ..MeasureSettings::default()
        };
        let all = landmarks_of(&phantom.impression, &settings);
        let mut own = all
            .into_iter()
            .filter(|l| l.name == LandmarkName::IncisivePapilla);
        let found = own.next().expect("a mark is told");
        assert!(own.next().is_none());
        assert_eq!(found.source, LandmarkSource::Marked);
        found
    };
    let on = with(mark(papilla.point));
    assert_eq!(on.seen.map(|seen| seen.point), Ok(papilla.point));
    let off = with(mark(papilla.point + Vector3::new(60.0, 60.0, 60.0)));
    assert_eq!(off.seen, Err(Unseen::NoSurface));
}
