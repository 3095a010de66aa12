//! The limits of the protocol, each with its source.

use super::chapter::Chapter;
use super::figure::limit;
use super::material::Material;
use super::table::{table, words};
use crate::result::Level;
use judge::LimitKey;
use maud::{Markup, html};
use std::collections::BTreeMap;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let protocol = &material.result.protocol;
    let rows: Vec<Vec<Markup>> = protocol
        .limits
        .iter()
        .map(|(name, found)| {
            let gist = LimitKey::ALL
                .iter()
                .find(|key| key.name() == name)
                .map(|key| key.gist());
            vec![
                html! { @if let Some(gist) = gist { (gist) br; } code { (name) } },
                html! {
                    (limit(material.language, found.value, &found.unit))
                    @for (value, zones) in by_value(&found.zones) {
                        br; (limit(material.language, value, &found.unit)) ": " (zones.join(", "))
                    }
                },
                words(match found.level {
                    Level::Fail => "fails",
                    Level::Undecided => "not accepted on this measurement",
                    Level::Note => "noted",
                }),
                html! {
                    @if let Some(criterion) = &found.criterion { (criterion) br; "Number: " }
                    (found.source)
                },
            ]
        })
        .collect();
    let body = table(
        "Limits that the case was judged by",
        &["Limit", "Value", "If missed", "Source"],
        &rows,
    );
    let heading = format!("Limits: {}", protocol.name);
    vec![Chapter::second("limits", &heading, body).of_class("limits")]
}

/// Zones with a value of their own, those of one value together.
fn by_value(zones: &BTreeMap<String, f64>) -> Vec<(f64, Vec<&str>)> {
    let mut groups: Vec<(f64, Vec<&str>)> = Vec::new();
    for (zone, &value) in zones {
        match groups.iter_mut().find(|(of, _)| *of == value) {
            Some((_, together)) => together.push(zone),
            None => groups.push((value, vec![zone])),
        }
    }
    groups
}
