//! Wrong use and unreadable input: exit code 2, one line that names the file,
//! and nothing left behind.
#![allow(clippy::unwrap_used, clippy::print_stderr)]

use crate::common::{Outcome, run};
use rstest::rstest;
use std::fs;
use std::path::Path;

const TRIANGLE: &str = "solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 60 0 0\nvertex 0 50 0\nendloop\nendfacet\nendsolid a\n";

/// A binary STL that declares `declared` triangles and holds `held`.
fn binary_stl(declared: u32, held: usize) -> Vec<u8> {
    let mut bytes = vec![0; 80];
    bytes.extend(declared.to_le_bytes());
    for number in 0..held {
        let mut record = [0_u8; 50];
        for (slot, value) in record[12..48].chunks_exact_mut(4).zip([
            number as f32,
            0.0,
            0.0,
            60.0,
            number as f32,
            0.0,
            0.0,
            50.0,
            1.0,
        ]) {
            slot.copy_from_slice(&value.to_le_bytes());
        }
        bytes.extend(record);
    }
    bytes
}

fn assert_refused(outcome: &Outcome, names: &str) {
    let Outcome {
        code,
        out,
        complaint,
    } = outcome;
    assert_eq!(*code, Some(2), "{complaint}");
    assert_eq!(out, "", "nothing on standard output");
    assert_eq!(complaint.lines().count(), 1, "{complaint}");
    assert!(complaint.starts_with("archproof: "), "{complaint}");
    assert!(complaint.contains(names), "{complaint}");
    assert!(!complaint.contains("panicked"), "{complaint}");
}

fn files_in(folder: &Path) -> usize {
    fs::read_dir(folder).unwrap().count()
}

#[rstest]
#[case::empty("empty.stl", b"".to_vec())]
#[case::truncated("cut.stl", binary_stl(100, 40))]
#[case::text_cut_short("cut-text.stl", TRIANGLE.as_bytes()[..90].to_vec())]
#[case::text_renamed("letter.ply", b"Dear colleague, the scan is attached.\n".to_vec())]
#[case::web_page("download.stl", b"<!DOCTYPE html><html><body>404</body></html>".to_vec())]
#[case::archive("scan.stl", b"PK\x03\x04\x14\x00\x00\x00\x08\x00scan".to_vec())]
#[case::not_a_number("nan.stl", TRIANGLE.replace("60", "nan").into_bytes())]
#[case::no_triangles("none.stl", binary_stl(0, 0))]
#[case::point_cloud("points.ply", b"ply\nformat ascii 1.0\nelement vertex 1\nproperty float x\nproperty float y\nproperty float z\nend_header\n0 0 0\n".to_vec())]
fn an_unreadable_scan_is_refused_in_one_line(#[case] name: &str, #[case] bytes: Vec<u8>) {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join(name), bytes).unwrap();
    fs::write(folder.path().join("good.stl"), TRIANGLE).unwrap();
    for arguments in [
        vec!["check", name, "--out", "results"],
        vec!["check", "good.stl", "--tray", name, "--out", "results"],
        vec!["check", name],
        vec!["check", name, "--json"],
    ] {
        assert_refused(&run(folder.path(), &arguments), name);
        assert_eq!(files_in(folder.path()), 2, "no output is left behind");
    }
}

#[test]
fn what_is_not_there_or_not_a_file_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    fs::create_dir(folder.path().join("folder.stl")).unwrap();
    assert_refused(
        &run(folder.path(), &["check", "missing.stl"]),
        "missing.stl",
    );
    assert_refused(&run(folder.path(), &["check", "folder.stl"]), "folder.stl");
    assert_refused(
        &run(folder.path(), &["check", "missing.toml"]),
        "missing.toml",
    );
    assert_eq!(files_in(folder.path()), 1);
}

#[cfg(unix)]
#[test]
fn what_may_not_be_read_is_refused() {
    use std::os::unix::fs::PermissionsExt;
    let folder = tempfile::tempdir().unwrap();
    let scan = folder.path().join("locked.stl");
    fs::write(&scan, TRIANGLE).unwrap();
    fs::set_permissions(&scan, fs::Permissions::from_mode(0o000)).unwrap();
    if fs::read(&scan).is_ok() {
        eprintln!("skipped: this user may read every file");
        return;
    }
    assert_refused(&run(folder.path(), &["check", "locked.stl"]), "locked.stl");
}

#[test]
fn an_earlier_result_outlives_a_refusal() {
    let folder = tempfile::tempdir().unwrap();
    fs::create_dir(folder.path().join("results")).unwrap();
    fs::write(folder.path().join("results/result.json"), "earlier").unwrap();
    fs::write(folder.path().join("bad.stl"), "solid").unwrap();
    assert_refused(
        &run(folder.path(), &["check", "bad.stl", "--out", "results"]),
        "bad.stl",
    );
    let kept = fs::read_to_string(folder.path().join("results/result.json")).unwrap();
    assert_eq!(kept, "earlier");
}

#[test]
fn results_that_cannot_be_written_are_told() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("good.stl"), TRIANGLE).unwrap();
    fs::write(folder.path().join("taken"), "a file").unwrap();
    assert_refused(
        &run(folder.path(), &["check", "good.stl", "--out", "taken"]),
        "taken",
    );
    assert_refused(
        &run(folder.path(), &["check", "good.stl", "--out", "taken/in"]),
        "taken",
    );
    assert_eq!(
        fs::read_to_string(folder.path().join("taken")).unwrap(),
        "a file"
    );
}

