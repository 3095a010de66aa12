//! `archproof view` where there is no viewer.

#![allow(clippy::unwrap_used, reason = "tests")]

use crate::common::archproof;

#[test]
fn without_the_viewer_it_says_in_one_line_how_to_get_it() {
    let folder = tempfile::tempdir().unwrap();
    let run = archproof(folder.path())
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
