//! An impression as it was sent and as it arrived, from scan files to findings.
#![allow(clippy::unwrap_used)]

use crate::common::{Outcome, run};
use mesh::Mesh;
use mesh::write::write_ply;
use nalgebra::Point3;
use phantom::{Arch, Options, Phantom, Pose};
use serde_json::Value;
use std::fs;
use std::path::Path;
use tempfile::TempDir;

fn made(arch: Arch, seed: u64, edge_mm: f64, pose: Pose) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        edge_mm,
        tray_edge_mm: 2.5,
        noise_sd_mm: 0.01,
        pose,
        ..Options::default()
    })
}

/// The impression as it was sent, and the same in other triangles elsewhere.
fn sent_and_arrived() -> (Mesh, Phantom) {
    let sent = made(Arch::Mandibular, 5, 0.6, Pose::Random);
    (
        sent.impression,
        made(Arch::Mandibular, 5, 0.55, Pose::AsMade),
    )
}

fn pressed_in(scan: &Mesh, at: &Point3<f64>) -> Mesh {
    let vertices = (scan.vertices().iter().zip(scan.vertex_normals())).map(|(p, normal)| {
        let part = (p - at).norm() / 3.0;
        p - normal.normalize() * (0.6 * (1.0 - part * part).max(0.0))
    });
    Mesh::new(vertices.collect(), scan.triangles().to_vec(), None).unwrap()
}

fn folder_with(sent: &Mesh, arrived: &Mesh) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    write_ply(&folder.path().join("sent.ply"), sent).unwrap();
    write_ply(&folder.path().join("arrived.ply"), arrived).unwrap();
    named(folder.path(), "sent.ply");
    folder
}

fn named(folder: &Path, sent: &str) {
    let text = format!(
        "case = \"T-1\"\n[mandibular]\nwash = \"arrived.ply\"\nwash_as_sent = \"{sent}\"\n"
    );
    fs::write(folder.join("case.toml"), text).unwrap();
}

fn check(folder: &Path, more: &[&str]) -> Outcome {
    run(folder, &[&["check", "case.toml"], more].concat())
}

fn result(folder: &Path) -> Value {
    let outcome = check(folder, &["--json", "--no-report"]);
    assert_eq!(outcome.code, Some(3), "{}", outcome.complaint);
    serde_json::from_str(&outcome.out).unwrap()
}

fn said(result: &Value) -> Vec<&Value> {
    let findings = result["findings"].as_array().unwrap().iter();
    findings
        .filter(|f| f["check"] == "changed-in-transit")
        .collect()
}

#[test]
fn a_dent_on_the_way_is_found_where_it_is_and_nothing_else_is() {
    let (sent, arrived) = sent_and_arrived();
    let crest = &arrived.truth.crest_line;
    let at = crest[crest.len() / 4];
    let folder = folder_with(&sent, &pressed_in(&arrived.impression, &at));
    let outcome = result(folder.path());
    let said = said(&outcome);
    assert_eq!(said.len(), 1, "{said:#?}");
    assert_eq!(said[0]["severity"], "borderline");
    assert!((said[0]["measured"].as_f64().unwrap() - 0.6).abs() < 0.1);
    let change = &outcome["impressions"][0]["as_sent"]["change"];
    let damage = change["damage"].as_array().unwrap();
    assert_eq!(damage[0]["kind"], "pressed_in");
    let place: Vec<f64> = damage[0]["at"]
        .as_array()
        .unwrap()
        .iter()
        .flat_map(Value::as_f64)
        .collect();
    assert!(
        (Point3::from_slice(&place) - at).norm() < 2.0,
        "{damage:#?}"
    );
    let summary = check(folder.path(), &["--out", "results"]).out;
    assert!(summary.contains("since it was sent:"), "{summary}");
    let page = fs::read_to_string(folder.path().join("results/report.html")).unwrap();
    assert!(page.contains("Change since the impression was sent"));
}

#[test]
fn an_impression_that_arrived_as_it_was_sent_gives_nothing_to_ask() {
    let (sent, arrived) = sent_and_arrived();
    let folder = folder_with(&sent, &arrived.impression);
    let outcome = result(folder.path());
    assert!(said(&outcome).is_empty(), "{outcome:#?}");
    let change = &outcome["impressions"][0]["as_sent"]["change"];
    assert!(change["unchanged_share"].as_f64().unwrap() > 0.95);
    assert_eq!(change["bends"].as_array().unwrap().len(), 2);
}

#[test]
fn another_scan_as_sent_is_refused_in_one_line() {
    let (sent, arrived) = sent_and_arrived();
    let folder = folder_with(&sent, &arrived.impression);
    let refused = |sent: &str| {
        named(folder.path(), sent);
        let outcome = result(folder.path());
        assert!(outcome["impressions"][0]["as_sent"]["change"].is_null());
        let said = said(&outcome);
        assert_eq!(said.len(), 1, "{said:#?}");
        assert!(said[0]["measured"].is_null());
        said[0]["instruction"].as_str().unwrap().to_owned()
    };
    let write = |name: &str, scan: &Mesh| write_ply(&folder.path().join(name), scan).unwrap();
    write(
        "other.ply",
        &made(Arch::Mandibular, 9, 0.6, Pose::AsMade).impression,
    );
    write(
        "upper.ply",
        &made(Arch::Maxillary, 5, 0.6, Pose::AsMade).impression,
    );
    let other = refused("other.ply");
    assert!(
        other.contains("is not a scan of this impression"),
        "{other}"
    );
    let upper = refused("upper.ply");
    assert!(upper.contains("other jaw"), "{upper}");
    let same = refused("arrived.ply");
    assert!(same.contains("same file"), "{same}");
}

#[test]
fn a_scan_as_sent_that_cannot_be_read_is_named_in_one_line() {
    let (sent, arrived) = sent_and_arrived();
    let folder = folder_with(&sent, &arrived.impression);
    fs::write(folder.path().join("torn.stl"), [7; 100]).unwrap();
    named(folder.path(), "torn.stl");
    let outcome = check(folder.path(), &[]);
    assert_eq!(outcome.code, Some(2));
    assert_eq!(
        outcome.complaint.trim_end().lines().count(),
        1,
        "{}",
        outcome.complaint
    );
    assert!(
        outcome.complaint.contains("torn.stl"),
        "{}",
        outcome.complaint
    );
}
