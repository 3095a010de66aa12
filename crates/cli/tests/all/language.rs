//! `--language`: people read summary, sheet and return note in it; machines read what they
//! always did.

#![allow(clippy::unwrap_used, reason = "tests")]

use crate::common::{archproof, first_pass, run};
use serde_json::Value;
use std::fs;
use std::path::Path;

const CHECK: [&str; 5] = ["check", "first-pass.toml", "--return", "--out", "results"];

fn read(folder: &Path, file: &str) -> String {
    fs::read_to_string(folder.join("results").join(file)).unwrap()
}

/// The result without the times of its making.
fn result(folder: &Path) -> Value {
    let mut result: Value = serde_json::from_str(&read(folder, "result.json")).unwrap();
    result["times"] = Value::Null;
    result
}

#[test]
fn summary_report_sheet_and_return_note_are_in_the_language_that_is_asked_for() {
    let folder = first_pass();
    let folder = folder.path();
    let english = run(folder, &CHECK).out;
    assert!(english.starts_with("REWORK case FIRST: "), "{english}");
    assert!(
        english.contains("\nSheet: results/sheet.html\n"),
        "{english}"
    );
    assert!(read(folder, "sheet.html").contains("<html lang=\"en\">"));
    assert!(read(folder, "report.html").contains("<html lang=\"en\">"));
    let json = result(folder);
    for (code, verdict, sheet, note) in [
        (
            "de",
            "NACHARBEITEN Fall FIRST: ",
            "\nBegleitblatt: results/sheet.html\n",
            "Fall FIRST: Rücksendeblatt\n",
        ),
        (
            "es",
            "RETOCAR caso FIRST: ",
            "\nHoja: results/sheet.html\n",
            "Caso FIRST: nota de devolución\n",
        ),
    ] {
        let out = run(folder, &[&CHECK[..], &["--language", code]].concat()).out;
        assert!(out.starts_with(verdict), "{out}");
        assert!(out.contains(sheet), "{out}");
        let page = format!("<html lang=\"{code}\">");
        for file in ["report.html", "sheet.html", "return.html"] {
            assert!(read(folder, file).contains(&page), "{file}");
        }
        assert!(read(folder, "return.txt").starts_with(note));
        assert_eq!(result(folder), json, "{code}");
    }
}

#[test]
fn without_the_option_it_is_the_language_of_the_system() {
    let folder = first_pass();
    let spoken = |locale: &str| {
        let output = archproof(folder.path())
            .args(["check", "first-pass.toml", "--no-report"])
            .env("LC_ALL", locale)
            .output()
            .unwrap();
        String::from_utf8(output.stdout).unwrap()
    };
    for (locale, verdict) in [
        ("de_AT.UTF-8", "NACHARBEITEN"),
        ("es_MX.UTF-8", "RETOCAR"),
        ("fr_FR.UTF-8", "REWORK"),
    ] {
        let said = spoken(locale);
        assert!(said.starts_with(verdict), "{locale}: {said}");
    }
}

#[test]
fn a_batch_writes_its_sheets_in_the_language_that_is_asked_for() {
    let folder = first_pass();
    let out = tempfile::tempdir().unwrap();
    let place = out.path().to_str().unwrap();
    let outcome = run(
        folder.path(),
        &["batch", ".", "--out", place, "--language", "es"],
    );
    assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
    assert!(outcome.out.contains("retocar 1"), "{}", outcome.out);
    let case = fs::read_dir(out.path().join("cases")).unwrap().next();
    let case = case.unwrap().unwrap().path();
    let sheet = fs::read_to_string(case.join("sheet.html")).unwrap();
    assert!(sheet.contains("<html lang=\"es\">"));
}

#[test]
fn an_unknown_language_is_refused_in_one_line() {
    let folder = first_pass();
    let outcome = run(
        folder.path(),
        &["check", "first-pass.toml", "--language", "xx"],
    );
    assert_eq!(outcome.code, Some(2));
    assert!(outcome.complaint.contains("xx"), "{}", outcome.complaint);
}
