//! The limits of the protocol, each with its source.

use super::chapter::Chapter;
use super::figure::limit;
use super::material::Material;
use super::table::{table, words};
use crate::result::Level;
use crate::text::words::zone_name;
use judge::LimitKey;
use maud::{Markup, html};
use messages::text;
use std::collections::BTreeMap;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let (protocol, language) = (&material.result.protocol, material.language);
    let rows: Vec<Vec<Markup>> = protocol
        .limits
        .iter()
        .map(|(name, found)| {
            let key = LimitKey::ALL.into_iter().find(|key| key.name() == name);
            let gist = key.map(|key| key.gist().text(language));
            // A limit that this version does not know is as the result states it.
            let source = key.map_or_else(
                || found.source.clone(),
                |key| key.source(&found.source).text(language),
            );
            let criterion = found.criterion.as_ref().map(|stated| {
                key.map_or_else(|| stated.clone(), |key| key.criterion(stated).text(language))
            });
            vec![
                html! { @if let Some(gist) = gist { (gist) br; } code { (name) } },
                html! {
                    (limit(language, found.value, &found.unit))
                    @for (value, zones) in by_value(&found.zones) {
                        @let zones: Vec<String> = zones.into_iter().map(|zone| zone_name(zone, language)).collect();
                        br; (limit(language, value, &found.unit)) ": " (zones.join(", "))
                    }
                },
                words(text!(
                    language,
                    "page-level",
                    level = match found.level {
                        Level::Fail => "fail",
                        Level::Undecided => "undecided",
                        Level::Note => "note",
                    }
                )),
                html! {
                    @if let Some(criterion) = criterion { (criterion) br; (text!(language, "page-criterion-number")) " " }
                    (source)
                },
            ]
        })
        .collect();
    let body = table(
        &text!(language, "page-limits-of-case"),
        &[
            &text!(language, "page-limit"),
            &text!(language, "page-value"),
            &text!(language, "page-if-missed"),
            &text!(language, "page-source"),
        ],
        &rows,
    );
    let heading = text!(
        language,
        "page-limits-of",
        protocol = protocol.name.as_str()
    );
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
