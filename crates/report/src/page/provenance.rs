//! What the result was made by and from, and how long that took.

use super::chapter::Chapter;
use super::figure::{exact, limit};
use super::material::Material;
use super::table::{table, words};
use crate::result::{CaseResult, ImpressionResult, Times};
use crate::text::words::impression_name;
use judge::scanner_source;
use maud::{Markup, html};
use messages::{Language, text};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let (result, language) = (material.result, material.language);
    let body = html! {
        (table(
            &text!(language, "page-made-by-and-from"),
            &[&text!(language, "page-what"), &text!(language, "page-which")],
            &rows(result, language),
        ))
        @if let Some(times) = &result.times { (durations(times, language)) }
    };
    let heading = text!(language, "page-provenance");
    vec![Chapter::second("provenance", &heading, body)]
}

fn rows(result: &CaseResult, language: Language) -> Vec<Vec<Markup>> {
    let protocol = &result.protocol;
    let changed = if protocol.changed.is_empty() {
        text!(language, "page-none-changed")
    } else {
        protocol.changed.join(", ")
    };
    let commit = match &result.commit {
        Some(commit) => commit.clone(),
        None => text!(language, "page-commit-not-stated"),
    };
    let scanner = &result.scanner;
    let uncertainty = limit(language, scanner.length_uncertainty_mm, "mm");
    let mut rows = vec![
        (text!(language, "page-program"), words(&result.program)),
        (text!(language, "page-commit"), words(commit)),
        (text!(language, "page-protocol"), words(&protocol.name)),
        (text!(language, "page-protocol-sum"), code(&protocol.sha256)),
        (text!(language, "page-limits-changed"), words(changed)),
        (text!(language, "page-scanner-uncertainty"), uncertainty),
        (
            text!(language, "page-scanner-source"),
            words(scanner_source(&scanner.source).text(language)),
        ),
    ];
    if let Some(scanned_at) = &result.scanned_at {
        rows.push((text!(language, "page-scanned-at"), words(scanned_at)));
    }
    for impression in &result.impressions {
        rows.extend(scans(impression, language));
    }
    let record = result.jaw_relation.as_ref();
    if let Some(record) = record.and_then(|relation| relation.record_sha256.as_ref()) {
        rows.push((text!(language, "page-record-sum"), code(record)));
    }
    (rows.into_iter())
        .map(|(what, which)| vec![words(what), which])
        .collect()
}

/// The scans of an impression, each with its checksum.
fn scans(impression: &ImpressionResult, language: Language) -> Vec<(String, Markup)> {
    let name = impression_name(impression, language);
    let mut rows = vec![(
        text!(language, "page-scan-sum", impression = name.as_str()),
        code(&impression.scan.sha256),
    )];
    for (number, part) in impression.scan.parts.iter().enumerate() {
        let number = number + 1;
        rows.push((
            text!(
                language,
                "page-part-sum",
                part = number,
                impression = name.as_str()
            ),
            code(&part.sha256),
        ));
    }
    if let Some(tray) = &impression.tray {
        rows.push((
            text!(language, "page-tray-sum", impression = name.as_str()),
            code(&tray.sha256),
        ));
    }
    rows
}

fn code(sum: &str) -> Markup {
    html! { code { (sum) } }
}

/// How long each step took. Impressions are measured side by side, so that the
/// steps add up to more than the whole.
fn durations(times: &Times, language: Language) -> Markup {
    let rows: Vec<Vec<Markup>> = (times.steps.iter())
        .map(|step| vec![words(&step.step), exact(language, step.duration_s, "s")])
        .collect();
    html! {
        section class="time" {
            (table(
                &text!(language, "page-durations"),
                &[&text!(language, "page-step"), &text!(language, "page-duration")],
                &rows,
            ))
        }
    }
}
