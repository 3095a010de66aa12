//! How the trays of a shelf suit a mouth, as text.

use super::columns::in_columns;
use super::format::{self, in_language};
use super::words::{arch_word, group_words, side_word, zone_name};
use crate::result::{ClearanceResult, Conclusion, EdgeResult, Side, TrayResult};
use crate::studies::shelf_fit::FitResult;
use messages::{Language, Value, text};

/// How the trays of a shelf suit a mouth, as text for people.
#[must_use]
pub fn fit_text(result: &FitResult, language: Language) -> String {
    let [from, to] = result.tried.wanted_clearance_mm;
    let wanted = text!(
        language,
        "fit-wanted",
        from = Value::figure(from.to_string()),
        to = Value::figure(to.to_string())
    );
    let mut said = conclusion(result, language);
    said.push(String::new());
    said.push(trays(result, &wanted, language));
    said.push(text!(language, "fit-clearance", wanted = wanted));
    if result.is_positive {
        said.push(text!(language, "fit-positive"));
    }
    said.push(text!(language, "fit-try"));
    said.join("\n") + "\n"
}

/// Which tray to take, or how to adapt the nearest.
fn conclusion(result: &FitResult, language: Language) -> Vec<String> {
    let jaw = group_words(arch_word(result.arch), language);
    let tray = result.tried.tray.as_deref().unwrap_or_default();
    match result.tried.conclusion {
        Conclusion::Take => vec![text!(language, "fit-take", tray = tray, jaw = jaw)],
        Conclusion::Adapt => {
            let head = text!(language, "fit-adapt", tray = tray, jaw = jaw);
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
            let orders = bend.chain(shorten).map(|order| format!("  {order}"));
            std::iter::once(head).chain(orders).collect()
        }
        Conclusion::Individual => vec![text!(language, "fit-individual", jaw = jaw)],
        Conclusion::NoneOfThisJaw => vec![text!(language, "fit-none-of-jaw", jaw = jaw)],
    }
}

fn place(zone: &str, side: Option<Side>, language: Language) -> String {
    let zone = zone_name(zone, language);
    side.map_or_else(
        || zone.clone(),
        |side| format!("{zone}, {}", side_word(side, language)),
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
        let why = if tray.is_of_the_other_jaw {
            text!(language, "next-tray-other-jaw")
        } else {
            text!(language, "fit-not-placed")
        };
        return vec![name, why];
    };
    let number = |mm: f64| in_language(format!("{mm:.2}"), language);
    let least = least_edge(found).map(|edge| {
        let place = place(&edge.zone, edge.side, language);
        in_language(format!("{:.1} mm", edge.least_mm), language) + ", " + &place
    });
    vec![
        name,
        number(found.least_mm),
        number(found.median_mm),
        number(found.uncertainty_mm),
        in_language(format::percent(found.wanted_share), language),
        least.unwrap_or_default(),
        touches(found, language),
    ]
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
