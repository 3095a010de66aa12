//! The command, run in a folder of its own.

use assert_cmd::Command;
use std::path::Path;

/// The command, to be run in `folder`.
pub fn archproof(folder: &Path) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_archproof"));
    command.current_dir(folder).env_remove("NO_COLOR");
    command
}

/// What a run came to.
pub struct Outcome {
    pub code: Option<i32>,
    pub out: String,
    pub complaint: String,
}

/// Runs the command with these arguments.
pub fn run(folder: &Path, arguments: &[&str]) -> Outcome {
    let output = archproof(folder)
        .args(arguments)
        .output()
        .expect("the command starts");
    Outcome {
        code: output.status.code(),
        out: String::from_utf8(output.stdout).expect("output is UTF-8"),
        complaint: String::from_utf8(output.stderr).expect("complaints are UTF-8"),
    }
}
