//! What to do, first things first.

use super::chapter::{Chapter, folded};
use super::figure::{limit, quantity};
use super::material::Material;
use super::overlay;
use super::overlay::Marked;
use super::turning;
use crate::text::format::capital;
use crate::text::steps::{Step, steps};
use crate::text::words::{finding_place, impression_name, place_on_tray, verdict_word};
use maud::{Markup, html};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let body = html! {
        div.beside {
            div { (in_order(material)) (verdicts(material)) }
            div.overview { (overview(material)) }
            @if let Some(figure) = turning::figure(material) { (figure) }
        }
    };
    vec![Chapter::first("first", "What to do first", body)]
}

/// Steps that stand open; of more, the others are folded. Their findings stand in
/// full or in the table of further places all the same.
const MOST_STEPS: usize = 10;

fn in_order(material: &Material<'_>) -> Markup {
    let steps = steps(material.result);
    let (open, further) = steps.split_at(steps.len().min(MOST_STEPS));
    html! {
        @if open.is_empty() {
            p { "No failures and no open questions in the checks that were made." }
        } @else {
            ol.steps { @for step in open { (item(material, step)) } }
        }
        @if !further.is_empty() {
            p { "More is to be done: see the table of further places." }
            (folded("further-steps", &html! { h3 { "Further steps, in their order" } }, &html! {
                ol.steps start=(open.len() + 1) { @for step in further { (item(material, step)) } }
            }))
        }
    }
}

fn item(material: &Material<'_>, step: &Step<'_>) -> Markup {
    let result = material.result;
    html! {
        li {
            (step.instruction) " "
            ul.refs {
                @for finding in &step.findings {
                    li {
                        a href={ "#" (finding.id) } { (finding.id) } " "
                        (finding.check.replace('-', " "))
                        @let place = finding_place(result, finding, material.language);
                        @if !place.is_empty() { ", " (place) }
                        @if let Some(place) = place_on_tray(result, finding, material.language) { "; on the tray " (place) }
                    }
                }
            }
        }
    }
}

/// The verdict on each impression.
fn verdicts(material: &Material<'_>) -> Markup {
    let result = material.result;
    html! {
        ul.verdicts {
            @for (number, impression) in result.impressions.iter().enumerate() {
                li {
                    a href={ "#impression-" (number + 1) } { (capital(&impression_name(impression, material.language))) }
                    ": " strong { (verdict_word(impression.verdict, material.language)) }
                    @if impression.superseded { " (a wash followed)" }
                    @if let Some(least) = impression.cover.as_ref().and_then(|cover| cover.min_mm) {
                        "; least thickness " (quantity(material.language, least, impression.cover.as_ref().and_then(|cover| cover.uncertainty_mm), "mm"))
                        @if let Some(found) = result.protocol.limits.get("show_through_mm") {
                            ", at least " (limit(material.language, found.value, &found.unit))
                        }
                    }
                }
            }
        }
    }
}

/// Each impression to be worked from, small, from where the most pressing findings show.
fn overview(material: &Material<'_>) -> Markup {
    let impressions = material.result.impressions.iter().enumerate();
    let current = impressions.filter(|(_, impression)| !impression.superseded);
    html! {
        @for (number, impression) in current {
            @if let Some(picture) = overlay::telling(material.result, number, impression, &material.pictures.views[number]) {
                (overlay::whole(material.result, number, impression, picture, Marked::FindingsAgain))
            }
        }
    }
}
