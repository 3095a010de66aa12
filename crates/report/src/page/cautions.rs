//! What must be read with every report.

use super::chapter::Chapter;
use super::material::Material;
use maud::{Markup, html};
use messages::{Language, text};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    vec![chapter(material.language)]
}

/// The cautions in English, wherever results are read.
pub fn cautions() -> Markup {
    cautions_in(Language::English)
}

/// The cautions in a language.
pub(super) fn cautions_in(language: Language) -> Markup {
    chapter(language).drawn()
}

fn chapter(language: Language) -> Chapter {
    let cautions = [
        text!(language, "page-caution-aid"),
        text!(language, "page-caution-hygiene"),
        text!(language, "page-caution-relief"),
        text!(language, "page-caution-makers"),
        text!(language, "page-caution-data"),
    ];
    let body = html! { ul { @for caution in cautions { li { (caution) } } } };
    Chapter::first("cautions", &text!(language, "page-cautions"), body).of_class("notice")
}
