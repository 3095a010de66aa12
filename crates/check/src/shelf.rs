//! The shelf: the empty stock trays of a clinic, each scanned once.

use crate::load::{LoadedScan, load};
use crate::proposal::{ProposalError, scans_in};
use crate::reader::refused;
use judge::system_says;
use measure::{ChosenTray, PreparedTray, ShelfTray, TrayTrial};
use mesh::ReadError;
use mesh::read::shown_path;
use messages::{Message, message};
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::fmt;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::SystemTime;
use thiserror::Error;

/// Why a shelf cannot be used; its text is one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum ShelfError {
    /// The folder cannot be looked into.
    Folder {
        /// The folder.
        folder: PathBuf,
        /// Why.
        source: std::io::Error,
    },
    /// There is no scan in it.
    NoTrays(PathBuf),
    /// One tray is there twice.
    Same {
        /// The folder.
        folder: PathBuf,
        /// Names of the two files.
        same: [String; 2],
    },
    /// A scan in it is that of an impression of the case.
    Impression(PathBuf),
    /// A scan in it cannot be read.
    Scan(ReadError),
}

impl ShelfError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Folder { folder, source } => message!(
                "shelf-folder",
                path = shown_path(folder),
                reason = system_says(source)
            ),
            Self::NoTrays(folder) => message!("shelf-no-trays", path = shown_path(folder)),
            Self::Same { folder, same } => message!(
                "shelf-same",
                path = shown_path(folder),
                one = shown_path(Path::new(&same[0])),
                other = shown_path(Path::new(&same[1]))
            ),
            Self::Impression(file) => message!("shelf-impression", path = shown_path(file)),
            Self::Scan(error) => message!("shelf-scan", refused = refused(error)),
        }
    }

    /// Whether it may be otherwise another time.
    #[must_use]
    pub fn may_pass(&self) -> bool {
        match self {
            Self::Scan(error) => error.may_pass(),
            Self::Folder { .. } => true,
            Self::NoTrays(_) | Self::Same { .. } | Self::Impression(_) => false,
        }
    }
}

/// The empty stock trays, ready to be placed.
pub struct Shelf {
    trays: Vec<ShelfTray>,
    files: Vec<PathBuf>,
    scans: Vec<Arc<LoadedScan>>,
}

impl fmt::Debug for Shelf {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Shelf").field(&self.files).finish()
    }
}

impl Shelf {
    /// Reads every scan in a folder, and makes it ready.
    ///
    /// # Errors
    /// When the folder holds none, one of them cannot be read, or two are the same.
    pub fn open(folder: &Path) -> Result<Self, ShelfError> {
        Self::of_files(folder, files_in(folder)?)
    }

    fn of_files(folder: &Path, files: Vec<PathBuf>) -> Result<Self, ShelfError> {
        let read: Vec<_> = (files.par_iter())
            .map(|file| {
                let scan = load(file, None)?;
                let name = file.file_stem().unwrap_or_default().to_string_lossy();
                let tray = ShelfTray {
                    name: shown_path(Path::new(name.as_ref())),
                    scan: PreparedTray::of(&scan.mesh),
                };
                Ok((tray, Arc::new(scan)))
            })
            .collect();
        let read: Result<Vec<_>, ReadError> = read.into_iter().collect();
        let (trays, scans): (Vec<_>, Vec<_>) = read.map_err(ShelfError::Scan)?.into_iter().unzip();
        let shelf = Self {
            trays,
            files,
            scans,
        };
        match shelf.same() {
            Some(same) => Err(ShelfError::Same {
                folder: folder.to_owned(),
                same,
            }),
            None => Ok(shelf),
        }
    }

    /// Names of two files that hold the same scan.
    fn same(&self) -> Option<[String; 2]> {
        let mut seen: BTreeMap<&str, usize> = BTreeMap::new();
        (0..self.scans.len()).find_map(|number| {
            let earlier = seen.insert(&self.scans[number].sha256, number)?;
            Some([earlier, number].map(|number| {
                let name = self.files[number].file_name().unwrap_or_default();
                name.to_string_lossy().into_owned()
            }))
        })
    }

