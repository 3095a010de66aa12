//! The list of all cases.

use super::gathered::{LISTED, Listed};
use super::html::Shown;
use crate::page::table;
use maud::{Markup, html};

pub(super) fn list(shown: &Shown) -> Markup {
    let rows: Vec<Vec<Markup>> = shown.page.listed.iter().map(row).collect();
    let left_out = shown.overview.cases - rows.len() as u64;
    html! {
        h2 #cases { "All cases" }
        @if left_out > 0 {
            p {
                "The " (LISTED) " cases that need most attention; " (left_out) " more are in "
                a href="summary.csv" { "summary.csv" } "."
            }
        } @else {
            p.aside { "What needs most attention comes first. The same rows are in " a href="summary.csv" { "summary.csv" } "." }
        }
        div.titled { (table("All cases", &["case", "jaw", "verdict", "first thing to do", "report"], &rows)) }
    }
}

fn row(listed: &Listed) -> Vec<Markup> {
    let verdict = match listed.verdict.as_str() {
        "" => "could not be read",
        verdict => verdict,
    };
    vec![
        html! { (listed.case) },
        html! { (listed.arches) },
        html! { (verdict) },
        html! { (listed.step) },
        html! { @if let Some(link) = &listed.link { a href=(link) { "open" } } },
    ]
}
