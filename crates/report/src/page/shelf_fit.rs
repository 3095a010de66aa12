//! The page of a shelf of trays: which to take, a table, and a picture of each in the mouth.

use super::cautions::cautions;
use super::document::in_language;
use super::next_tray::trays;
use super::overlay::{InMouth, in_mouth};
use crate::picture::clearance;
use crate::result::TrayResult;
use crate::studies::shelf_fit::FitResult;
use crate::text::shelf_fit::{adapting, conclusion, not_tried, touch};
use check::CheckedFit;
use maud::{Markup, html};
use measure::tray::{FitShown, TrayInMouth, TraySuits};
use messages::{Language, text};
use std::io;

/// How the trays of a shelf suit a mouth as a page of its own, with a picture of each tray that
/// could be tried in where [`CheckedFit::shown`] is known.
///
/// # Errors
/// When a picture cannot be encoded.
pub fn fit_page(
    checked: &CheckedFit,
    result: &FitResult,
    language: Language,
) -> Result<String, io::Error> {
    let conclusion = conclusion(result, language);
    let steps = adapting(result, language);
    let pictures = match &checked.shown {
        Some(shown) => pictures(checked, shown, result, language)?,
        None => Vec::new(),
    };
    let how = match result.is_positive {
        true => text!(language, "fit-page-lines-positive"),
        false => text!(language, "fit-page-lines"),
    };
    let body = html! {
        main {
            header {
                p.kicker { (text!(language, "fit-page-kicker")) }
                h1 { (conclusion) }
                @if !steps.is_empty() { ul { @for step in &steps { li { (step) } } } }
                p.lead { (text!(language, "fit-try")) }
            }
            section {
                (trays(&result.tried, language))
                @if result.is_positive { p { (text!(language, "fit-positive")) } }
            }
            section {
                h2 { (text!(language, "fit-page-pictures")) }
                p { (how) " " (text!(language, "page-sides")) }
                div.views { @for picture in &pictures { (picture) } }
            }
            (cautions(language))
        }
        footer { p { (text!(language, "fit-page-written-by", program = format!("archproof {}", result.program))) } }
    };
    Ok(in_language(&conclusion, &body, language))
}

fn pictures(
    checked: &CheckedFit,
    shown: &FitShown,
    result: &FitResult,
    language: Language,
) -> Result<Vec<Markup>, io::Error> {
    let suits = checked.trays.fit.trays.iter().zip(&shown.trays);
    (result.tried.trays.iter().zip(suits))
        .map(|(tray, (suits, seen))| match (suits, seen) {
            (TraySuits::Placed(found), Some(seen)) => {
                let drawn = InMouth {
                    tray: &tray.name,
                    border: &shown.border,
                    edge: &seen.edge,
                    touches: &found.touches,
                };
                picture(checked, shown, seen, &drawn, language)
                    .map(|picture| figure(tray, picture, language))
            }
            _ => Ok(figure(tray, None, language)),
        })
        .collect()
}

/// `None` where nothing is to be seen.
fn picture(
    checked: &CheckedFit,
    shown: &FitShown,
    seen: &TrayInMouth,
    drawn: &InMouth<'_>,
    language: Language,
) -> Result<Option<Markup>, io::Error> {
    let scan = &checked.scan.mesh;
    let is_positive = checked.trays.fit.is_positive;
    let picture = clearance(scan, &shown.frame, &seen.at_vertex_mm, is_positive)?;
    Ok(picture.map(|picture| in_mouth(drawn, &picture, language)))
}

/// A tray with its picture, and what the numbers in it are.
fn figure(tray: &TrayResult, picture: Option<Markup>, language: Language) -> Markup {
    let touches = tray.clearance.iter().flat_map(|found| &found.touches);
    html! {
        figure.view {
            @if let Some(picture) = picture { (picture) }
            figcaption {
                strong { (tray.name) }
                @if tray.clearance.is_none() { ": " (not_tried(tray, language)) }
                @if touches.clone().next().is_some() {
                    ol { @for place in touches { li { (touch(place, language)) } } }
                }
            }
        }
    }
}