    /// The trays, in the order of their files' names.
    #[must_use]
    pub fn trays(&self) -> &[ShelfTray] {
        &self.trays
    }

    /// The scan of one of them.
    #[must_use]
    pub fn scan(&self, tray: usize) -> &Arc<LoadedScan> {
        &self.scans[tray]
    }

    /// # Errors
    /// When a scan of the case lies on the shelf, too.
    pub(crate) fn apart_from<'a>(
        &self,
        mut scans: impl Iterator<Item = &'a LoadedScan>,
    ) -> Result<(), ShelfError> {
        let on_shelf = scans.find_map(|scan| {
            let is_it = |tray: &Arc<LoadedScan>| tray.sha256 == scan.sha256;
            self.scans.iter().position(is_it)
        });
        match on_shelf {
            Some(tray) => Err(ShelfError::Impression(self.files[tray].clone())),
            None => Ok(()),
        }
    }
}

fn files_in(folder: &Path) -> Result<Vec<PathBuf>, ShelfError> {
    let files = scans_in(folder).map_err(|error| match error {
        ProposalError::Folder { folder, source } => ShelfError::Folder { folder, source },
        _ => ShelfError::NoTrays(folder.to_owned()),
    })?;
    if files.is_empty() {
        return Err(ShelfError::NoTrays(folder.to_owned()));
    }
    Ok(files)
}

/// Shelves that were opened, kept for the next case for as long as their files stay as they
/// are.
#[derive(Debug, Clone, Default)]
pub struct Shelves {
    opened: Arc<Mutex<BTreeMap<PathBuf, Kept>>>,
}

#[derive(Debug, Clone)]
struct Kept {
    stamps: Vec<Stamp>,
    shelf: Arc<Shelf>,
}

/// What tells a file from what it was before.
type Stamp = (PathBuf, Option<(u64, Option<SystemTime>)>);

impl Shelves {
    /// The shelf in a folder.
    ///
    /// # Errors
    /// As for [`Shelf::open`].
    pub fn open(&self, folder: &Path) -> Result<Arc<Shelf>, ShelfError> {
        let files = files_in(folder)?;
        let stamps: Vec<Stamp> = files.iter().map(stamp).collect();
        let kept = self.kept().get(folder).cloned();
        if let Some(kept) = kept.filter(|kept| kept.stamps == stamps) {
            return Ok(kept.shelf);
        }
        let shelf = Arc::new(Shelf::of_files(folder, files)?);
        let kept = Kept {
            stamps,
            shelf: Arc::clone(&shelf),
        };
        self.kept().insert(folder.to_owned(), kept);
        Ok(shelf)
    }

    /// A thread that failed while it held them left them whole.
    fn kept(&self) -> std::sync::MutexGuard<'_, BTreeMap<PathBuf, Kept>> {
        self.opened.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

fn stamp(file: &PathBuf) -> Stamp {
    let about = std::fs::metadata(file).ok();
    (
        file.clone(),
        about.map(|about| (about.len(), about.modified().ok())),
    )
}

/// What the shelf shows of an impression's tray.
#[derive(Debug, Clone)]
pub struct CheckedShelf {
    /// How many trays are on it.
    pub trays: usize,
    /// The tray that was found, and the next; `None` where none was.
    pub chosen: Option<(NamedTrial, Option<NamedTrial>)>,
}

/// How a tray of the shelf lies on an impression.
#[derive(Debug, Clone, PartialEq)]
pub struct NamedTrial {
    /// What the tray is called: the name of its file, without the ending.
    pub name: String,
    /// How it lies.
    pub trial: TrayTrial,
}

impl CheckedShelf {
    pub(crate) fn of(shelf: &Shelf, chosen: Option<&ChosenTray>) -> Self {
        let named = |trial: &TrayTrial| NamedTrial {
            name: shelf.trays[trial.tray].name.clone(),
            trial: *trial,
        };
        Self {
            trays: shelf.trays.len(),
            chosen: chosen.map(|tray| (named(&tray.best), tray.next.as_ref().map(named))),
        }
    }
}
