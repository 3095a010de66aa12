//! Libraries do not switch off the lints on printing and unwrapping.

use crate::common::{assert_none, lines_out_of_place};

#[test]
fn no_lint_on_printing_or_unwrapping_is_switched_off() {
    let switches_off = |line: &str| {
        let openings = ["#[allow(", "#![allow(", "#[expect(", "#![expect("];
        openings.iter().any(|opening| line.starts_with(opening))
            && (line.contains("clippy::print") || line.contains("clippy::unwrap"))
    };
    assert_none(&lines_out_of_place(|row| row.prints, switches_off));
}
