//! An impression that was cut apart, from a case file to its results.
#![allow(clippy::unwrap_used)]

use check::{CheckOptions, CheckedCase, check_case};
use judge::{Case, Check, Protocol};
use mesh::Mesh;
use mesh::write::write_ply;
use nalgebra::{Isometry3, Vector3};
use phantom::{Arch, HalfSpace, Options, Phantom, PlantedSpot, Pose, part};
use std::fs;
use tempfile::TempDir;

const SAW_MM: f64 = 0.8;

fn made(seed: u64) -> Phantom {
    Phantom::new(&Options {
        arch: Arch::Maxillary,
        seed,
        edge_mm: 0.7,
        tray_edge_mm: 0.9,
        pose: Pose::AsMade,
        spots: PlantedSpot::random(Arch::Maxillary, seed, 1, 0),
        ..Options::default()
    })
}

/// The front part and the back part, each in a pose of its own.
fn cut(whole: &Mesh) -> [Mesh; 2] {
    let halves = [
        HalfSpace::above(1, 12.0),
        HalfSpace::below(1, 12.0 - SAW_MM),
    ];
    let turns = [[0.4, -1.2, 0.3], [1.9, 0.2, -0.8]].map(Vector3::from);
    [0, 1].map(|k| part(whole, &[halves[k]]).moved(&Isometry3::new(turns[k] * 20.0, turns[k])))
}

fn checked(files: &[(&str, &Mesh)], keys: &str) -> CheckedCase {
    let folder = TempDir::new().expect("a folder can be made");
    for (name, mesh) in files {
        write_ply(&folder.path().join(name), mesh).expect("a scan can be written");
    }
    let file = folder.path().join("case.toml");
    fs::write(&file, format!("case = \"P-1\"\n[maxillary]\n{keys}")).expect("and its case");
    let options = CheckOptions {
        unit: None,
        protocol: Protocol::default(),
        shelves: Default::default(),
    };
    check_case(
        Case::from_file(&file).expect("the case is sound"),
        &options,
        &|_| {},
    )
    .expect("every scan can be read")
}

fn codes(case: &CheckedCase) -> Vec<Check> {
    let checks = case.judged.findings.iter().map(|finding| finding.check);
    checks
        .filter(|check| *check != Check::WashMissing)
        .collect()
}

#[test]
fn an_impression_in_parts_gets_the_findings_of_the_whole() {
    let made = made(5);
    let [front, back] = cut(&made.impression);
    let files = [
        ("whole.ply", &made.impression),
        ("front.ply", &front),
        ("back.ply", &back),
        ("tray.ply", &made.tray),
    ];
    let whole = checked(&files, "one_step = \"whole.ply\"\ntray = \"tray.ply\"");
    let parts = checked(
        &files,
        "one_step = [\"back.ply\", \"front.ply\"]\ntray = \"tray.ply\"",
    );
    assert!(codes(&whole).contains(&Check::ShowThrough));
    let first = &parts.judged.findings[0].instruction.to_string();
    assert_eq!(codes(&parts), codes(&whole), "{first}");
    let of_parts = parts.impressions[0].parts.as_ref().unwrap();
    let joined = of_parts.joined.as_ref().unwrap();
    assert!(
        (joined.width_mm - SAW_MM).abs() < 0.2,
        "{}",
        joined.width_mm
    );
    // Places are those of the tray's scan.
    let [spot, same] =
        [&parts, &whole].map(|case| &case.impressions[0].measured().unwrap().spots[0]);
    let whole_from_tray = (whole.impressions[0]
        .measured()
        .unwrap()
        .cover
        .as_ref()
        .unwrap())
    .registration
    .as_ref()
    .unwrap()
    .impression_from_tray;
    assert!((whole_from_tray * spot.centre - same.centre).norm() < 0.5);
    // The cut itself is not judged, and that is said.
    let names = |case: &CheckedCase| -> Vec<&'static str> {
        let entries = case.judged.impressions[0].not_judged.iter();
        entries.map(|entry| entry.what.name()).collect()
    };
    assert!(names(&parts).contains(&"cut") && !names(&whole).contains(&"cut"));
    assert_eq!(parts.impressions[0].scan.sha256.len(), 64);
}

#[test]
fn parts_of_two_impressions_are_no_impression() {
    let made = [5, 6].map(made);
    let [front, _] = cut(&made[0].impression);
    let [_, back] = cut(&made[1].impression);
    let files = [
        ("front.ply", &front),
        ("back.ply", &back),
        ("tray.ply", &made[0].tray),
    ];
    let case = checked(
        &files,
        "one_step = [\"front.ply\", \"back.ply\"]\ntray = \"tray.ply\"",
    );
    assert!(case.impressions[0].measured().is_none());
    let finding = &case.judged.findings[0];
    assert_eq!(finding.check, Check::NotAnImpression);
    assert!(
        finding.instruction.to_string().contains("part 2"),
        "{}",
        finding.instruction.to_string()
    );
}
