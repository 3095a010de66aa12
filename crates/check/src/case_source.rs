//! How one case is given: a case file, or a bare scan with what is said of it.

use crate::road::{CaseNotRead, CheckOptions, CheckedCase, Step, check_case};
use crate::shelf::{ShelfError, Shelves};
use judge::{
    BadColour, BadThickness, Case, CaseError, ImpressionInput, MarkedLandmarks, Protocol,
    ProtocolError, Stage,
};
use measure::Arch;
use mesh::{ReadError, Unit};
use std::path::{Path, PathBuf};
use thiserror::Error;

/// A bare scan with what is said of it, or a case file, and how it is checked.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct CaseSource {
    /// Impression scan, or case file (TOML).
    pub input: PathBuf,
    /// Which jaw the impression is of.
    pub arch: Option<Arch>,
    /// How far the impression has come; `None` reads as taken in one go.
    pub stage: Option<Stage>,
    /// Scan of the empty tray.
    pub tray: Option<PathBuf>,
    /// Folder with the scans of the empty stock trays, before what case and protocol name.
    pub trays: Option<PathBuf>,
    /// Thickness of the tray, mm, where it was not scanned.
    pub tray_thickness_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of that thickness, mm.
    pub tray_thickness_uncertainty_mm: Option<f64>,
    /// Colour of the tray in a coloured scan, `#rrggbb`.
    pub tray_colour: Option<String>,
    /// File of landmarks that were marked on the scan.
    pub landmarks: Option<PathBuf>,
    /// Pseudonym of the case; `None` leaves it unnamed.
    pub case_id: Option<String>,
    /// Unit of the scan files, where the operator named it.
    pub unit: Option<Unit>,
    /// Protocol file; `None` stands for the default limits.
    pub protocol: Option<PathBuf>,
}

/// What can be said of a bare scan, and is in a case file otherwise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Statement {
    /// The jaw.
    Arch,
    /// The tray's scan.
    Tray,
    /// The tray's thickness.
    TrayThickness,
    /// The uncertainty of that thickness.
    TrayThicknessUncertainty,
    /// The tray's colour.
    TrayColour,
    /// The file of landmarks.
    Landmarks,
    /// How far the impression has come.
    Stage,
    /// The case's pseudonym.
    CaseId,
}

/// The name that a user knows a [`Statement`] by, such as that of an option.
pub type NameOf = fn(Statement) -> &'static str;

