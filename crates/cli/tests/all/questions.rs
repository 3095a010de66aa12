//! What a scan means is asked about, in words, from the file to the exit
//! status; nothing is asked of a sound one.
#![allow(clippy::unwrap_used)]

use crate::common::run;
use fixtures::together;
use mesh::Mesh;
use mesh::write::write_ply;
use nalgebra::{Point3, Translation3};
use phantom::{Arch, Options, Phantom, PlantedSpot, Pose, cast_from};
use rstest::rstest;
use serde_json::Value;
use tempfile::TempDir;

/// Checks that ask something of the operator before anything is judged.
const QUESTIONS: [&str; 5] = [
    "file-unclear",
    "unit-unclear",
    "not-an-impression",
    "arch-mismatch",
    "orientation-unclear",
];

fn options(arch: Arch, seed: u64) -> Options {
    Options {
        arch,
        seed,
        edge_mm: 0.8,
        tray_edge_mm: 0.8,
        noise_sd_mm: 0.02,
        spots: PlantedSpot::random(arch, seed, 6, 2),
        ..Options::default()
    }
}

/// A folder with an impression and its tray, scaled.
fn folder_of(phantom: &Phantom, factor: f64) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    for (name, mesh) in [
        ("scan.ply", &phantom.impression),
        ("tray.ply", &phantom.tray),
    ] {
        write_ply(&folder.path().join(name), &mesh.scaled(factor)).unwrap();
    }
    folder
}

/// The questions of a check and its summary, which names each.
fn asked(folder: &TempDir, more: &[&str]) -> Vec<(String, String)> {
    let arguments = [&["check", "--json", "--no-report"], more].concat();
    let outcome = run(folder.path(), &arguments);
    assert_ne!(outcome.code, Some(2), "{}", outcome.complaint);
    let result: Value = serde_json::from_str(&outcome.out).unwrap();
    let text = |finding: &Value, key: &str| finding[key].as_str().unwrap().to_owned();
    let questions: Vec<(String, String)> = result["findings"]
        .as_array()
        .unwrap()
        .iter()
        .map(|f| (text(f, "check"), text(f, "instruction")))
        .filter(|(check, _)| QUESTIONS.contains(&check.as_str()))
        .collect();
    // A question leaves that impression undecided.
    if !questions.is_empty() && result["impressions"].as_array().unwrap().len() == 1 {
        assert_eq!(outcome.code, Some(3));
        assert_eq!(result["verdict"], "undecided");
    }
    questions
}

fn asks(questions: &[(String, String)], check: &str, words: &str) -> bool {
    questions
        .iter()
        .any(|(code, instruction)| code == check && instruction.contains(words))
}

#[rstest]
fn the_unit_is_told_from_the_size_and_answered(
    #[values(Arch::Maxillary, Arch::Mandibular)] arch: Arch,
    #[values(0, 1)] seed: u64,
) {
    let phantom = Phantom::new(&options(arch, seed));
    let scan = ["scan.ply", "--tray", "tray.ply"];
    assert_eq!(asked(&folder_of(&phantom, 1.0), &scan), []);
    for (unit, in_mm) in [("cm", 10.0), ("m", 1000.0), ("in", 25.4)] {
        let folder = folder_of(&phantom, 1.0 / in_mm);
        let questions = asked(&folder, &scan);
        let wanted = format!("--unit {unit};");
        assert!(
            asks(&questions, "unit-unclear", &wanted),
            "{unit}: {questions:?}"
        );
        assert!(questions.iter().all(|(check, _)| check == "unit-unclear"));
        let answered = [&scan[..], &["--unit", unit]].concat();
        assert_eq!(asked(&folder, &answered), [], "{unit}");
    }
}

#[test]
fn what_is_no_impression_is_named() {
    let phantom = Phantom::new(&options(Arch::Maxillary, 3));
    let other = Phantom::new(&options(Arch::Mandibular, 4));
    let beside = other
        .impression
        .clone()
        .moved(&Translation3::new(220.0, 0.0, 0.0).into());
    for (scan, words) in [
        (cast_from(&phantom), "cast"),
        (together(&phantom.impression, &beside), "two separate scans"),
    ] {
        let folder = folder_of(&phantom, 1.0);
        write_ply(&folder.path().join("scan.ply"), &scan).unwrap();
        let questions = asked(&folder, &["scan.ply", "--tray", "tray.ply"]);
        assert!(
            asks(&questions, "not-an-impression", words),
            "{questions:?}"
        );
    }
    let folder = folder_of(&phantom, 1.0);
    let questions = asked(&folder, &["tray.ply", "--tray", "scan.ply"]);
    assert!(
        asks(&questions, "not-an-impression", "exchanged"),
        "{questions:?}"
    );
}

#[test]
fn a_jaw_declared_wrongly_is_asked_about() {
    for (arch, wrong) in [
        (Arch::Maxillary, "mandibular"),
        (Arch::Mandibular, "maxillary"),
    ] {
        let folder = folder_of(&Phantom::new(&options(arch, 5)), 1.0);
        let questions = asked(
            &folder,
            &["scan.ply", "--tray", "tray.ply", "--arch", wrong],
        );
        assert!(asks(&questions, "arch-mismatch", wrong), "{questions:?}");
    }
}

#[test]
fn one_file_twice_and_a_mirrored_second_pass_are_asked_about() {
    let phantom = Phantom::new(&options(Arch::Mandibular, 1));
    let folder = folder_of(&phantom, 1.0);
    let second = Phantom::new(&Options {
        edge_mm: 0.7,
        pose: Pose::AsMade,
        ..options(Arch::Mandibular, 1)
    })
    .impression;
    let mirror = second
        .vertices()
        .iter()
        .map(|p| Point3::new(-p.x, p.y, p.z))
        .collect();
    let mirrored = Mesh::new(mirror, second.triangles().to_vec(), None)
        .unwrap()
        .turned_inside_out();
    write_ply(&folder.path().join("true.ply"), &second).unwrap();
    write_ply(&folder.path().join("mirrored.ply"), &mirrored).unwrap();
    for (wash, question) in [
        ("scan.ply", Some("The same scan file")),
        ("mirrored.ply", Some("only as in a mirror")),
        ("true.ply", None),
    ] {
        let case = format!(
            "case = \"two\"\n[mandibular]\nfirst_pass = \"scan.ply\"\nwash = \"{wash}\"\n\
             tray = \"tray.ply\"\n"
        );
        std::fs::write(folder.path().join("case.toml"), case).unwrap();
        let questions = asked(&folder, &["case.toml"]);
        match question {
            Some(words) => assert!(asks(&questions, "file-unclear", words), "{questions:?}"),
            None => assert_eq!(questions, []),
        }
    }
}

#[test]
fn a_scan_decimated_beyond_use_is_not_judged_and_says_its_figure() {
    let phantom = Phantom::new(&Options {
        edge_mm: 2.0,
        ..options(Arch::Maxillary, 6)
    });
    let folder = folder_of(&phantom, 1.0);
    let outcome = run(folder.path(), &["check", "scan.ply", "--tray", "tray.ply"]);
    assert_eq!(outcome.code, Some(3), "{}", outcome.out);
    assert!(outcome.out.contains("too coarse"), "{}", outcome.out);
    assert!(outcome.out.contains("scan-resolution"), "{}", outcome.out);
}
