//! The border: its chart, and the least and greatest of its figures.

use super::figure::{exact, limit, none, quantity};
use super::table::{place, table, words};
use super::{Material, capital};
use crate::result::{ImpressionResult, ProtocolResult, Station};
use crate::summary::name;
use maud::{Markup, html};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let border = impression.border.as_ref()?;
    let what = capital(&name(impression));
    let rows: Vec<Vec<Markup>> = FIGURES
        .iter()
        .flat_map(|figure| rows(figure, &border.stations, &material.result.protocol))
        .collect();
    Some(html! {
        div.wide {
            h3 { "Border" }
            @if let Some(chart) = material.drawing(&border.chart) {
                figure.chart {
                    div.scroll role="region" tabindex="0" aria-label={ "Chart of the border, " (name(impression)) } { (chart) }
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

/// A figure of the stations.
struct Figure {
    name: &'static str,
    of: fn(&Station) -> Option<(f64, Option<f64>)>,
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
    let had = || {
        stations
            .iter()
            .filter_map(|station| Some((station, (figure.of)(station)?)))
    };
    let by_value = |a: &(&Station, (f64, _)), b: &(&Station, (f64, _))| a.1.0.total_cmp(&b.1.0);
    let ends = [
        ("least", had().min_by(by_value), figure.least, "at least "),
        ("greatest", had().max_by(by_value), figure.most, "at most "),
    ];
    let row = |(which, found, key, bound): (
        _,
        Option<(&Station, (f64, Option<f64>))>,
        Option<&str>,
        _,
    )| {
        let name = words(format!("{which} {}", figure.name));
        let Some((station, (value, doubt))) = found else {
            return vec![name, none("at no station"), words(""), words("")];
        };
        let limiting = key.and_then(|key| protocol.limits.get(key)).map(|limit| {
            limit
                .zones
                .get(&station.zone)
                .copied()
                .unwrap_or(limit.value)
        });
        vec![
            name,
            quantity(value, doubt, "mm"),
            match limiting.filter(|mm| *mm > 0.0) {
                Some(mm) => html! { (bound) (limit(mm, "mm")) },
                None => words("no limit"),
            },
            place(Some(&station.zone), station.side),
        ]
    };
    ends.into_iter().map(row).collect()
}
