//! What was not judged, and why: silence never means that it is well.

use super::chapter::Chapter;
use super::material::Material;
use super::table::{table, words};
use crate::result::{CaseResult, NotJudged};
use crate::text::words::{check_names, impression_name};
use maud::{Markup, html};
use messages::{Language, text};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let language = material.language;
    let rows = rows(entries(material.result, language), language);
    let not_asked: Vec<&str> = (material.result.not_judged.iter())
        .filter(|entry| !entry.asked)
        .map(|entry| entry.check.as_str())
        .collect();
    if rows.is_empty() && not_asked.is_empty() {
        return Vec::new();
    }
    let body = html! {
            @if !rows.is_empty() {
                p { (text!(language, "page-not-judged-lead")) }
                (drawn(&rows, language))
            }
            @if !not_asked.is_empty() {
                p { (text!(language, "summary-not-part", checks = check_names(&not_asked, language))) "." }
            }
    };
    let heading = text!(language, "page-not-judged");
    vec![Chapter::first("not-judged", &heading, body).of_class("notice")]
}

fn drawn(rows: &[Vec<Markup>], language: Language) -> Markup {
    let columns = [
        text!(language, "page-not-judged"),
        text!(language, "page-of"),
        text!(language, "page-why"),
    ];
    let caption = text!(language, "page-not-judged-and-why");
    table(&caption, &columns.each_ref().map(String::as_str), rows)
}

/// The same of impressions that a wash followed; `None` where all was judged.
pub fn superseded(result: &CaseResult, language: Language) -> Option<Markup> {
    let entries = of_impressions(result, true, language).collect();
    let rows = rows(entries, language);
    (!rows.is_empty()).then(|| drawn(&rows, language))
}

fn rows(entries: Vec<Entry<'_>>, language: Language) -> Vec<Vec<Markup>> {
    let row = |entry: Entry<'_>| {
        vec![
            words(check_names(&entry.checks, language)),
            words(entry.of),
            words(entry.why),
        ]
    };
    entries.into_iter().map(row).collect()
}

/// Checks that one reason kept from being made.
struct Entry<'a> {
    of: String,
    why: String,
    checks: Vec<&'a str>,
}

/// Reasons of each impression to be worked from, then those of the case, each once.
fn entries(result: &CaseResult, language: Language) -> Vec<Entry<'_>> {
    let the_case = text!(language, "page-the-case");
    of_impressions(result, false, language)
        .chain(gathered(&the_case, &result.not_judged, language))
        .collect()
}

fn of_impressions(
    result: &CaseResult,
    superseded: bool,
    language: Language,
) -> impl Iterator<Item = Entry<'_>> {
    let impressions = result.impressions.iter();
    impressions
        .filter(move |impression| impression.superseded == superseded)
        .flat_map(move |impression| {
            gathered(
                &impression_name(impression, language),
                &impression.not_judged,
                language,
            )
        })
}

fn gathered<'a>(of: &str, not_judged: &'a [NotJudged], language: Language) -> Vec<Entry<'a>> {
    let mut entries: Vec<Entry<'a>> = Vec::new();
    for one in not_judged.iter().filter(|one| one.asked) {
        let why = one.why_in(language);
        match entries.iter_mut().find(|entry| entry.why == why) {
            Some(entry) => entry.checks.push(&one.check),
            None => entries.push(Entry {
                of: of.to_owned(),
                why,
                checks: vec![&one.check],
            }),
        }
    }
    entries
}
