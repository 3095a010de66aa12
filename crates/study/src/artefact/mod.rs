//! Scans of a reference artefact: what the scanner errs.

mod certified;
mod scanned;
mod scanner;

pub use certified::{
    Artefact, ArtefactError, ArtefactFault, ArtefactLimits, ArtefactProblem, Certified,
    CertifiedDistance, CertifiedSphere, CertifiedStep, Quantity, SizeReading,
};

pub use scanned::{
    ArtefactNotFound, NominalSphere, NominalStep, ScannedArtefact, ScannedSphere, ScannedStep,
    StepNotFound, find,
};

use check::load;
use check::reader::refused;
use mesh::read::shown_path;
use mesh::{Mesh, ReadError, Unit};
use messages::{Message, message};
use statistics::repeatability::Repeatability;
use std::path::{Path, PathBuf};
use std::time::SystemTime;
use thiserror::Error;

/// Why an artefact could not be checked; its text is one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum ArtefactCheckError {
    /// Its description cannot be used.
    Artefact(#[from] ArtefactError),
    /// A scan cannot be read.
    Scan(#[from] ReadError),
    /// It is not in a scan.
    NotFound {
        /// The scan.
        path: PathBuf,
        /// What was seen instead.
        source: ArtefactNotFound,
    },
    /// A step of it is not.
    StepNotFound {
        /// The scan.
        path: PathBuf,
        /// Name of the step.
        step: String,
        /// What was seen instead.
        source: StepNotFound,
    },
}

impl ArtefactCheckError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Artefact(error) => error.message(),
            Self::Scan(error) => refused(error),
            Self::NotFound { path, source } => {
                message!("of-file", path = shown_path(path), problem = source)
            }
            Self::StepNotFound { path, step, source } => message!(
                "artefact-step-not-found",
                path = shown_path(path),
                step = step.as_str(),
                problem = source
            ),
        }
    }
}

/// What scans of an artefact came to.
#[derive(Debug, Clone, PartialEq)]
pub struct ArtefactStudy {
    /// The artefact with its certified sizes.
    pub artefact: Artefact,
    /// Each scan, in the order in which they were given.
    pub scans: Vec<ArtefactScan>,
    /// Each size over all scans.
    pub sizes: Vec<SizeStudy>,
}

/// One scan of the artefact.
#[derive(Debug, Clone, PartialEq)]
pub struct ArtefactScan {
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// When its file was last changed; `None` where the system does not say.
    pub changed: Option<SystemTime>,
    /// Unit in which its numbers were read.
    pub unit: Unit,
    /// Root mean square distance of the sphere centres from the nominal ones, mm.
    pub centres_rms_mm: f64,
    /// Whether its spheres could be taken for one another.
    pub spheres_interchangeable: bool,
    /// How many times as long as certified its distances are, with the expanded
    /// uncertainty (k = 2) of that; `None` without any.
    pub scale: Option<(f64, f64)>,
}

/// One size over all scans.
#[derive(Debug, Clone, PartialEq)]
pub struct SizeStudy {
    /// In each scan; there is one at least.
    pub readings: Vec<SizeReading>,
    /// Mean and spread of the errors, mm; `None` for one scan.
    pub errors_mm: Option<Repeatability>,
}

/// Checks scans of the artefact that a TOML file describes. Their numbers are
/// in `unit`, or in mm: it is never guessed here, for a wrong scale is to show.
///
/// # Errors
/// When the description cannot be used, a scan cannot be read, or the artefact
/// is not in it.
pub fn check_artefact(
    description: &Path,
    scans: &[PathBuf],
    unit: Option<Unit>,
) -> Result<ArtefactStudy, ArtefactCheckError> {
    let artefact = Artefact::from_file(description)?;
    let mut seen_in = Vec::new();
    let mut readings: Vec<Vec<SizeReading>> = Vec::new();
    for path in scans {
        let scan = load(path, Some(unit.unwrap_or(Unit::Millimetre)))?;
        let (seen, steps) = found(&artefact, &scan.mesh, path)?;
        readings.push(artefact.judge(&seen, &steps));
        seen_in.push(ArtefactScan {
            sha256: scan.sha256,
            changed: std::fs::metadata(path)
                .and_then(|about| about.modified())
                .ok(),
            unit: scan.unit.unit(),
            centres_rms_mm: seen.rms_mm,
            spheres_interchangeable: seen.is_ambiguous,
            scale: artefact.scale(&seen),
        });
    }
    let count = readings.first().map_or(0, Vec::len);
    let sizes = (0..count).map(|size| SizeStudy::of(readings.iter().map(|r| r[size]).collect()));
    Ok(ArtefactStudy {
        sizes: sizes.collect(),
        artefact,
        scans: seen_in,
    })
}

/// The artefact in a scan, and its steps in their order.
fn found(
    artefact: &Artefact,
    scan: &Mesh,
    path: &Path,
) -> Result<(ScannedArtefact, Vec<ScannedStep>), ArtefactCheckError> {
    let seen = find(scan, &artefact.nominal()).map_err(|source| ArtefactCheckError::NotFound {
        path: path.to_owned(),
        source,
    })?;
    let steps: Result<Vec<ScannedStep>, ArtefactCheckError> = (artefact.steps.iter())
        .map(|step| {
            let found = seen.step(scan, &step.nominal);
            found.map_err(|source| ArtefactCheckError::StepNotFound {
                path: path.to_owned(),
                step: step.name.clone(),
                source,
            })
        })
        .collect();
    Ok((seen, steps?))
}

impl SizeStudy {
    fn of(readings: Vec<SizeReading>) -> Self {
        let errors: Vec<f64> = readings.iter().map(|reading| reading.error_mm).collect();
        Self {
            errors_mm: Repeatability::of(&errors),
            readings,
        }
    }
}
