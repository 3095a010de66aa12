//! Landmarks that are gone are never called recorded: phantoms with the border
//! cut across them, holes and voids in their places.

use crate::Population;
use fixtures::impression::{evidence, input, scanned};
use judge::{Case, LandmarkStatus, Protocol, Stage, judge_case};
use measure::landmarks::LandmarkName;
use measure::{MeasureSettings, Measurement};
use mesh::Mesh;
use nalgebra::Point3;
use phantom::{Arch, Options, Phantom};
use std::collections::BTreeMap;

fn made(arch: Arch, seed: u64) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        edge_mm: 0.3,
        tray_edge_mm: 2.5,
        noise_sd_mm: 0.02,
        ..Options::default()
    })
}

fn measured(mesh: &Mesh) -> Measurement {
    fixtures::measured(mesh, None, &MeasureSettings::default())
}

fn statuses(measurement: &Measurement) -> Vec<(LandmarkName, LandmarkStatus, usize)> {
    let case = Case::of_one("D-1", input(None, Stage::Single));
    let judged = judge_case(
        &case,
        &[evidence(&scanned(measurement), 0)],
        None,
        &Protocol::default(),
    );
    let about = |number: usize| {
        judged
            .findings
            .iter()
            .filter(|finding| finding.landmark == Some(number))
            .count()
    };
    measurement
        .landmarks
        .iter()
        .zip(&judged.impressions[0].landmarks)
        .enumerate()
        .map(|(number, (landmark, judged))| (landmark.name, judged.status, about(number)))
        .collect()
}

/// Landmarks whose loss must be seen.
fn matters(name: LandmarkName) -> bool {
    !matches!(
        name,
        LandmarkName::FoveaePalatini | LandmarkName::Rugae | LandmarkName::Tuberosity
    )
}

fn is_there(status: LandmarkStatus) -> bool {
    matches!(status, LandmarkStatus::Recorded | LandmarkStatus::Reached)
}

/// How often each came out so.
type Counts = BTreeMap<String, usize>;

fn summed(rows: Vec<Counts>) -> Counts {
    let mut all = Counts::new();
    for (what, count) in rows.into_iter().flatten() {
        *all.entry(what).or_default() += count;
    }
    all
}

fn written(counts: &Counts) -> String {
    let each: Vec<String> =
        (counts.iter().map(|(what, count)| format!("{what} {count}"))).collect();
    each.join(", ")
}

/// Landmarks of sound impressions are recorded; none is called cut short or
/// obscured.
pub fn all_of_sound_impressions_are_recorded(population: Population) {
    let promise = population.asked("landmarks-of-sound-impressions");
    let rows: Vec<Counts> = promise.rows(population.both_jaws(60, 4), |&(arch, seed)| {
        let mut told = Counts::new();
        let found = statuses(&measured(&made(arch, seed).impression));
        for (name, status, findings) in found.into_iter().filter(|f| matters(f.0)) {
            *told.entry(format!("{status:?}")).or_default() += 1;
            assert_eq!(status == LandmarkStatus::NotFound, findings > 0, "{name}");
            assert!(
                is_there(status) || status == LandmarkStatus::NotFound,
                "{arch:?} {seed}: {name} {status:?}"
            );
        }
        told
    });
    let told = summed(rows);
    promise.figure(
        "landmarks by status",
        "95 % recorded, or reached; none called cut short or obscured",
        written(&told),
    );
    let missed = told.get("NotFound").copied().unwrap_or(0);
    let all: usize = told.values().sum();
    assert!(missed as f64 <= 0.05 * all as f64);
}

/// Without what lies within a radius of a place.
fn with_hole(mesh: &Mesh, place: &Point3<f64>, radius_mm: f64) -> Mesh {
    mesh.filtered(|t| {
        let [a, b, c] = mesh.corners(t);
        [a, b, c].iter().all(|p| (p - place).norm() > radius_mm)
    })
}

/// Without what lies beyond a place, seen from the middle of the impression.
fn cut_across(mesh: &Mesh, place: &Point3<f64>, origin: &Point3<f64>, width_mm: f64) -> Mesh {
    let out = place - origin;
    let reach = out.norm();
    let away = out / reach;
    mesh.filtered(|t| {
        let [a, b, c] = mesh.corners(t);
        ![a, b, c].iter().any(|p| {
            let from = p - origin;
            let along = from.dot(&away);
            along > reach - 1.5 && (from - away * along).norm() < width_mm
        })
    })
}

/// Landmarks with the border cut across them or a hole in their place.
pub fn those_that_are_gone_are_never_recorded(population: Population) {
    let promise = population.asked("landmarks-that-are-gone");
    let rows: Vec<Counts> = promise.rows(population.both_jaws(80, 2), |&(arch, seed)| {
        let mut told = Counts::new();
        let phantom = made(arch, seed);
        let mesh = &phantom.impression;
        let crest = &phantom.truth.crest_line;
        let sum: nalgebra::Vector3<f64> = crest.iter().map(|p| p.coords).sum();
        let origin = &Point3::from(sum / crest.len() as f64);
        for truth in &phantom.truth.landmarks {
            let Some(name) = LandmarkName::ALL
                .into_iter()
                .find(|name| name.in_words() == truth.name && matters(*name))
            else {
                continue;
            };
            let mut ways = vec![("hole", with_hole(mesh, &truth.point, 3.0))];
            if name != LandmarkName::IncisivePapilla {
                ways.push(("cut", cut_across(mesh, &truth.point, origin, 6.0)));
            }
            for (way, gone) in ways {
                let measurement = measured(&gone);
                let own_side = |side: Option<measure::Side>| {
                    side.map(|s| format!("{s:?}")) == truth.side.map(|s| format!("{s:?}"))
                };
                let statuses = statuses(&measurement);
                let (_, status, findings) = measurement
                    .landmarks
                    .iter()
                    .zip(statuses)
                    .find(|(l, _)| l.name == name && own_side(l.side))
                    .map(|(_, status)| status)
                    .expect("every landmark is told");
                *told.entry(format!("{way}: {status:?}")).or_default() += 1;
                if !matches!(status, LandmarkStatus::CutShort | LandmarkStatus::Obscured) {
                    println!(
                        "{arch:?} {seed} {} {:?} {way}: {status:?}",
                        truth.name, truth.side
                    );
                }
                assert!(is_there(status) || findings == 1);
            }
        }
        told
    });
    let told = summed(rows);
    promise.figure(
        "hole of 6 mm or cut: landmarks by status",
        "none recorded or not found",
        written(&told),
    );
    let wrong: usize = told
        .iter()
        .filter(|(key, _)| {
            ["Recorded", "Reached", "NotFound"]
                .iter()
                .any(|status| key.ends_with(status))
        })
        .map(|(_, count)| count)
        .sum();
    assert_eq!(wrong, 0);
}
