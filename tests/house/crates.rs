//! The crates of the house and what their manifests say.

use super::fault::HouseError;
use cargo_metadata::{DependencyKind, MetadataCommand, Package};
use std::path::{Path, PathBuf};

/// A dependency as a manifest states it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Dependency {
    /// Name of the package.
    pub package: String,
    /// Whether only tests, examples and benches use it.
    pub is_for_tests: bool,
}

/// What the manifest of a crate says.
#[derive(Debug, Clone)]
pub(super) struct Manifest {
    /// Name of the folder, by which the crate is known in the house.
    pub name: String,
    /// Name of the package.
    pub package: String,
    /// Its folder.
    pub folder: PathBuf,
    /// Its dependencies.
    pub dependencies: Vec<Dependency>,
}

/// The manifests of the workspace.
pub(super) fn manifests(repo: &Path) -> Result<Vec<Manifest>, HouseError> {
    let metadata = MetadataCommand::new()
        .manifest_path(repo.join("Cargo.toml"))
        .no_deps()
        .exec()?;
    let mut found: Vec<Manifest> = metadata.packages.iter().map(manifest_of).collect();
    found.sort_by(|a, b| a.name.cmp(&b.name));
    Ok(found)
}

fn manifest_of(package: &Package) -> Manifest {
    let folder = package.manifest_path.parent();
    Manifest {
        name: folder
            .and_then(|folder| folder.file_name())
            .unwrap_or_default()
            .to_owned(),
        package: package.name.to_string(),
        folder: folder
            .map(|f| f.as_std_path().to_owned())
            .unwrap_or_default(),
        dependencies: package
            .dependencies
            .iter()
            .map(|dependency| Dependency {
                package: dependency.name.clone(),
                is_for_tests: dependency.kind == DependencyKind::Development,
            })
            .collect(),
    }
}
