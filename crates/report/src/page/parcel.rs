//! The parcel: what must be in it, and what is said of disinfection.

use super::bounds::bounds;
use super::chapter::Chapter;
use super::figure::exact;
use super::material::Material;
use super::table::{table, words};
use crate::result::Consignment;
use maud::{Markup, html};
use messages::text;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let language = material.language;
    let Some(said) = &material.result.consignment else {
        return Vec::new();
    };
    let [packed, missing] = [
        text!(language, "page-packed"),
        text!(language, "page-missing"),
    ];
    let parts: Vec<Vec<Markup>> = (said.parts.iter())
        .map(|part| {
            let state = if part.packed { &packed } else { &missing };
            vec![words(&part.name), words(state)]
        })
        .collect();
    let body = html! {
            @if parts.is_empty() {
                p { (text!(language, "page-no-list")) }
            } @else {
                (table(
                    &text!(language, "page-contents-of-parcel"),
                    &[&text!(language, "page-part"), &text!(language, "page-state")],
                    &parts,
                ))
            }
            (papers(material, said))
            p { (text!(language, "page-disinfect")) }
    };
    vec![Chapter::first(
        "parcel",
        &text!(language, "page-parcel"),
        body,
    )]
}

fn papers(material: &Material<'_>, said: &Consignment) -> Markup {
    let language = material.language;
    let yes = |is: bool| if is { "yes" } else { "no" };
    let enclosed = said.prescription.map_or("unknown", yes);
    let time = match said.disinfection_min {
        Some(minutes) => exact(language, minutes, "min"),
        None => words(text!(language, "page-not-stated")),
    };
    let [no_record, one_jaw] = [
        said.no_jaw_relation_reason_given,
        said.one_arch_reason_given,
    ]
    .map(yes);
    let nothing = || words("");
    let rows = [
        vec![
            words(text!(language, "page-prescription")),
            words(text!(language, "page-enclosed", is = enclosed)),
            nothing(),
        ],
        vec![
            words(text!(language, "page-disinfectant")),
            words(text!(
                language,
                "page-disinfectant-stated",
                is = yes(said.disinfectant_stated)
            )),
            nothing(),
        ],
        vec![
            words(text!(language, "page-disinfection-time")),
            time,
            bounds(
                &material.result.protocol,
                [
                    Some("least_disinfection_min"),
                    Some("most_disinfection_min"),
                ],
                language,
            ),
        ],
        vec![
            words(text!(language, "page-no-record-reason")),
            words(text!(language, "page-reason", is = no_record)),
            nothing(),
        ],
        vec![
            words(text!(language, "page-one-jaw-reason")),
            words(text!(language, "page-reason", is = one_jaw)),
            nothing(),
        ],
    ];
    table(
        &text!(language, "page-papers"),
        &[
            &text!(language, "page-what"),
            &text!(language, "page-stated"),
            &text!(language, "page-limits"),
        ],
        &rows,
    )
}
