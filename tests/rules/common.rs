//! The house, read once, and a search of its code.

use archproof_tests::house::plan::{PLAN, Permissions, Where};
use archproof_tests::house::{House, holds_word};
use std::path::PathBuf;
use std::sync::LazyLock;

/// The house that these tests belong to.
pub static HOUSE: LazyLock<House> = LazyLock::new(|| House::read(&repo()).unwrap());

/// The folder of the house.
pub fn repo() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// Lines of shipped code that hold one of these words where the plan does not
/// allow it.
pub fn words_out_of_place(words: &[&str], allowed: impl Fn(&Permissions) -> Where) -> Vec<String> {
    lines_out_of_place(allowed, |line| {
        words.iter().any(|word| holds_word(line, word))
    })
}

/// Lines of shipped code that are wanted nowhere, but where the plan allows it.
pub fn lines_out_of_place(
    allowed: impl Fn(&Permissions) -> Where,
    is_meant: impl Fn(&str) -> bool,
) -> Vec<String> {
    let mut found = Vec::new();
    for row in PLAN.iter().filter(|row| !row.is_for_tests) {
        let allowed = allowed(row);
        for room in HOUSE.crates.iter().filter(|room| room.name == row.name) {
            for (number, file) in room.files.iter().enumerate() {
                if allowed.allows(&file.path) {
                    continue;
                }
                let path = room.path(number);
                let lines = file.code.iter().filter(|line| is_meant(&line.text));
                found.extend(lines.map(|line| {
                    let text = line.text.trim();
                    format!("{}:{}: {text}", path.display(), line.number)
                }));
            }
        }
    }
    found
}

/// Crates that depend outside tests on one of these packages and may not.
pub fn packages_out_of_place(
    packages: &[&str],
    allowed: impl Fn(&Permissions) -> Where,
) -> Vec<String> {
    let mut found = Vec::new();
    for row in PLAN.iter().filter(|row| !row.is_for_tests) {
        for room in HOUSE.crates.iter().filter(|room| room.name == row.name) {
            let used = room.dependencies.iter();
            let used = used.filter(|d| !d.is_for_tests && packages.contains(&d.package.as_str()));
            if allowed(row) != Where::Everywhere {
                found.extend(used.map(|d| format!("{} depends on {}", room.name, d.package)));
            }
        }
    }
    found
}

/// Fails with what was found, one a line.
#[track_caller]
pub fn assert_none(found: &[String]) {
    assert!(found.is_empty(), "\n{}", found.join("\n"));
}
