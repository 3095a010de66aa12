//! Looking at scans before anything is judged, and keeping names out of
//! everything that is written.
#![allow(clippy::unwrap_used, clippy::print_stderr)]

use crate::common::{demonstration, run};
use mesh::write::{encode_ply, encode_stl};
use mesh::{Mesh, read_scan};
use serde_json::Value;
use std::fs;
use std::path::Path;

/// A made-up name that no program says by itself.
const NAME: &str = "Quxley";

fn triangle() -> Mesh {
    let corners = [[0.0, 0.0, 0.0], [40.0, 0.0, 0.5], [0.0, 40.0, 1.25]];
    Mesh::new(corners.map(Into::into).to_vec(), vec![[0, 1, 2]], None).unwrap()
}

/// The triangle with a name wherever its format has room for one.
fn named_files() -> Vec<(String, Vec<u8>)> {
    let mut stl = encode_stl(&triangle()).unwrap();
    stl[..NAME.len()].copy_from_slice(NAME.as_bytes());
    let ply = encode_ply(&triangle(), &[]).unwrap();
    let at = ply.windows(7).position(|w| w == b"element").unwrap();
    let comment = format!("comment {NAME}\nobj_info {NAME}\n");
    let ply = [&ply[..at], comment.as_bytes(), &ply[at..]].concat();
    let ascii = format!(
        "solid {NAME}\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 40 0 0.5\n\
         vertex 0 40 1.25\nendloop\nendfacet\nendsolid {NAME}\n"
    );
    let obj = format!("# {NAME}\no {NAME}\nv 0 0 0\nv 40 0 0.5\nv 0 40 1.25\nf 1 2 3\n");
    vec![
        (format!("{NAME}-a.stl"), stl),
        (format!("{NAME}-b.ply"), ply),
        (format!("{NAME}-c.stl"), ascii.into_bytes()),
        (format!("{NAME}-d.obj"), obj.into_bytes()),
    ]
}

fn holds_name(bytes: &[u8]) -> bool {
    let lower = String::from_utf8_lossy(bytes).to_lowercase();
    lower.contains(&NAME.to_lowercase())
}

#[test]
fn names_in_files_and_of_files_reach_no_result_and_no_summary() {
    for (name, bytes) in named_files() {
        let folder = tempfile::tempdir().unwrap();
        fs::write(folder.path().join(&name), &bytes).unwrap();
        for more in [&[][..], &["--json"]] {
            let outcome = run(
                folder.path(),
                &[&["check", &name, "--out", "results"], more].concat(),
            );
            assert_eq!(outcome.code, Some(3), "{}", outcome.complaint);
            assert!(!holds_name(outcome.out.as_bytes()), "{}", outcome.out);
            assert!(
                !holds_name(outcome.complaint.as_bytes()),
                "{}",
                outcome.complaint
            );
        }
        let results = folder.path().join("results");
        for entry in fs::read_dir(&results).unwrap() {
            let path = entry.unwrap().path();
            assert!(!holds_name(path.file_name().unwrap().as_encoded_bytes()));
            assert!(!holds_name(&fs::read(&path).unwrap()), "{}", path.display());
        }
        let result: Value =
            serde_json::from_str(&fs::read_to_string(results.join("result.json")).unwrap())
                .unwrap();
        assert_eq!(result["impressions"][0]["scan"]["carries_text"], true);
    }
}

#[test]
fn inspect_says_that_text_is_there_and_not_what_it_says() {
    let folder = tempfile::tempdir().unwrap();
    for (number, (_, bytes)) in named_files().into_iter().enumerate() {
        let scan = format!("{number}.scan");
        fs::write(folder.path().join(&scan), bytes).unwrap();
        for more in [&[][..], &["--json"]] {
            let outcome = run(folder.path(), &[&["inspect", &scan], more].concat());
            assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
            assert!(!holds_name(outcome.out.as_bytes()), "{}", outcome.out);
        }
        let row = run(folder.path(), &["inspect", &scan]).out;
        assert!(row.contains("free text"), "{row}");
    }
}

#[test]
fn inspect_says_what_it_could_not_use() {
    let folder = tempfile::tempdir().unwrap();
    let mut stl = encode_stl(&triangle()).unwrap();
    let end = stl.len();
    stl[end - 2..].copy_from_slice(&[0x1F, 0x80]);
    fs::write(folder.path().join("a.stl"), stl).unwrap();
    let row = run(folder.path(), &["inspect", "a.stl"]).out;
    assert!(row.contains("attribute bytes"), "{row}");
}

#[test]
fn clean_writes_the_same_mesh_without_any_text() {
    for (name, bytes) in named_files() {
        let folder = tempfile::tempdir().unwrap();
        let given = folder.path().join(&name);
        fs::write(&given, &bytes).unwrap();
        for out in ["out.ply", "out.stl", "out.obj"] {
            let outcome = run(folder.path(), &["clean", &name, out]);
            assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
            assert!(!holds_name(outcome.out.as_bytes()), "{}", outcome.out);
            let cleaned = folder.path().join(out);
            assert!(!holds_name(&fs::read(&cleaned).unwrap()));
            let [before, after] = [&given, &cleaned].map(|path| read_scan(path).unwrap());
            assert!(before.carries_text && !after.carries_text);
            assert_eq!(before.mesh, after.mesh);
        }
        assert_eq!(fs::read(&given).unwrap(), bytes, "the scan stays as it was");
    }
}