#[rstest]
#[case::unknown_key("case = \"a\"\n[maxillary]\nwash = \"good.stl\"\nscan = 1\n", "line 4")]
#[case::not_toml("case = \"a\"\n[maxillary\n", "line 2")]
#[case::no_impression("case = \"a\"\n", "no impression")]
#[case::missing_scan(
    "case = \"a\"\n[maxillary]\nwash = \"gone.stl\"\n",
    "line 3 names a scan that cannot be read: gone.stl"
)]
#[case::slip(
    "case = \"a\"\n[maxilary]\nwash = \"good.stl\"\n",
    "line 2: unknown key `maxilary`; did you mean maxillary?"
)]
#[case::backslash(
    "case = \"a\"\n[maxillary]\nwash = \"C:\\scans\\good.stl\"\n",
    "line 3: a backslash in a path"
)]
fn a_faulty_case_file_is_refused_by_line(#[case] text: &str, #[case] names: &str) {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("case.toml"), text).unwrap();
    assert_refused(&run(folder.path(), &["check", "case.toml"]), names);
    assert_eq!(files_in(folder.path()), 1);
}

#[test]
fn a_faulty_protocol_is_refused_by_line() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("good.stl"), TRIANGLE).unwrap();
    let text = "name = \"ours\"\n[limits]\nthin_cover_mm = { value = -1 }\n";
    fs::write(folder.path().join("ours.toml"), text).unwrap();
    for arguments in [
        vec!["check", "good.stl", "--protocol", "ours.toml"],
        vec!["protocol", "check", "ours.toml"],
        vec!["protocol", "show", "ours.toml"],
    ] {
        assert_refused(&run(folder.path(), &arguments), "ours.toml: line 3");
    }
}

#[rstest]
#[case(&["check", "case.toml", "--arch", "maxillary"])]
#[case(&["check", "case.toml", "--tray", "t.stl"])]
#[case(&["check", "case.toml", "--stage", "wash"])]
#[case(&["check", "case.toml", "--case", "b"])]
fn what_the_case_file_says_is_not_said_twice(#[case] arguments: &[&str]) {
    let folder = tempfile::tempdir().unwrap();
    assert_refused(&run(folder.path(), arguments), arguments[2]);
}

#[rstest]
#[case(&["check", "a.stl", "--shine"])]
#[case(&["check", "a.stl", "--arch", "upper"])]
#[case(&["check", "a.stl", "--unit", "furlong"])]
#[case(&["check", "a.stl", "--threads", "0"])]
#[case(&["check"])]
#[case(&["polish"])]
#[case(&["explain", "shine-through"])]
fn wrong_use_has_exit_code_2(#[case] arguments: &[&str]) {
    let folder = tempfile::tempdir().unwrap();
    let outcome = run(folder.path(), arguments);
    assert_eq!(outcome.code, Some(2));
    assert_eq!(outcome.out, "");
    assert!(!outcome.complaint.is_empty());
}

/// Files in rare spellings and bad ones, with the wanted outcome of each.
#[test]
fn the_collection_of_bad_files_comes_out_as_wanted() {
    let shared = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/data/badinput");
    let Ok(manifest) = fs::read_to_string(shared.join("manifest.json")) else {
        eprintln!("skipped: ../shared/data/badinput is not here");
        return;
    };
    let manifest: serde_json::Value = serde_json::from_str(&manifest).unwrap();
    let folder = tempfile::tempdir().unwrap();
    for file in manifest["files"].as_array().unwrap() {
        let name = file["name"].as_str().unwrap();
        let want = file["want"].as_str().unwrap();
        let scan = shared.join(name);
        if !scan.exists() {
            continue;
        }
        let outcome = run(
            folder.path(),
            &["check", scan.to_str().unwrap(), "--out", "results"],
        );
        let results = folder.path().join("results");
        match outcome.code {
            Some(2) => {
                assert!(want.contains("refuse"), "{name}: {}", outcome.complaint);
                assert_refused(&outcome, name);
                assert!(!results.exists(), "{name}");
            }
            // A patch of a dome is no impression.
            Some(3) => {
                assert!(want.contains("load"), "{name} was read");
                fs::remove_dir_all(&results).unwrap();
            }
            other => panic!("{name}: exit code {other:?}: {}", outcome.complaint),
        }
    }
}

/// `bad_input_cases.md` names a test for each case, and each of these is there.
#[test]
fn every_case_that_arrives_has_its_test() {
    let crates = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let table = fs::read_to_string(crates.join("cli/tests/bad_input_cases.md")).unwrap();
    let rows: Vec<&str> = table
        .lines()
        .filter(|line| line.starts_with("| ") && line.contains("::"))
        .collect();
    assert_eq!(rows.len(), 52);
    for row in rows {
        let quoted = row.split('`').skip(1).step_by(2);
        for (file, test) in quoted.filter_map(|name| name.split_once("::")) {
            let (package, file) = file.split_once('/').unwrap();
            let is_named = ["tests/all", "tests", "src"].iter().any(|folder| {
                let path = crates.join(format!("{package}/{folder}/{file}.rs"));
                fs::read_to_string(path).is_ok_and(|text| text.contains(&format!("fn {test}(")))
            });
            assert!(is_named, "{package}/{file}::{test}");
        }
    }
}
