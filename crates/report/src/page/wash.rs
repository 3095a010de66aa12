//! Wash against first pass.

use super::chapter::Chapter;
use super::figure::{area, limit, none, quantity, share};
use super::material::Material;
use super::overlay;
use super::table::{place, table, words};
use crate::result::{ProtocolResult, SpotKind, Wash, WashPlace};
use crate::text::words::arch_word;
use maud::{Markup, html};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let washes = &material.result.wash;
    if washes.is_empty() {
        return Vec::new();
    }
    let protocol = &material.result.protocol;
    let body = html! {
            @for wash in washes {
                h3 { (arch_word(wash.arch)) ", wash over the impression before it" }
                div.beside {
                div {
                (table("Thickness of the wash", &["Figure", "Measured (k = 2)", "Limit"], &figures(wash, protocol)))
                p {
                    "Measured over " (area(wash.area_judged_mm2)) " of scanned tissue surface. Material was clearly "
                    "added over " (share(wash.added_share)) " of it, and the surface is clearly lower than before "
                    "over " (share(wash.lowered_share)) "; differences within the uncertainty do not count. "
                    @if let Some(map) = &wash.map { "The map is " code { (map.file) } "." }
                }
                }
                @if let Some(picture) = picture(material, wash) { div.overview { (picture) } }
                }
                @if wash.places.is_empty() {
                    p { "Before the wash there was no show-through and no thin place." }
                } @else {
                    (table("Places before the wash", &PLACES, &places(wash, protocol)))
                }
                @if !wash.new.is_empty() { p { "New on the wash: " (wash.new.join(", ")) "." } }
            }
    };
    vec![Chapter::first("wash", "Wash", body)]
}

fn picture(material: &Material<'_>, wash: &Wash) -> Option<Markup> {
    let number = usize::try_from(wash.impression).ok()?;
    let picture = material.pictures.washes.get(number)?.as_ref()?;
    let impression = material.result.impressions.get(number)?;
    Some(overlay::wash(
        impression,
        wash.map.as_ref()?,
        picture,
        material.language,
    ))
}

const PLACES: [&str; 7] = [
    "Place",
    "What it was",
    "Where",
    "Least thickness before",
    "Least thickness now (k = 2)",
    "Limit",
    "Under the wash",
];

fn figures(wash: &Wash, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let mm = |value| quantity(value, Some(wash.uncertainty_mm), "mm");
    let at_most = |key: &str| match protocol.limits.get(key) {
        Some(found) => html! { "at most " (limit(found.value, &found.unit)) },
        None => words("no limit"),
    };
    vec![
        vec![words("5th percentile"), mm(wash.p05_mm), words("no limit")],
        vec![words("median"), mm(wash.median_mm), words("no limit")],
        vec![
            words("95th percentile"),
            mm(wash.p95_mm),
            at_most("wash_most_mm"),
        ],
    ]
}

fn places(wash: &Wash, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    wash.places
        .iter()
        .map(|found| {
            let (what, key) = match found.kind {
                SpotKind::ShowThrough => ("show-through", "show_through_mm"),
                SpotKind::Thin => ("thin", "thin_cover_mm"),
            };
            vec![
                words(&found.spot),
                words(what),
                place(Some(&found.zone), found.side),
                match found.was_mm {
                    Some(mm) => quantity(mm, Some(found.was_uncertainty_mm), "mm"),
                    None => none("found by its colour"),
                },
                match found.cover_mm {
                    Some(mm) => quantity(mm, Some(found.uncertainty_mm), "mm"),
                    None => none("the wash was not scanned there"),
                },
                html! { @if let Some(found) = protocol.limits.get(key) { (limit(found.value, &found.unit)) } },
                words(state(wash, found)),
            ]
        })
        .collect()
}

fn state(wash: &Wash, place: &WashPlace) -> &'static str {
    if wash.resolved.contains(&place.spot) {
        "resolved"
    } else if wash.still_open.contains(&place.spot) {
        "still open"
    } else {
        "too close to call"
    }
}
