//! The border: the least and greatest of its figures, and its chart.

use super::figure::{at_least, at_most, exact, limit, none, quantity};
use super::filled::{PART, filled};
use super::findings::drag;
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{Border, BorderPart, ImpressionResult, ProtocolResult, Station};
use crate::text::facing;
use crate::text::figures::{figure_name, station_figure};
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
    let language = material.language;
    let border = impression.border.as_ref()?;
    let rows: Vec<Vec<Markup>> = StationFigure::ALL
        .into_iter()
        .flat_map(|figure| {
            rows(
                language,
                figure,
                &border.stations,
                &material.result.protocol,
            )
        })
        .collect();
    let columns = [
        text!(language, "head-figure"),
        text!(language, "head-measured"),
        text!(language, "head-limit"),
        text!(language, "head-where"),
    ];
    Some(html! {
        h3 { (text!(language, "along-border")) }
        (table(&text!(language, "along-border-extremes"), &columns, &rows))
    })
}

/// The border unrolled, on a page of its own.
pub fn chart(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    let border = impression.border.as_ref()?;
    let Some(chart) = material.drawing(&border.chart) else {
        return Some(ground(material, border));
    };
    let name = impression_name(impression, language);
    // A chart with a lingual track is higher than a landscape page.
    let mut parts = border.stations.iter().map(|station| station.part);
    let is_high = parts.any(|part| part == BorderPart::Lingual);
    let name_and_facing = match impression.arch.detected {
        Some(arch) => text!(
            language,
            "border-chart-facing",
            impression = capital(&name),
            facing = facing::message(arch.into())
        ),
        None => text!(language, "border-chart", impression = capital(&name)),
    };
    let label = text!(language, "border-chart-label", impression = name);
    Some(html! {
        div class=(if is_high { "high" } else { "wide" }) {
            figure.chart {
                div.scroll role="region" tabindex="0" aria-label=(label) { (chart) }
                figcaption data-drag=(drag(language)) {
                    (name_and_facing) " "
                    (text!(language, "border-chart-table", table = border.table.as_str()))
                }
            }
            (ground(material, border))
        }
    })
}

/// What the figures along the border are of.
fn ground(material: &Material<'_>, border: &Border) -> Markup {
    let language = material.language;
    html! {
        p.aside {
            (filled(
                &text!(language, "along-border-length", length = PART[0]),
                &[quantity(language, border.length_mm, None, "mm")],
            ))
            @if !border.closed { " " (text!(language, "along-border-open")) }
            " "
            (filled(
                &text!(language, "along-border-depth", depth = PART[0]),
                &[exact(language, border.flange_depth_mm, "mm")],
            ))
            @if let Some(least) = material.result.protocol.limits.get("least_border_stretch_mm") {
                " "
                (filled(
                    &text!(language, "along-border-judged", least = PART[0]),
                    &[limit(language, least.value, &least.unit)],
                ))
                " " (capital(&text!(language, "over-extension-not-shown"))) "."
            }
        }
    }
}

/// Least and greatest of a figure, each with the limit on its side.
fn rows(
    language: Language,
    figure: StationFigure,
    stations: &[Station],
    protocol: &ProtocolResult,
) -> Vec<Vec<Markup>> {
    let of = station_figure(figure);
    let name = figure_name(figure, language);
    let had: Vec<(&Station, f64, Option<f64>)> = stations
        .iter()
        .filter_map(|station| {
            let reading = station.figure(figure);
            Some((station, reading.mm?, reading.uncertainty_mm))
        })
        .collect();
    let by_value =
        |a: &&(&Station, f64, Option<f64>), b: &&(&Station, f64, Option<f64>)| a.1.total_cmp(&b.1);
    let Some((least, most)) = had.iter().min_by(by_value).zip(had.iter().max_by(by_value)) else {
        let why = none(language, &text!(language, "along-border-not-measured"));
        return vec![vec![words(name), why, words(""), words("")]];
    };
    let row = |what: String, found: &(&Station, f64, Option<f64>), bound: Option<Markup>| {
        let (station, value, doubt) = *found;
        vec![
            words(what),
            quantity(language, value, doubt, "mm"),
            bound.unwrap_or_else(|| words(text!(language, "cell-no-limit"))),
            place(language, Some(&station.zone), station.side),
        ]
    };
    let bound = |key: Option<judge::LimitKey>, station: &Station| {
        in_zone(protocol, key?.name(), &station.zone).filter(|mm| *mm > 0.0)
    };
    vec![
        row(
            text!(language, "along-border-least", figure = name.as_str()),
            least,
            bound(of.least, least.0).map(|mm| at_least(language, mm, "mm")),
        ),
        row(
            text!(language, "along-border-greatest", figure = name.as_str()),
            most,
            bound(of.most, most.0).map(|mm| at_most(language, mm, "mm")),
        ),
    ]
}

/// A limit as it is in a zone.
fn in_zone(protocol: &ProtocolResult, key: &str, zone: &str) -> Option<f64> {
    let limit = protocol.limits.get(key)?;
    Some(limit.zones.get(zone).copied().unwrap_or(limit.value))
}
