//! The chapters of one impression in each language.

use super::material::Material;
use super::tests::cases;
use super::{as_sent, border, cover, defects, landmarks, next_tray, relief, scan, tray_fit, wash};
use crate::drawing::border_chart;
use crate::files::Output;
use crate::picture::pictures;
use crate::result::{CaseResult, ImpressionResult};
use crate::testing::checked_with_spots;
use check::CheckedCase;
use maud::Markup;
use messages::Language;
use serde_json::{Value, json};
use std::collections::BTreeSet;

type Part = fn(&Material<'_>, usize, &ImpressionResult) -> Option<Markup>;

const PARTS: [Part; 13] = [
    cover::part,
    landmarks::key,
    cover::ground,
    relief::part,
    as_sent::part,
    border::part,
    border::chart,
    landmarks::part,
    cover::patches,
    tray_fit::part,
    defects::part,
    scan::part,
    next_tray::part,
];

/// A result with what none of the hand-built cases holds.
fn result_of(checked: &CheckedCase) -> CaseResult {
    let mut result = serde_json::to_value(CaseResult::of(checked)).unwrap();
    let first = &mut result["impressions"][0];
    let scan = first["tray"].clone();
    let bend = |side: &str| {
        let mut bend = json!({ "side": side, "end": [0.0, 0.0, 0.0] });
        for figure in [
            "end_toward_tissue",
            "end_outward",
            "middle_toward_tissue",
            "middle_outward",
        ] {
            bend[format!("{figure}_mm")] = json!(0.1);
            bend[format!("{figure}_uncertainty_mm")] = json!(0.05);
        }
        bend
    };
    let place = |kind: &str, found_again: Value| {
        json!({
            "kind": kind, "zone": "palate", "side": "left", "at": [0.0, 0.0, 0.0],
            "found_again": found_again,
        })
    };
    let damage = |kind: &str| {
        json!({
            "kind": kind, "zone": "residual ridge", "side": "right", "at": [0.0, 0.0, 0.0],
            "depth_mm": -0.31, "depth_uncertainty_mm": 0.08, "area_mm2": 12.5,
        })
    };
    if !scan.is_null() {
        first["as_sent"] = json!({
            "scan": scan,
            "unused": null,
            "change": {
                "larger_percent": 0.2, "larger_uncertainty_percent": 0.1,
                "heels_apart_mm": 0.3, "heels_apart_uncertainty_mm": 0.1,
                "between_heels_mm": 42.0, "bends": [bend("right"), bend("left")],
                "unchanged_share": 0.97, "uncertainty_mm": 0.05,
                "damage": [damage("missing_at_border"), damage("pressed_in"), damage("stuck_on")],
                "places": [
                    place("show-through", json!(true)), place("thin", json!(false)),
                    place("void", Value::Null), place("short border", json!(true)),
                ],
            },
        });
    }
    if !first["cover"].is_null() {
        first["cover"]["tray_bend"] = json!([bend("right"), bend("left")]);
    }
    first["tray_joints"] =
        json!([{ "pieces": [1, 2], "gap_mm": 0.1, "step_mm": 0.05, "uncertainty_mm": 0.02 }]);
    first["scan"]["parts"] = json!([
        { "sha256": "0", "fitting_share": 0.94, "rms_mm": 0.02, "uncertainty_mm": 0.01 },
        { "sha256": "1", "fitting_share": null, "rms_mm": null, "uncertainty_mm": null },
    ]);
    first["scan"]["cut_width_mm"] = json!(0.8);
    let touch = json!({
        "zone": "palate", "side": "left", "depth_mm": 0.4, "area_mm2": 31.0, "at": [0.0, 0.0, 0.0],
    });
    let clearance = json!({
        "least_mm": -0.4, "median_mm": 2.2, "uncertainty_mm": 0.1, "unevenness_mm": 0.5,
        "wanted_share": 0.6, "over_tray_share": 0.9, "touches": [touch], "edges": [],
    });
    let tray = |name: &str, is_other: bool, clearance: Value| {
        json!({
            "name": name, "sha256": "0", "is_of_the_other_jaw": is_other, "clearance": clearance,
        })
    };
    first["next_tray"] = json!({
        "conclusion": "adapt", "tray": "A", "bend": [touch], "shorten": [],
        "wanted_clearance_mm": [2.0, 3.0],
        "trays": [tray("A", false, clearance), tray("B", true, Value::Null), tray("C", false, Value::Null)],
    });
    let defects = ["void", "nodule", "fold", "hole"].map(|kind| {
        let depth = (kind != "hole").then_some(0.7);
        json!({
            "id": "D1", "kind": kind, "centre": [0.0, 0.0, 0.0], "area_mm2": 3.1,
            "depth_mm": depth, "depth_uncertainty_mm": depth.map(|_| 0.1), "across_mm": 1.9,
            "across_uncertainty_mm": 0.2, "length_mm": null, "from_edge_mm": 5.5,
            "zone": "rugae", "side": null,
        })
    });
    first["defects"] = json!(defects);
    serde_json::from_value(result).unwrap()
}

/// The chapters of every impression and of the wash.
fn chapters(checked: &CheckedCase, language: Language) -> String {
    let result = result_of(checked);
    let border = result.impressions[0].border.as_ref();
    let chart = border.zip(border_chart(checked, 0, language));
    let files: Vec<Output> = chart
        .map(|(border, chart)| (border.chart.clone(), chart))
        .into_iter()
        .collect();
    let material = Material {
        language,
        result: &result,
        pictures: &pictures(checked).unwrap(),
        files: &files,
    };
    let impressions = result.impressions.iter().enumerate();
    let parts = impressions.flat_map(|(number, impression)| {
        let parts = PARTS.iter();
        parts
            .filter_map(|part| part(&material, number, impression))
            .collect::<Vec<Markup>>()
    });
    let washes = wash::chapters(&material).into_iter();
    let washes = washes.map(|chapter| chapter.body);
    parts
        .chain(washes)
        .map(|markup| markup.into_string())
        .collect()
}

/// What is read in chapters, piece by piece, but for pictures.
fn read(chapters: &str) -> BTreeSet<String> {
    let mut pieces = chapters.split("<figure class=\"view\">");
    let mut rest = pieces.next().unwrap().to_owned();
    rest.extend(pieces.map(|piece| piece.split_once("</figure>").unwrap().1));
    let labels = rest.split("aria-label=\"").skip(1);
    let labels = labels.map(|label| label.split('"').next().unwrap());
    let texts = rest
        .split('<')
        .filter_map(|piece| Some(piece.split_once('>')?.1));
    let all = labels.chain(texts).map(|text| text.trim().to_owned());
    all.filter(|text| !text.is_empty()).collect()
}

#[rstest::rstest]
fn chapters_of_an_impression_are_wholly_in_their_language(
    #[values(Language::German, Language::Spanish)] language: Language,
) {
    const MOST_SHARED_WORDS: usize = 3;
    for checked in cases() {
        let own = read(&chapters(&checked, language));
        let english = read(&chapters(&checked, Language::English));
        let words = |text: &str| {
            let words = text.split(|c: char| c.is_whitespace() || c == ',');
            words
                .filter(|word| word.chars().filter(|c| c.is_alphabetic()).count() > 1)
                .count()
        };
        for shared in own.intersection(&english) {
            assert!(words(shared) <= MOST_SHARED_WORDS, "{shared}");
        }
        // Neither the key of a text that is missing, nor a decimal point.
        for text in &own {
            let is_key = |word: &str| {
                word.contains('-') && word.chars().all(|c| c.is_ascii_lowercase() || c == '-')
            };
            let is_file = text.contains(".csv") || text.contains(".ply") || text.contains(".stl");
            assert!(is_file || !text.split(' ').any(is_key), "{text}");
            let digits: Vec<char> = text.chars().collect();
            let is_point = |three: &[char]| {
                three[0].is_ascii_digit() && three[1] == '.' && three[2].is_ascii_digit()
            };
            assert!(is_file || !digits.windows(3).any(is_point), "{text}");
        }
    }
}

#[test]
fn numbers_for_machines_keep_their_point_in_every_language() {
    let checked = checked_with_spots();
    let values = |language| {
        let chapters = chapters(&checked, language);
        let values = chapters.split("<data value=\"").skip(1);
        let values = values.map(|rest| rest.split('"').next().unwrap().to_owned());
        let mut values: Vec<String> = values.collect();
        values.sort();
        values
    };
    let english = values(Language::English);
    assert!(english.iter().any(|value| value.contains('.')));
    assert_eq!(values(Language::German), english);
    assert_eq!(values(Language::Spanish), english);
}
