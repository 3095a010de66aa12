//! How to scan, as a page to be printed: the text of `archproof help scanning`, a
//! drawing to each of its sections.

use crate::drawing::scanning::drawing;
use crate::page::in_language;
use maud::{Markup, PreEscaped, html};
use messages::{Language, text};

/// The page of a text in a language, in which every section begins with `## ` and its heading.
#[must_use]
pub fn scanning_page(text: &str, language: Language) -> String {
    let mut parts = text.split("\n## ");
    let title = parts.next().unwrap_or_default();
    let title = title.lines().next().unwrap_or_default();
    let title = title.trim_start_matches("# scanning: ");
    let body = html! {
        main.scanning {
            header { h1 { (crate::text::format::capital(title)) } }
            @for (number, part) in parts.enumerate() { (section(number, part, language)) }
        }
        footer { p { (text!(language, "page-caution-aid")) } }
    };
    in_language(title, &body, language)
}

fn section(number: usize, part: &str, language: Language) -> Markup {
    let (heading, text) = part.split_once('\n').unwrap_or((part, ""));
    // Names within a page must be its own.
    let own = |svg: Vec<u8>| {
        let svg = String::from_utf8_lossy(&svg).into_owned();
        svg.replace("id=\"hatch\"", &format!("id=\"hatch-{number}\""))
    };
    html! {
        section {
            div {
                h2 { (heading) }
                @for paragraph in text.split("\n\n").filter(|paragraph| !paragraph.trim().is_empty()) {
                    p { (with_code(paragraph)) }
                }
            }
            @if let Some(svg) = drawing(number, heading, language) {
                figure { (PreEscaped(own(svg))) }
            }
        }
    }
}

/// A paragraph with its `code` set as such.
fn with_code(paragraph: &str) -> Markup {
    html! {
        @for (number, piece) in paragraph.split('`').enumerate() {
            @if number % 2 == 1 { code { (piece) } } @else { (piece) }
        }
    }
}
