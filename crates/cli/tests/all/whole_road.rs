//! The whole road on the demonstration case: a scan in, a verdict out.
#![allow(clippy::unwrap_used)]

use crate::common::{
    WHOLE_CASE, archproof, archproof_beside, demonstration, first_pass, run, timeless,
};
use judge::words::safety;
use serde_json::Value;
use std::fs;
use std::path::Path;
use std::process::Stdio;

fn result(folder: &Path) -> Value {
    serde_json::from_str(&fs::read_to_string(folder.join("result.json")).unwrap()).unwrap()
}

/// The scenario of the demonstration, as its README tells it.
#[test]
fn the_demonstration_is_to_be_reworked_at_its_planted_places() {
    let demo = demonstration();
    let outcome = run(demo.path(), &["check", "first-pass.toml"]);
    assert_eq!(
        outcome.code,
        Some(1),
        "{}{}",
        outcome.out,
        outcome.complaint
    );
    assert!(
        outcome.out.starts_with("REWORK case DEMO-1: "),
        "{}",
        outcome.out
    );
    assert_eq!(
        outcome.complaint, "",
        "quiet where standard error is no terminal"
    );
    assert!(
        !outcome.out.contains('\u{1b}'),
        "no colours where it is no terminal"
    );

    let ends = "Sheet: archproof-DEMO-1/sheet.html\nReport: archproof-DEMO-1/report.html\n";
    assert!(outcome.out.ends_with(ends), "{}", outcome.out);

    let result = result(&demo.path().join("archproof-DEMO-1"));
    let places: Vec<String> = result["findings"]
        .as_array()
        .unwrap()
        .iter()
        .map(|f| format!("{} {} {}", f["severity"], f["check"], f["side"]).replace('"', ""))
        .collect();
    let on_the_right = places
        .iter()
        .filter(|p| *p == "fail show-through right")
        .count();
    assert_eq!(on_the_right, 2, "{places:?}");
    assert_eq!(places[2], "note thin-cover left");
    // A stock tray's wall makes flanges thicker than the guide, which is noted.
    let rest = &places[3..];
    assert!(
        rest.iter().all(|p| p.starts_with("note flange-thickness")),
        "{places:?}"
    );
    for finding in result["findings"].as_array().unwrap() {
        assert!(outcome.out.contains(finding["id"].as_str().unwrap()));
        // The sentence on safe grinding stands once, under the list.
        let instruction = finding["instruction"].as_str().unwrap();
        let safety = safety().to_string();
        let without_safety = instruction.replace(&format!(" {safety}"), "");
        assert!(outcome.out.contains(&without_safety), "{without_safety}");
        assert!(!instruction.contains(&safety) || outcome.out.contains(&safety));
    }
}

/// The whole case: what its README tells, each at its place.
#[test]
fn the_whole_case_of_the_demonstration_tells_what_was_planted() {
    let outcome = &WHOLE_CASE.outcome;
    let result = result(&WHOLE_CASE.results());
    let wash = |arch: &str| {
        let washes = result["wash"].as_array().unwrap();
        washes
            .iter()
            .find(|wash| wash["arch"] == arch)
            .unwrap()
            .clone()
    };
    let upper = wash("maxillary");
    assert_eq!(upper["still_open"].as_array().unwrap().len(), 1, "{upper}");
    // The thin place is so little above its limit that it may be called unclear.
    let of = |outcome: &str| upper[outcome].as_array().unwrap().len();
    assert!(of("resolved") >= 1, "{upper}");
    assert_eq!(of("resolved") + of("unclear"), 2, "{upper}");
    assert!((0.25..0.55).contains(&wash("mandibular")["median_mm"].as_f64().unwrap()));
    let told = |check: &str, arch: &str, side: &str| {
        result["findings"].as_array().unwrap().iter().any(|f| {
            f["check"] == check && f["arch"] == arch && f["side"] == side && f["severity"] != "note"
        })
    };
    assert!(
        told("show-through", "maxillary", "right"),
        "{}",
        outcome.out
    );
    assert!(
        told("under-extension", "mandibular", "left"),
        "{}",
        outcome.out
    );
    assert!(told("void", "mandibular", "right"), "{}", outcome.out);
    assert!(
        outcome.out.contains("Not packed: jaw-relation record"),
        "{}",
        outcome.out
    );
    let spaces = result["jaw_relation"]["interarch_space_mm"]
        .as_array()
        .unwrap();
    assert!(spaces.len() > 50, "{}", spaces.len());
    let parts = result["consignment"]["parts"].as_array().unwrap();
    assert_eq!(
        parts.iter().filter(|part| part["packed"] == false).count(),
        1
    );
}

