//! `archproof agreement`: verdicts of people beside those of the program.
#![allow(clippy::unwrap_used)]

use crate::common::run;
use serde_json::Value;
use std::fs;

/// Verdicts that agree in 35 of 50 cases: kappa 0.4, its interval 0.151 to 0.649 by
/// statsmodels 0.14.
pub fn verdicts() -> String {
    let mut text = "case,panel,archproof\n".to_owned();
    let cells = [
        ("accept", "accept", 20),
        ("accept", "rework", 5),
        ("rework", "accept", 10),
    ];
    for (number, (one, other)) in cells
        .into_iter()
        .chain([("rework", "rework", 15)])
        .flat_map(|(one, other, count)| (0..count).map(move |_| (one, other)))
        .enumerate()
    {
        text += &format!("{number},{one},{other}\n");
    }
    text
}

#[test]
fn verdicts_are_compared_beyond_chance_and_beside_one_rater() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("verdicts.csv"), verdicts()).unwrap();
    let asked = ["agreement", "verdicts.csv", "--beside", "panel"];
    let shown = run(folder.path(), &asked);
    assert_eq!(shown.code, Some(0), "{}", shown.complaint);
    for words in [
        "50 cases, 2 raters, verdicts accept, rework",
        "70.0 %  0.40 (0.15 to 0.65)",
        "10 of 25 (",
        "5 of 25 (",
    ] {
        assert!(shown.out.contains(words), "{}", shown.out);
    }

    let json = run(folder.path(), &[&asked[..], &["--json"]].concat());
    let result: Value = serde_json::from_str(&json.out).unwrap();
    let schema = run(folder.path(), &["schema", "agreement"]).out;
    let schema: Value = serde_json::from_str(&schema).unwrap();
    jsonschema::validate(&schema, &result).unwrap();
    assert_eq!(result["pairs"][0]["agreement"]["kappa"], 0.4);
    assert_eq!(result["beside"][0]["missed"]["count"], 10);
}

#[test]
fn what_cannot_be_compared_is_one_line() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("verdicts.csv"), verdicts()).unwrap();
    fs::write(folder.path().join("one.csv"), "case,a1\n1,accept\n").unwrap();
    for (asked, says) in [
        (&["one.csv"][..], "one.csv, line 1: the first line names"),
        (&["none.csv"], "none.csv: cannot be read"),
        (&["verdicts.csv", "--beside", "b2"], "'b2' is no rater"),
    ] {
        let said = run(folder.path(), &[&["agreement"], asked].concat());
        assert_eq!((said.code, said.out.as_str()), (Some(2), ""));
        assert_eq!(said.complaint.lines().count(), 1, "{}", said.complaint);
        assert!(said.complaint.contains(says), "{}", said.complaint);
    }
}
