//! Chapters of the report, in two depths: what everybody reads, and what is
//! folded away until somebody asks for it. A folded chapter opens by a click, by
//! a link that leads into it, or by the switch that prints everything.

use maud::{Markup, html};
use messages::{Language, text};

/// Name of the switch that prints the folded chapters, too.
const PRINT_EVERYTHING: &str = "print-everything";

/// How deep in the report something lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Depth {
    /// Open, and printed.
    First,
    /// Folded, and printed on request.
    Second,
}

/// A chapter, with a row in the table of contents.
pub(super) struct Chapter {
    /// Its name within the page.
    pub(super) id: String,
    pub(super) heading: String,
    pub(super) class: Option<&'static str>,
    pub(super) depth: Depth,
    pub(super) body: Markup,
}

impl Chapter {
    /// A chapter that everybody reads.
    pub(super) fn first(id: &str, heading: &str, body: Markup) -> Self {
        Self {
            id: id.to_owned(),
            heading: heading.to_owned(),
            class: None,
            depth: Depth::First,
            body,
        }
    }

    /// A folded chapter.
    pub(super) fn second(id: &str, heading: &str, body: Markup) -> Self {
        Self {
            depth: Depth::Second,
            ..Self::first(id, heading, body)
        }
    }

    pub(super) fn of_class(self, class: &'static str) -> Self {
        Self {
            class: Some(class),
            ..self
        }
    }

    pub(super) fn drawn(&self) -> Markup {
        match self.depth {
            Depth::First => html! {
                section class=[self.class] {
                    h2 id=(self.id) { (self.heading) }
                    (self.body)
                }
            },
            Depth::Second => html! {
                section class=[self.class] { (folded(&self.id, &html! { h2 { (self.heading) } }, &self.body)) }
            },
        }
    }
}

/// Something folded under a heading. Its name is that of what is folded, so that
/// a link to it opens it.
pub(super) fn folded(id: &str, heading: &Markup, body: &Markup) -> Markup {
    html! {
        details.more {
            summary { (heading) }
            div id=(id) { (body) }
        }
    }
}

/// The table of contents, with the switch that prints everything.
pub(super) fn contents(chapters: &[Chapter], language: Language) -> Markup {
    let of = |depth| {
        chapters
            .iter()
            .filter(move |chapter| chapter.depth == depth)
    };
    html! {
        nav.contents aria-labelledby="contents" {
            h2 #contents { (text!(language, "page-contents")) }
            ul { @for chapter in of(Depth::First) { (entry(chapter)) } }
            p { (text!(language, "page-folded")) }
            ul { @for chapter in of(Depth::Second) { (entry(chapter)) } }
            p {
                input type="checkbox" id=(PRINT_EVERYTHING) autocomplete="off";
                " " label for=(PRINT_EVERYTHING) { (text!(language, "page-print-everything")) } " "
                span.aside { (text!(language, "page-print-hint")) }
            }
        }
    }
}

fn entry(chapter: &Chapter) -> Markup {
    html! { li { a href={ "#" (chapter.id) } { (chapter.heading) } } }
}
