//! Kept results of a check standard, in order of time.

use crate::result::{CaseResult, TimeSource};
use crate::studies::comparable::comparable_figures;
use judge::system_says;
use mesh::read::shown_path;
use messages::{Message, message};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::io;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Folders below each other that are looked through.
const DEPTH: usize = 6;

/// Why a check standard could not be judged; its text is one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum ControlError {
    /// The folder cannot be read.
    Unreadable {
        /// The folder or file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// It holds none.
    None(PathBuf),
    /// It holds results of different things.
    Mixed {
        /// The result.
        path: PathBuf,
        /// What it is of.
        found: Standard,
        /// What those before it are of.
        wanted: Standard,
    },
    /// A result does not say when it was measured.
    NoTime(PathBuf),
}

impl ControlError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Unreadable { path, source } => message!(
                "control-unreadable",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::None(path) => message!("control-none", path = shown_path(path)),
            Self::Mixed {
                path,
                found,
                wanted,
            } => message!(
                "control-mixed",
                path = shown_path(path),
                found = found.message(),
                wanted = wanted.message()
            ),
            Self::NoTime(path) => message!("control-no-time", path = shown_path(path)),
        }
    }
}

/// What is measured again and again.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Standard {
    /// An impression.
    Impression,
    /// A reference artefact, by its name.
    Artefact(String),
}

impl Standard {
    /// In words, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Impression => message!("control-impression"),
            Self::Artefact(name) => message!("control-artefact", name = name.as_str()),
        }
    }
}

/// A measurement: when, and its figures with their units.
pub(super) struct Measurement {
    pub(super) at: String,
    pub(super) at_by: TimeSource,
    path: PathBuf,
    pub(super) figures: BTreeMap<String, (String, f64)>,
}

/// What the results in a folder, and in folders below it, are of, and its measurements in
/// order of time.
pub(super) fn measurements_in(folder: &Path) -> Result<(Standard, Vec<Measurement>), ControlError> {
    let mut files = Vec::new();
    look_through(folder, 0, &mut files)?;
    files.sort();
    let mut standard: Option<Standard> = None;
    let mut all: Vec<Measurement> = Vec::new();
    for path in files {
        let Some((of, measurements)) = read(&path)? else {
            continue;
        };
        let wanted = standard.get_or_insert_with(|| of.clone());
        if *wanted != of {
            let wanted = wanted.clone();
            return Err(ControlError::Mixed {
                path,
                found: of,
                wanted,
            });
        }
        all.extend(measurements);
    }
    let standard = standard.ok_or_else(|| ControlError::None(folder.to_owned()))?;
    all.sort_by(|a, b| (&a.at, &a.path).cmp(&(&b.at, &b.path)));
    Ok((standard, all))
}

fn look_through(folder: &Path, depth: usize, files: &mut Vec<PathBuf>) -> Result<(), ControlError> {
    let unreadable = |source| ControlError::Unreadable {
        path: folder.to_owned(),
        source,
    };
    for entry in std::fs::read_dir(folder).map_err(unreadable)? {
        let path = entry.map_err(unreadable)?.path();
        let is_hidden = path
            .file_name()
            .is_some_and(|name| name.to_string_lossy().starts_with('.'));
        if path.is_dir() && !is_hidden && depth < DEPTH {
            look_through(&path, depth + 1, files)?;
        } else if path.extension().is_some_and(|ending| ending == "json") {
            files.push(path);
        }
    }
    Ok(())
}

/// As much of the JSON of an artefact check as is charted.
#[derive(Deserialize)]
struct KeptArtefact {
    artefact: String,
    scans: Vec<KeptScan>,
    sizes: Vec<KeptSize>,
}

#[derive(Deserialize)]
struct KeptScan {
    changed_at: Option<String>,
}

#[derive(Deserialize)]
struct KeptSize {
    quantity: String,
    of: Vec<String>,
    readings: Vec<KeptReading>,
}

#[derive(Deserialize)]
struct KeptReading {
    error_mm: f64,
}

/// What a file is of and its measurements; `None` of any other JSON.
fn read(path: &Path) -> Result<Option<(Standard, Vec<Measurement>)>, ControlError> {
    let bytes = mesh::read::bounded(path, mesh::read::MAX_TABLE_BYTES).map_err(|source| {
        ControlError::Unreadable {
            path: path.to_owned(),
            source,
        }
    })?;
    let Ok(value) = serde_json::from_slice::<serde_json::Value>(&bytes) else {
        return Ok(None);
    };
    let schema = value
        .get("schema")
        .and_then(serde_json::Value::as_str)
        .map(str::to_owned);
    match schema.as_deref() {
        Some("archproof-result/1") => {
            let Ok(result) = serde_json::from_value::<CaseResult>(value) else {
                return Ok(None);
            };
            let one = of_case(&result, path)?;
            Ok(Some((Standard::Impression, vec![one])))
        }
        Some("archproof-artefact/1") => {
            let Ok(kept) = serde_json::from_value::<KeptArtefact>(value) else {
                return Ok(None);
            };
            let measurements = of_artefact(&kept, path)?;
            Ok(Some((Standard::Artefact(kept.artefact), measurements)))
        }
        _ => Ok(None),
    }
}

fn of_case(result: &CaseResult, path: &Path) -> Result<Measurement, ControlError> {
    let times = result.times.as_ref();
    let changed = times.and_then(|times| times.scans_changed_at.iter().flatten().min());
    let checked = times.map(|times| (times.checked_at.clone(), TimeSource::Check));
    let at = result.scanned(changed).or(checked);
    let (at, at_by) = at.ok_or_else(|| ControlError::NoTime(path.to_owned()))?;
    let figures = comparable_figures(result).into_iter();
    Ok(Measurement {
        at,
        at_by,
        path: path.to_owned(),
        figures: figures
            .map(|f| (f.name, (f.unit.to_owned(), f.value)))
            .collect(),
    })
}

fn of_artefact(kept: &KeptArtefact, path: &Path) -> Result<Vec<Measurement>, ControlError> {
    let scans = kept.scans.iter().enumerate();
    scans
        .map(|(number, scan)| {
            let at = scan.changed_at.clone();
            let sizes = kept.sizes.iter().filter_map(|size| {
                let reading = size.readings.get(number)?;
                let name = format!("error of {} {}", size.quantity, size.of.join(" to "));
                Some((name, ("mm".to_owned(), reading.error_mm)))
            });
            Ok(Measurement {
                at: at.ok_or_else(|| ControlError::NoTime(path.to_owned()))?,
                at_by: TimeSource::ScanFile,
                path: path.to_owned(),
                figures: sizes.collect(),
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_kept_result_too_large_to_be_one_is_refused_unread() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("result.json");
        let file = std::fs::File::create(&path).unwrap();
        file.set_len(mesh::read::MAX_TABLE_BYTES + 1).unwrap();
        let why = read(&path).err().unwrap().to_string();
        assert!(why.contains("larger than 256 MiB"), "{why}");
    }
}
