//! Cover over the tissue surface, and its patches of little cover.

use super::Material;
use super::figure::{area, exact, limit, quantity, share};
use super::table::{place, table, words};
use crate::result::{Cover, CoverMethod, ImpressionResult, ProtocolResult, Spot, SpotKind};
use maud::{Markup, html};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let cover = impression.cover.as_ref()?;
    let protocol = &material.result.protocol;
    let spots: Vec<Vec<Markup>> = cover
        .spots
        .iter()
        .map(|spot| row(cover, protocol, spot))
        .collect();
    let columns = [
        "Patch",
        "What",
        "Where",
        "Least cover (k = 2)",
        "Limit",
        "Area (k = 2)",
    ];
    Some(html! {
        h3 { "Cover" }
        (table("Cover over the tissue surface", &["Figure", "Measured (k = 2)", "Limit"], &figures(cover, protocol)))
        p {
            "Known over " (area(cover.area_judged_mm2)) " of scanned tissue surface, flange slopes included: about "
            "half as large again as the classic denture-bearing areas. Had from "
            (method(cover.method)) "; the tray lies on "
            (share(cover.fitting_share)) " of the outer surface, root mean square distance "
            (exact(cover.registration_rms_mm, "mm")) ", its place known to ± "
            (exact(cover.registration_uncertainty_mm, "mm")) " (k = 2)."
        }
        @if !spots.is_empty() { (table("Patches of little cover", &columns, &spots)) }
    })
}

fn method(method: CoverMethod) -> &'static str {
    match method {
        CoverMethod::TrayScan => "the registered scan of the empty tray",
        CoverMethod::TwoSided => "total thickness, less a stated tray thickness",
        CoverMethod::Colour => "the colours of tray and material",
    }
}

fn figures(cover: &Cover, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let above = |key: &str, word: &str| match protocol.limits.get(key) {
        Some(found) => html! { (word) " " (limit(found.value, &found.unit)) },
        None => words("no limit"),
    };
    let mm = |value| quantity(value, Some(cover.uncertainty_mm), "mm");
    vec![
        vec![
            words("least"),
            mm(cover.min_mm),
            above("show_through_mm", "above"),
        ],
        vec![words("5th percentile"), mm(cover.p05_mm), words("no limit")],
        vec![words("median"), mm(cover.median_mm), words("no limit")],
        vec![
            words("uncertainty of a value (k = 2)"),
            exact(cover.uncertainty_mm, "mm"),
            above("cover_uncertainty_mm", "at most"),
        ],
    ]
}

fn row(cover: &Cover, protocol: &ProtocolResult, spot: &Spot) -> Vec<Markup> {
    let (what, key) = match (spot.kind, spot.stop) {
        (SpotKind::ShowThrough, Some(_)) => ("tissue stop, as it should show", "show_through_mm"),
        (SpotKind::ShowThrough, None) => ("show-through", "show_through_mm"),
        (SpotKind::Thin, _) => ("thin", "thin_cover_mm"),
    };
    let limiting = protocol.limits.get(key);
    vec![
        words(&spot.id),
        html! { (what) @if let Some(around) = &spot.around { " around " (around) } },
        place(Some(&spot.zone), spot.side),
        quantity(spot.min_mm, Some(cover.uncertainty_mm), "mm"),
        html! { @if let Some(found) = limiting { (limit(found.value, &found.unit)) } },
        quantity(spot.area_mm2, Some(spot.area_uncertainty_mm2), "mm2"),
    ]
}
