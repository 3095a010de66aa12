//! The list of all cases.

use super::gathered::{LISTED, Listed};
use super::html::Shown;
use crate::page::{PART, filled, table};
use crate::text::words::verdict_name;
use maud::{Markup, html};
use messages::{Language, text};

pub(super) fn list(shown: &Shown) -> Markup {
    let language = shown.language();
    let rows: Vec<Vec<Markup>> = (shown.page.listed.iter())
        .map(|listed| row(listed, language))
        .collect();
    let left_out = shown.overview.cases - rows.len() as u64;
    let heading = text!(language, "folder-all-cases");
    let columns = [
        text!(language, "folder-head-case"),
        text!(language, "folder-head-jaw"),
        text!(language, "folder-head-verdict"),
        text!(language, "folder-head-first-step"),
        text!(language, "folder-head-report"),
    ];
    html! {
        h2 #cases { (heading) }
        @if left_out > 0 {
            p { (with_table(&text!(language, "folder-some-cases", listed = LISTED, more = left_out, table = PART[0]))) }
        } @else {
            p.aside { (with_table(&text!(language, "folder-cases-order", table = PART[0]))) }
        }
        div.titled { (table(&heading, &columns, &rows)) }
    }
}

/// A sentence with a link to the table of impressions in it.
pub(super) fn with_table(sentence: &str) -> Markup {
    filled(
        sentence,
        &[html! { a href="summary.csv" { "summary.csv" } }],
    )
}

fn row(listed: &Listed, language: Language) -> Vec<Markup> {
    let verdict = match listed.verdict.as_str() {
        "" => text!(language, "folder-case-unread"),
        verdict => verdict_name(verdict, language),
    };
    vec![
        html! { (listed.case) },
        html! { (listed.arches) },
        html! { (verdict) },
        html! { (listed.step) },
        html! { @if let Some(link) = &listed.link { a href=(link) { (text!(language, "folder-open")) } } },
    ]
}
