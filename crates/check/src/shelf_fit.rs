//! Which tray of a shelf to take for a mouth: its scan and those of the trays read, measured
//! and judged.

use crate::load::{LoadedScan, load};
use crate::reader::refused;
use crate::shelf::{Shelf, ShelfError};
use judge::shelf_fit::{Advice, advice, advice_for_retake};
use judge::{Protocol, ProtocolError};
use measure::tray::{FitShown, ShelfFit, fit, fit_shown};
use measure::{Arch, MeasureSettings, NotAnImpression};
use mesh::read::shown_path;
use mesh::{ReadError, Unit};
use messages::{Message, message};
use std::path::PathBuf;
use std::sync::Arc;
use thiserror::Error;

/// A mouth, and the shelf of which a tray is to be taken for it.
#[derive(Debug, Clone, Default)]
pub struct FitSource {
    /// Scan of an impression of the mouth, of the mouth itself, or of a cast.
    pub scan: PathBuf,
    /// Folder with the scans of the empty trays; `None` where the protocol names it.
    pub trays: Option<PathBuf>,
    /// The jaw, where it was said.
    pub arch: Option<Arch>,
    /// Unit of the scan, where it was said.
    pub unit: Option<Unit>,
    /// Protocol file; `None` stands for the default.
    pub protocol: Option<PathBuf>,
    /// Whether pictures are to be drawn.
    pub is_shown: bool,
}

/// A scan of a mouth, and how the trays of a shelf suit it.
#[derive(Debug)]
pub struct CheckedFit {
    /// The scan.
    pub scan: LoadedScan,
    /// How the trays suit.
    pub trays: SuitedTrays,
    /// What pictures show of it; `None` where none were asked for.
    pub shown: Option<FitShown>,
}

/// How the trays of a shelf suit a mouth, and what to do.
#[derive(Debug, Clone)]
pub struct SuitedTrays {
    /// The trays.
    pub shelf: Arc<Shelf>,
    /// How they suit.
    pub fit: ShelfFit,
    /// What to do.
    pub advice: Advice,
}

impl SuitedTrays {
    /// For an impression that is to be taken again, from the scan of that impression; `None`
    /// where it does not show the mouth.
    pub(crate) fn for_retake(
        scan: &LoadedScan,
        shelf: &Arc<Shelf>,
        settings: &MeasureSettings,
    ) -> Option<Self> {
        let fit = fit(&scan.mesh, shelf.trays(), settings).ok()?;
        Some(Self {
            advice: advice_for_retake(&fit),
            shelf: Arc::clone(shelf),
            fit,
        })
    }
}

/// Why no tray can be tried in; its text is one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum FitError {
    /// The scan cannot be read.
    Scan(#[from] ReadError),
    /// The shelf cannot be used.
    Shelf(#[from] ShelfError),
    /// The protocol cannot be used.
    Protocol(#[from] ProtocolError),
    /// Nobody said where the trays are.
    NoShelf,
    /// The scan shows no mouth.
    NoMouth {
        /// The scan.
        scan: PathBuf,
        /// What it shows.
        why: NotAnImpression,
    },
}

impl FitError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Scan(error) => refused(error),
            Self::Shelf(error) => error.message(),
            Self::Protocol(error) => error.message(),
            Self::NoShelf => message!("fit-no-shelf"),
            Self::NoMouth { scan, why } => {
                message!("fit-no-mouth", path = shown_path(scan), why = why.message())
            }
        }
    }
}

impl FitSource {
    /// Reads the scans, and measures and judges how the trays suit.
    ///
    /// # Errors
    /// When a scan, the shelf or the protocol cannot be used, or the scan shows no mouth.
    pub fn check(&self) -> Result<CheckedFit, FitError> {
        let protocol = match &self.protocol {
            Some(file) => Protocol::from_file(file)?,
            None => Protocol::default(),
        };
        let trays = self.trays.as_deref().or(protocol.trays());
        let trays = trays.ok_or(FitError::NoShelf)?;
        let (scan, shelf) = rayon::join(|| load(&self.scan, self.unit), || Shelf::open(trays));
        let (scan, shelf) = (scan?, shelf?);
        let settings = MeasureSettings {
            declared_jaw: self.arch,
            scanner_uncertainty_mm: protocol.scanner().length_uncertainty_mm,
            ..MeasureSettings::default()
        };
        let (mesh, trays) = (&scan.mesh, shelf.trays());
        let found = if self.is_shown {
            fit_shown(mesh, trays, &settings).map(|(fit, shown)| (fit, Some(shown)))
        } else {
            fit(mesh, trays, &settings).map(|fit| (fit, None))
        };
        let (fit, shown) = found.map_err(|why| FitError::NoMouth {
            scan: self.scan.clone(),
            why,
        })?;
        let trays = SuitedTrays {
            advice: advice(&fit),
            shelf: Arc::new(shelf),
            fit,
        };
        Ok(CheckedFit { scan, trays, shown })
    }
}
