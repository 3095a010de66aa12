//! Sentences of the catalogue with figures and other marked-up parts in them.

use crate::result::Side;
use maud::{Markup, PreEscaped, html};

/// Where the parts of a sentence go, as its parameters: signs that no text has (Unicode's
/// private use). A language puts them in its own order.
pub const PARTS: [&str; 7] = [
    "\u{e000}", "\u{e001}", "\u{e002}", "\u{e003}", "\u{e004}", "\u{e005}", "\u{e006}",
];

/// A sentence with its parts in the places of [`PARTS`].
pub fn sentence(text: &str, parts: &[Markup]) -> Markup {
    let escaped = html! { (text) }.into_string();
    let places = PARTS.iter().zip(parts);
    PreEscaped(places.fold(escaped, |text, (place, part)| text.replace(place, &part.0)))
}

/// The word by which a sentence chooses its form for a side.
pub fn form_of(side: Side) -> &'static str {
    match side {
        Side::Right => "right",
        Side::Left => "left",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parts_go_where_the_sentence_has_their_places_and_its_own_text_is_escaped() {
        let text = format!("{} < {}", PARTS[1], PARTS[0]);
        let parts = [html! { b { "a" } }, html! { "&" }];
        assert_eq!(sentence(&text, &parts).into_string(), "&amp; &lt; <b>a</b>");
    }
}
