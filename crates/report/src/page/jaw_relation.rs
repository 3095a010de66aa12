//! The relation of the jaws.

use super::Material;
use super::figure::quantity;
use maud::{Markup, html};

pub fn section(material: &Material<'_>) -> Option<Markup> {
    let relation = material.result.jaw_relation.as_ref()?;
    Some(html! {
        section {
            h2 #jaw-relation { "Jaw relation" }
            @if let Some(mm) = relation.vertical_dimension_mm {
                p { "Vertical dimension of occlusion: " (quantity(mm, None, "mm")) }
            }
            @for entry in &relation.not_judged { p { "Not judged: " (entry.check) " (" (entry.why) ")" } }
        }
    })
}
