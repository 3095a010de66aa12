//! What was not judged, and why: silence never means that it is well.

use super::Material;
use super::table::{table, words};
use crate::summary::not_judged_by_reason;
use maud::{Markup, html};

pub fn section(material: &Material<'_>) -> Option<Markup> {
    let entries = not_judged_by_reason(material.result);
    if entries.is_empty() {
        return None;
    }
    let rows: Vec<Vec<Markup>> = entries
        .into_iter()
        .map(|(why, checks)| vec![words(checks.join(", ").replace('_', " ")), words(why)])
        .collect();
    Some(html! {
        section.notice {
            h2 #not-judged { "Not judged" }
            p { "The verdict says nothing about these. Look at the impression itself." }
            (table("What was not judged, and why", &["Not judged", "Why"], &rows))
        }
    })
}