#[test]
fn clean_keeps_colours_or_says_why_it_cannot() {
    let folder = tempfile::tempdir().unwrap();
    let coloured = triangle()
        .with_colours(Some(vec![[1, 2, 3], [4, 5, 6], [7, 8, 9]]))
        .unwrap();
    fs::write(
        folder.path().join("a.ply"),
        encode_ply(&coloured, &[]).unwrap(),
    )
    .unwrap();
    assert_eq!(
        run(folder.path(), &["clean", "a.ply", "b.ply"]).code,
        Some(0)
    );
    assert_eq!(
        read_scan(&folder.path().join("b.ply")).unwrap().mesh,
        coloured
    );
    for (out, word) in [
        ("b.stl", "colour"),
        ("b.txt", ".ply"),
        ("none/b.ply", "folder"),
    ] {
        let outcome = run(folder.path(), &["clean", "a.ply", out]);
        assert_eq!(outcome.code, Some(2));
        assert!(outcome.complaint.contains(word), "{}", outcome.complaint);
        assert_eq!(outcome.complaint.lines().count(), 1);
    }
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 2);
}

#[test]
fn a_scan_is_never_cleaned_over_itself() {
    let folder = tempfile::tempdir().unwrap();
    let scan = folder.path().join("a.stl");
    let bytes = encode_stl(&triangle()).unwrap();
    fs::write(&scan, &bytes).unwrap();
    fs::hard_link(&scan, folder.path().join("same.stl")).unwrap();
    for out in ["a.stl", "./a.stl", "same.stl"] {
        let outcome = run(folder.path(), &["clean", "a.stl", out]);
        assert_eq!(outcome.code, Some(2), "{out}");
        assert!(
            outcome.complaint.contains("scan itself"),
            "{}",
            outcome.complaint
        );
        assert_eq!(fs::read(&scan).unwrap(), bytes);
    }
}

#[test]
fn a_folder_is_one_row_a_file_and_bad_files_are_rows_too() {
    let folder = demonstration();
    fs::create_dir_all(folder.path().join("in/demo")).unwrap();
    for name in ["upper-first.ply", "upper-tray.stl"] {
        let [from, to] = [".", "in/demo"].map(|within| folder.path().join(within).join(name));
        fs::rename(from, to).unwrap();
    }
    fs::create_dir(folder.path().join("in/empty")).unwrap();
    fs::write(folder.path().join("in/notes.txt"), "no scan").unwrap();
    fs::write(folder.path().join("in/BAD.STL"), "PK\x03\x04").unwrap();

    let outcome = run(folder.path(), &["inspect", "in"]);
    assert_eq!(outcome.code, Some(2), "one file could not be read");
    let rows: Vec<&str> = outcome.out.lines().collect();
    assert_eq!(rows.len(), 4, "a head and three rows: {}", outcome.out);
    assert!(rows[1].contains("BAD.STL: is a zip archive"), "{}", rows[1]);
    assert!(
        rows[2].contains("maxillary impression  both"),
        "{}",
        rows[2]
    );
    let json = |code: &str| {
        run(
            folder.path(),
            &["inspect", "in", "--json", "--language", code],
        )
    };
    let outcome = json("en");
    assert_eq!(outcome.code, Some(2));
    // Columns stand under one another, and JSON is in no language.
    for (code, last) in [("en", "file: "), ("de", "Datei: "), ("es", "archivo: ")] {
        let table = run(folder.path(), &["inspect", "in", "--language", code]).out;
        let place = |row: &str, of: &str| Some(row.split_once(of)?.0.chars().count());
        let mut rows = table.lines();
        let head = rows.next().and_then(|head| place(head, last));
        assert!(head.is_some(), "{table}");
        assert!(rows.all(|row| place(row, "in/") == head), "{table}");
        assert_eq!(json(code).out, outcome.out);
    }

    let rows: Value = serde_json::from_str(&outcome.out).unwrap();
    let schema = run(folder.path(), &["schema", "inspect"]).out;
    let schema: Value = serde_json::from_str(&schema).unwrap();
    jsonschema::validate(&schema, &rows).unwrap();
    assert_eq!(rows[0]["scan"], Value::Null);
    let impression = &rows[1]["scan"];
    assert_eq!(impression["arch"], "maxillary");
    assert_eq!(impression["has_outer_surface"], true);
    assert_eq!(impression["double_layer_share"], 0.0);
    // The demonstration is made with edges of 0.4 mm and noise of 0.01 mm.
    let within = |key: &str, low: f64, high: f64| {
        let figure = impression[key].as_f64().unwrap();
        assert!((low..high).contains(&figure), "{key}: {figure}");
    };
    within("median_edge_mm", 0.3, 0.5);
    within("noise_mm", 0.005, 0.015);

    let sound = run(folder.path(), &["inspect", "in/demo/upper-first.ply"]);
    assert_eq!(sound.code, Some(0));
    assert_eq!(run(folder.path(), &["inspect", "in/empty"]).code, Some(2));
    assert_eq!(run(folder.path(), &["inspect", "gone.stl"]).code, Some(2));
}

#[test]
fn scans_of_teeth_are_named_and_not_judged() {
    let scans = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/data/scans");
    let Ok(entries) = fs::read_dir(&scans) else {
        eprintln!("skipped: ../shared/data/scans is not here");
        return;
    };
    let folder = tempfile::tempdir().unwrap();
    for entry in entries {
        let scan = entry.unwrap().path();
        let outcome = run(folder.path(), &["check", scan.to_str().unwrap()]);
        assert_eq!(outcome.code, Some(3), "{}", outcome.complaint);
        assert!(outcome.out.contains("tooth-bearing"), "{}", outcome.out);
    }
}
