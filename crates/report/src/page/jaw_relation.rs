//! The relation of the jaws.

use super::chapter::Chapter;
use super::figure::{limit, quantity};
use super::material::Material;
use super::space_chart::chart;
use super::table::{table, words};
use crate::result::{JawRelation, ProtocolResult};
use crate::text::words::part_of_the_record;
use maud::{Markup, html};
use messages::Language;

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
            @if let Some(sentence) = part_of_the_record(relation, Language::English) { p { (sentence) } }
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
        @if let Some(found) = protocol.limits.get(least) { "at least " (limit(Language::English, found.value, &found.unit)) }
        @if let Some(found) = protocol.limits.get(most) { " at most " (limit(Language::English, found.value, &found.unit)) }
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
            Some(vec![
                words(word),
                quantity(Language::English, mm?, doubt, "mm"),
                limits,
            ])
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
                quantity(Language::English, mm, relation.uncertainty_mm, "mm"),
                limits,
            ]);
        }
    }
    if let Some(angle) = relation.ridge_angle_deg {
        rows.push(vec![
            words("angle between the ridges"),
            quantity(
                Language::English,
                angle,
                relation.ridge_angle_uncertainty_deg,
                "deg",
            ),
            between(protocol, "", "most_ridge_angle_deg"),
        ]);
    }
    rows
}
