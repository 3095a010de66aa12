//! `archproof view` where there is no viewer.

#![allow(clippy::unwrap_used, reason = "tests")]

use assert_cmd::Command;

#[test]
fn without_the_viewer_it_says_in_one_line_how_to_get_it() {
    // A copy, so that no viewer that was built stands beside it.
    let folder = tempfile::tempdir().unwrap();
    let program = folder.path().join("archproof");
    std::fs::copy(env!("CARGO_BIN_EXE_archproof"), &program).unwrap();
    let run = Command::new(&program)
        .args(["view", "anything"])
        .env("PATH", folder.path())
        .assert()
        .code(2);
    let said = String::from_utf8(run.get_output().stderr.clone()).unwrap();
    assert_eq!(said.trim_end().lines().count(), 1, "{said}");
    assert!(
        said.contains("cargo install --path viewer --locked"),
        "{said}"
    );
}
