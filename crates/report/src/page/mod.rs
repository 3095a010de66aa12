//! The report: one HTML file that holds everything that a person needs to see of
//! a case. It opens without a network, prints on A4 and reads on a phone. Its one script
//! lets the impression be turned; nothing else needs it.
//!
//! It has two depths: what everybody reads comes first and is printed; the rest is folded.
//!
//! A part is a function from the [`Material`](material::Material) to its chapters, in a file of its
//! own, with a row in [`PARTS`]. It takes every figure from the result and
//! prints it by [`figure`], so that none differs from `result.json`.

mod appendix;
mod as_sent;
mod border;
mod bounds;
mod cautions;
mod chapter;
mod cover;
mod defects;
mod document;
mod figure;
mod filled;
mod findings;
mod impression;
#[cfg(test)]
mod impression_in_languages;
#[cfg(test)]
mod in_languages;
mod jaw_relation;
mod landmarks;
mod limits;
mod material;
mod method;
mod next_tray;
mod not_judged;
mod notes;
pub(crate) mod overlay;
mod parcel;
mod provenance;
mod relief;
mod scan;
mod shelf_fit;
mod space_chart;
mod standard;
mod table;
#[cfg(test)]
mod tests;
mod tray_fit;
mod turning;
mod verdict;
mod views;
mod wash;

pub(crate) use cautions::cautions;
use document::with_script;
pub(crate) use document::{in_language, with_style};
pub(crate) use filled::{PART, filled};
pub use shelf_fit::fit_page;
pub use standard::control_page;
pub(crate) use table::table;

use crate::files::Output;
use crate::picture::Pictures;
use crate::result::CaseResult;
use crate::text::format::capital;
use crate::text::headline::what_to_do;
use crate::text::times;
use crate::text::words::verdict_word;
use chapter::{Chapter, contents};
use material::Material;
use maud::html;
use messages::{Language, text};

/// The chapters that a part of the result gives; none where it holds nothing for them.
type Part = fn(&Material<'_>) -> Vec<Chapter>;

/// Parts of the report, in their order: what everybody reads, then what is folded.
const PARTS: [Part; 14] = [
    verdict::chapters,
    not_judged::chapters,
    cautions::chapters,
    findings::chapters,
    impression::chapters,
    wash::chapters,
    jaw_relation::chapters,
    parcel::chapters,
    notes::chapters,
    appendix::chapters,
    method::chapters,
    limits::chapters,
    provenance::chapters,
    files,
];

/// The report of a case; `files` are those that lie beside it.
pub(crate) fn report(
    result: &CaseResult,
    pictures: &Pictures,
    files: &[Output],
    language: Language,
) -> String {
    let material = Material {
        language,
        result,
        pictures,
        files,
    };
    let chapters: Vec<Chapter> = PARTS.iter().flat_map(|part| part(&material)).collect();
    let verdict = verdict_word(result.verdict, language);
    let case = result.case.as_str();
    let title = text!(
        language,
        "page-title",
        case = case,
        verdict = verdict.as_str()
    );
    let heading = text!(language, "sheet-title", case = case, word = PART[0]);
    let body = html! {
        main {
            header {
                p.kicker { (text!(language, "page-kicker")) }
                h1 { (filled(&heading, &[html! { span.verdict { (verdict) } }])) }
                p.lead { (capital(&what_to_do(result, language))) }
                @if let Some(times) = &result.times { p.time { (times::in_words(times, language)) "." } }
            }
            (contents(&chapters, language))
            @for chapter in &chapters { (chapter.drawn()) }
            p.first-depth { (text!(language, "page-first-depth")) }
        }
        footer {
            p {
                (text!(
                    language,
                    "page-written-by",
                    program = result.program.as_str(),
                    protocol = result.protocol.name.as_str()
                ))
            }
        }
    };
    match turning::data(&material) {
        Some(data) => with_script(&title, &html! { (body) (data) }, turning::SCRIPT, language),
        None => in_language(&title, &body, language),
    }
}

/// Files that lie beside the report.
fn files(material: &Material<'_>) -> Vec<Chapter> {
    let names: Vec<&str> = material
        .files
        .iter()
        .map(|(name, _)| name.as_str())
        .collect();
    let body = html! { p { "result.json " @for name in names { (name) " " } } };
    let heading = text!(material.language, "page-files");
    vec![Chapter::second("files", &heading, body)]
}
