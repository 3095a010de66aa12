//! The landmarks of the jaw: a key to the picture, and a table of each.

use super::figure::{exact, none, share};
use super::material::Material;
use super::table::{table, words};
use crate::result::{ImpressionResult, Landmark, LandmarkSource, LandmarkStatus};
use crate::text::words::landmark_name;
use maud::{Markup, html};
use messages::{Language, text};

/// The key to the landmarks of the picture.
pub fn key(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    (!impression.landmarks.is_empty()).then(|| {
        html! {
            h3 { (text!(language, "landmarks")) }
            ul.key {
                @for landmark in &impression.landmarks {
                    li { (landmark.id) " " (landmark_name(landmark, language)) ": " strong { (status(language, landmark.status)) } }
                }
            }
        }
    })
}

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    if impression.landmarks.is_empty() {
        return None;
    }
    let language = material.language;
    let landmarks = impression.landmarks.iter();
    let rows: Vec<Vec<Markup>> = landmarks.map(|landmark| row(language, landmark)).collect();
    let columns = [
        text!(language, "head-number"),
        text!(language, "head-landmark"),
        text!(language, "head-recorded"),
        text!(language, "head-place-uncertainty"),
        text!(language, "head-confidence"),
        text!(language, "head-source"),
    ];
    Some(html! {
        h3 { (text!(language, "landmarks-in-full")) }
        (table(&text!(language, "landmarks-of-jaw"), &columns, &rows))
    })
}

fn row(language: Language, landmark: &Landmark) -> Vec<Markup> {
    vec![
        words(&landmark.id),
        words(landmark_name(landmark, language)),
        html! {
            (status(language, landmark.status))
            @if let Some(why) = landmark.why_in(language) { span.aside { ": " (why) } }
        },
        match landmark.uncertainty_mm {
            Some(mm) => html! { "± " (exact(language, mm, "mm")) },
            None => none(language, &text!(language, "landmarks-no-place")),
        },
        if landmark.point.is_some() {
            share(language, landmark.confidence)
        } else {
            none(language, &text!(language, "landmarks-not-seen"))
        },
        match landmark.source {
            LandmarkSource::Detected => words(text!(language, "landmarks-detected")),
            LandmarkSource::Marked => words(text!(language, "landmarks-marked")),
        },
    ]
}

/// Whether a landmark was recorded, in words.
pub fn status(language: Language, status: LandmarkStatus) -> String {
    match status {
        LandmarkStatus::Recorded => text!(language, "status-recorded"),
        LandmarkStatus::Reached => text!(language, "status-reached"),
        LandmarkStatus::CutShort => text!(language, "status-cut-short"),
        LandmarkStatus::Obscured => text!(language, "status-obscured"),
        LandmarkStatus::NotFound => text!(language, "status-not-found"),
    }
}
