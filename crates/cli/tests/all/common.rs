//! The command, run in a folder of its own.
#![allow(clippy::unwrap_used)]

use assert_cmd::Command;
use std::ffi::OsString;
use std::fs;
use std::path::Path;
use std::sync::LazyLock;
use tempfile::TempDir;

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

/// The files of the demonstration, made once for all tests.
static DEMONSTRATION: LazyLock<Vec<(OsString, Vec<u8>)>> = LazyLock::new(|| {
    let folder = tempfile::tempdir().unwrap();
    let outcome = run(folder.path(), &["demo", "."]);
    assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
    fs::read_dir(folder.path())
        .unwrap()
        .map(|entry| entry.unwrap())
        .map(|entry| (entry.file_name(), fs::read(entry.path()).unwrap()))
        .collect()
});

/// A folder with the first pass of the demonstration in it.
pub fn demonstration() -> TempDir {
    demonstration_files(&|name| {
        ["first-pass.toml", "upper-first.ply", "upper-tray.stl"].contains(&name)
    })
}

/// A folder with those files of the demonstration whose names are wanted.
pub fn demonstration_files(wanted: &dyn Fn(&str) -> bool) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let is_wanted = |name: &OsString| name.to_str().is_some_and(wanted);
    for (name, bytes) in DEMONSTRATION.iter().filter(|(name, _)| is_wanted(name)) {
        fs::write(folder.path().join(name), bytes).unwrap();
    }
    folder
}
