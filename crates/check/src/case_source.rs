//! How one case is given: a case file, or a bare scan with what is said of it.

use crate::reader::refused;
use crate::road::{CaseNotRead, CheckOptions, CheckedCase, Step, check_case};
use crate::shelf::{ShelfError, Shelves};
use judge::{
    BadColour, BadThickness, Case, CaseError, ImpressionInput, MarkedLandmarks, Protocol,
    ProtocolError, Stage,
};
use measure::Arch;
use mesh::read::shown_path;
use mesh::{ReadError, Unit};
use messages::{Message, message};
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
#[error("{}", self.message())]
pub enum CheckError {
    /// A scan cannot be read.
    Scan(#[from] ReadError),
    /// A scan that a case file names cannot be read.
    NamedScan {
        /// The case file.
        file: PathBuf,
        /// The line that names the scan.
        line: usize,
        /// Why it cannot be read.
        source: ReadError,
    },
    /// The shelf of empty trays cannot be used.
    Shelf(#[from] ShelfError),
    /// The case file cannot be used.
    Case(#[from] CaseError),
    /// The protocol cannot be used.
    Protocol(#[from] ProtocolError),
    /// Something is said twice.
    InTheCaseFile(&'static str),
    /// The colour is none.
    Colour {
        /// The user's name for it.
        name: &'static str,
        /// What is wrong with it.
        source: BadColour,
    },
    /// The thickness is none.
    Thickness {
        /// The user's name for it.
        name: &'static str,
        /// What is wrong with it.
        source: BadThickness,
    },
    /// The case has no name that could be printed.
    CaseName(&'static str),
}

impl CheckError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Scan(error) => refused(error),
            Self::NamedScan { file, line, source } => message!(
                "named-scan-refused",
                path = shown_path(file),
                line = *line,
                refused = refused(source)
            ),
            Self::Shelf(error) => error.message(),
            Self::Case(error) => error.message(),
            Self::Protocol(error) => error.message(),
            Self::InTheCaseFile(name) => message!("said-in-the-case-file", name = *name),
            Self::Colour { name, source } => {
                message!("of-file", path = *name, problem = source.message())
            }
            Self::Thickness { name, source } => {
                message!("of-file", path = *name, problem = source.message())
            }
            Self::CaseName(name) => message!("said-case-name", name = *name),
        }
    }
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
