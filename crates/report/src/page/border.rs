//! The border: the least and greatest of its figures, and its chart.

use super::figure::{exact, limit, none, quantity};
use super::findings::drag;
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{Border, BorderPart, ImpressionResult, ProtocolResult, Station};
use crate::text::facing;
use crate::text::figures::station_figure;
use crate::text::format::capital;
use crate::text::words::impression_name;
use maud::{Markup, html};
use measure::StationFigure;
use messages::{Language, text};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let border = impression.border.as_ref()?;
    let rows: Vec<Vec<Markup>> = StationFigure::ALL
        .into_iter()
        .flat_map(|figure| rows(figure, &border.stations, &material.result.protocol))
        .collect();
    Some(html! {
        h3 { "Border" }
        (table("Extremes along the border", &["Figure", "Measured (k = 2)", "Limit", "Where"], &rows))
    })
}

/// The border unrolled, on a page of its own.
pub fn chart(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let border = impression.border.as_ref()?;
    let Some(chart) = material.drawing(&border.chart) else {
        return Some(ground(material, border));
    };
    let name = impression_name(impression, Language::English);
    // A chart with a lingual track is higher than a landscape page.
    let mut parts = border.stations.iter().map(|station| station.part);
    let is_high = parts.any(|part| part == BorderPart::Lingual);
    Some(html! {
        div class=(if is_high { "high" } else { "wide" }) {
            figure.chart {
                div.scroll role="region" tabindex="0" aria-label={ "Chart of the border, " (name) } { (chart) }
                figcaption data-drag=(drag(material.language)) {
                    (capital(&name)) ": the border unrolled, the labial midline in the middle"
                    @if let Some(arch) = impression.arch.detected { ", " (facing::words(arch.into())) }
                    ". The same figures are in " (border.table) "."
                }
            }
            (ground(material, border))
        }
    })
}

/// What the figures along the border are of.
fn ground(material: &Material<'_>, border: &Border) -> Markup {
    html! {
        p.aside {
            "Length of the border " (quantity(border.length_mm, None, "mm")) "."
            @if !border.closed { " The scan does not show the border all the way round." }
            " Flange thickness is measured " (exact(border.flange_depth_mm, "mm")) " below the border."
            @if let Some(least) = material.result.protocol.limits.get("least_border_stretch_mm") {
                " Only stretches of at least " (limit(least.value, &least.unit)) " are judged. Frenum notches, the posterior "
                "border and the last 10 mm before it are excluded, so an extreme value in the table is not necessarily a "
                "fault. " (capital(&text!(Language::English, "over-extension-not-shown"))) "."
            }
        }
    }
}

/// Least and greatest of a figure, each with the limit on its side.
fn rows(
    figure: StationFigure,
    stations: &[Station],
    protocol: &ProtocolResult,
) -> Vec<Vec<Markup>> {
    let of = station_figure(figure);
    let had: Vec<(&Station, f64, Option<f64>)> = stations
        .iter()
        .filter_map(|station| {
            let reading = station.figure(figure);
            Some((station, reading.mm?, reading.uncertainty_mm))
        })
        .collect();
    if had.is_empty() {
        let why = none("could not be measured at any point of the border");
        return vec![vec![words(of.name), why, words(""), words("")]];
    }
    let least = had
        .iter()
        .min_by(|a, b| a.1.total_cmp(&b.1))
        .map(|found| ("least", found, of.least, "at least "));
    let most = had
        .iter()
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .map(|found| ("greatest", found, of.most, "at most "));
    [least, most]
        .into_iter()
        .flatten()
        .map(|(which, (station, value, doubt), key, bound)| {
            let limiting = key.and_then(|key| in_zone(protocol, key.name(), &station.zone));
            vec![
                words(format!("{which} {}", of.name)),
                quantity(*value, *doubt, "mm"),
                match limiting.filter(|mm| *mm > 0.0) {
                    Some(mm) => html! { (bound) (limit(mm, "mm")) },
                    None => words("no limit"),
                },
                place(Some(&station.zone), station.side),
            ]
        })
        .collect()
}

/// A limit as it is in a zone.
fn in_zone(protocol: &ProtocolResult, key: &str, zone: &str) -> Option<f64> {
    let limit = protocol.limits.get(key)?;
    Some(limit.zones.get(zone).copied().unwrap_or(limit.value))
}
