//! Where and how deep to relieve the tray, on the tray itself.

use super::figure::{none, quantity};
use super::material::Material;
use super::overlay;
use super::table::{place, table, words};
use crate::result::{Finding, ImpressionResult, OnTray, Spot};
use maud::{Markup, html};

pub fn part(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let result = material.result;
    let rows: Vec<Vec<Markup>> = overlay::to_relieve(result, number, impression)
        .map(|(finding, spot, on_tray)| row(finding, spot, on_tray))
        .collect();
    if rows.is_empty() {
        return None;
    }
    let after: Vec<Vec<Markup>> = overlay::to_relieve(result, number, impression)
        .filter_map(|(finding, _, on_tray)| after_relief(finding, on_tray))
        .collect();
    let picture = material.pictures.trays[number].as_ref();
    let picture = picture.and_then(|picture| overlay::tray(material, number, impression, picture));
    let columns = [
        "Finding",
        "Where",
        "Relieve by (k = 2)",
        "Wall there (k = 2)",
        "Wall left (k = 2)",
        "To the outer rim (k = 2)",
        "To the rim's middle at the front (k = 2)",
    ];
    Some(html! {
        h3 { "Places on the tray" }
        div.beside {
            div { p {
                "These places are on the empty tray as it was scanned. Distances run straight from the middle of the "
                "place: to the nearest point of the rim on the lip and cheek side, and to the middle of that rim at "
                "the front. Relieve the tray out of the mouth, with eye and dust protection, and check for sharp "
                "edges."
            } }
            @if let Some(picture) = picture { div { (picture) } }
        }
        (table("Places on the tray to relieve", &columns, &rows))
        @if let Some(why) = &impression.tray_relieved_unused {
            p { "The scan of the relieved tray tells nothing: " (why) "." }
        }
        @if !after.is_empty() {
            (table("The tray after relief, by its second scan", &AFTER, &after))
        }
    })
}

const AFTER: [&str; 3] = ["Finding", "Taken off (k = 2)", "Room made (k = 2)"];

fn after_relief(finding: &Finding, on_tray: &OnTray) -> Option<Vec<Markup>> {
    Some(vec![
        words(&finding.id),
        quantity(
            on_tray.taken_off_mm?,
            on_tray.taken_off_uncertainty_mm,
            "mm",
        ),
        quantity(on_tray.room_mm?, on_tray.room_uncertainty_mm, "mm"),
    ])
}

fn row(finding: &Finding, spot: &Spot, on_tray: &OnTray) -> Vec<Markup> {
    let mm = |value: Option<f64>, uncertainty, why| match value {
        Some(value) => quantity(value, uncertainty, "mm"),
        None => none(why),
    };
    const ONE_FACE: &str = "the scan shows one face of the wall";
    const NO_RIM: &str = "rim not found";
    vec![
        words(&finding.id),
        place(Some(&spot.zone), spot.side),
        mm(
            on_tray.relief_mm,
            on_tray.relief_uncertainty_mm,
            "found by its colour",
        ),
        mm(on_tray.wall_mm, on_tray.wall_uncertainty_mm, ONE_FACE),
        mm(on_tray.left_mm, on_tray.left_uncertainty_mm, ONE_FACE),
        mm(
            on_tray.to_outer_rim_mm,
            on_tray.to_outer_rim_uncertainty_mm,
            NO_RIM,
        ),
        mm(on_tray.to_front_mm, on_tray.to_front_uncertainty_mm, NO_RIM),
    ]
}
