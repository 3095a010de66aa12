//! Only crates whose business it is read and write files.

use crate::common::{assert_none, words_out_of_place};

const FILES: &[&str] = &[
    "std::fs",
    "fs::",
    "File::",
    "std::io",
    "std::net",
    "std::process",
];

#[test]
fn files_are_read_only_where_the_plan_allows_it() {
    assert_none(&words_out_of_place(FILES, |row| row.files));
}
