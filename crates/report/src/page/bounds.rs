//! Limits of the protocol beside a figure.

use super::figure::limit;
use super::filled::{PART, filled};
use crate::result::ProtocolResult;
use maud::{Markup, html};
use messages::{Language, text};

/// `at least 2 mm`, of the limit of this name; nothing where the protocol has none.
pub(super) fn at_least(protocol: &ProtocolResult, name: &str, language: Language) -> Markup {
    let sentence = text!(language, "page-at-least", limit = PART[0]);
    of_limit(protocol, name, &sentence)
}

/// `at most 4 mm`, of the limit of this name; nothing where the protocol has none.
pub(super) fn at_most(protocol: &ProtocolResult, name: &str, language: Language) -> Markup {
    let sentence = text!(language, "page-at-most", limit = PART[0]);
    of_limit(protocol, name, &sentence)
}

fn of_limit(protocol: &ProtocolResult, name: &str, sentence: &str) -> Markup {
    match protocol.limits.get(name) {
        Some(found) => filled(sentence, &[limit(found.value, &found.unit)]),
        None => html! {},
    }
}
