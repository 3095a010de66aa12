//! Cover over the tissue surface, and its patches of little cover.

use super::figure::{area, at_most, exact, limit, none, quantity, share};
use super::filled::{PART, filled};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{
    Cover, CoverMethod, ImpressionResult, ProtocolResult, Spot, SpotKind, TrayColour,
};
use crate::text::words::place_kind;
use maud::{Markup, html};
use messages::{Language, text};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    let cover = impression.cover.as_ref()?;
    let figures = figures(language, cover, &material.result.protocol);
    let columns = [
        text!(language, "head-figure"),
        text!(language, "head-measured"),
        text!(language, "head-limit"),
    ];
    Some(html! {
        h3 { (text!(language, "thickness")) }
        @if !figures.is_empty() {
            (table(&text!(language, "thickness-over-tray"), &columns, &figures))
        }
    })
}

/// What the thickness was measured over, and by what.
pub fn ground(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    let cover = impression.cover.as_ref()?;
    Some(html! {
        p {
            (filled(
                &text!(language, "thickness-measured-over", area = PART[0]),
                &[area(language, cover.area_judged_mm2)],
            ))
            " " (method(language, cover.method))
            (of_the_tray(language, cover))
        }
        @if let Some(colour) = &impression.tray_colour { (of_the_colours(language, colour)) }
    })
}

/// Each patch of thin material.
pub fn patches(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    let spots = &impression.cover.as_ref()?.spots;
    if spots.is_empty() {
        return None;
    }
    let protocol = &material.result.protocol;
    let rows: Vec<Vec<Markup>> = (spots.iter())
        .map(|spot| row(language, protocol, spot))
        .collect();
    let columns = [
        text!(language, "head-patch"),
        text!(language, "head-what"),
        text!(language, "head-where"),
        text!(language, "head-least-thickness"),
        text!(language, "head-limit"),
        text!(language, "head-patch-area"),
    ];
    let heading = text!(language, "patches");
    Some(html! {
        h3 { (heading) }
        (table(&heading, &columns, &rows))
    })
}

/// Where the tray's scan lies, or what its thickness was said to be.
fn of_the_tray(language: Language, cover: &Cover) -> Markup {
    let placed = (cover.fitting_share).zip(
        cover
            .registration_rms_mm
            .zip(cover.registration_uncertainty_mm),
    );
    html! {
        @if let Some((fitting, (rms, doubt))) = placed {
            " "
            (filled(
                &text!(language, "thickness-tray-lies", share = PART[0], rms = PART[1], uncertainty = PART[2]),
                &[share(language, fitting), exact(language, rms, "mm"), exact(language, doubt, "mm")],
            ))
        }
        @if let Some(mm) = cover.tray_thickness_mm {
            " "
            (filled(
                &text!(language, "thickness-tray-stated", thickness = PART[0]),
                &[quantity(language, mm, cover.tray_thickness_uncertainty_mm, "mm")],
            ))
        }
    }
}

fn of_the_colours(language: Language, colour: &TrayColour) -> Markup {
    let mm2 = |value| exact(language, value, "mm2");
    let shows = text!(
        language,
        "colour-tray-shows",
        tray = PART[0],
        source = if colour.inferred { "found" } else { "given" },
        shown = PART[1],
        judged = PART[2],
        material = PART[3]
    );
    let shows = filled(
        &shows,
        &[
            html! { code { (colour.tray) } },
            mm2(colour.tray_seen_mm2),
            area(language, colour.area_judged_mm2),
            html! { code { (colour.material) } },
        ],
    );
    let apart = filled(
        &text!(
            language,
            "colour-apart",
            difference = PART[0],
            separation = PART[1],
            other = PART[2]
        ),
        &[
            exact(language, colour.difference, "1"),
            exact(language, colour.separation, "1"),
            mm2(colour.other_mm2),
        ],
    );
    html! {
        p {
            (shows) " " (apart)
            @if let Some(beside) = &colour.beside_cover {
                " "
                (filled(
                    &text!(language, "colour-beside-map", both = PART[0], colour = PART[1], cover = PART[2]),
                    &[mm2(beside.both_mm2), mm2(beside.colour_only_mm2), mm2(beside.cover_only_mm2)],
                ))
            }
        }
    }
}

