//! The limits of the protocol, each with its source.

use super::Material;
use super::figure::limit;
use super::table::{table, words};
use crate::result::Level;
use judge::LimitKey;
use maud::{Markup, html};

pub fn section(material: &Material<'_>) -> Option<Markup> {
    let protocol = &material.result.protocol;
    let rows: Vec<Vec<Markup>> = protocol
        .limits
        .iter()
        .map(|(name, found)| {
            let gist = LimitKey::ALL.iter().find(|key| key.name() == name).map(|key| key.gist());
            vec![
                html! { code { (name) } @if let Some(gist) = gist { br; span.aside { (gist) } } },
                html! {
                    (limit(found.value, &found.unit))
                    @for (zone, value) in &found.zones { br; (zone) ": " (limit(*value, &found.unit)) }
                },
                words(match found.level {
                    Level::Fail => "fails",
                    Level::Undecided => "not accepted on this measurement",
                    Level::Note => "noted",
                }),
                words(&found.source),
            ]
        })
        .collect();
    Some(html! {
        section {
            h2 #limits { "Limits: " (protocol.name) }
            (table("Limits that the case was judged by", &["Limit", "Value", "Who misses it", "Source"], &rows))
        }
    })
}