/// The case in pieces: parts are joined, pieces placed, and each planted place is found as in
/// the whole.
#[test]
fn the_demonstration_in_pieces_tells_what_was_planted() {
    let folder = tempfile::tempdir().unwrap();
    let written = run(folder.path(), &["demo", ".", "--in-pieces"]);
    assert_eq!(written.code, Some(0), "{}", written.complaint);
    let outcome = run(folder.path(), &["check", "case.toml", "--out", "results"]);
    let said = format!("{}{}", outcome.out, outcome.complaint);
    assert_eq!(outcome.code, Some(1), "{said}");
    assert!(said.starts_with("REWORK case DEMO-4: "), "{said}");
    let result = result(&folder.path().join("results"));
    let fails: Vec<String> = (result["findings"].as_array().unwrap().iter())
        .filter(|f| f["severity"] == "fail" && f["arch"] != Value::Null)
        .map(|f| format!("{} {} {}", f["arch"], f["check"], f["side"]).replace('"', ""))
        .collect();
    assert_eq!(
        fails,
        [
            "maxillary show-through right",
            "mandibular under-extension left",
            "mandibular void right",
        ],
        "{said}"
    );
    assert!(said.contains("Not packed: upper back part"), "{said}");
    let relation = &result["jaw_relation"]["interarch_space_mm"];
    assert!(relation.as_array().unwrap().len() > 20, "{relation}");
    // The other demonstration is a case in the way.
    let whole = run(folder.path(), &["demo", "."]);
    assert_eq!(whole.code, Some(2), "{}", whole.out);
}

#[test]
fn a_demonstration_is_never_written_over_a_case() {
    let folder = tempfile::tempdir().unwrap();
    let case = folder.path().join("case.toml");
    fs::write(&case, "case = \"D-7\"").unwrap();
    let outcome = run(folder.path(), &["demo", "."]);
    assert_eq!(outcome.code, Some(2));
    assert!(
        outcome.complaint.contains("case.toml"),
        "{}",
        outcome.complaint
    );
    assert_eq!(fs::read_to_string(case).unwrap(), "case = \"D-7\"");
}

#[test]
fn one_input_gives_the_same_bytes_on_one_thread_and_on_many() {
    let folder = first_pass();
    for (out, threads) in [("one", "1"), ("many", "8")] {
        let arguments = ["check", "first-pass.toml", "--out", out, "--verbose"];
        let threads = ["--threads", threads];
        let outcome = run(folder.path(), &[&arguments[..], &threads].concat());
        let listed = format!("Results in {out}: cover-maxillary-first-pass.ply ");
        assert!(outcome.out.contains(&listed), "{}", outcome.out);
    }
    let [one, many] = ["one", "many"].map(|out| folder.path().join(out));
    let map = "cover-maxillary-first-pass.ply";
    assert!(fs::read(one.join(map)).unwrap() == fs::read(many.join(map)).unwrap());
    // Times differ, and nothing else.
    let results = [&one, &many].map(|out| {
        let mut result = result(out);
        assert!(result["times"]["checked_at"].is_string());
        result["times"].take();
        result
    });
    assert!(results[0] == results[1]);
    for page in ["report.html", "sheet.html"] {
        let [one, many] =
            [&one, &many].map(|out| timeless(&fs::read_to_string(out.join(page)).unwrap()));
        assert!(one == many, "{page}");
    }
}

#[test]
fn json_on_standard_output_is_the_result_file() {
    let folder = first_pass();
    let outcome = run(
        folder.path(),
        &["check", "first-pass.toml", "--json", "--out", "results"],
    );
    let file = fs::read_to_string(folder.path().join("results/result.json")).unwrap();
    assert_eq!(outcome.out, file);
}

#[test]
fn a_report_that_is_not_wanted_is_not_written() {
    let folder = first_pass();
    let outcome = run(
        folder.path(),
        &[
            "check",
            "first-pass.toml",
            "--json",
            "--no-report",
            "--out",
            "results",
        ],
    );
    assert!(!outcome.out.contains("report.html"));
    for page in ["report.html", "sheet.html", "sheet.pdf"] {
        assert!(!folder.path().join("results").join(page).exists(), "{page}");
    }
}

