//! What a wash superseded: findings and figures of the impressions before it.

use super::chapter::Chapter;
use super::findings::articles;
use super::impression;
use super::material::Material;
use super::{not_judged, notes};
use crate::result::{Finding, Severity};
use crate::text::format::capital;
use crate::text::words::{impression_name, verdict_word};
use maud::html;
use messages::text;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let (result, language) = (material.result, material.language);
    let superseded: Vec<_> = (result.impressions.iter().enumerate())
        .filter(|(_, impression)| impression.superseded)
        .collect();
    if superseded.is_empty() {
        return Vec::new();
    }
    // What fails or is open comes first, whatever it is of.
    let notes: Vec<&Finding> = (result.findings.iter())
        .filter(|finding| finding.severity == Severity::Note)
        .filter(|finding| notes::is_superseded(result, finding))
        .collect();
    let body = html! {
        p { (text!(language, "page-appendix-lead")) }
        @if !notes.is_empty() {
            (notes::table(result, &text!(language, "page-findings-before-wash"), &notes, language))
            (articles(material, &notes))
        }
        @for (number, one) in superseded {
            h3.impression id={ "impression-" (number + 1) } {
                (capital(&impression_name(one, language))) ": " (verdict_word(one.verdict, language))
            }
            (impression::in_full(material, number, one))
        }
        @if let Some(table) = not_judged::superseded(result, language) { (table) }
    };
    let heading = text!(language, "page-appendix");
    vec![Chapter::second("appendix", &heading, body)]
}
