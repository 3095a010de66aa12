//! Only the commands know the command line.

use crate::common::{assert_none, packages_out_of_place};

#[test]
fn only_commands_know_the_command_line() {
    assert_none(&packages_out_of_place(&["clap"], |row| row.command_line));
}