#[test]
fn without_a_tray_scan_nothing_is_accepted() {
    let folder = first_pass();
    let outcome = run(
        folder.path(),
        &["check", "first.ply", "--arch", "maxillary"],
    );
    assert_eq!(outcome.code, Some(3), "{}", outcome.out);
    // A folder of its own, by time and checksum: two patients never share one.
    let made: Vec<_> = (fs::read_dir(folder.path()).unwrap())
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .filter(|name| name.starts_with("archproof-"))
        .collect();
    assert_eq!(made.len(), 1, "{made:?}");
    let result = result(&folder.path().join(&made[0]));
    let sum = result["impressions"][0]["scan"]["sha256"].as_str().unwrap();
    assert!(made[0].ends_with(&sum[..6]), "{made:?}");
    assert_eq!(result["verdict"], "undecided");
    assert_eq!(
        result["case"], "unnamed",
        "never taken from the file's name"
    );
    assert!(result["impressions"][0]["cover"].is_null());
    let not_judged = result["impressions"][0]["not_judged"].as_array().unwrap();
    assert!(
        not_judged
            .iter()
            .any(|entry| entry["check"] == "show-through")
    );
}

#[test]
fn the_other_jaw_declared_is_asked_about() {
    let folder = first_pass();
    let arguments = [
        "check",
        "first.ply",
        "--tray",
        "tray.stl",
        "--arch",
        "mandibular",
    ];
    let outcome = run(folder.path(), &arguments);
    assert_eq!(outcome.code, Some(3), "{}", outcome.out);
    assert!(outcome.out.contains("arch-mismatch"), "{}", outcome.out);
}

#[test]
fn the_impression_given_as_its_own_tray_is_asked_about() {
    let folder = first_pass();
    let outcome = run(
        folder.path(),
        &["check", "first.ply", "--tray", "first.ply"],
    );
    assert_eq!(outcome.code, Some(3), "{}", outcome.out);
    assert!(outcome.out.contains("file-unclear"), "{}", outcome.out);
}

/// The same scan in metres: read so, asked about, and answered by --unit.
#[test]
fn another_unit_is_asked_about_and_answered() {
    let folder = first_pass();
    for file in ["first.ply", "tray.stl"] {
        let scan = mesh::read_scan(&folder.path().join(file)).unwrap();
        let name = folder.path().join(format!("{file}.m.ply"));
        mesh::write::write_ply(&name, &scan.mesh.scaled(0.001)).unwrap();
    }
    let arguments = [
        "check",
        "first.ply.m.ply",
        "--tray",
        "tray.stl.m.ply",
        "--out",
    ];
    let asked = run(folder.path(), &[&arguments[..], &["asked"]].concat());
    assert_eq!(asked.code, Some(3), "{}", asked.out);
    assert!(asked.out.contains("--unit m"), "{}", asked.out);
    let answered = run(
        folder.path(),
        &[&arguments[..], &["answered", "--unit", "m"]].concat(),
    );
    assert_eq!(answered.code, Some(1), "{}", answered.out);

    run(
        folder.path(),
        &["check", "first-pass.toml", "--out", "in-mm"],
    );
    let [in_mm, in_m] = ["in-mm", "answered"].map(|out| result(&folder.path().join(out)));
    let figure = |result: &Value, pointer: &str| result.pointer(pointer).unwrap().as_f64().unwrap();
    let median = "/impressions/0/cover/median_mm";
    assert!((figure(&in_mm, median) - figure(&in_m, median)).abs() < 1e-3);
    let x = "/findings/0/at/0";
    assert!((figure(&in_mm, x) - 1000.0 * figure(&in_m, x)).abs() < 0.1);
    assert_eq!(in_m["impressions"][0]["scan"]["unit"], "m");
    assert_eq!(in_m["impressions"][0]["scan"]["unit_assumed"], false);
}

#[test]
fn a_reader_that_goes_away_is_no_failure() {
    let folder = tempfile::tempdir().unwrap();
    let mut child = archproof_beside(folder.path())
        .arg("schema")
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let output = child.wait_with_output().unwrap();
    assert_eq!(output.status.code(), Some(0));
    assert!(output.stderr.is_empty());
}

#[test]
fn pages_protocol_and_schema_are_printed() {
    let folder = tempfile::tempdir().unwrap();
    let codes = run(folder.path(), &["explain"]).out;
    for line in codes.lines().take_while(|line| !line.is_empty()) {
        let code = line.split(' ').next().unwrap();
        let page = run(folder.path(), &["explain", code]);
        assert_eq!(page.code, Some(0));
        assert!(page.out.starts_with(&format!("# {code}\n")));
    }
    let shown = run(folder.path(), &["protocol", "show"]);
    fs::write(folder.path().join("again.toml"), &shown.out).unwrap();
    let checked = run(folder.path(), &["protocol", "check", "again.toml"]);
    assert_eq!(checked.code, Some(0), "{}", checked.complaint);
    let schema: Value = serde_json::from_str(&run(folder.path(), &["schema"]).out).unwrap();
    assert_eq!(schema["title"], "CaseResult");
    archproof(folder.path()).arg("--version").assert().success();
}
