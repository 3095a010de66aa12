//! Packages as the lock file lists them: for every system, without asking the
//! network.

use super::crates::Manifest;
use super::fault::HouseError;
use serde::Deserialize;
use std::collections::BTreeSet;
use std::path::Path;

#[derive(Deserialize)]
struct Lock {
    package: Vec<Locked>,
}

#[derive(Deserialize)]
struct Locked {
    name: String,
    version: String,
    #[serde(default)]
    dependencies: Vec<String>,
}

fn read(path: &Path) -> Result<Vec<Locked>, HouseError> {
    let text = std::fs::read_to_string(path).map_err(HouseError::unreadable(path))?;
    let lock: Lock = toml::from_str(&text).map_err(|source| HouseError::Lock {
        path: path.to_owned(),
        source,
    })?;
    Ok(lock.package)
}

/// The names of all packages in a lock file.
///
/// # Errors
/// When the file cannot be read or is no lock file.
pub fn packages_in(path: &Path) -> Result<Vec<String>, HouseError> {
    Ok(read(path)?
        .into_iter()
        .map(|package| package.name)
        .collect())
}

/// The packages, as name and version, that a crate of the house needs to be
/// built for its users, with itself. Dependencies of tests are left out.
pub(super) fn needed_by(
    package: &str,
    manifests: &[Manifest],
    lock: &Path,
) -> Result<BTreeSet<String>, HouseError> {
    let locked = read(lock)?;
    let mut needed = BTreeSet::new();
    let mut waiting = vec![package.to_owned()];
    while let Some(wanted) = waiting.pop() {
        // An entry gives the version only where there are several.
        let mut words = wanted.split(' ');
        let (name, version) = (words.next().unwrap_or_default(), words.next());
        let Some(found) = locked
            .iter()
            .find(|p| p.name == name && version.is_none_or(|v| p.version == v))
        else {
            continue;
        };
        if !needed.insert(format!("{} {}", found.name, found.version)) {
            continue;
        }
        let own = manifests.iter().find(|m| m.package == name);
        let is_shipped = |entry: &&String| {
            own.is_none_or(|own| {
                let entry = entry.split(' ').next().unwrap_or_default();
                let stated = |d: &&super::crates::Dependency| !d.is_for_tests && d.package == entry;
                own.dependencies.iter().any(|d| stated(&d))
            })
        };
        waiting.extend(found.dependencies.iter().filter(is_shipped).cloned());
    }
    Ok(needed)
}
