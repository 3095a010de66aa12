//! How the tray suits the mouth, and how it stood.

use super::figure::{exact, limit, none, quantity};
use super::filled::{PART, filled, form_of};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{ImpressionResult, LimbBend, ProtocolResult, TraySeating, TrayZone};
use maud::{Markup, html};
use messages::{Language, text};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    let fit = impression.tray_fit.as_ref()?;
    let protocol = &material.result.protocol;
    let bends = impression.cover.iter().flat_map(|cover| &cover.tray_bend);
    let bends: Vec<Vec<Markup>> = bends
        .flat_map(|limb| bend(language, limb, protocol))
        .collect();
    Some(html! {
        h3 { (text!(language, "tray-position")) }
        @if let Some(seating) = &fit.seating {
            (seated(language, seating, protocol))
        }
        @if !bends.is_empty() {
            (table(
                &text!(language, "tray-bend"),
                &[text!(language, "head-place"), text!(language, "head-moved"), text!(language, "head-limit")],
                &bends,
            ))
        }
        @if !fit.zones.is_empty() { (zones(language, &fit.zones)) }
    })
}

fn seated(language: Language, seating: &TraySeating, protocol: &ProtocolResult) -> Markup {
    let columns = [
        text!(language, "head-deviation"),
        text!(language, "head-measured"),
        text!(language, "head-limit"),
    ];
    let even = text!(language, "tray-evenness", found = PART[0], best = PART[1]);
    let even = filled(
        &even,
        &[
            exact(language, seating.cover_sd_mm, "mm"),
            exact(language, seating.even_sd_mm, "mm"),
        ],
    );
    html! {
        (table(&text!(language, "tray-position-compared"), &columns, &rows(language, seating, protocol)))
        p { (even) }
    }
}

fn rows(language: Language, seating: &TraySeating, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let row = |what: String, value: f64, doubt: f64, key: &str| {
        let found = protocol.limits.get(key)?;
        let either_way = text!(language, "cell-at-most-either-way", limit = PART[0]);
        Some(vec![
            words(what),
            quantity(language, value, Some(doubt), &found.unit),
            filled(&either_way, &[limit(language, found.value, &found.unit)]),
        ])
    };
    let (shift, tilt) = ("most_tray_shift_mm", "most_tray_tilt_deg");
    [
        row(
            text!(language, "tray-to-right"),
            seating.right_mm,
            seating.right_uncertainty_mm,
            shift,
        ),
        row(
            text!(language, "tray-to-front"),
            seating.anterior_mm,
            seating.anterior_uncertainty_mm,
            shift,
        ),
        row(
            text!(language, "tray-tilted-front"),
            seating.front_up_deg,
            seating.front_up_uncertainty_deg,
            tilt,
        ),
        row(
            text!(language, "tray-tilted-right"),
            seating.right_up_deg,
            seating.right_up_uncertainty_deg,
            tilt,
        ),
        row(
            text!(language, "tray-turned-right"),
            seating.turned_right_deg,
            seating.turned_right_uncertainty_deg,
            tilt,
        ),
        row(
            text!(language, "tray-wider"),
            seating.wider_mm,
            seating.wider_uncertainty_mm,
            "most_tray_width_mm",
        ),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn bend(language: Language, limb: &LimbBend, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let side = form_of(limb.side);
    let no_limit = || words(text!(language, "cell-no-limit"));
    let at_end = || match protocol.limits.get("most_tray_bend_mm") {
        Some(found) => filled(
            &text!(language, "cell-at-most-in-all", limit = PART[0]),
            &[limit(language, found.value, &found.unit)],
        ),
        None => no_limit(),
    };
    let row = |place: String, value: f64, doubt: f64, limit: Markup| {
        vec![
            words(place),
            quantity(language, value, Some(doubt), "mm"),
            limit,
        ]
    };
    vec![
        row(
            text!(language, "limb-end-toward-tissue", side = side),
            limb.end_toward_tissue_mm,
            limb.end_toward_tissue_uncertainty_mm,
            at_end(),
        ),
        row(
            text!(language, "limb-end-outward", side = side),
            limb.end_outward_mm,
            limb.end_outward_uncertainty_mm,
            at_end(),
        ),
        row(
            text!(language, "limb-middle-toward-tissue", side = side),
            limb.middle_toward_tissue_mm,
            limb.middle_toward_tissue_uncertainty_mm,
            no_limit(),
        ),
        row(
            text!(language, "limb-middle-outward", side = side),
            limb.middle_outward_mm,
            limb.middle_outward_uncertainty_mm,
            no_limit(),
        ),
    ]
}

fn zones(language: Language, zones: &[TrayZone]) -> Markup {
    let rows: Vec<Vec<Markup>> = zones.iter().map(|one| zone(language, one)).collect();
    let columns = [
        text!(language, "head-part-of-arch"),
        text!(language, "head-edge-to-border"),
        text!(language, "head-thickness"),
    ];
    table(&text!(language, "tray-by-part"), &columns, &rows)
}

fn zone(language: Language, zone: &TrayZone) -> Vec<Markup> {
    let amount = |value: Option<f64>, doubt, why: String| match value {
        Some(mm) => quantity(language, mm, doubt, "mm"),
        None => none(language, &why),
    };
    vec![
        place(language, Some(&zone.zone), zone.side),
        amount(
            zone.edge_to_border_mm,
            zone.edge_to_border_uncertainty_mm,
            text!(language, "tray-no-border-here"),
        ),
        amount(
            zone.cover_mm,
            zone.cover_uncertainty_mm,
            text!(language, "tray-not-known-here"),
        ),
    ]
}