fn method(language: Language, method: CoverMethod) -> String {
    match method {
        CoverMethod::TrayScan => text!(language, "thickness-by-tray-scan"),
        CoverMethod::TwoSided => text!(language, "thickness-by-both-sides"),
        CoverMethod::Colour => text!(language, "thickness-by-colour"),
    }
}

fn figures(language: Language, cover: &Cover, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let no_limit = || words(text!(language, "cell-no-limit"));
    let above = protocol
        .limits
        .get("show_through_mm")
        .map_or_else(no_limit, |found| {
            filled(
                &text!(language, "cell-above", limit = PART[0]),
                &[limit(language, found.value, &found.unit)],
            )
        });
    let uncertain = protocol
        .limits
        .get("cover_uncertainty_mm")
        .map_or_else(no_limit, |found| {
            at_most(language, found.value, &found.unit)
        });
    let mm = |value| quantity(language, value, cover.uncertainty_mm, "mm");
    let rows = [
        (cover.min_mm).map(|least| vec![words(text!(language, "row-least")), mm(least), above]),
        (cover.p05_mm).map(|p05| vec![words(text!(language, "row-p05")), mm(p05), no_limit()]),
        (cover.median_mm)
            .map(|median| vec![words(text!(language, "row-median")), mm(median), no_limit()]),
        cover.uncertainty_mm.map(|doubt| {
            vec![
                words(text!(language, "row-uncertainty")),
                exact(language, doubt, "mm"),
                uncertain,
            ]
        }),
    ];
    rows.into_iter().flatten().collect()
}

/// What a patch is, and the key of its limit.
fn kind(language: Language, spot: &Spot) -> (String, &'static str) {
    match (spot.kind, spot.stop) {
        (SpotKind::ShowThrough, Some(_)) => (text!(language, "patch-stop"), "show_through_mm"),
        (SpotKind::ShowThrough, None) if spot.confidence.is_some() => {
            (text!(language, "patch-by-colour"), "least_spot_area_mm2")
        }
        (SpotKind::ShowThrough, None) if spot.edge.is_some() => {
            (text!(language, "patch-tray-edge"), "show_through_mm")
        }
        (SpotKind::ShowThrough, None) => (place_kind("show-through", language), "show_through_mm"),
        (SpotKind::Thin, _) => (place_kind("thin", language), "thin_cover_mm"),
    }
}

fn row(language: Language, protocol: &ProtocolResult, spot: &Spot) -> Vec<Markup> {
    let (what, key) = kind(language, spot);
    let what = match &spot.around {
        Some(around) => text!(
            language,
            "patch-around",
            patch = what,
            around = around.as_str()
        ),
        None => what,
    };
    let area = quantity(
        language,
        spot.area_mm2,
        Some(spot.area_uncertainty_mm2),
        "mm2",
    );
    vec![
        words(&spot.id),
        words(what),
        place(language, Some(&spot.zone), spot.side),
        match spot.min_mm {
            Some(mm) => quantity(language, mm, spot.min_uncertainty_mm, "mm"),
            None => none(language, &text!(language, "found-by-colour")),
        },
        html! {
            @if let Some(found) = protocol.limits.get(key) {
                (limit(language, found.value, &found.unit))
            }
        },
        match &spot.edge {
            Some(edge) => filled(
                &text!(
                    language,
                    "patch-area-and-length",
                    area = PART[0],
                    length = PART[1]
                ),
                &[
                    area,
                    quantity(
                        language,
                        edge.length_mm,
                        Some(edge.length_uncertainty_mm),
                        "mm",
                    ),
                ],
            ),
            None => area,
        },
    ]
}
