//! How the trays of a shelf suit a mouth, as text.

use super::columns::in_columns;
use super::format;
use super::words::{arch_word, side_word, zone_name};
use crate::result::{ClearanceResult, Conclusion, EdgeResult, Side, TouchResult, TrayResult};
use crate::studies::shelf_fit::FitResult;
use messages::{Language, Value, text};

/// How the trays of a shelf suit a mouth, as text for people.
#[must_use]
pub fn fit_text(result: &FitResult, language: Language) -> String {
    let wanted = wanted(result, language);
    let steps = adapting(result, language).into_iter();
    let mut said = vec![conclusion(result, language)];
    said.extend(steps.map(|step| format!("  {step}")));
    said.push(String::new());
    said.push(trays(result, &wanted, language));
    said.push(text!(language, "fit-how", wanted = wanted.as_str()));
    if result.is_positive {
        said.push(text!(language, "fit-positive"));
    }
    said.push(text!(language, "fit-try"));
    said.join("\n") + "\n"
}

/// What to do, in a sentence.
pub(crate) fn conclusion(result: &FitResult, language: Language) -> String {
    let jaw = arch_word(result.arch);
    let tray = result.tried.tray.as_deref().unwrap_or_default();
    match result.tried.conclusion {
        Conclusion::Take => text!(language, "fit-take", tray = tray, jaw = jaw),
        Conclusion::Adapt => text!(language, "fit-adapt", tray = tray, jaw = jaw),
        Conclusion::Individual => text!(language, "fit-individual", jaw = jaw),
        Conclusion::NoneOfThisJaw => text!(language, "fit-none-of-this-jaw", jaw = jaw),
    }
}

/// How to adapt the tray that comes nearest, step by step; nothing of one that fits.
pub(crate) fn adapting(result: &FitResult, language: Language) -> Vec<String> {
    let bend = result.tried.bend.iter().map(|touch| {
        text!(
            language,
            "fit-bend",
            place = place(&touch.zone, touch.side, language),
            depth = Value::number(touch.depth_mm, 1),
            area = Value::figure(format::area(touch.area_mm2))
        )
    });
    let shorten = result.tried.shorten.iter().map(|edge| {
        text!(
            language,
            "fit-shorten",
            place = place(&edge.zone, edge.side, language),
            past = Value::number(edge.past_border_mm, 1)
        )
    });
    bend.chain(shorten).collect()
}

/// The clearance that is wanted: `2 to 3 mm`.
fn wanted(result: &FitResult, language: Language) -> String {
    let [from, to] = (result.tried.wanted_clearance_mm).map(|mm| Value::figure(mm.to_string()));
    text!(language, "fit-head-wanted", from = from, to = to)
}

fn place(zone: &str, side: Option<Side>, language: Language) -> String {
    let zone = zone_name(zone, language);
    match side {
        Some(side) => format!("{zone}, {}", side_word(side, language)),
        None => zone,
    }
}

/// Where a tray touches, how deep and over what area.
pub(crate) fn touch(touch: &TouchResult, language: Language) -> String {
    text!(
        language,
        "fit-page-touch",
        place = place(&touch.zone, touch.side, language),
        depth = Value::number(touch.depth_mm, 1),
        area = Value::figure(format::area(touch.area_mm2))
    )
}

fn trays(result: &FitResult, wanted: &str, language: Language) -> String {
    let head = vec![
        text!(language, "fit-head-tray"),
        text!(language, "fit-head-least"),
        text!(language, "fit-head-median"),
        text!(language, "fit-head-uncertainty"),
        wanted.to_owned(),
        text!(language, "fit-head-edge"),
        text!(language, "fit-head-touches"),
    ];
    let rows = result.tried.trays.iter().map(|tray| row(tray, language));
    let rows: Vec<Vec<String>> = std::iter::once(head).chain(rows).collect();
    in_columns(&rows, &[0, 5, 6])
}

fn row(tray: &TrayResult, language: Language) -> Vec<String> {
    let name = tray.name.clone();
    let Some(found) = &tray.clearance else {
        return vec![name, not_tried(tray, language)];
    };
    let number = |mm: f64| Value::number(mm, 2).text(language);
    let least = least_edge(found).map(|edge| {
        let mm = Value::number(edge.least_mm, 1).text(language);
        format!("{mm} mm, {}", place(&edge.zone, edge.side, language))
    });
    vec![
        name,
        number(found.least_mm),
        number(found.median_mm),
        number(found.uncertainty_mm),
        Value::figure(format::percent(found.wanted_share)).text(language),
        least.unwrap_or_default(),
        touches(found, language),
    ]
}

/// Why a tray has no clearance.
pub(crate) fn not_tried(tray: &TrayResult, language: Language) -> String {
    match tray.is_of_the_other_jaw {
        true => text!(language, "fit-other-jaw"),
        false => text!(language, "fit-not-placed"),
    }
}

fn least_edge(found: &ClearanceResult) -> Option<&EdgeResult> {
    let edges = found.edges.iter();
    edges.min_by(|a, b| a.least_mm.total_cmp(&b.least_mm))
}

fn touches(found: &ClearanceResult, language: Language) -> String {
    let places: Vec<String> = (found.touches.iter())
        .map(|touch| place(&touch.zone, touch.side, language))
        .collect();
    if places.is_empty() {
        text!(language, "next-tray-nowhere")
    } else {
        places.join("; ")
    }
}
