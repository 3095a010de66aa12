//! Wash against first pass.

use super::Material;
use super::figure::quantity;
use super::table::{table, words};
use crate::result::Arch;
use maud::{Markup, html};

pub fn section(material: &Material<'_>) -> Option<Markup> {
    let washes = &material.result.wash;
    if washes.is_empty() {
        return None;
    }
    let rows: Vec<Vec<Markup>> = washes
        .iter()
        .map(|wash| {
            vec![
                words(match wash.arch {
                    Arch::Maxillary => "maxillary",
                    Arch::Mandibular => "mandibular",
                }),
                quantity(wash.median_mm, None, "mm"),
                quantity(wash.p95_mm, None, "mm"),
                words(wash.resolved.join(", ")),
                words(wash.still_open.join(", ")),
            ]
        })
        .collect();
    let columns = [
        "Jaw",
        "Median thickness",
        "95th percentile",
        "Resolved",
        "Still open",
    ];
    Some(html! {
        section {
            h2 #wash { "Wash" }
            (table("Wash over the first pass", &columns, &rows))
        }
    })
}
