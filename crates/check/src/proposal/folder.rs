//! Where scans lie and where the case file goes.

use crate::reader::not_written;
use judge::system_says;
use mesh::read::shown_path;
use messages::{Message, message};
use std::io;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Name of the case file that is proposed.
pub const CASE_FILE: &str = "case.toml";
/// Endings of the files that are scans.
const ENDINGS: [&str; 3] = ["stl", "ply", "obj"];
/// A folder with this file in it holds results, whose maps are no scans.
const RESULT_FILE: &str = "result.json";

/// Why no case can be proposed for a folder; its text is one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum ProposalError {
    /// The folder cannot be looked into.
    Folder {
        /// The folder.
        folder: PathBuf,
        /// Why.
        source: io::Error,
    },
    /// There is no scan.
    NoScans(PathBuf),
    /// There is a case file already.
    InTheWay(PathBuf),
    /// The case file cannot be written.
    Write(#[from] mesh::write::WriteError),
}

impl ProposalError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Folder { folder, source } => message!(
                "proposal-folder",
                path = shown_path(folder),
                reason = system_says(source)
            ),
            Self::NoScans(folder) => message!("proposal-no-scans", path = shown_path(folder)),
            Self::InTheWay(file) => message!("proposal-in-the-way", path = shown_path(file)),
            Self::Write(error) => not_written(error),
        }
    }
}

/// Whether a file's ending is that of a scan.
#[must_use]
pub fn is_scan(path: &Path) -> bool {
    path.extension().is_some_and(|ending| {
        let mut known = ENDINGS.iter();
        known.any(|known| ending.eq_ignore_ascii_case(known))
    })
}

/// The scans in a folder, not below it, in the order of their names.
///
/// # Errors
/// When the folder cannot be looked into.
pub fn scans_in(folder: &Path) -> Result<Vec<PathBuf>, ProposalError> {
    let mut scans = entries(folder)?;
    scans.retain(|path| is_scan(path) && path.is_file());
    Ok(scans)
}

/// The folders for which a case can be proposed: the folder itself where scans
/// lie in it, else each folder in it that holds scans and no results.
///
/// # Errors
/// When the folder cannot be looked into, or holds no scan.
pub fn case_folders(folder: &Path) -> Result<Vec<PathBuf>, ProposalError> {
    if !scans_in(folder)?.is_empty() {
        return Ok(vec![folder.to_owned()]);
    }
    let mut found = Vec::new();
    for below in entries(folder)?.into_iter().filter(|path| path.is_dir()) {
        let holds_results = below.join(RESULT_FILE).exists();
        if !holds_results && !scans_in(&below)?.is_empty() {
            found.push(below);
        }
    }
    if found.is_empty() {
        return Err(ProposalError::NoScans(folder.to_owned()));
    }
    Ok(found)
}

fn entries(folder: &Path) -> Result<Vec<PathBuf>, ProposalError> {
    let failed = |source| ProposalError::Folder {
        folder: folder.to_owned(),
        source,
    };
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(failed)? {
        found.push(entry.map_err(failed)?.path());
    }
    found.sort();
    Ok(found)
}

/// Writes the case file of a folder under a temporary name and renames it.
///
/// # Errors
/// When there is one already and it is not to be replaced, or it cannot be written.
pub fn write_case(folder: &Path, text: &str, replace: bool) -> Result<PathBuf, ProposalError> {
    let path = folder.join(CASE_FILE);
    if !replace && path.exists() {
        return Err(ProposalError::InTheWay(path));
    }
    mesh::write::write_atomically(&path, |out| out.write_all(text.as_bytes()))?;
    Ok(path)
}

/// Writes a case file into a folder under the first name that is free, or finds
/// the one that says the same.
///
/// # Errors
/// When it cannot be written.
pub fn write_another_case(folder: &Path, text: &str) -> Result<PathBuf, ProposalError> {
    let numbered = (2_u32..).map(|number| format!("case-{number}.toml"));
    let names = std::iter::once(CASE_FILE.to_owned()).chain(numbered);
    for path in names.map(|name| folder.join(name)) {
        match mesh::read::settings_text(&path) {
            Ok(there) if there == text => return Ok(path),
            Err(error) if error.kind() == io::ErrorKind::NotFound => {
                mesh::write::write_atomically(&path, |out| out.write_all(text.as_bytes()))?;
                return Ok(path);
            }
            _ => {}
        }
    }
    Err(ProposalError::InTheWay(folder.join(CASE_FILE)))
}
