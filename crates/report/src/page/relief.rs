//! Where and how deep to relieve the tray, on the tray itself.

use super::figure::{none, quantity};
use super::material::Material;
use super::overlay;
use super::table::{place, table, words};
use crate::result::{Finding, ImpressionResult, OnTray, Spot};
use maud::{Markup, html};
use messages::{Language, text};

pub fn part(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let (result, language) = (material.result, material.language);
    let rows: Vec<Vec<Markup>> = overlay::to_relieve(result, number, impression)
        .map(|(finding, spot, on_tray)| row(language, finding, spot, on_tray))
        .collect();
    if rows.is_empty() {
        return None;
    }
    let after: Vec<Vec<Markup>> = overlay::to_relieve(result, number, impression)
        .filter_map(|(finding, _, on_tray)| after_relief(language, finding, on_tray))
        .collect();
    let picture = material.pictures.trays[number].as_ref();
    let picture = picture.and_then(|picture| overlay::tray(material, number, impression, picture));
    let columns = [
        text!(language, "head-finding"),
        text!(language, "head-where"),
        text!(language, "head-relieve-by"),
        text!(language, "head-wall-there"),
        text!(language, "head-wall-left"),
        text!(language, "head-to-outer-rim"),
        text!(language, "head-to-front-rim"),
    ];
    let after_columns = [
        text!(language, "head-finding"),
        text!(language, "head-taken-off"),
        text!(language, "head-room-made"),
    ];
    Some(html! {
        h3 { (text!(language, "places-on-tray")) }
        div.beside {
            div { p { (text!(language, "places-on-tray-how")) } }
            @if let Some(picture) = picture { div { (picture) } }
        }
        (table(&text!(language, "places-on-tray-to-relieve"), &columns, &rows))
        @if let Some(why) = impression.tray_relieved_unused_in(language) {
            p { (text!(language, "relieved-scan-unused", why = why)) }
        }
        @if !after.is_empty() {
            (table(&text!(language, "tray-after-relief"), &after_columns, &after))
        }
    })
}

fn after_relief(language: Language, finding: &Finding, on_tray: &OnTray) -> Option<Vec<Markup>> {
    Some(vec![
        words(&finding.id),
        quantity(
            language,
            on_tray.taken_off_mm?,
            on_tray.taken_off_uncertainty_mm,
            "mm",
        ),
        quantity(
            language,
            on_tray.room_mm?,
            on_tray.room_uncertainty_mm,
            "mm",
        ),
    ])
}

fn row(language: Language, finding: &Finding, spot: &Spot, on_tray: &OnTray) -> Vec<Markup> {
    let mm = |value: Option<f64>, uncertainty, why: &str| match value {
        Some(value) => quantity(language, value, uncertainty, "mm"),
        None => none(language, why),
    };
    let one_face = text!(language, "wall-one-face");
    let no_rim = text!(language, "rim-not-found");
    vec![
        words(&finding.id),
        place(language, Some(&spot.zone), spot.side),
        mm(
            on_tray.relief_mm,
            on_tray.relief_uncertainty_mm,
            &text!(language, "found-by-colour"),
        ),
        mm(on_tray.wall_mm, on_tray.wall_uncertainty_mm, &one_face),
        mm(on_tray.left_mm, on_tray.left_uncertainty_mm, &one_face),
        mm(
            on_tray.to_outer_rim_mm,
            on_tray.to_outer_rim_uncertainty_mm,
            &no_rim,
        ),
        mm(
            on_tray.to_front_mm,
            on_tray.to_front_uncertainty_mm,
            &no_rim,
        ),
    ]
}
