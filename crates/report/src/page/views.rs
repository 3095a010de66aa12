//! The impression from all sides, coloured by its cover, with the findings.

use super::material::Material;
use super::{findings::severity, overlay};
use crate::result::{ImpressionResult, Severity};
use maud::{Markup, html};

/// The tissue side, once with the findings and once with the landmarks.
pub fn main(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let Some(picture) = material.pictures.views[number].first() else {
        return Some(html! { p { "No pictures: which way the scan faces was not found." } });
    };
    let of = |what| overlay::whole(material.result, number, impression, picture, what);
    Some(html! {
        p {
            @if impression.cover.as_ref().is_some_and(|cover| cover.map.is_some()) {
                "Colours show the material thickness, the distance from tissue surface to tray; grey where it is not known. "
            } @else {
                "Grey: the material thickness was not measured. "
            }
            "R and L are the patient's right and left. A ring marks a place, a line a stretch of border: "
            @for (place, kind) in [Severity::Fail, Severity::Borderline, Severity::Note].into_iter().enumerate() {
                @if place > 0 { ", " }
                (overlay::sample(kind)) " " (severity(kind))
            }
            "."
        }
        div.views {
            (of(overlay::Marked::Findings))
            @if !impression.landmarks.is_empty() { (of(overlay::Marked::Landmarks)) }
        }
    })
}

/// The other sides.
pub fn others(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let pictures = material.pictures.views[number].get(1..)?;
    Some(html! {
        h3 { "Other views" }
        div.views {
            @for picture in pictures { (overlay::whole(material.result, number, impression, picture, overlay::Marked::Findings)) }
        }
    })
}
