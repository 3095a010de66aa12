//! Landmarks that are gone are never called recorded: phantoms with the border
//! cut across them, holes and voids in their places.

#![allow(clippy::print_stdout, reason = "the figures are what the test is for")]

mod common;

use common::{evidence, input, settings};
use judge::{Case, LandmarkStatus, Protocol, Stage, judge_case};
use measure::landmarks::LandmarkName;
use measure::{ImpressionMeasurement, measure};
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

fn measured(mesh: &Mesh) -> ImpressionMeasurement {
    measure(mesh, None, &settings(), &|_| {})
}

fn statuses(measurement: &ImpressionMeasurement) -> Vec<(LandmarkName, LandmarkStatus, usize)> {
    let case = Case::of_one("D-1", input(None, Stage::Single));
    let judged = judge_case(
        &case,
        &[evidence(measurement, 0)],
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

#[test]
fn all_landmarks_of_sound_impressions_are_recorded() {
    let mut told: BTreeMap<(LandmarkName, String), usize> = BTreeMap::new();
    for arch in [Arch::Maxillary, Arch::Mandibular] {
        for seed in 60..72 {
            let found = statuses(&measured(&made(arch, seed).impression));
            for (name, status, findings) in found.into_iter().filter(|f| matters(f.0)) {
                *told.entry((name, format!("{status:?}"))).or_default() += 1;
                assert_eq!(status == LandmarkStatus::Recorded, findings == 0, "{name}");
                assert!(
                    matches!(status, LandmarkStatus::Recorded | LandmarkStatus::NotFound),
                    "{arch:?} {seed}: {name} {status:?}"
                );
            }
        }
    }
    println!("landmarks of 24 sound impressions: {told:?}");
    let of = |wanted: bool| -> usize {
        told.iter()
            .filter(|(key, _)| (key.1 == "Recorded") == wanted)
            .map(|(_, count)| count)
            .sum()
    };
    assert!(of(false) as f64 <= 0.05 * of(true) as f64);
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

#[test]
fn landmarks_that_are_gone_are_never_recorded() {
    let mut told: BTreeMap<String, usize> = BTreeMap::new();
    for arch in [Arch::Maxillary, Arch::Mandibular] {
        for seed in 80..83 {
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
                    assert_eq!(findings, usize::from(status != LandmarkStatus::Recorded));
                }
            }
        }
    }
    println!("landmarks that are gone: {told:?}");
    let wrong: usize = told
        .iter()
        .filter(|(key, _)| key.ends_with("Recorded") || key.ends_with("NotFound"))
        .map(|(_, count)| count)
        .sum();
    assert_eq!(wrong, 0);
}
