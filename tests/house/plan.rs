//! What each crate may do: the one table of permissions. A crate that is not in
//! it breaks a rule, so every new crate gets a row; a row whose crate does not
//! exist is passed over.

use super::whole::{Crate, House};
use std::collections::BTreeSet;

/// In which files of its sources a crate may do something.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Where {
    /// In none.
    Nowhere,
    /// In those whose path below `src` begins so.
    Only(&'static [&'static str]),
    /// In all.
    Everywhere,
}

impl Where {
    /// Whether this is allowed in a file, whose path is below the crate.
    #[must_use]
    pub fn allows(self, path: &std::path::Path) -> bool {
        match self {
            Self::Nowhere => false,
            Self::Only(files) => {
                let path = path.strip_prefix("src").unwrap_or(path);
                files.iter().any(|file| path.starts_with(file))
            }
            Self::Everywhere => true,
        }
    }
}

/// What a crate may do.
#[derive(Debug, Clone, Copy)]
pub struct Permissions {
    /// Name of its folder.
    pub name: &'static str,
    /// Crates of the house that it stands on; it may use what they stand on too.
    pub stands_on: &'static [&'static str],
    /// Whether it never reaches users. Such a crate may do anything.
    pub is_for_tests: bool,
    /// Where it may print.
    pub prints: Where,
    /// Where it may read or write files.
    pub files: Where,
    /// Where it may know limits, verdicts and findings.
    pub limits: Where,
    /// Where it may use measuring.
    pub measures: Where,
    /// Where it may know JSON.
    pub json: Where,
    /// Where it may know HTML and SVG.
    pub markup: Where,
    /// Where it may know the command line.
    pub command_line: Where,
}

/// A library that computes and does nothing else.
const PURE: Permissions = Permissions {
    name: "",
    stands_on: &[],
    is_for_tests: false,
    prints: Where::Nowhere,
    files: Where::Nowhere,
    limits: Where::Nowhere,
    measures: Where::Everywhere,
    json: Where::Nowhere,
    markup: Where::Nowhere,
    command_line: Where::Nowhere,
};

/// A crate that is never shipped.
const FOR_TESTS: Permissions = Permissions {
    is_for_tests: true,
    ..PURE
};

/// The plan, from the ground up.
pub const PLAN: &[Permissions] = &[
    Permissions {
        name: "mesh",
        files: Where::Everywhere,
        // A reader of scans recognises a web page that was saved in place of one.
        markup: Where::Only(&["read/sniff.rs"]),
        ..PURE
    },
    Permissions {
        name: "messages",
        ..PURE
    },
    Permissions {
        name: "statistics",
        ..PURE
    },
    Permissions {
        name: "geometry",
        stands_on: &["mesh"],
        ..PURE
    },
    Permissions {
        name: "phantom",
        stands_on: &["mesh"],
        // The truth file beside a test mesh.
        json: Where::Everywhere,
        ..PURE
    },
    Permissions {
        name: "measure",
        stands_on: &["geometry", "messages"],
        ..PURE
    },
    Permissions {
        name: "judge",
        stands_on: &["measure"],
        // One reader serves case files, protocols and artefacts; what the system says of a file
        // is put into words beside it.
        files: Where::Only(&["located.rs", "system.rs"]),
        limits: Where::Everywhere,
        ..PURE
    },
    Permissions {
        name: "check",
        stands_on: &["judge"],
        files: Where::Everywhere,
        limits: Where::Everywhere,
        ..PURE
    },
    Permissions {
        name: "study",
        stands_on: &["check", "statistics"],
        files: Where::Everywhere,
        limits: Where::Everywhere,
        ..PURE
    },
    Permissions {
        name: "report",
        stands_on: &["study"],
        files: Where::Everywhere,
        limits: Where::Everywhere,
        json: Where::Everywhere,
        markup: Where::Everywhere,
        ..PURE
    },
    Permissions {
        name: "batch",
        stands_on: &["report"],
        files: Where::Everywhere,
        limits: Where::Everywhere,
        ..PURE
    },
    Permissions {
        name: "arguments",
        stands_on: &["check"],
        limits: Where::Everywhere,
        command_line: Where::Everywhere,
        ..PURE
    },
    Permissions {
        name: "cli",
        // Phantoms for the demo command alone.
        stands_on: &["batch", "arguments", "phantom"],
        prints: Where::Everywhere,
        files: Where::Everywhere,
        limits: Where::Everywhere,
        command_line: Where::Everywhere,
        ..PURE
    },
    Permissions {
        name: "viewer",
        stands_on: &["batch", "arguments"],
        prints: Where::Everywhere,
        files: Where::Everywhere,
        limits: Where::Everywhere,
        // It cuts a plane and has cases checked; it computes no figure.
        measures: Where::Only(&["landmarks.rs", "opened.rs", "section.rs"]),
        command_line: Where::Everywhere,
        ..PURE
    },
    Permissions {
        name: "benches",
        ..FOR_TESTS
    },
    Permissions {
        name: "features",
        ..FOR_TESTS
    },
    Permissions {
        name: "fixtures",
        ..FOR_TESTS
    },
    Permissions {
        name: "promises",
        ..FOR_TESTS
    },
    Permissions {
        name: "tests",
        ..FOR_TESTS
    },
];

/// Crates that the tests of any crate may use.
const FOR_ANY_TEST: &[&str] = &["features", "fixtures", "phantom"];

/// What a crate may do, if the plan knows it.
#[must_use]
pub fn permissions_of(name: &str) -> Option<&'static Permissions> {
    PLAN.iter().find(|row| row.name == name)
}

/// The crates of the house that a crate may use.
#[must_use]
pub fn may_use(name: &str) -> BTreeSet<&'static str> {
    let mut found = BTreeSet::new();
    let mut waiting: Vec<&str> = permissions_of(name)
        .map_or(&[][..], |row| row.stands_on)
        .to_vec();
    while let Some(next) = waiting.pop() {
        if found.insert(next) {
            waiting.extend(permissions_of(next).map_or(&[][..], |row| row.stands_on));
        }
    }
    found
}

/// An arrow between two crates that the plan does not have.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WrongArrow {
    /// The crate that depends.
    pub from: String,
    /// The crate that it must not depend on.
    pub to: String,
    /// Whether only its tests do.
    pub is_for_tests: bool,
}

/// The arrows that the plan does not have.
#[must_use]
pub fn wrong_arrows(house: &House) -> Vec<WrongArrow> {
    house.crates.iter().flat_map(wrong_arrows_of).collect()
}

fn wrong_arrows_of(room: &Crate) -> Vec<WrongArrow> {
    if permissions_of(&room.name).is_some_and(|row| row.is_for_tests) {
        return Vec::new();
    }
    let allowed = may_use(&room.name);
    let wrong = |to: &String, is_for_tests: bool| WrongArrow {
        from: room.name.clone(),
        to: to.clone(),
        is_for_tests,
    };
    let shipped = room
        .needs
        .iter()
        .filter(|to| !allowed.contains(to.as_str()));
    let for_tests = room
        .tests_need
        .iter()
        .filter(|to| !allowed.contains(to.as_str()) && !FOR_ANY_TEST.contains(&to.as_str()));
    shipped
        .map(|to| wrong(to, false))
        .chain(for_tests.map(|to| wrong(to, true)))
        .collect()
}
