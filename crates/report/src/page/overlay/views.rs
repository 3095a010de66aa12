//! Pictures with everything that is laid over them.

use super::labels::{label, marked};
use super::marks::{Kind, Mark, finding_marks, landmark_marks, mark, tray_marks};
use super::scales::{colour_scale, scale_bar};
use super::sheet::{ASIDE, BOTTOM, SheetPoint, TOP, WIDTH, embedded, round, sides, up};
use super::symbols::outlined;
use crate::page::material::Material;
use crate::picture::{Picture, View};
use crate::result::{CaseResult, CoverMap, Finding, ImpressionResult, Severity};
use crate::text::format::capital;
use crate::text::words::{finding_place, impression_name};
use maud::{Markup, html};
use messages::{Language, text};

/// What is marked on a whole view.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Marked {
    /// The findings, in a picture of their own.
    Findings,
    /// The findings once more, in the picture that stands elsewhere on the page.
    FindingsAgain,
    /// The landmarks, in the picture that stands elsewhere on the page.
    Landmarks,
}

/// A whole view with everything that is to be seen on it.
pub fn whole(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
    picture: &Picture,
    what: Marked,
) -> Markup {
    let (result, language) = (material.result, material.language);
    let view = picture.view.unwrap_or(View::Tissue);
    let px = (WIDTH - 2.0 * ASIDE) / picture.camera.size[0] as f64;
    let high = picture.camera.size[1] as f64 * px;
    let height = TOP + high + BOTTOM;
    let sheet = |p: SheetPoint| [ASIDE + p[0] * px, TOP + p[1] * px];
    let (wanted, marks) = match what {
        Marked::Landmarks => landmark_marks(impression, picture, &sheet),
        _ => finding_marks(result, number, impression, picture, &sheet, px),
    };
    let hidden: Vec<&str> = wanted
        .into_iter()
        .filter(|id| marks.iter().all(|mark| mark.id != *id))
        .collect();
    let shown: Vec<&str> = marks.iter().map(|mark| mark.id).collect();
    let name = impression_name(impression, language);
    let seen = seen(view, language);
    let alt = text!(
        language,
        "page-picture",
        impression = name.as_str(),
        view = seen.as_str(),
        what = match what {
            Marked::Landmarks => "landmarks",
            Marked::Findings | Marked::FindingsAgain => "findings",
        },
        ids = listed(&shown, language)
    );
    let map = impression
        .cover
        .as_ref()
        .and_then(|cover| cover.map.as_ref());
    let id = format!("picture-{}-{}", number + 1, view.code());
    html! {
        figure.view {
            svg viewBox={ "0 0 " (WIDTH) " " (round(height)) } role="img" aria-label=(alt) {
                title { (alt) }
                @if what == Marked::Findings {
                    g id=(id) { (embedded(picture, ASIDE, TOP, px)) }
                } @else {
                    use href={ "#" (id) } {}
                }
                (sides(picture, WIDTH, TOP - 12.0, language))
                (marked(&marks, high))
                (scale_bar(picture.camera.px_per_mm * px, ASIDE, TOP + high + 44.0))
                @if let Some(map) = map { (thickness_scale(map, &cover_levels(result, language), TOP + high + 30.0, language)) }
            }
            figcaption {
                @if what == Marked::FindingsAgain {
                    a href={ "#impression-" (number + 1) } { (capital(&name)) } ", "
                } @else {
                    strong { (view_name(view, language)) } ", "
                }
                (seen) "."
                @if !hidden.is_empty() { " " (text!(language, "page-hidden", ids = hidden.join(", "))) }
            }
        }
    }
}

/// The tissue side of a wash, coloured by its thickness over the first pass.
pub fn wash(
    impression: &ImpressionResult,
    map: &CoverMap,
    picture: &Picture,
    language: Language,
) -> Markup {
    let px = (WIDTH - 2.0 * ASIDE) / picture.camera.size[0] as f64;
    let high = picture.camera.size[1] as f64 * px;
    let alt = text!(
        language,
        "page-wash-picture",
        impression = impression_name(impression, language)
    );
    html! {
        figure.view {
            svg viewBox={ "0 0 " (WIDTH) " " (round(TOP + high + BOTTOM)) } role="img" aria-label=(alt) {
                title { (alt) }
                (embedded(picture, ASIDE, TOP, px))
                (sides(picture, WIDTH, TOP - 12.0, language))
                (scale_bar(picture.camera.px_per_mm * px, ASIDE, TOP + high + 44.0))
                (thickness_scale(map, &[], TOP + high + 30.0, language))
            }
            figcaption { (text!(language, "page-wash-colours")) }
        }
    }
}

