//! Why a source tree could not be measured.

use std::path::PathBuf;
use thiserror::Error;

/// Why a source tree could not be measured.
#[derive(Debug, Error)]
#[non_exhaustive]
pub enum HouseError {
    /// A file could not be read.
    #[error("{}: {source}", .path.display())]
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system reports.
        source: std::io::Error,
    },
    /// A source file is not valid Rust.
    #[error("{}: not valid Rust: {source}", .path.display())]
    NotRust {
        /// The file.
        path: PathBuf,
        /// What the parser reports.
        source: syn::Error,
    },
    /// A module has no file.
    #[error("{}: no file for module {name}", .path.display())]
    NoFile {
        /// The file that declares the module.
        path: PathBuf,
        /// The module.
        name: String,
    },
    /// The manifests could not be read.
    #[error("the manifests cannot be read: {0}")]
    Manifests(#[from] cargo_metadata::Error),
    /// A lock file is not valid TOML.
    #[error("{}: not a lock file: {source}", .path.display())]
    Lock {
        /// The file.
        path: PathBuf,
        /// What the parser reports.
        source: toml::de::Error,
    },
}

impl HouseError {
    /// Names the file that could not be read.
    pub(super) fn unreadable(path: impl Into<PathBuf>) -> impl FnOnce(std::io::Error) -> Self {
        let path = path.into();
        |source| Self::Unreadable { path, source }
    }
}
