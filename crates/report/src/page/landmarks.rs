//! The landmarks of the jaw.

use super::figure::{exact, none, share};
use super::material::Material;
use super::overlay;
use super::table::{table, words};
use crate::result::{ImpressionResult, Landmark, LandmarkSource, LandmarkStatus};
use crate::text::words::landmark_name;
use maud::{Markup, html};

pub fn part(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    if impression.landmarks.is_empty() {
        return None;
    }
    let rows: Vec<Vec<Markup>> = impression.landmarks.iter().map(row).collect();
    let columns = [
        "No.",
        "Landmark",
        "Recorded",
        "Position uncertainty (k = 2)",
        "Confidence",
        "Source",
    ];
    Some(html! {
        h3 { "Landmarks" }
        @if let Some(picture) = material.pictures.views[number].first() {
            div.overview { (overlay::whole(material.result, number, impression, picture, overlay::Marked::Landmarks)) }
        }
        (table("Landmarks of the jaw", &columns, &rows))
    })
}

fn row(landmark: &Landmark) -> Vec<Markup> {
    vec![
        words(&landmark.id),
        words(landmark_name(landmark)),
        html! {
            (status(landmark.status))
            @if let Some(why) = &landmark.why { span.aside { ": " (why) } }
        },
        match landmark.uncertainty_mm {
            Some(mm) => html! { "± " (exact(mm, "mm")) },
            None => none("no place"),
        },
        if landmark.point.is_some() {
            share(landmark.confidence)
        } else {
            none("not seen")
        },
        match landmark.source {
            LandmarkSource::Detected => words("found on the surface"),
            LandmarkSource::Marked => words("marked by an operator"),
        },
    ]
}

fn status(status: LandmarkStatus) -> &'static str {
    match status {
        LandmarkStatus::Recorded => "recorded",
        LandmarkStatus::Reached => "place reached, not verified",
        LandmarkStatus::CutShort => "cut short",
        LandmarkStatus::Obscured => "obscured",
        LandmarkStatus::NotFound => "not found",
    }
}
