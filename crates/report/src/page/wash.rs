//! Wash against first pass.

use super::chapter::Chapter;
use super::figure::{area, at_most, limit, none, quantity, share};
use super::filled::{PART, filled};
use super::material::Material;
use super::overlay;
use super::table::{place, table, words};
use crate::result::{Arch, ProtocolResult, SpotKind, Wash, WashPlace};
use crate::text::words::place_kind;
use maud::{Markup, html};
use messages::{Language, text};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let language = material.language;
    let washes = &material.result.wash;
    if washes.is_empty() {
        return Vec::new();
    }
    let body = html! { @for wash in washes { (one(material, wash)) } };
    vec![Chapter::first(
        "wash",
        &text!(language, "wash-chapter"),
        body,
    )]
}

fn one(material: &Material<'_>, wash: &Wash) -> Markup {
    let language = material.language;
    let protocol = &material.result.protocol;
    html! {
        h3 { (over(language, wash.arch)) }
        div.beside {
            div {
                (thickness(language, wash, protocol))
                (ground(language, wash))
            }
            @if let Some(picture) = picture(material, wash) { div.overview { (picture) } }
        }
        @if wash.places.is_empty() {
            p { (text!(language, "wash-no-places")) }
        } @else {
            (places(language, wash, protocol))
        }
        @if !wash.new.is_empty() { p { (text!(language, "wash-new-places", places = wash.new.join(", "))) } }
    }
}

fn over(language: Language, arch: Arch) -> String {
    match arch {
        Arch::Maxillary => text!(language, "wash-over-maxillary"),
        Arch::Mandibular => text!(language, "wash-over-mandibular"),
    }
}

/// Over how much the wash was measured, and where it added material.
fn ground(language: Language, wash: &Wash) -> Markup {
    html! {
        p {
            (filled(
                &text!(language, "wash-measured-over", area = PART[0]),
                &[area(language, wash.area_judged_mm2)],
            ))
            " "
            (filled(
                &text!(language, "wash-added", added = PART[0], lowered = PART[1]),
                &[share(language, wash.added_share), share(language, wash.lowered_share)],
            ))
            " "
            @if let Some(map) = &wash.map {
                (filled(&text!(language, "wash-map-is", map = PART[0]), &[html! { code { (map.file) } }]))
            }
        }
    }
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

fn thickness(language: Language, wash: &Wash, protocol: &ProtocolResult) -> Markup {
    let mm = |value| quantity(language, value, Some(wash.uncertainty_mm), "mm");
    let no_limit = || words(text!(language, "cell-no-limit"));
    let most = match protocol.limits.get("wash_most_mm") {
        Some(found) => at_most(language, found.value, &found.unit),
        None => no_limit(),
    };
    let rows = [
        vec![
            words(text!(language, "row-p05")),
            mm(wash.p05_mm),
            no_limit(),
        ],
        vec![
            words(text!(language, "row-median")),
            mm(wash.median_mm),
            no_limit(),
        ],
        vec![words(text!(language, "row-p95")), mm(wash.p95_mm), most],
    ];
    let columns = [
        text!(language, "head-figure"),
        text!(language, "head-measured"),
        text!(language, "head-limit"),
    ];
    table(&text!(language, "wash-thickness-of"), &columns, &rows)
}

fn places(language: Language, wash: &Wash, protocol: &ProtocolResult) -> Markup {
    let places = wash.places.iter();
    let rows: Vec<Vec<Markup>> = places
        .map(|found| row(language, wash, found, protocol))
        .collect();
    let columns = [
        text!(language, "head-place"),
        text!(language, "head-what-it-was"),
        text!(language, "head-where"),
        text!(language, "head-thickness-before"),
        text!(language, "head-thickness-now"),
        text!(language, "head-limit"),
        text!(language, "head-under-wash"),
    ];
    table(&text!(language, "wash-places-before"), &columns, &rows)
}

fn row(
    language: Language,
    wash: &Wash,
    found: &WashPlace,
    protocol: &ProtocolResult,
) -> Vec<Markup> {
    let (what, key) = match found.kind {
        SpotKind::ShowThrough => ("show-through", "show_through_mm"),
        SpotKind::Thin => ("thin", "thin_cover_mm"),
    };
    vec![
        words(&found.spot),
        words(place_kind(what, language)),
        place(language, Some(&found.zone), found.side),
        match found.was_mm {
            Some(mm) => quantity(language, mm, Some(found.was_uncertainty_mm), "mm"),
            None => none(language, &text!(language, "found-by-colour")),
        },
        match found.cover_mm {
            Some(mm) => quantity(language, mm, Some(found.uncertainty_mm), "mm"),
            None => none(language, &text!(language, "wash-not-scanned")),
        },
        html! {
            @if let Some(found) = protocol.limits.get(key) {
                (limit(language, found.value, &found.unit))
            }
        },
        words(state(language, wash, found)),
    ]
}

fn state(language: Language, wash: &Wash, place: &WashPlace) -> String {
    if wash.resolved.contains(&place.spot) {
        text!(language, "wash-place-resolved")
    } else if wash.still_open.contains(&place.spot) {
        text!(language, "wash-place-open")
    } else {
        text!(language, "wash-place-unclear")
    }
}
