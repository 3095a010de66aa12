//! A function can be read at one sitting.

use crate::common::{HOUSE, assert_none};
use archproof_tests::house::map::{LONG_FUNCTION, long_functions};

/// Functions that may be longer, as file and name, each with its reason.
const MAY_BE_LONGER: &[(&str, &str, &str)] = &[];

#[test]
fn functions_are_short() {
    let found: Vec<String> = long_functions(&HOUSE)
        .iter()
        .filter(|long| {
            let is_here = |(file, name, _): &&(&str, &str, &str)| {
                *file == long.file && *name == long.function.name
            };
            !MAY_BE_LONGER.iter().any(|row| is_here(&row))
        })
        .map(|long| {
            let (name, lines) = (&long.function.name, long.function.lines);
            format!(
                "{}: {name} has {lines} lines, {LONG_FUNCTION} or more",
                long.file
            )
        })
        .collect();
    assert_none(&found);
}

#[test]
fn nothing_is_excused_that_needs_no_excuse() {
    let long = long_functions(&HOUSE);
    let stale: Vec<String> = MAY_BE_LONGER
        .iter()
        .filter(|(file, name, _)| {
            !long
                .iter()
                .any(|l| l.file == *file && l.function.name == *name)
        })
        .map(|(file, name, _)| format!("{file}: {name} is short; take it off the list"))
        .collect();
    assert_none(&stale);
}
