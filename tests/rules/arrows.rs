//! Crates depend on each other as the plan says.

use crate::common::{HOUSE, assert_none};
use archproof_tests::house::plan::{permissions_of, wrong_arrows};

#[test]
fn no_crate_depends_against_the_plan() {
    let wrong: Vec<String> = wrong_arrows(&HOUSE)
        .iter()
        .map(|arrow| {
            let tests = if arrow.is_for_tests {
                "the tests of "
            } else {
                ""
            };
            format!("{tests}{} must not depend on {}", arrow.from, arrow.to)
        })
        .collect();
    assert_none(&wrong);
}

#[test]
fn every_crate_is_in_the_plan() {
    let unknown: Vec<String> = HOUSE
        .crates
        .iter()
        .filter(|room| permissions_of(&room.name).is_none())
        .map(|room| format!("{} has no row in tests/house/plan.rs", room.name))
        .collect();
    assert_none(&unknown);
}

#[test]
fn no_crate_that_is_shipped_needs_one_that_is_not() {
    let is_for_tests = |name: &str| permissions_of(name).is_some_and(|row| row.is_for_tests);
    let mut found = Vec::new();
    for room in HOUSE.crates.iter().filter(|room| !is_for_tests(&room.name)) {
        let wrong = room.needs.iter().filter(|to| is_for_tests(to));
        found.extend(wrong.map(|to| format!("{} must not depend on {to}", room.name)));
    }
    assert_none(&found);
}
