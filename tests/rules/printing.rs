//! Libraries never print.

use crate::common::{assert_none, words_out_of_place};

const PRINTING: &[&str] = &[
    "print!",
    "println!",
    "eprint!",
    "eprintln!",
    "dbg!",
    "stdout(",
    "stderr(",
];

#[test]
fn libraries_never_print() {
    assert_none(&words_out_of_place(PRINTING, |row| row.prints));
}
