//! Frozen limits, and a check standard over time, by the command.
#![allow(clippy::unwrap_used)]

use crate::common::run;
use std::fs;
use std::path::Path;

/// A finished batch of invented rows: 30 before the wash, 30 washes.
fn finished(folder: &Path) {
    let digest = "ab".repeat(32);
    let row = |number: usize| {
        let stage = ["first_pass", "wash"][number % 2];
        let mm = 2.0 + (number % 2) as f64 + 0.01 * (number * 7 % 10) as f64;
        format!(
            "{{\"folder\":\"f{number:02}\",\"case\":\"C{number:02}\",\"arch\":\"maxillary\",\"stage\":\"{stage}\",\
             \"verdict\":\"accept\",\"scanned\":\"2026-01-{:02}T{:02}:00:00Z\",\"cover_median_mm\":{mm},\
             \"labels\":\"scanner=S1\"}}\n",
            1 + number / 3,
            number % 3
        )
    };
    fs::create_dir_all(folder).unwrap();
    fs::write(
        folder.join("results.jsonl"),
        (0..60).map(row).collect::<String>(),
    )
    .unwrap();
    let manifest = format!(
        "program = \"0.0.9\"\nsettings_sha256 = \"{digest}\"\nprotocol = \"ours\"\nprotocol_sha256 = \"{digest}\"\n\
         shard = 1\nshards = 1\ncases = 60\nunreadable = 0\n"
    );
    fs::write(folder.join("batch.toml"), manifest).unwrap();
}

#[test]
fn a_baseline_is_frozen_by_stage_and_label_and_never_written_over() {
    let folder = tempfile::tempdir().unwrap();
    finished(&folder.path().join("results"));
    let arguments = [
        "baseline",
        "results",
        "--write",
        "base.toml",
        "--by",
        "scanner",
    ];
    let done = run(folder.path(), &arguments);
    assert_eq!(done.code, Some(0), "{}", done.complaint);
    assert!(
        done.out.starts_with("Limits of 2 figures in 2 groups"),
        "{}",
        done.out
    );
    let text = fs::read_to_string(folder.path().join("base.toml")).unwrap();
    for words in [
        "program = \"0.0.9\"",
        "by = \"scanner\"",
        "stage = \"first_pass\"",
        "stage = \"wash\"",
        "label = \"scanner=S1\"",
        "count = 30",
    ] {
        assert!(text.contains(words), "{words}: {text}");
    }
    let again = run(folder.path(), &arguments);
    assert_eq!(again.code, Some(2));
    let nothing = run(folder.path(), &["baseline", ".", "--write", "b.toml"]);
    assert!(
        nothing.complaint.contains("holds no finished results"),
        "{}",
        nothing.complaint
    );
}

#[test]
fn a_broken_baseline_or_rule_is_refused_in_one_line() {
    let folder = tempfile::tempdir().unwrap();
    finished(&folder.path().join("results"));
    run(
        folder.path(),
        &["baseline", "results", "--write", "base.toml"],
    );
    let text = fs::read_to_string(folder.path().join("base.toml")).unwrap();
    fs::write(
        folder.path().join("odd.toml"),
        text.replacen("sigma", "sigmaa", 1),
    )
    .unwrap();
    let batch = |option: &str, value: &str| {
        run(
            folder.path(),
            &["batch", "results", "--out", "o", option, value],
        )
    };
    let odd = batch("--baseline", "odd.toml");
    assert_eq!(odd.code, Some(2));
    assert!(
        odd.complaint.contains("odd.toml: line ") && odd.complaint.contains("sigmaa"),
        "{}",
        odd.complaint
    );
    assert_eq!(
        odd.complaint.trim_end().lines().count(),
        1,
        "{}",
        odd.complaint
    );
    let rule = batch("--rules", "nine");
    assert!(
        rule.complaint.contains("eight-in-a-row"),
        "{}",
        rule.complaint
    );
}

/// A weekly scan of an artefact, invented, whose diameter errs by so much more.
pub fn week(standard: &Path, number: usize, more_mm: f64) {
    let error = 0.002 * ((number * 5 % 7) as f64 - 3.0) / 3.0 + more_mm;
    let text = format!(
        "{{\"schema\":\"archproof-artefact/1\",\"artefact\":\"BALLS-1\",\"scans\":[{{\"changed_at\":\"2026-{:02}-{:02}T08:00:00Z\"}}],\
         \"sizes\":[{{\"quantity\":\"diameter\",\"of\":[\"A\"],\"readings\":[{{\"error_mm\":{error}}}]}}]}}",
        1 + number / 4,
        1 + 7 * (number % 4)
    );
    // Names say nothing of the order.
    fs::write(standard.join(format!("{:02}.json", 99 - number)), text).unwrap();
}

/// The last three have a scale that slipped.
#[test]
fn a_check_standard_is_in_control_until_the_scanner_slips() {
    let folder = tempfile::tempdir().unwrap();
    let standard = folder.path().join("standard");
    fs::create_dir(&standard).unwrap();
    let week = |number, more_mm| week(&standard, number, more_mm);
    (0..4).for_each(|number| week(number, 0.0));
    let few = run(folder.path(), &["control", "standard"]);
    assert_eq!(few.code, Some(3), "{}", few.complaint);
    (0..16).for_each(|number| week(number, 0.0));
    let good = run(folder.path(), &["control", "standard", "--first", "12"]);
    assert_eq!(good.code, Some(0), "{} {}", good.out, good.complaint);
    assert!(
        good.out
            .starts_with("IN CONTROL: 16 measurements of artefact BALLS-1"),
        "{}",
        good.out
    );
    (16..19).for_each(|number| week(number, 0.02));
    let page = [
        "control",
        "standard",
        "--first",
        "12",
        "--write",
        "page.html",
    ];
    let slipped = run(folder.path(), &page);
    assert_eq!(
        slipped.code,
        Some(1),
        "{} {}",
        slipped.out,
        slipped.complaint
    );
    assert!(
        slipped.out.starts_with("OUT OF CONTROL: 19 measurements"),
        "{}",
        slipped.out
    );
    assert!(
        slipped
            .out
            .contains("error of diameter A: measurement 17 (2026-05-01T08:00:00Z)"),
        "{}",
        slipped.out
    );
    let page = fs::read_to_string(folder.path().join("page.html")).unwrap();
    assert!(page.contains("OUT OF CONTROL") && page.contains("<svg"));
    let json = run(folder.path(), &["control", "standard", "--json"]).out;
    let schema = run(folder.path(), &["schema", "control"]).out;
    let [schema, json] = [schema, json].map(|text| serde_json::from_str(&text).unwrap());
    jsonschema::validate(&schema, &json).unwrap();
    let nothing = run(folder.path(), &["control", "."]);
    assert_eq!(nothing.code, Some(1), "folders below are looked through");
}