/// The inside of a tray with the places at which it is to be relieved; `None` where none of
/// them shows.
pub fn tray(
    material: &Material<'_>,
    number: usize,
    impression: &ImpressionResult,
    picture: &Picture,
) -> Option<Markup> {
    let (result, language) = (material.result, material.language);
    let map = impression.cover.as_ref()?.map.as_ref()?;
    let px = (WIDTH - 2.0 * ASIDE) / picture.camera.size[0] as f64;
    let high = picture.camera.size[1] as f64 * px;
    let sheet = |p: SheetPoint| [ASIDE + p[0] * px, TOP + p[1] * px];
    let marks = tray_marks(result, number, impression, picture, &sheet, px);
    let shown: Vec<&str> = marks.iter().map(|mark| mark.id).collect();
    let alt = text!(
        language,
        "page-tray-picture",
        impression = impression_name(impression, language),
        ids = listed(&shown, language)
    );
    Some(html! {
        figure.view {
            svg viewBox={ "0 0 " (WIDTH) " " (round(TOP + high + BOTTOM)) } role="img" aria-label=(alt) {
                title { (alt) }
                (embedded(picture, ASIDE, TOP, px))
                (sides(picture, WIDTH, TOP - 12.0, language))
                (marked(&marks, high))
                (scale_bar(picture.camera.px_per_mm * px, ASIDE, TOP + high + 44.0))
                (thickness_scale(map, &cover_levels(result, language), TOP + high + 30.0, language))
            }
            figcaption { (text!(language, "page-tray-colours")) }
        }
    })
}

/// What of cover is limited, for its scale.
pub fn cover_levels(result: &CaseResult, language: Language) -> Vec<(f64, String)> {
    [("show_through_mm", "shows"), ("thin_cover_mm", "thin")]
        .into_iter()
        .filter_map(|(key, limit)| {
            let word = text!(language, "page-scale-limit", limit = limit);
            Some((result.protocol.limits.get(key)?.value, word))
        })
        .collect()
}

/// The colours of a map of thickness, in mm.
fn thickness_scale(map: &CoverMap, levels: &[(f64, String)], y: f64, language: Language) -> Markup {
    let what = text!(language, "page-scale-thickness");
    colour_scale(map.ends_mm(), &what, levels, y, language)
}

/// What a view is called.
pub fn view_name(view: View, language: Language) -> String {
    text!(language, "page-view-name", view = view.code())
}

/// Where one looks from, in a clause.
pub(super) fn seen(view: View, language: Language) -> String {
    text!(language, "page-view", view = view.code())
}

/// The close picture of a finding.
pub fn close(material: &Material<'_>, finding: &Finding, picture: &Picture) -> Markup {
    let (result, language) = (material.result, material.language);
    let [width, height] = picture.camera.size.map(|px| px as f64);
    let below = 40.0;
    let impression = finding
        .impression
        .and_then(|n| result.impressions.get(usize::try_from(n).ok()?));
    let mark = impression.and_then(|impression| mark(impression, finding, picture, &|p| p, 1.0));
    let up = up(picture, language);
    // Longer words would run into the scale.
    let size = if up.chars().count() > 16 { 16 } else { 20 };
    let alt = text!(
        language,
        "page-close-picture",
        finding = finding.id.as_str(),
        place = finding_place(result, finding, language),
        up = up.as_str()
    );
    html! {
        svg viewBox={ "0 0 " (width) " " (height + below) } role="img" aria-label=(alt) {
            title { (alt) }
            (embedded(picture, 0.0, 0.0, 1.0))
            @if let Some(mark) = &mark { (outlined(mark)) (label(&mark.at, mark.radius, mark.id)) }
            rect x="0.5" y="0.5" width=(width - 1.0) height=(height - 1.0) fill="none" stroke="#5c5c5c" {}
            (scale_bar(picture.camera.px_per_mm, 6.0, height + 30.0))
            text x=(width) y=(height + 30.0) text-anchor="end" font-size=(size) { (up) }
        }
    }
}

fn listed(names: &[&str], language: Language) -> String {
    if names.is_empty() {
        text!(language, "page-none-marked")
    } else {
        names.join(", ")
    }
}

/// Of several views the first that shows the most findings that are no notes.
pub(crate) fn telling<'a>(
    result: &CaseResult,
    number: usize,
    impression: &ImpressionResult,
    pictures: &'a [Picture],
) -> Option<&'a Picture> {
    let pressing = |picture: &&Picture| {
        let (_, marks) = finding_marks(result, number, impression, picture, &|p| p, 1.0);
        let is_note = |mark: &&Mark<'_>| mark.kind == Kind::Finding(Severity::Note);
        marks.iter().filter(|mark| !is_note(mark)).count()
    };
    // Of equals the last is taken, so the first must come last.
    pictures.iter().rev().max_by_key(pressing)
}
