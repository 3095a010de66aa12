//! The impression from all sides, coloured by its cover, with the findings.

use super::material::Material;
use super::{findings::severity, overlay};
use crate::result::{ImpressionResult, Severity};
use maud::{Markup, html};

pub fn part(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let pictures = &material.pictures.views[number];
    Some(html! {
        h3 { "Pictures" }
        @if pictures.is_empty() {
            p { "None: which way the scan faces was not found." }
        } @else {
            p {
                @if impression.cover.as_ref().is_some_and(|cover| cover.map.is_some()) {
                    "Colours show the material thickness, the distance from the tissue surface to the tray, by the scale below "
                    "each picture; grey where it is not known. "
                } @else {
                    "Grey: the material thickness was not measured. "
                }
                "R and L are the patient's right and left. There is no perspective. Findings are numbered "
                "as above: "
                @for (place, kind) in [Severity::Fail, Severity::Borderline, Severity::Note].into_iter().enumerate() {
                    @if place > 0 { ", " }
                    (overlay::sample(kind)) " " (severity(kind))
                }
                ". A ring marks a place, a line a stretch of border."
            }
            div.views {
                @for picture in pictures { (overlay::whole(material.result, number, impression, picture, overlay::Marked::Findings)) }
            }
        }
    })
}
