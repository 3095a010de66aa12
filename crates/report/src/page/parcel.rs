//! The parcel: what must be in it, and what is said of disinfection.

use super::chapter::Chapter;
use super::figure::{exact, limit};
use super::material::Material;
use super::table::{table, words};
use crate::result::Consignment;
use maud::{Markup, html};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let Some(said) = &material.result.consignment else {
        return Vec::new();
    };
    let parts: Vec<Vec<Markup>> = (said.parts.iter())
        .map(|part| {
            let packed = if part.packed { "packed" } else { "MISSING" };
            vec![words(&part.name), words(packed)]
        })
        .collect();
    let body = html! {
            @if parts.is_empty() {
                p { "There is no list of what must be in the parcel." }
            } @else {
                (table("What must be in the parcel", &["Part", "State"], &parts))
            }
            (table("Papers and disinfection", &["What", "Stated", "Limits"], &papers(material, said)))
            p {
                "Disinfect before handling and shipping, by local regulations and the makers' instructions; label "
                "each impression with the case's pseudonym and its stage."
            }
    };
    vec![Chapter::first("parcel", "Parcel", body)]
}

fn papers(material: &Material<'_>, said: &Consignment) -> Vec<Vec<Markup>> {
    let limits = &material.result.protocol.limits;
    let given = |is: bool| if is { "given" } else { "not given" };
    let bound = |key: &str, word: &str| {
        html! { @if let Some(found) = limits.get(key) { (word) " " (limit(material.language, found.value, &found.unit)) " " } }
    };
    let prescription = match said.prescription {
        Some(true) => "enclosed",
        Some(false) => "NOT enclosed",
        None => "not stated",
    };
    let time = html! {
        @match said.disinfection_min {
            Some(minutes) => (exact(material.language, minutes, "min")),
            None => "not stated",
        }
    };
    let usual = html! {
        (bound("least_disinfection_min", "at least")) (bound("most_disinfection_min", "at most"))
    };
    vec![
        vec![
            words("written prescription"),
            words(prescription),
            words(""),
        ],
        vec![
            words("disinfectant"),
            words(if said.disinfectant_stated {
                "stated"
            } else {
                "NOT stated"
            }),
            words(""),
        ],
        vec![words("time of disinfection"), time, usual],
        vec![
            words("reason for no jaw-relation record"),
            words(given(said.no_jaw_relation_reason_given)),
            words(""),
        ],
        vec![
            words("reason for one jaw alone"),
            words(given(said.one_arch_reason_given)),
            words(""),
        ],
    ]
}
