//! The top level holds what was agreed, and nothing else.

use crate::common::{assert_none, repo};
use std::collections::BTreeSet;
use std::process::Command;

const AGREED: &[&str] = &[
    ".cargo",
    ".ci",
    ".gitattributes",
    ".github",
    ".gitignore",
    "Cargo.lock",
    "Cargo.toml",
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "crates",
    "test-meshes",
    "tests",
    "viewer",
];

/// The files that are kept, or none where this is no working copy.
pub fn kept_files() -> Vec<String> {
    let listed = Command::new("git")
        .args(["ls-files", "-z"])
        .current_dir(repo())
        .output();
    let Some(listed) = listed.ok().filter(|listed| listed.status.success()) else {
        return Vec::new();
    };
    let listed = String::from_utf8_lossy(&listed.stdout).into_owned();
    listed
        .split('\0')
        .filter(|path| !path.is_empty())
        .map(str::to_owned)
        .collect()
}

#[test]
fn the_top_level_holds_only_what_was_agreed() {
    let kept = kept_files();
    let entries: BTreeSet<&str> = kept
        .iter()
        .filter_map(|path| path.split('/').next())
        .collect();
    let strange = entries.iter().filter(|entry| !AGREED.contains(entry));
    let strange: Vec<String> = strange
        .map(|e| format!("{e} has no place at the top"))
        .collect();
    assert_none(&strange);
}
