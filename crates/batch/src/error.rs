//! Why a folder of cases could not be worked through.

use crate::pattern::PatternError;
use judge::system_says;
use mesh::read::shown_path;
use messages::{Message, message};
use report::folder::TableError;
use std::io;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Why a folder of cases could not be worked through; one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum BatchError {
    /// The folder of cases cannot be looked through.
    Folder {
        /// The folder.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// There is nothing in it to check.
    NoCases(PathBuf),
    /// A pattern cannot be used.
    Pattern(#[from] PatternError),
    /// The result folder cannot be written to.
    Write {
        /// File or folder.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// Another run writes there.
    InUse(PathBuf),
    /// Results would go where they are made from.
    IntoItself(PathBuf),
    /// There are results already.
    InTheWay(PathBuf),
    /// Results to be joined are not whole.
    Unfinished(PathBuf),
    /// There is nothing to judge again.
    NoResults(PathBuf),
    /// There is no baseline.
    Baseline(#[from] report::folder::BaselineError),
    /// A result cannot be judged again.
    Result(#[from] report::ReadResultError),
    /// Shards to be joined do not belong together.
    Unlike(PathBuf),
    /// One shard given twice.
    Twice {
        /// The folder.
        path: PathBuf,
        /// Its number.
        shard: u64,
    },
    /// Shards are missing.
    Missing(String),
    /// The tables cannot be made.
    Tables(#[from] TableError),
    /// The threads could not be started.
    Threads(#[from] rayon::ThreadPoolBuildError),
}

impl BatchError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Folder { path, source } => message!(
                "batch-folder",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::NoCases(path) => message!("batch-no-cases", path = shown_path(path)),
            Self::Pattern(PatternError::OneStar) => message!("batch-pattern"),
            Self::Write { path, source } => message!(
                "batch-unwritten",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::InUse(path) => message!("batch-in-use", path = shown_path(path)),
            Self::IntoItself(path) => message!("batch-into-itself", path = shown_path(path)),
            Self::InTheWay(path) => message!("batch-in-the-way", path = shown_path(path)),
            Self::Unfinished(path) => message!("batch-unfinished", path = shown_path(path)),
            Self::NoResults(path) => message!("batch-no-results", path = shown_path(path)),
            Self::Baseline(error) => error.message(),
            Self::Result(error) => error.message(),
            Self::Unlike(path) => message!("batch-unlike", path = shown_path(path)),
            Self::Twice { path, shard } => message!(
                "batch-shard-twice",
                path = shown_path(path),
                shard = shard.to_string()
            ),
            Self::Missing(shards) => message!("batch-shards-missing", shards = shards.as_str()),
            Self::Tables(error) => error.message(),
            Self::Threads(error) => message!("no-threads", reason = error.to_string()),
        }
    }

    pub(crate) fn write(path: &Path) -> impl FnOnce(io::Error) -> Self {
        |source| Self::Write {
            path: path.to_owned(),
            source,
        }
    }
}
