//! `archproof check --return`: what the laboratory asks of the clinic.

#![allow(clippy::unwrap_used, reason = "tests")]

use crate::common::{coarse, run};
use mesh::write::{encode_ply, encode_stl};
use phantom::Arch;
use std::fs;
use std::path::Path;

const FILES: [&str; 3] = ["return.html", "return.pdf", "return.txt"];

fn scans(folder: &Path, shows_through: bool) {
    let made = coarse(Arch::Maxillary, 3, shows_through);
    let impression = encode_ply(&made.impression, &[]).unwrap();
    fs::write(folder.join("named-after-a-patient.ply"), impression).unwrap();
    fs::write(folder.join("tray.stl"), encode_stl(&made.tray).unwrap()).unwrap();
}

fn check(folder: &Path, more: &[&str]) -> String {
    let arguments = [
        "check",
        "named-after-a-patient.ply",
        "--tray",
        "tray.stl",
        "--arch",
        "upper",
        "--case",
        "R-1",
        "--out",
        "results",
    ];
    let outcome = run(folder, &[&arguments, more].concat());
    assert_ne!(outcome.code, Some(2), "{}", outcome.complaint);
    outcome.out
}

#[test]
fn a_return_note_is_written_on_request_and_removed_by_a_later_check() {
    let folder = tempfile::tempdir().unwrap();
    scans(folder.path(), true);
    let there = || FILES.map(|file| folder.path().join("results").join(file).exists());
    let out = check(folder.path(), &["--return"]);
    assert!(out.contains("Return note: results/return.html\n"), "{out}");
    assert!(
        out.contains("Text of the return note: results/return.txt\n"),
        "{out}"
    );
    assert_eq!(there(), [true; 3]);
    let text = fs::read_to_string(folder.path().join("results/return.txt")).unwrap();
    assert!(text.starts_with("Case R-1: return note\n"), "{text}");
    assert!(text.contains("Relieve the tray"), "{text}");
    for file in FILES {
        let bytes = fs::read(folder.path().join("results").join(file)).unwrap();
        let name = b"named-after";
        assert!(
            !bytes.windows(name.len()).any(|part| part == name),
            "{file}"
        );
    }
    check(folder.path(), &[]);
    assert_eq!(there(), [false; 3]);
}

#[test]
fn where_nothing_is_asked_that_is_said_and_nothing_written() {
    let folder = tempfile::tempdir().unwrap();
    scans(folder.path(), false);
    let out = check(folder.path(), &["--return"]);
    let result = fs::read_to_string(folder.path().join("results/result.json")).unwrap();
    let is_asked = result.contains("\"severity\": \"fail\"")
        || result.contains("\"severity\": \"borderline\"");
    let line = "Return note: none was written, since nothing is asked of the clinic.\n";
    assert_eq!(out.contains(line), !is_asked, "{out}");
    assert_eq!(folder.path().join("results/return.txt").exists(), is_asked);
}
