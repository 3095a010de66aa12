//! Cover over the tissue surface, and its patches of little cover.

use super::figure::{area, exact, limit, none, quantity, share};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{
    Cover, CoverMethod, ImpressionResult, ProtocolResult, Spot, SpotKind, TrayColour,
};
use maud::{Markup, html};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let cover = impression.cover.as_ref()?;
    let protocol = &material.result.protocol;
    let figures = figures(cover, protocol);
    Some(html! {
        h3 { "Material thickness" }
        @if !figures.is_empty() {
            (table("Material thickness over the tray", &["Figure", "Measured (k = 2)", "Limit"], &figures))
        }
    })
}

/// What the thickness was measured over, and by what.
pub fn ground(
    _material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let cover = impression.cover.as_ref()?;
    Some(html! {
        p {
            "Thickness was measured over " (area(cover.area_judged_mm2)) " of tissue surface, flange slopes included. Such areas are "
            "larger than the classic denture-bearing areas: by about 60 % in the upper and 100 % in the lower jaw. "
            "It was measured by " (method(cover.method)) "."
            (of_the_tray(cover))
        }
        @if let Some(colour) = &impression.tray_colour { (of_the_colours(colour)) }
    })
}

/// Each patch of thin material.
pub fn patches(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let spots = &impression.cover.as_ref()?.spots;
    if spots.is_empty() {
        return None;
    }
    let protocol = &material.result.protocol;
    let rows: Vec<Vec<Markup>> = spots.iter().map(|spot| row(protocol, spot)).collect();
    let columns = [
        "Patch",
        "What",
        "Where",
        "Least thickness (k = 2)",
        "Limit",
        "Area (k = 2)",
    ];
    Some(html! {
        h3 { "Patches of thin material" }
        (table("Patches of thin material", &columns, &rows))
    })
}

/// Where the tray's scan lies, or what its thickness was said to be.
fn of_the_tray(cover: &Cover) -> Markup {
    let placed = (cover.fitting_share).zip(
        cover
            .registration_rms_mm
            .zip(cover.registration_uncertainty_mm),
    );
    html! {
        @if let Some((fitting, (rms, doubt))) = placed {
            " The tray lies on " (share(fitting)) " of the outer surface, root mean square distance "
            (exact(rms, "mm")) ", its place known to ± " (exact(doubt, "mm")) " (k = 2)."
        }
        @if let Some(mm) = cover.tray_thickness_mm {
            " The tray's thickness was stated as " (quantity(mm, cover.tray_thickness_uncertainty_mm, "mm"))
            "; the thickness is not known opposite material that laps over the tray's outer face."
        }
    }
}

fn of_the_colours(colour: &TrayColour) -> Markup {
    html! {
        p {
            "By colour, tray (" code { (colour.tray) } ", "
            @if colour.inferred { "found on the outer surface" } @else { "as given" }
            ") shows over " (exact(colour.tray_seen_mm2, "mm2")) " of " (area(colour.area_judged_mm2))
            "; the material is " code { (colour.material) } ". They lie " (exact(colour.difference, "1"))
            " apart in CIELAB and " (exact(colour.separation, "1"))
            " standard deviations of the scan's colours; a third colour covers "
            (exact(colour.other_mm2, "mm2")) "."
            @if let Some(beside) = &colour.beside_cover {
                " Beside the thickness map: bare by both " (exact(beside.both_mm2, "mm2"))
                ", by colour alone " (exact(beside.colour_only_mm2, "mm2"))
                ", by cover alone " (exact(beside.cover_only_mm2, "mm2")) "."
            }
        }
    }
}

fn method(method: CoverMethod) -> &'static str {
    match method {
        CoverMethod::TrayScan => "the registered scan of the empty tray",
        CoverMethod::TwoSided => {
            "the thickness of material and tray together, less a stated tray thickness"
        }
        CoverMethod::Colour => {
            "the colours of tray and material; how thick the material is, they do not tell"
        }
    }
}

fn figures(cover: &Cover, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let above = |key: &str, word: &str| match protocol.limits.get(key) {
        Some(found) => html! { (word) " " (limit(found.value, &found.unit)) },
        None => words("no limit"),
    };
    let mm = |value| quantity(value, cover.uncertainty_mm, "mm");
    let rows = [
        cover
            .min_mm
            .map(|least| vec![words("least"), mm(least), above("show_through_mm", "above")]),
        cover
            .p05_mm
            .map(|p05| vec![words("5th percentile"), mm(p05), words("no limit")]),
        cover
            .median_mm
            .map(|median| vec![words("median"), mm(median), words("no limit")]),
        cover.uncertainty_mm.map(|doubt| {
            vec![
                words("uncertainty of a value (k = 2)"),
                exact(doubt, "mm"),
                above("cover_uncertainty_mm", "at most"),
            ]
        }),
    ];
    rows.into_iter().flatten().collect()
}

fn row(protocol: &ProtocolResult, spot: &Spot) -> Vec<Markup> {
    let (what, key) = match (spot.kind, spot.stop) {
        (SpotKind::ShowThrough, Some(_)) => ("tissue stop, as it should show", "show_through_mm"),
        (SpotKind::ShowThrough, None) if spot.confidence.is_some() => {
            ("show-through, by colour", "least_spot_area_mm2")
        }
        (SpotKind::ShowThrough, None) if spot.edge.is_some() => {
            ("bare tray edge", "show_through_mm")
        }
        (SpotKind::ShowThrough, None) => ("show-through", "show_through_mm"),
        (SpotKind::Thin, _) => ("thin", "thin_cover_mm"),
    };
    let limiting = protocol.limits.get(key);
    vec![
        words(&spot.id),
        html! { (what) @if let Some(around) = &spot.around { " around " (around) } },
        place(Some(&spot.zone), spot.side),
        match spot.min_mm {
            Some(mm) => quantity(mm, spot.min_uncertainty_mm, "mm"),
            None => none("found by its colour"),
        },
        html! { @if let Some(found) = limiting { (limit(found.value, &found.unit)) } },
        html! {
            (quantity(spot.area_mm2, Some(spot.area_uncertainty_mm2), "mm2"))
            @if let Some(edge) = &spot.edge {
                ", " (quantity(edge.length_mm, Some(edge.length_uncertainty_mm), "mm")) " long"
            }
        },
    ]
}
