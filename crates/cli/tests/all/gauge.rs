//! `archproof gauge`: a study in, its figures out.
#![allow(clippy::unwrap_used)]

use crate::common::run;
use fixtures::gauge::STUDY;
use serde_json::Value;
use std::fs;

/// The published example as a table.
pub fn example() -> String {
    let mut table = "operator,part,repeat,value\n".to_owned();
    for (row, (operator, values)) in STUDY.iter().enumerate() {
        for (part, value) in values.iter().enumerate() {
            let line = format!("{operator},{},{},{value}\n", part + 1, row % 3 + 1);
            table.push_str(&line);
        }
    }
    table
}

#[test]
fn the_published_example_is_told_as_printed() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("study.csv"), example()).unwrap();
    let told = run(folder.path(), &["gauge", "study.csv"]);
    assert_eq!(told.code, Some(0), "{}", told.complaint);
    for words in [
        "3 operators, 10 parts, 3 repeats",
        "operators by parts: F 0.434",
        "0.30237",
        "27.86",
        "Distinct categories: 4",
        "gauge 26.68 % of the study variation, 5 categories",
    ] {
        assert!(told.out.contains(words), "{words}\n{}", told.out);
    }
    let limited = ["gauge", "study.csv", "--least", "-4", "--most", "2"];
    let told = run(folder.path(), &limited).out;
    let against = "Gauge against limits (least -4, most 2): 6 sd are 30.2 % of the tolerance";
    assert!(told.contains(against), "{told}");
    let as_json = run(folder.path(), &["gauge", "study.csv", "--json"]);
    let study: Value = serde_json::from_str(&as_json.out).unwrap();
    let schema = run(folder.path(), &["schema", "gauge"]).out;
    let schema: Value = serde_json::from_str(&schema).unwrap();
    jsonschema::validate(&schema, &study).unwrap();
    assert_eq!(study["schema"], "archproof-gauge/1");
    let gauge = &study["studies"][0]["variation"][2];
    let number = |name: &str| gauge[name].as_f64().unwrap();
    assert_eq!(gauge["component"], "gauge");
    assert!((number("standard_deviation") - 0.302_37).abs() < 5e-6);
    assert!((number("percent_of_study_variation") - 27.86).abs() < 5e-3);
    assert!(number("from") < 0.302_37 && number("to") > 0.302_37);
    assert!(number("at_most") > 0.302_37 && number("at_most") < number("to"));
}

#[test]
fn a_faulty_table_is_one_line_that_says_where() {
    let folder = tempfile::tempdir().unwrap();
    let spoilt = example().replacen("0.47\n", "zero\n", 1);
    fs::write(folder.path().join("study.csv"), spoilt).unwrap();
    for (study, says) in [
        ("study.csv", "study.csv, line 5: the value 'zero'"),
        ("none.csv", "none.csv: cannot be read"),
    ] {
        let told = run(folder.path(), &["gauge", study]);
        assert_eq!((told.code, told.out.as_str()), (Some(2), ""));
        assert_eq!(told.complaint.lines().count(), 1, "{}", told.complaint);
        assert!(told.complaint.contains(says), "{}", told.complaint);
    }
}
