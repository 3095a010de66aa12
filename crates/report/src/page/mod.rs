//! The report: one HTML file that holds everything that a person needs to see of
//! a case. It opens without a network, needs no script, prints on A4 and reads on
//! a phone.
//!
//! A section is a function from the [`Material`](material::Material) to its markup, in a file of its
//! own, with a row in [`SECTIONS`]. It takes every figure from the result and
//! prints it by [`figure`], so that none differs from `result.json`.

mod border;
mod cautions;
mod cover;
mod defects;
mod document;
mod figure;
mod findings;
mod impression;
mod jaw_relation;
mod landmarks;
mod limits;
mod material;
mod method;
mod not_judged;
pub(crate) mod overlay;
mod parcel;
mod provenance;
mod scan;
mod table;
#[cfg(test)]
mod tests;
mod tray_fit;
mod verdict;
mod views;
mod wash;

pub(crate) use cautions::cautions;
pub(crate) use document::whole;
pub(crate) use table::table;

use crate::files::Output;
use crate::picture::Pictures;
use crate::result::CaseResult;
use crate::text::format::capital;
use crate::text::headline::what_to_do;
use crate::text::times;
use crate::text::words::verdict_word;
use material::Material;
use maud::{Markup, html};

/// A section; `None` where the result holds nothing for it.
type Section = fn(&Material<'_>) -> Option<Markup>;

/// Sections of the report, in their order.
const SECTIONS: [Section; 12] = [
    verdict::section,
    not_judged::section,
    findings::section,
    impression::section,
    wash::section,
    jaw_relation::section,
    parcel::section,
    method::section,
    limits::section,
    provenance::section,
    cautions::section,
    files,
];

/// The report of a case; `files` are those that lie beside it.
pub(crate) fn report(result: &CaseResult, pictures: &Pictures, files: &[Output]) -> String {
    let material = Material {
        result,
        pictures,
        files,
    };
    let verdict = verdict_word(result.verdict);
    let title = format!(
        "Case {}: {verdict} - report of the impression check",
        result.case
    );
    let body = html! {
        main {
            header {
                p.kicker { "Report of the impression check" }
                h1 {
                    "Case " (result.case) ": "
                    span.verdict { (verdict) }
                }
                p.lead { (capital(&what_to_do(result))) }
                @if let Some(times) = &result.times { p.time { (times::in_words(times)) "." } }
            }
            @for section in SECTIONS {
                @if let Some(markup) = section(&material) { (markup) }
            }
        }
        footer {
            p {
                "Written by " (result.program) ". Protocol: " (result.protocol.name)
                ". An aid to inspection, not a medical device; the licensed clinician decides."
            }
        }
    };
    whole(&title, &body)
}

/// Files that lie beside the report.
fn files(material: &Material<'_>) -> Option<Markup> {
    let names: Vec<&str> = material
        .files
        .iter()
        .map(|(name, _)| name.as_str())
        .collect();
    Some(html! {
        section {
            h2 #files { "Files beside this report" }
            p { "result.json " @for name in names { (name) " " } }
        }
    })
}
