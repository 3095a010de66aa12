//! The border: its chart, and the least and greatest of its figures.

use super::figure::{exact, limit, none, quantity};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{BorderPart, ImpressionResult, ProtocolResult, Station};
use crate::text::format::capital;
use crate::text::words::impression_name;
use maud::{Markup, html};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let border = impression.border.as_ref()?;
    let what = capital(&impression_name(impression));
    let rows: Vec<Vec<Markup>> = FIGURES
        .iter()
        .flat_map(|figure| rows(figure, &border.stations, &material.result.protocol))
        .collect();
    Some(html! {
        // A chart with a lingual track is higher than a landscape page.
        @let is_high = border.stations.iter().any(|station| station.part == BorderPart::Lingual);
        div class=(if is_high { "high" } else { "wide" }) {
            h3 { "Border" }
            @if let Some(chart) = material.drawing(&border.chart) {
                figure.chart {
                    div.scroll role="region" tabindex="0" aria-label={ "Chart of the border, " (impression_name(impression)) } { (chart) }
                    figcaption {
                        (what) ": the border unrolled, the labial midline in the middle, the patient's right on the "
                        "left. The same figures stand in " (border.table) "."
                    }
                }
            }
        }
        (table("Extremes along the border", &["Figure", "Measured (k = 2)", "Limit", "Where"], &rows))
        @if let Some(least) = material.result.protocol.limits.get("least_border_stretch_mm") {
            p.aside {
                "Judged are stretches of at least " (limit(least.value, &least.unit)) ", without frena, the back and the "
                "ends toward it, where every flange runs out: an extreme in the table may miss its limit and be no fault."
            }
        }
        p {
            "Length of the border " (quantity(border.length_mm, None, "mm")) "; it is "
            @if border.closed { "one closed line on scanned surface." } @else { "not one closed line on scanned surface." }
            " Flange thickness is taken " (exact(border.flange_depth_mm, "mm")) " below the border."
        }
    })
}

/// A figure with its uncertainty, mm.
type Reading = (f64, Option<f64>);

/// A figure of the stations.
struct Figure {
    name: &'static str,
    of: fn(&Station) -> Option<Reading>,
    least: Option<&'static str>,
    most: Option<&'static str>,
}

const FIGURES: [Figure; 4] = [
    Figure {
        name: "flange height",
        of: |s| Some((s.flange_height_mm?, s.flange_height_uncertainty_mm)),
        least: Some("flange_height_mm"),
        most: None,
    },
    Figure {
        name: "flange thickness",
        of: |s| Some((s.flange_thickness_mm?, s.flange_thickness_uncertainty_mm)),
        least: Some("least_flange_thickness_mm"),
        most: Some("most_flange_thickness_mm"),
    },
    Figure {
        name: "border radius",
        of: |s| Some((s.border_radius_mm?, s.border_radius_uncertainty_mm)),
        least: Some("border_radius_mm"),
        most: None,
    },
    Figure {
        name: "overlap past the tray",
        of: |s| Some((s.overlap_mm?, s.overlap_uncertainty_mm)),
        least: Some("least_border_overlap_mm"),
        most: Some("most_border_overlap_mm"),
    },
];

/// Least and greatest of a figure, each with the limit on its side.
fn rows(figure: &Figure, stations: &[Station], protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let had: Vec<(&Station, Reading)> = stations
        .iter()
        .filter_map(|station| Some((station, (figure.of)(station)?)))
        .collect();
    if had.is_empty() {
        let why = none("at no station could it be had");
        return vec![vec![words(figure.name), why, words(""), words("")]];
    }
    let by_value = |a: &&(&Station, Reading), b: &&(&Station, Reading)| a.1.0.total_cmp(&b.1.0);
    let least = had
        .iter()
        .min_by(by_value)
        .map(|found| ("least", found, figure.least, "at least "));
    let most = had
        .iter()
        .max_by(by_value)
        .map(|found| ("greatest", found, figure.most, "at most "));
    [least, most]
        .into_iter()
        .flatten()
        .map(|(which, (station, (value, doubt)), key, bound)| {
            let limiting = key.and_then(|key| in_zone(protocol, key, &station.zone));
            vec![
                words(format!("{which} {}", figure.name)),
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
