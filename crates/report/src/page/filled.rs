//! Sentences of the catalogue with marked-up parts in them.

use crate::result::Side;
use maud::{Markup, html};

/// Placeholders for the first, second and further marked-up parts of a sentence: characters for
/// private use, which no text holds.
pub(crate) const PART: [&str; 7] = [
    "\u{e000}", "\u{e001}", "\u{e002}", "\u{e003}", "\u{e004}", "\u{e005}", "\u{e006}",
];

/// A sentence with its marked-up parts in their places, wherever its language puts them.
pub(crate) fn filled(sentence: &str, parts: &[Markup]) -> Markup {
    let number = |c: char| PART.iter().position(|part| part.starts_with(c));
    html! {
        @for piece in sentence.split_inclusive(|c| number(c).is_some()) {
            @let ending = piece.chars().next_back().filter(|&c| number(c).is_some());
            (piece.trim_end_matches(|c| number(c).is_some()))
            @if let Some(part) = ending.and_then(|c| parts.get(number(c)?)) { (part) }
        }
    }
}

/// The word by which a sentence chooses its form for a side.
pub(super) fn form_of(side: Side) -> &'static str {
    match side {
        Side::Right => "right",
        Side::Left => "left",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parts_come_where_the_sentence_puts_them_and_text_is_escaped() {
        let [first, second] = ["one", "two"].map(|word| html! { b { (word) } });
        let sentence = format!("<{}, {}>", PART[1], PART[0]);
        assert_eq!(
            filled(&sentence, &[first, second]).into_string(),
            "&lt;<b>two</b>, <b>one</b>&gt;"
        );
        assert_eq!(filled("No part.", &[]).into_string(), "No part.");
    }
}
