//! Tables that can be read by a screen reader, scroll on a phone and break
//! between rows on paper.

use crate::result::Side;
use crate::text::words::{side_word, zone_name};
use maud::{Markup, html};
use messages::Language;

/// A table with a caption and a heading to each column; the first cell of a row
/// heads it.
pub fn table(caption: &str, columns: &[impl AsRef<str>], rows: &[Vec<Markup>]) -> Markup {
    html! {
        div.scroll role="group" aria-label=(caption) tabindex="0" {
            table {
                caption { (caption) }
                thead { tr { @for column in columns { th scope="col" { (column.as_ref()) } } } }
                tbody {
                    @for row in rows {
                        tr {
                            @for (number, cell) in row.iter().enumerate() {
                                @if number == 0 { th scope="row" { (cell) } } @else { td { (cell) } }
                            }
                        }
                    }
                }
            }
        }
    }
}

/// A cell of words.
pub fn words(text: impl AsRef<str>) -> Markup {
    html! { (text.as_ref()) }
}

/// `residual ridge, patient's right`.
pub fn place(language: Language, zone: Option<&str>, side: Option<Side>) -> Markup {
    let zone = zone.map(|zone| zone_name(zone, language));
    let side = side.map(|side| side_word(side, language));
    let parts: Vec<String> = zone.into_iter().chain(side).collect();
    words(parts.join(", "))
}
