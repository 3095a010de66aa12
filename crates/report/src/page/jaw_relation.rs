//! The relation of the jaws.

use super::chapter::Chapter;
use super::figure::{limit, quantity};
use super::material::Material;
use super::table::{table, words};
use crate::result::{JawRelation, ProtocolResult, Side, SpaceStation};
use maud::{Markup, html};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let Some(relation) = &material.result.jaw_relation else {
        return Vec::new();
    };
    let protocol = &material.result.protocol;
    let rows = rows(relation, protocol);
    let body = html! {
            @if !rows.is_empty() {
                (table("Relation of the jaws", &["Figure", "Measured (k = 2)", "Limits"], &rows))
            }
            @if !relation.stations.is_empty() { (chart(relation, protocol)) }
            @for entry in &relation.not_judged { p { "Not judged: the record (" (entry.why) ")." } }
            @if let Some(by) = &relation.vertical_dimension_by { p { "The vertical dimension of occlusion was found " (by) "." } }
            @if let Some(by) = &relation.centric_relation_by { p { "Centric relation was found " (by) "." } }
            p {
                "The scan of the record shows where the jaws were held. Whether that is centric relation, and "
                "whether the vertical dimension suits the patient, cannot be read from it."
            }
    };
    vec![Chapter::first("jaw-relation", "Jaw relation", body)]
}

/// A limit from below and one from above, as far as there are such.
fn between(protocol: &ProtocolResult, least: &str, most: &str) -> Markup {
    html! {
        @if let Some(found) = protocol.limits.get(least) { "at least " (limit(found.value, &found.unit)) }
        @if let Some(found) = protocol.limits.get(most) { " at most " (limit(found.value, &found.unit)) }
    }
}

fn rows(relation: &JawRelation, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let given = [
        (
            "vertical dimension of occlusion, as given",
            relation.vertical_dimension_mm,
            None,
        ),
        (
            "vertical dimension at rest, as given",
            relation.rest_vertical_dimension_mm,
            None,
        ),
        (
            "interocclusal distance, from these",
            relation.interocclusal_distance_mm,
            Some((
                "least_interocclusal_distance_mm",
                "most_interocclusal_distance_mm",
            )),
        ),
        (
            "upper lip length from the base of the nose, as given",
            relation.upper_lip_length_mm,
            Some(("least_upper_lip_length_mm", "most_upper_lip_length_mm")),
        ),
        (
            "incisive papilla to lip line, as given",
            relation.papilla_to_lip_mm,
            Some(("least_papilla_to_lip_mm", "most_papilla_to_lip_mm")),
        ),
    ];
    let mut rows: Vec<Vec<Markup>> = given
        .into_iter()
        .filter_map(|(word, mm, limits)| {
            let limits = limits.map_or(words("no limit"), |(least, most)| {
                between(protocol, least, most)
            });
            let doubt = match word {
                "interocclusal distance, from these" => {
                    relation.interocclusal_distance_uncertainty_mm
                }
                _ => relation.reading_uncertainty_mm,
            };
            Some(vec![words(word), quantity(mm?, doubt, "mm"), limits])
        })
        .collect();
    rows.extend(measured(relation, protocol));
    rows
}

/// What the scan of the record gave.
fn measured(relation: &JawRelation, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let mut rows = Vec::new();
    let spaces = relation.interarch_space_mm.iter().copied();
    let least = spaces.clone().reduce(f64::min);
    let most = spaces.reduce(f64::max);
    for (word, mm, key) in [
        (
            "least space between the ridges",
            least,
            "least_interarch_space_mm",
        ),
        ("most space between the ridges", most, ""),
    ] {
        if let Some(mm) = mm {
            let limits = if key.is_empty() {
                words("no limit")
            } else {
                between(protocol, key, "")
            };
            rows.push(vec![
                words(word),
                quantity(mm, relation.uncertainty_mm, "mm"),
                limits,
            ]);
        }
    }
    if let Some(angle) = relation.ridge_angle_deg {
        rows.push(vec![
            words("angle between the ridges"),
            quantity(angle, relation.ridge_angle_uncertainty_deg, "deg"),
            between(protocol, "", "most_ridge_angle_deg"),
        ]);
    }
    rows
}

/// The space along the upper crest line, seen as the upper impression is.
fn chart(relation: &JawRelation, protocol: &ProtocolResult) -> Markup {
    const SIZE: [f64; 2] = [800.0, 300.0];
    const LEFT: f64 = 70.0;
    const BOTTOM: f64 = 60.0;
    let along = |station: &SpaceStation| match station.side {
        Some(Side::Left) => -station.from_front_mm,
        _ => station.from_front_mm,
    };
    let known: Vec<[f64; 2]> = (relation.stations.iter())
        .filter_map(|station| Some([along(station), station.space_mm?]))
        .collect();
    let reach = known.iter().map(|p| p[0].abs()).fold(1.0, f64::max);
    let top = known.iter().map(|p| p[1]).fold(1.0, f64::max) * 1.1;
    let x = |mm: f64| LEFT + (mm / reach + 1.0) / 2.0 * (SIZE[0] - LEFT - 20.0);
    let y = |mm: f64| (SIZE[1] - BOTTOM) - mm / top * (SIZE[1] - BOTTOM - 20.0);
    let line: Vec<String> = known
        .iter()
        .map(|p| format!("{:.1},{:.1}", x(p[0]), y(p[1])))
        .collect();
    let limiting = protocol.limits.get("least_interarch_space_mm");
    let step = if top > 25.0 { 10.0 } else { 5.0 };
    let ticks: Vec<f64> = (0..)
        .map(|n| f64::from(n) * step)
        .take_while(|mm| *mm <= top)
        .collect();
    let word =
        "Space between the ridges along the upper crest line, the patient's right on the right";
    html! {
        figure {
            svg viewBox=(format!("0 0 {} {}", SIZE[0], SIZE[1])) role="img" aria-label=(word) style="width:100%;max-width:44rem;height:auto" {
                @for mm in &ticks {
                    line x1=(LEFT) x2=(SIZE[0] - 20.0) y1=(y(*mm)) y2=(y(*mm)) stroke="#ccc" {}
                    text.tick x=(LEFT - 8.0) y=(y(*mm) + 7.0) text-anchor="end" font-size="20" { (mm) }
                }
                @if let Some(found) = limiting {
                    line x1=(LEFT) x2=(SIZE[0] - 20.0) y1=(y(found.value)) y2=(y(found.value)) stroke="#444" stroke-dasharray="8 6" {}
                    text x=(SIZE[0] - 24.0) y=(y(found.value) - 6.0) text-anchor="end" font-size="20" { "limit, least" }
                }
                polyline points=(line.join(" ")) fill="none" stroke="#21918c" stroke-width="4" {}
                @for (mm, word) in [(-reach, "L"), (0.0, "front"), (reach, "R")] {
                    text x=(x(mm)) y=(SIZE[1] - BOTTOM + 28.0) text-anchor="middle" font-size="20" { (word) }
                }
                text x=(LEFT) y=(SIZE[1] - 8.0) font-size="20" { "space, mm" }
            }
            figcaption { (word) "." }
        }
    }
}
