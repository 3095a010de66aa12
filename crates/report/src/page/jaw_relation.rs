//! The relation of the jaws.

use super::bounds::bounds;
use super::chapter::Chapter;
use super::figure::quantity;
use super::material::Material;
use super::space_chart::chart;
use super::table::{table, words};
use crate::result::{JawRelation, ProtocolResult};
use crate::text::words::{found_by, part_of_the_record};
use maud::{Markup, html};
use messages::{Language, text};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let language = material.language;
    let Some(relation) = &material.result.jaw_relation else {
        return Vec::new();
    };
    let protocol = &material.result.protocol;
    let rows = rows(relation, protocol, language);
    let body = html! {
            @if !rows.is_empty() {
                (table(
                    &text!(language, "page-relation-of-jaws"),
                    &[
                        &text!(language, "page-figure"),
                        &text!(language, "page-measured-so"),
                        &text!(language, "page-limits"),
                    ],
                    &rows,
                ))
            }
            @if !relation.stations.is_empty() { (chart(relation, protocol, language)) }
            @if let Some(sentence) = part_of_the_record(relation, language) { p { (sentence) } }
            @for entry in &relation.not_judged {
                p { (text!(language, "page-record-not-judged", why = entry.why_in(language))) }
            }
            @if let Some(by) = &relation.vertical_dimension_by {
                p { (text!(language, "page-vertical-dimension-by", by = found_by(by, language))) }
            }
            @if let Some(by) = &relation.centric_relation_by {
                p { (text!(language, "page-centric-relation-by", by = found_by(by, language))) }
            }
            p { (text!(language, "page-record-shows")) }
    };
    let heading = text!(language, "page-jaw-relation");
    vec![Chapter::first("jaw-relation", &heading, body)]
}

fn rows(relation: &JawRelation, protocol: &ProtocolResult, language: Language) -> Vec<Vec<Markup>> {
    let mut rows = given(relation, protocol, language);
    rows.extend(measured(relation, protocol, language));
    rows
}

/// What was read at the chair, and what follows from it.
fn given(
    relation: &JawRelation,
    protocol: &ProtocolResult,
    language: Language,
) -> Vec<Vec<Markup>> {
    let between = |least, most| bounds(protocol, [Some(least), Some(most)], language);
    let reading = relation.reading_uncertainty_mm;
    let no_limit = || words(text!(language, "page-no-limit"));
    let given = [
        (
            text!(language, "page-vertical-dimension"),
            relation.vertical_dimension_mm,
            reading,
            no_limit(),
        ),
        (
            text!(language, "page-rest-vertical-dimension"),
            relation.rest_vertical_dimension_mm,
            reading,
            no_limit(),
        ),
        (
            text!(language, "page-interocclusal-distance"),
            relation.interocclusal_distance_mm,
            relation.interocclusal_distance_uncertainty_mm,
            between(
                "least_interocclusal_distance_mm",
                "most_interocclusal_distance_mm",
            ),
        ),
        (
            text!(language, "page-upper-lip-length"),
            relation.upper_lip_length_mm,
            reading,
            between("least_upper_lip_length_mm", "most_upper_lip_length_mm"),
        ),
        (
            text!(language, "page-papilla-to-lip"),
            relation.papilla_to_lip_mm,
            reading,
            between("least_papilla_to_lip_mm", "most_papilla_to_lip_mm"),
        ),
    ];
    (given.into_iter())
        .filter_map(|(what, mm, doubt, limits)| {
            Some(vec![
                words(what),
                quantity(language, mm?, doubt, "mm"),
                limits,
            ])
        })
        .collect()
}

/// What the scan of the record gave.
fn measured(
    relation: &JawRelation,
    protocol: &ProtocolResult,
    language: Language,
) -> Vec<Vec<Markup>> {
    let spaces = relation.interarch_space_mm.iter().copied();
    let least = spaces.clone().reduce(f64::min);
    let most = spaces.reduce(f64::max);
    let doubt = relation.uncertainty_mm;
    let space = |mm: Option<f64>| mm.map(|mm| quantity(language, mm, doubt, "mm"));
    let angle = relation.ridge_angle_deg;
    let angle =
        angle.map(|angle| quantity(language, angle, relation.ridge_angle_uncertainty_deg, "deg"));
    let measured = [
        (
            text!(language, "page-least-space"),
            space(least),
            bounds(protocol, [Some("least_interarch_space_mm"), None], language),
        ),
        (
            text!(language, "page-most-space"),
            space(most),
            words(text!(language, "page-no-limit")),
        ),
        (
            text!(language, "page-ridge-angle"),
            angle,
            bounds(protocol, [None, Some("most_ridge_angle_deg")], language),
        ),
    ];
    (measured.into_iter())
        .filter_map(|(what, figure, limits)| Some(vec![words(what), figure?, limits]))
        .collect()
}