/// Why a case could not be checked; its text is one line for people.
#[derive(Debug, Error)]
pub enum CheckError {
    /// A scan cannot be read.
    #[error(transparent)]
    Scan(#[from] ReadError),
    /// A scan that a case file names cannot be read.
    #[error("{}: line {line} names a scan that cannot be read: {source}", mesh::read::shown_path(.file))]
    NamedScan {
        /// The case file.
        file: PathBuf,
        /// The line that names the scan.
        line: usize,
        /// Why it cannot be read.
        source: ReadError,
    },
    /// The shelf of empty trays cannot be used.
    #[error(transparent)]
    Shelf(#[from] ShelfError),
    /// The case file cannot be used.
    #[error(transparent)]
    Case(#[from] CaseError),
    /// The protocol cannot be used.
    #[error(transparent)]
    Protocol(#[from] ProtocolError),
    /// Something is said twice.
    #[error("{0} cannot be used with a case file: set it in the case file instead")]
    InTheCaseFile(&'static str),
    /// The colour is none.
    #[error("{name}: {source}")]
    Colour {
        /// The user's name for it.
        name: &'static str,
        /// What is wrong with it.
        source: BadColour,
    },
    /// The thickness is none.
    #[error("{name}: {source}")]
    Thickness {
        /// The user's name for it.
        name: &'static str,
        /// What is wrong with it.
        source: BadThickness,
    },
    /// The case has no name that could be printed.
    #[error("{0} needs a name of printable letters (a pseudonym, never a patient's name)")]
    CaseName(&'static str),
}

impl CaseSource {
    /// A case file or a scan of which nothing else is said.
    #[must_use]
    pub fn of(input: &Path) -> Self {
        Self {
            input: input.to_owned(),
            ..Self::default()
        }
    }

    /// Whether a case file is given, and no bare scan.
    #[must_use]
    pub fn is_case_file(&self) -> bool {
        let extension = self.input.extension();
        extension.is_some_and(|extension| extension.eq_ignore_ascii_case("toml"))
    }

    /// The case that is to be checked. Errors call what was given by `name_of`.
    ///
    /// # Errors
    /// When its file or its landmarks cannot be used, or something is said
    /// beside a case file that stands in it.
    pub fn case(&self, name_of: NameOf) -> Result<Case, CheckError> {
        if self.is_case_file() {
            return match self.statements().next() {
                Some(said) => Err(CheckError::InTheCaseFile(name_of(said))),
                None => Ok(Case::from_file(&self.input)?),
            };
        }
        // Never taken from the file's name, which may be the patient's.
        let id = self.case_id.as_deref().unwrap_or("unnamed").trim();
        if id.is_empty() || id.chars().any(char::is_control) {
            return Err(CheckError::CaseName(name_of(Statement::CaseId)));
        }
        Ok(Case::of_one(id, self.impression(name_of)?))
    }

    /// What is said beside the scan or the case file.
    fn statements(&self) -> impl Iterator<Item = Statement> {
        let thickness_uncertainty = self.tray_thickness_uncertainty_mm.is_some();
        [
            (Statement::Arch, self.arch.is_some()),
            (Statement::Tray, self.tray.is_some()),
            (Statement::TrayThickness, self.tray_thickness_mm.is_some()),
            (Statement::TrayThicknessUncertainty, thickness_uncertainty),
            (Statement::TrayColour, self.tray_colour.is_some()),
            (Statement::Landmarks, self.landmarks.is_some()),
            (Statement::Stage, self.stage.is_some()),
            (Statement::CaseId, self.case_id.is_some()),
        ]
        .into_iter()
        .filter_map(|(statement, is_made)| is_made.then_some(statement))
    }

    fn impression(&self, name_of: NameOf) -> Result<ImpressionInput, CheckError> {
        let marked = match &self.landmarks {
            Some(file) => judge::read_landmarks(file, self.arch)?,
            None => MarkedLandmarks::default(),
        };
        let tray_thickness =
            judge::thickness(self.tray_thickness_mm, self.tray_thickness_uncertainty_mm).map_err(
                |source| CheckError::Thickness {
                    name: name_of(Statement::TrayThickness),
                    source,
                },
            )?;
        let tray_colour = self.tray_colour.as_deref().map(judge::colour_from_hex);
        Ok(ImpressionInput {
            tray: self.tray.clone(),
            tray_thickness,
            tray_colour: tray_colour
                .transpose()
                .map_err(|source| CheckError::Colour {
                    name: name_of(Statement::TrayColour),
                    source,
                })?,
            marks: marked.marks,
            marks_sha256: marked.scan_sha256,
            marks_file: self.landmarks.clone(),
            ..ImpressionInput::bare(
                self.arch,
                self.stage.unwrap_or(Stage::Single),
                self.input.clone(),
            )
        })
    }

    /// Reads, measures and judges a case; each step is given to `progress`.
    ///
    /// # Errors
    /// When the protocol cannot be used or a scan cannot be read.
    pub fn check(
        &self,
        case: Case,
        progress: &(dyn Fn(Step) + Sync),
    ) -> Result<CheckedCase, CheckError> {
        let protocol = match &self.protocol {
            Some(file) => Protocol::from_file(file)?,
            None => Protocol::default(),
        };
        let options = CheckOptions {
            unit: self.unit,
            protocol,
            shelves: Shelves::default(),
        };
        let case = Case {
            trays: self.trays.clone().or(case.trays),
            ..case
        };
        check_case(case, &options, progress).map_err(|why| match why {
            CaseNotRead::Scan(source) => self.named(source),
            CaseNotRead::Shelf(source) => CheckError::Shelf(source),
        })
    }

    /// Why a scan cannot be read, with the line of the case file that names it.
    fn named(&self, source: ReadError) -> CheckError {
        let file = self.is_case_file().then_some(&self.input);
        match file.and_then(|file| Some((file, line_naming(file, source.path())?))) {
            Some((file, line)) => CheckError::NamedScan {
                file: file.clone(),
                line,
                source,
            },
            None => CheckError::Scan(source),
        }
    }
}

/// The first line of a case file, counted from 1, that holds the name of a scan.
fn line_naming(case_file: &Path, scan: &Path) -> Option<usize> {
    let name = scan.file_name()?.to_str()?;
    let text = mesh::read::settings_text(case_file).ok()?;
    let line = text.lines().position(|line| line.contains(name))?;
    Some(line + 1)
}
