//! The impression from all sides, coloured by its cover, with the findings.

use super::filled::{PART, filled};
use super::material::Material;
use super::{findings::severity, overlay};
use crate::result::{ImpressionResult, Severity};
use maud::{Markup, html};
use messages::text;

/// The tissue side, once with the findings and once with the landmarks.
pub fn main(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    let Some(picture) = material.pictures.views[number].first() else {
        return Some(html! { p { (text!(language, "page-no-pictures")) } });
    };
    let of = |what| overlay::whole(material, number, impression, picture, what);
    let map = impression
        .cover
        .as_ref()
        .and_then(|cover| cover.map.as_ref());
    let colours = match map {
        Some(_) => text!(language, "page-colours"),
        None => text!(language, "page-no-colours"),
    };
    let marks = text!(
        language,
        "page-marks",
        fail = PART[0],
        borderline = PART[1],
        note = PART[2]
    );
    let kinds = [Severity::Fail, Severity::Borderline, Severity::Note];
    let samples =
        kinds.map(|kind| html! { (overlay::sample(kind)) " " (severity(kind, language)) });
    Some(html! {
        p { (colours) " " (text!(language, "page-sides")) " " (filled(&marks, &samples)) }
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
        h3 { (text!(material.language, "page-other-views")) }
        div.views {
            @for picture in pictures { (overlay::whole(material, number, impression, picture, overlay::Marked::Findings)) }
        }
    })
}
