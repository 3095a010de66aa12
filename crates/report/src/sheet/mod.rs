//! The sheet that goes with the parcel: one A4 page for one case, as HTML and as
//! PDF. It holds what a person at the bench needs and no more: the verdict, what
//! is to be done in order, one picture of each impression to be worked from,
//! what is missing from the parcel, and lines to sign.
//!
//! [`content`] says what stands on it, [`layout`] and [`foot`] where; the page is plain data
//! ([`paper`]) that [`svg`] and [`pdf`] draw alike. Its fonts are part of the
//! program. It uses shades of grey alone, so that any printer will do.

mod clinic;
mod content;
mod font;
mod foot;
mod layout;
mod paper;
mod pdf;
mod pdf_font;
mod picture;
mod plain_words;
mod svg;
#[cfg(test)]
pub(crate) mod tests;

use crate::page::with_style;
use crate::picture::Pictures;
use crate::result::{CaseResult, OutputFile};
use crate::text::steps::pressing;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
pub(crate) use clinic::text as return_text;
use content::Content;
use font::Weight;
use maud::html;
use messages::{Language, text};
pub(crate) use paper::Paper;
use std::io;

/// The sheet of a case.
pub(crate) fn sheet<'a>(
    result: &'a CaseResult,
    pictures: &'a Pictures,
    language: Language,
) -> Paper<'a> {
    layout::laid_out(result, pictures, &Content::of(result, language))
}

/// The page that returns a case: what is asked of the clinic.
pub(crate) fn return_note<'a>(
    result: &'a CaseResult,
    pictures: &'a Pictures,
    language: Language,
) -> Paper<'a> {
    layout::laid_out(result, pictures, &clinic::content(result, language))
}

/// Adds a return note to the files of a result, where something is asked of the
/// clinic; says whether.
pub fn add_return_note(result: &mut CaseResult) -> bool {
    let is_asked = pressing(result).next().is_some();
    if is_asked {
        result.files.extend(OutputFile::of_return_note());
    }
    is_asked
}

/// The sheet as a web page that needs no other file.
pub(crate) fn page(paper: &Paper<'_>) -> String {
    let body = html! {
        main.sheet {
            h1.visually-hidden { (paper.title) }
            div.scroll role="region" tabindex="0" aria-label=(text!(paper.language, "sheet-region")) {
                (svg::drawn(paper))
            }
        }
    };
    with_style(&paper.title, &body, &style(), paper.language)
}

/// The sheet as a PDF file.
///
/// # Errors
/// When a picture or a font cannot be read.
pub(crate) fn pdf(paper: &Paper<'_>) -> Result<Vec<u8>, io::Error> {
    pdf::encoded(paper)
}

/// The fonts, and how the page lies on a screen and on paper.
fn style() -> String {
    let faces: String = Weight::ALL
        .map(|weight| {
            let value = match weight {
                Weight::Book => "normal",
                Weight::Bold => "bold",
            };
            let file = STANDARD.encode(weight.file());
            format!(
                "@font-face {{ font-family: Sheet; font-weight: {value}; \
                 src: url(data:font/ttf;base64,{file}); }}\n"
            )
        })
        .concat();
    faces + include_str!("style.css")
}
