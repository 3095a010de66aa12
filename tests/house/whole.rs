//! The whole house, read from its sources.

use super::circles::{Circle, circles};
use super::crates::{Dependency, manifests};
use super::fault::HouseError;
use super::imports::{Import, imports_in};
use super::lock::needed_by;
use super::modules::{File, Tree};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// The package that users run.
const SHIPPED: &str = "archproof";

/// A crate.
#[derive(Debug, Clone)]
pub struct Crate {
    /// Name of its folder, by which the plan knows it.
    pub name: String,
    /// Its folder, below the house's.
    pub folder: PathBuf,
    /// Its dependencies, those of tests among them.
    pub dependencies: Vec<Dependency>,
    /// Names of the crates of the house that it needs outside tests.
    pub needs: Vec<String>,
    /// Names of the crates of the house that only its tests need.
    pub tests_need: Vec<String>,
    /// Its sources.
    pub files: Vec<File>,
    /// What its files import from each other.
    pub imports: Vec<Import>,
}

impl Crate {
    /// The circles of its files.
    #[must_use]
    pub fn circles(&self) -> Vec<Circle> {
        circles(&self.imports)
    }

    /// Path of a file below the house's folder.
    #[must_use]
    pub fn path(&self, file: usize) -> PathBuf {
        self.folder.join(&self.files[file].path)
    }
}

/// The house.
#[derive(Debug, Clone)]
pub struct House {
    /// Its crates, by name.
    pub crates: Vec<Crate>,
    /// Packages of the command that users run, itself among them, on every system.
    pub shipped: BTreeSet<String>,
}

impl House {
    /// Reads the house in a folder.
    ///
    /// # Errors
    /// When a manifest, the lock file or a source cannot be read.
    pub fn read(repo: &Path) -> Result<Self, HouseError> {
        let repo = &repo.canonicalize().map_err(HouseError::unreadable(repo))?;
        let manifests = manifests(repo)?;
        let name_of = |package: &str| {
            let found = manifests.iter().find(|m| m.package == package)?;
            Some(found.name.clone())
        };
        let mut crates = Vec::new();
        for manifest in &manifests {
            let tree = Tree::read(&manifest.folder)?;
            let own = |for_tests: bool| {
                let wanted = manifest.dependencies.iter();
                let wanted = wanted.filter(|d| d.is_for_tests == for_tests);
                wanted.filter_map(|d| name_of(&d.package)).collect()
            };
            crates.push(Crate {
                name: manifest.name.clone(),
                folder: manifest
                    .folder
                    .strip_prefix(repo)
                    .unwrap_or(&manifest.folder)
                    .to_owned(),
                dependencies: manifest.dependencies.clone(),
                needs: own(false),
                tests_need: own(true),
                imports: imports_in(&tree),
                files: tree.files,
            });
        }
        let shipped = needed_by(SHIPPED, &manifests, &repo.join("Cargo.lock"))?;
        Ok(Self { crates, shipped })
    }
}
