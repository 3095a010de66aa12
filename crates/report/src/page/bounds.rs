//! Limits of the protocol beside a figure.

use super::figure::limit;
use super::filled::{PART, filled};
use crate::result::{LimitResult, ProtocolResult};
use maud::{Markup, html};
use messages::{Language, text};

/// `at least 2 mm, at most 4 mm`, of the limits of these names, as far as the protocol has them.
pub(super) fn bounds(
    protocol: &ProtocolResult,
    [least, most]: [Option<&str>; 2],
    language: Language,
) -> Markup {
    let shown = |found: &LimitResult| limit(found.value, &found.unit);
    let found = |name: Option<&str>| protocol.limits.get(name?).map(shown);
    match (found(least), found(most)) {
        (Some(least), Some(most)) => filled(
            &text!(language, "page-between", least = PART[0], most = PART[1]),
            &[least, most],
        ),
        (Some(least), None) => filled(&text!(language, "page-at-least", limit = PART[0]), &[least]),
        (None, Some(most)) => filled(&text!(language, "page-at-most", limit = PART[0]), &[most]),
        (None, None) => html! {},
    }
}
