//! Command and window are built from one set of libraries.

use crate::common::{assert_none, repo};
use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

/// What the window stands on.
const SHARED: &[&str] = &[
    "-p=archproof-arguments",
    "-p=archproof-batch",
    "-p=archproof-phantom",
];

#[test]
fn one_set_of_libraries() {
    let (of_command, of_window) = (
        features(&[], "normal,dev"),
        features(&["-p=archproof-viewer"], "normal,dev"),
    );
    let mut missing = Vec::new();
    for package in features(SHARED, "normal").into_keys() {
        let (Some(here), Some(there)) = (of_command.get(&package), of_window.get(&package)) else {
            continue;
        };
        missing.extend(
            there
                .difference(here)
                .map(|set| format!("{package}: {set} in the window, {here:?} else")),
        );
    }
    assert_none(&missing);
}

/// The sets of features with which each package is built.
fn features(selected: &[&str], edges: &str) -> BTreeMap<String, BTreeSet<String>> {
    let out = Command::new(env!("CARGO"))
        .args([
            "tree",
            "--locked",
            "--prefix=none",
            "--format={p}|{f}",
            "--edges",
            edges,
        ])
        .args(selected)
        .current_dir(repo())
        .output()
        .unwrap();
    assert!(
        out.status.success(),
        "{}",
        String::from_utf8_lossy(&out.stderr)
    );
    let mut found = BTreeMap::<String, BTreeSet<String>>::new();
    for line in String::from_utf8(out.stdout).unwrap().lines() {
        if let Some((package, set)) = line.trim_end_matches(" (*)").split_once('|') {
            found
                .entry(package.to_owned())
                .or_default()
                .insert(set.to_owned());
        }
    }
    found
}
