//! `archproof gauge`: a study in, its figures out.
#![allow(clippy::unwrap_used)]

mod common;

use common::run;
use serde_json::Value;
use std::fs;

/// Ten parts, three operators, three repeats: the worked example of the
/// measurement systems analysis manual of the car makers (see the tests of the
/// statistics for how it is known), a row for each operator's repeat.
const EXAMPLE: [(&str, [f64; 10]); 9] = [
    (
        "A",
        [
            0.29, -0.56, 1.34, 0.47, -0.80, 0.02, 0.59, -0.31, 2.26, -1.36,
        ],
    ),
    (
        "A",
        [
            0.41, -0.68, 1.17, 0.50, -0.92, -0.11, 0.75, -0.20, 1.99, -1.25,
        ],
    ),
    (
        "A",
        [
            0.64, -0.58, 1.27, 0.64, -0.84, -0.21, 0.66, -0.17, 2.01, -1.31,
        ],
    ),
    (
        "B",
        [
            0.08, -0.47, 1.19, 0.01, -0.56, -0.20, 0.47, -0.63, 1.80, -1.68,
        ],
    ),
    (
        "B",
        [
            0.25, -1.22, 0.94, 1.03, -1.20, 0.22, 0.55, 0.08, 2.12, -1.62,
        ],
    ),
    (
        "B",
        [
            0.07, -0.68, 1.34, 0.20, -1.28, 0.06, 0.83, -0.34, 2.19, -1.50,
        ],
    ),
    (
        "C",
        [
            0.04, -1.38, 0.88, 0.14, -1.46, -0.29, 0.02, -0.46, 1.77, -1.49,
        ],
    ),
    (
        "C",
        [
            -0.11, -1.13, 1.09, 0.20, -1.07, -0.67, 0.01, -0.56, 1.45, -1.77,
        ],
    ),
    (
        "C",
        [
            -0.15, -0.96, 0.67, 0.11, -1.45, -0.49, 0.21, -0.49, 1.87, -2.16,
        ],
    ),
];

fn example() -> String {
    let mut table = "operator,part,repeat,value\n".to_owned();
    for (row, (operator, values)) in EXAMPLE.iter().enumerate() {
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
