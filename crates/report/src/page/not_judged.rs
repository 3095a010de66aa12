//! What was not judged, and why: silence never means that it is well.

use super::material::Material;
use super::table::{table, words};
use crate::result::{CaseResult, NotJudged};
use crate::text::words::impression_name;
use maud::{Markup, html};

pub fn section(material: &Material<'_>) -> Option<Markup> {
    let entries = entries(material.result);
    let not_asked: Vec<&str> = (material.result.not_judged.iter())
        .filter(|entry| !entry.asked)
        .map(|entry| entry.check.as_str())
        .collect();
    if entries.is_empty() && not_asked.is_empty() {
        return None;
    }
    let rows: Vec<Vec<Markup>> = entries
        .into_iter()
        .map(|entry| {
            vec![
                words(entry.checks.join(", ")),
                words(entry.of),
                words(entry.why),
            ]
        })
        .collect();
    Some(html! {
        section.notice {
            h2 #not-judged { "Not judged" }
            @if !rows.is_empty() {
                p { "The verdict does not cover the following items. Inspect the impression by eye." }
                (table("What was not judged, and why", &["Not judged", "Of", "Why"], &rows))
            }
            @if !not_asked.is_empty() { p { "Not part of this check: " (not_asked.join(", ")) "." } }
        }
    })
}

/// Checks that one reason kept from being made.
struct Entry<'a> {
    of: String,
    why: &'a str,
    checks: Vec<&'a str>,
}

/// Reasons of each impression, then those of the case, each once.
fn entries(result: &CaseResult) -> Vec<Entry<'_>> {
    let of_impressions = (result.impressions.iter())
        .flat_map(|impression| gathered(&impression_name(impression), &impression.not_judged));
    of_impressions
        .chain(gathered("the case", &result.not_judged))
        .collect()
}

fn gathered<'a>(of: &str, not_judged: &'a [NotJudged]) -> Vec<Entry<'a>> {
    let mut entries: Vec<Entry<'a>> = Vec::new();
    for one in not_judged.iter().filter(|one| one.asked) {
        match entries.iter_mut().find(|entry| entry.why == one.why) {
            Some(entry) => entry.checks.push(&one.check),
            None => entries.push(Entry {
                of: of.to_owned(),
                why: &one.why,
                checks: vec![&one.check],
            }),
        }
    }
    entries
}
