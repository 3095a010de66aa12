//! Pictures, charts and sections show an impression the same way round: whatever has a number
//! lies on the letter's side that is the patient's.

#![allow(clippy::unwrap_used, reason = "tests")]

use crate::common::WHOLE_CASE;
use serde_json::Value;
use std::fs;
use std::path::Path;

/// A text of a drawing: how far to the right it lies, and what it says.
fn texts(drawing: &str) -> Vec<(f64, f64, String)> {
    let elements = drawing.split("<text ").skip(1);
    elements
        .filter_map(|element| {
            let (tag, rest) = element.split_once('>')?;
            let words = rest.split('<').next()?.trim().to_owned();
            Some((
                number(tag, "x")?,
                number(tag, "font-size").unwrap_or_default(),
                words,
            ))
        })
        .collect()
}

fn number(tag: &str, name: &str) -> Option<f64> {
    let (_, rest) = format!(" {tag}")
        .split_once(&format!(" {name}=\""))
        .map(|(before, after)| (before.to_owned(), after.to_owned()))?;
    rest.split('"').next()?.parse().ok()
}

/// How far to the right the letters R and L of the size of pictures stand.
fn letters(drawing: &str) -> (f64, f64) {
    let of = |letter: &str| {
        let mut found = (texts(drawing).into_iter())
            .filter(|(_, size, words)| *size >= 30.0 && words == letter);
        found.next().unwrap_or_else(|| panic!("no {letter}")).0
    };
    (of("R"), of("L"))
}

/// Where the place of a finding is drawn on the small arch.
fn place(drawing: &str, id: &str) -> f64 {
    let dots = drawing.split("<circle ").skip(1);
    let mut tags = dots.filter_map(|dot| dot.split_once('>').map(|(tag, _)| tag));
    let tag = tags.find(|tag| tag.contains(&format!("data-of=\"{id}\"")));
    number(tag.unwrap_or_else(|| panic!("{id} has no place")), "cx").unwrap()
}

fn assert_side(finding: &Value, x: f64, (right, left): (f64, f64), what: &str) {
    let is_right = (x - right).abs() < (x - left).abs();
    let id = &finding["id"];
    match finding["side"].as_str() {
        Some("right") => assert!(is_right, "{id} in {what}"),
        Some("left") => assert!(!is_right, "{id} in {what}"),
        _ => {}
    }
}

fn assert_way_round((right, left): (f64, f64), arch: &str, what: &str) {
    assert_eq!(right > left, arch == "maxillary", "{what}");
}

#[test]
fn everything_with_a_number_lies_on_the_patients_side() {
    let folder = WHOLE_CASE.results();
    let read = |file: &str| fs::read_to_string(folder.join(file)).unwrap();
    let result: Value = serde_json::from_str(&read("result.json")).unwrap();
    let findings = result["findings"].as_array().unwrap();
    let mut sections = 0;
    for finding in findings {
        let Some(file) = finding["drawing"].as_str() else {
            continue;
        };
        let (section, id) = (read(file), finding["id"].as_str().unwrap());
        let sides = letters(&section);
        assert_way_round(sides, finding["arch"].as_str().unwrap(), file);
        assert_side(finding, place(&section, id), sides, file);
        let number = finding["impression"].as_u64().unwrap() as usize;
        let file = result["impressions"][number]["border"]["chart"].as_str();
        let chart = read(file.unwrap());
        let sides = letters(&chart);
        assert_way_round(sides, finding["arch"].as_str().unwrap(), file.unwrap());
        assert_side(finding, place(&chart, id), sides, file.unwrap());
        sections += 1;
    }
    assert!(sections > 20, "{sections}");
    assert_pictures(&read("report.html"), findings, &folder);
}

/// Numbers stand beside a picture on the side that their places lie on.
fn assert_pictures(report: &str, findings: &[Value], folder: &Path) {
    let mut numbers = 0;
    for figure in report.split("<figure class=\"view\">").skip(1) {
        let picture = figure.split("</figure>").next().unwrap();
        if picture.contains("thickness of the wash") {
            continue;
        }
        let sides = letters(picture);
        for (x, _, words) in texts(picture) {
            let Some(finding) = findings.iter().find(|finding| finding["id"] == words[..]) else {
                continue;
            };
            assert_side(finding, x, sides, &format!("{} pictures", folder.display()));
            numbers += 1;
        }
    }
    assert!(numbers > 40, "{numbers}");
}
