//! What to do, first things first.

use super::chapter::{Chapter, folded};
use super::figure::{limit, quantity};
use super::filled::{PART, filled};
use super::material::Material;
use super::overlay;
use super::overlay::Marked;
use super::turning;
use crate::result::ImpressionResult;
use crate::text::format::capital;
use crate::text::steps::{Step, steps};
use crate::text::words::{check_name, finding_place, impression_name, place_on_tray, verdict_word};
use maud::{Markup, html};
use messages::text;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let body = html! {
        div.beside {
            div { (in_order(material)) (verdicts(material)) }
            div.overview { (overview(material)) }
            @if let Some(figure) = turning::figure(material) { (figure) }
        }
    };
    let heading = text!(material.language, "page-first");
    vec![Chapter::first("first", &heading, body)]
}

/// Steps that stand open; of more, the others are folded. Their findings stand in
/// full or in the table of further places all the same.
const MOST_STEPS: usize = 10;

fn in_order(material: &Material<'_>) -> Markup {
    let language = material.language;
    let steps = steps(material.result);
    let (open, further) = steps.split_at(steps.len().min(MOST_STEPS));
    html! {
        @if open.is_empty() {
            p { (text!(language, "page-no-steps")) }
        } @else {
            ol.steps { @for step in open { (item(material, step)) } }
        }
        @if !further.is_empty() {
            p { (text!(language, "page-more-steps")) }
            (folded("further-steps", &html! { h3 { (text!(language, "page-further-steps")) } }, &html! {
                ol.steps start=(open.len() + 1) { @for step in further { (item(material, step)) } }
            }))
        }
    }
}

fn item(material: &Material<'_>, step: &Step<'_>) -> Markup {
    let (result, language) = (material.result, material.language);
    html! {
        li {
            (step.instruction_in(language)) " "
            ul.refs {
                @for finding in &step.findings {
                    li {
                        a href={ "#" (finding.id) } { (finding.id) } " "
                        (check_name(&finding.check, language))
                        @let place = finding_place(result, finding, language);
                        @if !place.is_empty() { ", " (place) }
                        @if let Some(place) = place_on_tray(result, finding, language) {
                            "; " (text!(language, "page-on-tray", place = place))
                        }
                    }
                }
            }
        }
    }
}

/// The verdict on each impression.
fn verdicts(material: &Material<'_>) -> Markup {
    let (result, language) = (material.result, material.language);
    html! {
        ul.verdicts {
            @for (number, impression) in result.impressions.iter().enumerate() {
                li {
                    a href={ "#impression-" (number + 1) } { (capital(&impression_name(impression, language))) }
                    ": " strong { (verdict_word(impression.verdict, language)) }
                    @if impression.superseded { " " (text!(language, "page-wash-followed")) }
                    @if let Some(thickness) = least_thickness(material, impression) { "; " (thickness) }
                }
            }
        }
    }
}

/// The least thickness of the material with its limit; `None` where it was not measured.
fn least_thickness(material: &Material<'_>, impression: &ImpressionResult) -> Option<Markup> {
    let language = material.language;
    let cover = impression.cover.as_ref()?;
    let thickness = quantity(language, cover.min_mm?, cover.uncertainty_mm, "mm");
    let what = text!(language, "page-least-thickness", thickness = PART[0]);
    let limits = &material.result.protocol.limits;
    Some(match limits.get("show_through_mm") {
        Some(found) => {
            let sentence = text!(language, "figure-at-least", what = what, limit = PART[1]);
            filled(
                &sentence,
                &[thickness, limit(language, found.value, &found.unit)],
            )
        }
        None => filled(&what, &[thickness]),
    })
}

/// Each impression to be worked from, small, from where the most pressing findings show.
fn overview(material: &Material<'_>) -> Markup {
    let impressions = material.result.impressions.iter().enumerate();
    let current = impressions.filter(|(_, impression)| !impression.superseded);
    html! {
        @for (number, impression) in current {
            @if let Some(picture) = overlay::telling(material.result, number, impression, &material.pictures.views[number]) {
                (overlay::whole(material, number, impression, picture, Marked::FindingsAgain))
            }
        }
    }
}
