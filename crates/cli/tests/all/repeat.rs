//! `archproof repeat`: repeated scans of one phantom.
#![allow(clippy::unwrap_used)]

use crate::common::run;
use phantom::{Options, Phantom, Pose};
use serde_json::Value;
use std::fs;

/// One impression, triangulated anew and in a pose of its own for each scan.
#[test]
fn scans_of_one_impression_repeat_and_are_mapped() {
    let folder = tempfile::tempdir().unwrap();
    let made = |edge_mm, pose| {
        Phantom::new(&Options {
            seed: 11,
            edge_mm,
            tray_edge_mm: 0.8,
            pose,
            noise_sd_mm: 0.01,
            ..Options::default()
        })
    };
    for (name, edge_mm, pose) in [
        ("a.ply", 0.75, Pose::AsMade),
        ("b.ply", 0.8, Pose::Random),
        ("c.ply", 0.85, Pose::AsMade),
    ] {
        let one = made(edge_mm, pose);
        mesh::write::write_ply(&folder.path().join(name), &one.impression).unwrap();
        mesh::write::write_ply(&folder.path().join("tray.ply"), &one.tray).unwrap();
    }
    let arguments = [
        "repeat",
        "a.ply",
        "b.ply",
        "c.ply",
        "--tray",
        "tray.ply",
        "--arch",
        "maxillary",
    ];
    let told = run(folder.path(), &arguments);
    assert_eq!(told.code, Some(0), "{}", told.complaint);
    assert!(
        told.out.starts_with("3 scans of one impression"),
        "{}",
        told.out
    );
    let out = folder.path().join("archproof-repeat");
    let text = fs::read_to_string(out.join("repeat.json")).unwrap();
    let result: Value = serde_json::from_str(&text).unwrap();
    let schema = run(folder.path(), &["schema", "repeat"]).out;
    let schema: Value = serde_json::from_str(&schema).unwrap();
    jsonschema::validate(&schema, &result).unwrap();
    let figures = result["figures"].as_array().unwrap();
    let cover = figures
        .iter()
        .find(|f| f["figure"] == "cover, median")
        .unwrap();
    assert_eq!(cover["freedom"], 2);
    assert!(
        cover["standard_deviation"].as_f64().unwrap() < 0.05,
        "{cover}"
    );
    assert!(figures.iter().any(|f| f["figure"] == "border length"));
    assert!(result["spread"]["pooled_sd_mm"].as_f64().unwrap() < 0.03);
    let map = report::read_surface(&out.join("spread.ply")).unwrap();
    assert!(map.mesh.colours().is_some());
    let known = map.figures["sd_mm"].iter().flatten().count();
    assert!(known * 100 > map.mesh.vertices().len() * 95, "{known}");

    let again = run(folder.path(), &[&arguments[..], &["--json"]].concat());
    assert_eq!(again.out, text, "one input, one result");
}

#[test]
fn one_scan_or_another_thing_is_refused_in_one_line() {
    let folder = tempfile::tempdir().unwrap();
    let triangle = "solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 60 0 0\nvertex 0 50 0\nendloop\nendfacet\nendsolid a\n";
    fs::write(folder.path().join("one.stl"), triangle).unwrap();
    let other = triangle
        .replace("60 0 0", "0 0 90")
        .replace("0 50 0", "3 3 3");
    fs::write(folder.path().join("two.stl"), other).unwrap();
    let refused = run(folder.path(), &["repeat", "one.stl", "two.stl"]);
    assert_eq!(refused.code, Some(2), "{}", refused.out);
    assert_eq!(
        refused.complaint.lines().count(),
        1,
        "{}",
        refused.complaint
    );
    assert!(
        refused.complaint.contains("two.stl: "),
        "{}",
        refused.complaint
    );
    assert!(!folder.path().join("archproof-repeat").exists());
    assert_eq!(run(folder.path(), &["repeat", "one.stl"]).code, Some(2));
}
