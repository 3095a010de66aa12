//! The landmarks of the jaw: a key to the picture, and a table of each.

use super::figure::{exact, none, share};
use super::material::Material;
use super::table::{table, words};
use crate::result::{ImpressionResult, Landmark, LandmarkSource, LandmarkStatus};
use crate::text::words::landmark_name;
use maud::{Markup, html};
use messages::Language;

/// The key to the landmarks of the picture.
pub fn key(
    _material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    (!impression.landmarks.is_empty()).then(|| {
        html! {
            h3 { "Landmarks" }
            ul.key {
                @for landmark in &impression.landmarks {
                    li { (landmark.id) " " (landmark_name(landmark, Language::English)) ": " strong { (status(landmark.status)) } }
                }
            }
        }
    })
}

pub fn part(
    _material: &Material<'_>,
    _number: usize,
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
        h3 { "Landmarks in full" }
        (table("Landmarks of the jaw", &columns, &rows))
    })
}

fn row(landmark: &Landmark) -> Vec<Markup> {
    vec![
        words(&landmark.id),
        words(landmark_name(landmark, Language::English)),
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

/// Whether a landmark was recorded, in words.
pub fn status(status: LandmarkStatus) -> &'static str {
    match status {
        LandmarkStatus::Recorded => "recorded",
        LandmarkStatus::Reached => "place reached, not verified",
        LandmarkStatus::CutShort => "cut short",
        LandmarkStatus::Obscured => "obscured",
        LandmarkStatus::NotFound => "not found",
    }
}
