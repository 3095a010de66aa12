//! `archproof artefact`: a scanner checked on balls made by formula.
#![allow(clippy::unwrap_used)]

use crate::common::run;
use nalgebra::Point3;
use serde_json::Value;
use std::fs;
use std::path::Path;

pub const DESCRIPTION: &str = r#"
artefact = "BALLS-1"
certificate = "invented"
[[sphere]]
name = "A"
centre = [0, 0, 0]
diameter_mm = 10.0
uncertainty_mm = 0.0008
[[sphere]]
name = "B"
centre = [36, 0, 0]
diameter_mm = 10.0
uncertainty_mm = 0.0008
[[sphere]]
name = "C"
centre = [10, 24, 3]
diameter_mm = 10.0
uncertainty_mm = 0.0008
[[distance]]
between = ["A", "B"]
mm = 36.0
uncertainty_mm = 0.0012
[[step]]
name = "S"
lower = [16, -10, 1]
upper = [24, -10, 3]
facing = [0, 0, 1]
reach_mm = 2.5
mm = 2.0
uncertainty_mm = 0.0006
[limits]
diameter_error_mm = 0.02
step_error_mm = 0.02
distance_error_mm = 0.03
"#;

pub fn write_scan(folder: &Path, name: &str, seed: u64, scale: f64) {
    let balls = [[0.0, 0.0, 0.0], [36.0, 0.0, 0.0], [10.0, 24.0, 3.0]];
    let balls = balls.map(|centre| (Point3::from(centre), 5.0));
    let faces = [[16.0, -10.0, 1.0], [24.0, -10.0, 3.0]].map(|c| (Point3::from(c), 3.0));
    let scan = phantom::artefact(&balls, &faces, 0.4, 0.01, seed).scaled(scale);
    mesh::write::write_stl(&folder.join(name), &scan).unwrap();
}

#[test]
fn a_good_scanner_conforms_and_a_wrong_scale_is_found_out() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("balls.toml"), DESCRIPTION).unwrap();
    for (name, seed, scale) in [
        ("a.stl", 1, 1.0),
        ("b.stl", 2, 1.0),
        ("large.stl", 3, 1.002),
    ] {
        write_scan(folder.path(), name, seed, scale);
    }
    let good = run(folder.path(), &["artefact", "balls.toml", "a.stl", "b.stl"]);
    assert_eq!(good.code, Some(0), "{}{}", good.out, good.complaint);
    assert!(
        good.out
            .starts_with("CONFORMING: artefact BALLS-1, 2 scans")
    );
    assert!(good.out.contains("standard deviation"), "{}", good.out);
    assert!(good.out.contains("step-height S"), "{}", good.out);

    let wrong = run(
        folder.path(),
        &["artefact", "balls.toml", "large.stl", "--json"],
    );
    assert_eq!(wrong.code, Some(1), "{}{}", wrong.out, wrong.complaint);
    let result: Value = serde_json::from_str(&wrong.out).unwrap();
    let schema = run(folder.path(), &["schema", "artefact"]).out;
    let schema: Value = serde_json::from_str(&schema).unwrap();
    jsonschema::validate(&schema, &result).unwrap();
    let scale = result["scans"][0]["scale"].as_f64().unwrap();
    assert!((scale - 1.002).abs() < 1e-4, "{scale}");
    let distance = &result["sizes"][3];
    assert_eq!(distance["quantity"], "centre-distance");
    assert_eq!(distance["outcome"], "not_conforming");
    assert!((distance["readings"][0]["error_mm"].as_f64().unwrap() - 0.072).abs() < 0.005);
    // Of the diameter the wrong scale takes up just the limit: 0.02 mm.
    assert_eq!(result["sizes"][0]["outcome"], "borderline");
}

#[test]
fn what_was_found_of_the_scanner_is_part_of_every_uncertainty() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("balls.toml"), DESCRIPTION).unwrap();
    write_scan(folder.path(), "large.stl", 3, 1.002);
    let asked = [
        "artefact",
        "balls.toml",
        "large.stl",
        "--write",
        "scanner.toml",
    ];
    run(folder.path(), &asked);
    let file = folder.path().join("scanner.toml");
    let written = fs::read_to_string(&file).unwrap();
    // By hand: 0.2 % of 10, 10, 10, 36 and 2 mm, root mean square, times two.
    let errors_mm: [f64; 5] = [0.02, 0.02, 0.02, 0.072, 0.004];
    let squares: f64 = errors_mm.iter().map(|mm| mm * mm).sum();
    let expected_mm = 2.0 * (squares / 5.0).sqrt();
    let found: toml::Table = written.parse().unwrap();
    let found_mm = found["length_uncertainty_mm"].as_float().unwrap();
    assert!((found_mm - expected_mm).abs() < 0.004, "{written}");
    let source = found["source"].as_str().unwrap();
    assert!(source.starts_with("artefact BALLS-1, certificate invented"));

    // It is not written over, and the protocol that names it carries it.
    let again = run(folder.path(), &asked);
    assert_eq!(again.code, Some(2));
    assert!(
        again.complaint.contains("not there yet"),
        "{}",
        again.complaint
    );
    fs::write(
        folder.path().join("ours.toml"),
        "scanner = \"scanner.toml\"\n",
    )
    .unwrap();
    let shown = run(folder.path(), &["protocol", "show", "ours.toml"]).out;
    assert!(shown.contains(&written), "{shown}");
    fs::write(folder.path().join("ours.toml"), "scanner = \"none.toml\"\n").unwrap();
    let wrong = run(folder.path(), &["protocol", "check", "ours.toml"]);
    assert_eq!(wrong.code, Some(2));
    assert!(
        wrong.complaint.contains("ours.toml: line 1: "),
        "{}",
        wrong.complaint
    );
}

#[test]
fn what_cannot_be_checked_is_one_line() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("balls.toml"), DESCRIPTION).unwrap();
    let spoilt = DESCRIPTION.replacen("10.0", "-10.0", 1);
    fs::write(folder.path().join("spoilt.toml"), spoilt).unwrap();
    let balls = [[0.0, 0.0, 0.0], [36.0, 0.0, 0.0], [10.0, 24.0, 3.0]];
    let flat = phantom::artefact(&balls.map(|c| (Point3::from(c), 5.0)), &[], 0.4, 0.01, 1);
    mesh::write::write_stl(&folder.path().join("flat.stl"), &flat).unwrap();
    let two = [[0.0, 0.0, 0.0], [20.0, 0.0, 0.0]].map(|c| (Point3::from(c), 5.0));
    let two = phantom::artefact(&two, &[], 0.4, 0.01, 1);
    mesh::write::write_stl(&folder.path().join("two.stl"), &two).unwrap();
    for (description, scan, says) in [
        (
            "balls.toml",
            "flat.stl",
            "flat.stl: step S: 0 vertices are seen on its lower face",
        ),
        ("balls.toml", "two.stl", "two.stl: of 3 spheres 2 are seen"),
        (
            "spoilt.toml",
            "two.stl",
            "spoilt.toml: line 7: a size must be",
        ),
        ("none.toml", "two.stl", "none.toml: cannot be read"),
    ] {
        let told = run(folder.path(), &["artefact", description, scan]);
        assert_eq!((told.code, told.out.as_str()), (Some(2), ""));
        assert_eq!(told.complaint.lines().count(), 1, "{}", told.complaint);
        assert!(told.complaint.contains(says), "{}", told.complaint);
    }
}
