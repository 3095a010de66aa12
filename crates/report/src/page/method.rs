//! How the figures were had and how they were judged.

use super::chapter::Chapter;
use super::material::Material;
use maud::html;
use messages::{Language, text};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let body = html! {
        dl {
            @for [what, is] in methods(material.language) {
                dt { (what) }
                dd { (is) }
            }
        }
    };
    let heading = text!(material.language, "page-methods");
    vec![Chapter::second("method", &heading, body)]
}

/// Terms, each with what it is.
fn methods(language: Language) -> [[String; 2]; 8] {
    [
        [
            text!(language, "page-method-material"),
            text!(language, "page-method-material-is"),
        ],
        [
            text!(language, "page-method-height"),
            text!(language, "page-method-height-is"),
        ],
        [
            text!(language, "page-method-thickness"),
            text!(language, "page-method-thickness-is"),
        ],
        [
            text!(language, "page-method-radius"),
            text!(language, "page-method-radius-is"),
        ],
        [
            text!(language, "page-method-overlap"),
            text!(language, "page-method-overlap-is"),
        ],
        [
            text!(language, "page-method-uncertainty"),
            text!(language, "page-method-uncertainty-is"),
        ],
        [
            text!(language, "page-method-decision"),
            text!(language, "page-method-decision-is"),
        ],
        [
            text!(language, "page-method-unknown"),
            text!(language, "page-method-unknown-is"),
        ],
    ]
}
