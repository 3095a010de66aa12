//! What the result was made by and from, and how long that took.

use super::chapter::Chapter;
use super::figure::{exact, limit};
use super::material::Material;
use super::table::{table, words};
use crate::result::{CaseResult, Times};
use crate::text::words::impression_name;
use maud::{Markup, html};
use messages::Language;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let result = material.result;
    let body = html! {
        (table("What this result was made by and from", &["What", "Which"], &rows(result)))
        @if let Some(times) = &result.times { (durations(times)) }
    };
    vec![Chapter::second("provenance", "Provenance", body)]
}

fn rows(result: &CaseResult) -> Vec<Vec<Markup>> {
    let sum = |sha256: &str| html! { code { (sha256) } };
    let protocol = &result.protocol;
    let changed = if protocol.changed.is_empty() {
        "none".to_owned()
    } else {
        protocol.changed.join(", ")
    };
    let commit = result.commit.as_deref();
    let mut rows = vec![
        vec![words("program"), words(&result.program)],
        vec![
            words("built from commit"),
            words(commit.unwrap_or("not stated by the build")),
        ],
        vec![words("limits"), words(&protocol.name)],
        vec![words("limits, SHA-256"), sum(&protocol.sha256)],
        vec![
            words("limits that differ from the program's own"),
            words(changed),
        ],
    ];
    let scanner = &result.scanner;
    rows.push(vec![
        words("scanner: uncertainty of a length (k = 2)"),
        limit(Language::English, scanner.length_uncertainty_mm, "mm"),
    ]);
    rows.push(vec![
        words("scanner: source of that uncertainty"),
        words(&scanner.source),
    ]);
    if let Some(scanned_at) = &result.scanned_at {
        rows.push(vec![
            words("scanned, as the case file states (UTC)"),
            words(scanned_at),
        ]);
    }
    for impression in &result.impressions {
        let name = impression_name(impression, Language::English);
        let scan = format!("scan of the {name}, SHA-256");
        rows.push(vec![words(scan), sum(&impression.scan.sha256)]);
        for (number, part) in impression.scan.parts.iter().enumerate() {
            let scan = format!("scan of part {} of the {name}, SHA-256", number + 1);
            rows.push(vec![words(scan), sum(&part.sha256)]);
        }
        if let Some(tray) = &impression.tray {
            let scan = format!("scan of the tray of the {name}, SHA-256");
            rows.push(vec![words(scan), sum(&tray.sha256)]);
        }
    }
    let record = result.jaw_relation.as_ref();
    if let Some(record) = record.and_then(|relation| relation.record_sha256.as_ref()) {
        let scan = words("scan of the jaw-relation record, SHA-256");
        rows.push(vec![scan, sum(record)]);
    }
    rows
}

/// How long each step took. Impressions are measured side by side, so that the
/// steps add up to more than the whole.
fn durations(times: &Times) -> Markup {
    let rows: Vec<Vec<Markup>> = (times.steps.iter())
        .map(|step| {
            vec![
                words(&step.step),
                exact(Language::English, step.duration_s, "s"),
            ]
        })
        .collect();
    html! {
        section class="time" {
            (table("How long each step took; impressions are measured side by side", &["Step", "Duration"], &rows))
        }
    }
}
