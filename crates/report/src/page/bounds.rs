//! Limits of the protocol beside a figure.

use super::figure::{at_least, at_most, limit};
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
    let found = |name: Option<&str>| protocol.limits.get(name?);
    let shown = |found: &LimitResult| limit(language, found.value, &found.unit);
    match (found(least), found(most)) {
        (Some(least), Some(most)) => filled(
            &text!(language, "page-between", least = PART[0], most = PART[1]),
            &[shown(least), shown(most)],
        ),
        (Some(least), None) => at_least(language, least.value, &least.unit),
        (None, Some(most)) => at_most(language, most.value, &most.unit),
        (None, None) => html! {},
    }
}
