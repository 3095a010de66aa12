//! Which tray of the shelf to take for an impression that is to be taken again.

use super::figure::{area, none, quantity, share};
use super::material::Material;
use super::table::{table, words};
use crate::result::{ClearanceResult, ImpressionResult, TrayResult, TraysTried};
use crate::text::next_tray::{next_tray, touching_place};
use maud::{Markup, html};
use messages::{Language, Value, text};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    let tried = impression.next_tray.as_ref()?;
    let conclusion = next_tray(impression, language)?;
    let heading = text!(language, "next-tray-heading");
    Some(html! {
        h3 { (heading) }
        p { (conclusion) }
        (trays(tried, language))
        p.aside { (text!(language, "next-tray-how")) }
    })
}

/// The trays of a shelf with the room that each leaves.
pub(super) fn trays(tried: &TraysTried, language: Language) -> Markup {
    let [from, to] = tried.wanted_clearance_mm;
    let wanted = Value::figure(format!("{from}"));
    let columns = [
        text!(language, "next-tray-column-tray"),
        text!(language, "next-tray-column-least"),
        text!(language, "next-tray-column-median"),
        text!(
            language,
            "next-tray-column-wanted",
            from = wanted,
            to = Value::figure(format!("{to}"))
        ),
        text!(language, "next-tray-column-touches"),
    ];
    let rows: Vec<Vec<Markup>> = (tried.trays.iter())
        .map(|tray| row(tray, language))
        .collect();
    table(&text!(language, "next-tray-trays"), &columns, &rows)
}

fn row(tray: &TrayResult, language: Language) -> Vec<Markup> {
    let name = words(&tray.name);
    let Some(found) = &tray.clearance else {
        let why = match tray.is_of_the_other_jaw {
            true => text!(language, "next-tray-other-jaw"),
            false => text!(language, "next-tray-not-placed"),
        };
        return vec![name, none(language, &why), html! {}, html! {}, html! {}];
    };
    let doubt = Some(found.uncertainty_mm);
    vec![
        name,
        quantity(language, found.least_mm, doubt, "mm"),
        quantity(language, found.median_mm, doubt, "mm"),
        share(language, found.wanted_share),
        touches(found, language),
    ]
}

/// Where a tray touches the tissue, and over what area.
fn touches(found: &ClearanceResult, language: Language) -> Markup {
    html! {
        @if found.touches.is_empty() { (text!(language, "next-tray-nowhere")) }
        @for (number, touch) in found.touches.iter().enumerate() {
            @if number > 0 { br; }
            (touching_place(touch, language)) " (" (area(language, touch.area_mm2)) ")"
        }
    }
}
