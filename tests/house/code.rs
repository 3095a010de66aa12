//! Lines of code: what is left of a file without comments and without tests.

use super::test_code::{attributes_of, is_for_tests};
use std::ops::RangeInclusive;
use syn::spanned::Spanned;

/// A line of code.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Line {
    /// Its number in the file, from 1.
    pub number: usize,
    /// Its text.
    pub text: String,
}

/// The lines of a file that are neither comments nor code of tests.
pub(super) fn lines_of_code(text: &str, parsed: &syn::File) -> Vec<Line> {
    let tests: Vec<RangeInclusive<usize>> = parsed
        .items
        .iter()
        .filter(|item| is_for_tests(attributes_of(item)))
        .map(|item| item.span().start().line..=item.span().end().line)
        .collect();
    (1..)
        .zip(text.lines())
        .filter(|(number, line)| {
            !line.trim_start().starts_with("//")
                && !tests.iter().any(|lines| lines.contains(number))
        })
        .map(|(number, line)| Line {
            number,
            text: line.to_owned(),
        })
        .collect()
}

/// Whether a line holds a word that no other word runs into from before.
#[must_use]
pub fn holds_word(line: &str, word: &str) -> bool {
    line.match_indices(word).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        !before.is_some_and(|c| c.is_alphanumeric() || c == '_')
    })
}
