//! Each impression to be worked from: pictures and the main figures first;
//! further pictures, the tray, defects and the scan folded.

use super::chapter::{Chapter, folded};
use super::material::Material;
use super::{as_sent, border, cover, defects, landmarks, next_tray, relief, scan, tray_fit, views};
use crate::result::ImpressionResult;
use crate::text::format::capital;
use crate::text::words::{impression_name, verdict_word};
use maud::{Markup, html};
use messages::text;

/// A part of an impression's account; `None` where there is nothing for it.
type Part = fn(&Material<'_>, usize, &ImpressionResult) -> Option<Markup>;

const FIRST: [Part; 8] = [
    views::main,
    surface,
    cover::ground,
    relief::part,
    as_sent::part,
    border::part,
    border::chart,
    next_tray::part,
];

const SECOND: [Part; 6] = [
    views::others,
    landmarks::part,
    cover::patches,
    tray_fit::part,
    defects::part,
    scan::part,
];

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let impressions = material.result.impressions.iter().enumerate();
    impressions
        .filter(|(_, impression)| !impression.superseded)
        .map(|(number, impression)| chapter(material, number, impression))
        .collect()
}

fn chapter(material: &Material<'_>, number: usize, impression: &ImpressionResult) -> Chapter {
    let language = material.language;
    let name = impression_name(impression, language);
    let verdict = verdict_word(impression.verdict, language);
    let heading = format!("{}: {verdict}", capital(&name));
    let more = drawn(&SECOND, material, number, impression);
    let more_of = html! { h3 { (text!(language, "more-of-impression", impression = name)) } };
    let id = format!("impression-{}", number + 1);
    let body = html! {
        (drawn(&FIRST, material, number, impression))
        (folded(&format!("{id}-more"), &more_of, &more))
    };
    Chapter::first(&id, &heading, body).of_class("impression")
}

/// Thickness and landmarks, side by side where there is room.
fn surface(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    Some(html! {
        div.beside.surface {
            @for part in [cover::part, landmarks::key] {
                @if let Some(markup) = part(material, number, impression) { div { (markup) } }
            }
        }
    })
}

/// All that is known of an impression.
pub fn in_full(material: &Material<'_>, number: usize, impression: &ImpressionResult) -> Markup {
    html! {
        (drawn(&FIRST, material, number, impression))
        (drawn(&SECOND, material, number, impression))
    }
}

fn drawn(
    parts: &[Part],
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
) -> Markup {
    html! {
        @for part in parts {
            @if let Some(markup) = part(material, number, impression) { (markup) }
        }
    }
}
