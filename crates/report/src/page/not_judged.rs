//! What was not judged, and why: silence never means that it is well.

use super::chapter::Chapter;
use super::material::Material;
use super::table::{table, words};
use crate::result::{CaseResult, NotJudged};
use crate::text::words::impression_name;
use maud::{Markup, html};
use messages::Language;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let rows = rows(entries(material.result));
    let not_asked: Vec<&str> = (material.result.not_judged.iter())
        .filter(|entry| !entry.asked)
        .map(|entry| entry.check.as_str())
        .collect();
    if rows.is_empty() && not_asked.is_empty() {
        return Vec::new();
    }
    let body = html! {
            @if !rows.is_empty() {
                p { "The verdict does not cover the following items. Inspect the impression by eye." }
                (table(CAPTION, &COLUMNS, &rows))
            }
            @if !not_asked.is_empty() { p { "Not part of this check: " (not_asked.join(", ")) "." } }
    };
    vec![Chapter::first("not-judged", "Not judged", body).of_class("notice")]
}

const CAPTION: &str = "What was not judged, and why";
const COLUMNS: [&str; 3] = ["Not judged", "Of", "Why"];

/// The same of impressions that a wash followed; `None` where all was judged.
pub fn superseded(result: &CaseResult) -> Option<Markup> {
    let rows = rows(of_impressions(result, true).collect());
    (!rows.is_empty()).then(|| table(CAPTION, &COLUMNS, &rows))
}

fn rows(entries: Vec<Entry<'_>>) -> Vec<Vec<Markup>> {
    let row = |entry: Entry<'_>| {
        vec![
            words(entry.checks.join(", ")),
            words(entry.of),
            words(entry.why),
        ]
    };
    entries.into_iter().map(row).collect()
}

/// Checks that one reason kept from being made.
struct Entry<'a> {
    of: String,
    why: &'a str,
    checks: Vec<&'a str>,
}

/// Reasons of each impression to be worked from, then those of the case, each once.
fn entries(result: &CaseResult) -> Vec<Entry<'_>> {
    of_impressions(result, false)
        .chain(gathered("the case", &result.not_judged))
        .collect()
}

fn of_impressions(result: &CaseResult, superseded: bool) -> impl Iterator<Item = Entry<'_>> {
    let impressions = result.impressions.iter();
    impressions
        .filter(move |impression| impression.superseded == superseded)
        .flat_map(|impression| {
            gathered(
                &impression_name(impression, Language::English),
                &impression.not_judged,
            )
        })
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
