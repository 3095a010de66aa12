//! What is to be checked, as the command and the window are told it.

use crate::road::{CheckOptions, CheckedCase, Step, check_case};
use crate::{WriteError, default_folder};
use clap::builder::{PossibleValuesParser, TypedValueParser};
use clap::{Args, ValueEnum};
use judge::{
    BadColour, BadThickness, Case, CaseError, ImpressionInput, Protocol, ProtocolError, Stage,
};
use mesh::{ReadError, Unit};
use std::path::{Path, PathBuf};
use thiserror::Error;

/// A bare scan with what is said of it, or a case file, and how it is checked.
#[derive(Debug, Clone, Default, PartialEq, Args)]
pub struct Source {
    /// Impression scan (STL, PLY, OBJ), or a case file (case.toml)
    pub input: PathBuf,
    /// Which jaw the impression is of
    #[arg(long)]
    pub arch: Option<ArchArgument>,
    /// Scan of the empty tray
    #[arg(long, value_name = "SCAN")]
    pub tray: Option<PathBuf>,
    /// Thickness of the tray in mm, where it was not scanned
    #[arg(long, value_name = "MM", conflicts_with = "tray")]
    pub tray_thickness: Option<f64>,
    /// Uncertainty (k = 2) of that thickness in mm [default: 0.5]
    #[arg(long, value_name = "MM")]
    pub tray_thickness_uncertainty: Option<f64>,
    /// Colour of the tray in a coloured scan, as #rrggbb [default: told from the scan]
    #[arg(long, value_name = "COLOUR")]
    pub tray_colour: Option<String>,
    /// Landmarks that were marked on the scan (landmarks.toml); they are not looked for
    #[arg(long, value_name = "FILE")]
    pub landmarks: Option<PathBuf>,
    /// How far the impression has come [default: single]
    #[arg(long)]
    pub stage: Option<StageArgument>,
    /// Unit of the scan files, where they are not in mm
    #[arg(long, value_parser = unit_parser())]
    pub unit: Option<Unit>,
    /// Protocol file with acceptance limits of one's own
    #[arg(long, value_name = "FILE")]
    pub protocol: Option<PathBuf>,
    /// Folder for the results [default: archproof-CASE]
    #[arg(long, value_name = "DIR")]
    pub out: Option<PathBuf>,
    /// Pseudonym of the case, never a name [default: unnamed]
    #[arg(long, value_name = "ID")]
    pub case: Option<String>,
}

/// Why a case could not be checked; its text is one line for people.
#[derive(Debug, Error)]
pub enum CheckError {
    /// A scan cannot be read.
    #[error(transparent)]
    Scan(#[from] ReadError),
    /// The case file cannot be used.
    #[error(transparent)]
    Case(#[from] CaseError),
    /// The protocol cannot be used.
    #[error(transparent)]
    Protocol(#[from] ProtocolError),
    /// Results cannot be written.
    #[error(transparent)]
    Write(#[from] WriteError),
    /// Something is said twice.
    #[error("{0} stands in the case file; leave it out beside one, or change the file")]
    InTheCaseFile(&'static str),
    /// The colour is none.
    #[error("--tray-colour: {0}")]
    Colour(#[from] BadColour),
    /// The thickness is none.
    #[error("--tray-thickness: {0}")]
    Thickness(#[from] BadThickness),
    /// The case has no name that could be printed.
    #[error("--case needs a name of printable letters (a pseudonym, never a patient's name)")]
    CaseName,
}

impl Source {
    /// A case file or a scan of which nothing else is said.
    #[must_use]
    pub fn of(input: &Path) -> Self {
        Self {
            input: input.to_owned(),
            ..Self::default()
        }
    }

    /// The case that is to be checked.
    ///
    /// # Errors
    /// When its file or its landmarks cannot be used, or something is said
    /// beside a case file that stands in it.
    pub fn case(&self) -> Result<Case, CheckError> {
        let extension = self.input.extension();
        if extension.is_some_and(|extension| extension.eq_ignore_ascii_case("toml")) {
            let in_the_file = [
                ("--arch", self.arch.is_some()),
                ("--tray", self.tray.is_some()),
                ("--tray-thickness", self.tray_thickness.is_some()),
                (
                    "--tray-thickness-uncertainty",
                    self.tray_thickness_uncertainty.is_some(),
                ),
                ("--tray-colour", self.tray_colour.is_some()),
                ("--landmarks", self.landmarks.is_some()),
                ("--stage", self.stage.is_some()),
                ("--case", self.case.is_some()),
            ];
            return match in_the_file.iter().find(|(_, given)| *given) {
                Some((option, _)) => Err(CheckError::InTheCaseFile(option)),
                None => Ok(Case::from_file(&self.input)?),
            };
        }
        // Never taken from the file's name, which may be the patient's.
        let id = self.case.as_deref().unwrap_or("unnamed").trim();
        if id.is_empty() || id.chars().any(char::is_control) {
            return Err(CheckError::CaseName);
        }
        let declared = self.arch.map(Into::into);
        let marks = match &self.landmarks {
            Some(file) => judge::read_landmarks(file, declared)?,
            None => Vec::new(),
        };
        Ok(Case::of_one(
            id,
            ImpressionInput {
                declared,
                stage: self.stage.map_or(Stage::Single, Into::into),
                scan: self.input.clone(),
                tray: self.tray.clone(),
                tray_thickness: judge::thickness(
                    self.tray_thickness,
                    self.tray_thickness_uncertainty,
                )?,
                tray_colour: self
                    .tray_colour
                    .as_deref()
                    .map(judge::colour_from_hex)
                    .transpose()?,
                stops: Vec::new(),
                marks,
                marks_file: self.landmarks.clone(),
            },
        ))
    }

    /// The folder for the results of a case.
    #[must_use]
    pub fn folder(&self, case: &Case) -> PathBuf {
        let named = self.out.clone();
        named.unwrap_or_else(|| default_folder(&case.id))
    }

    /// Reads, measures and judges a case; `progress` is told each step.
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
        };
        Ok(check_case(case, &options, progress)?)
    }
}

/// A jaw on the command line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum ArchArgument {
    /// Upper jaw
    Maxillary,
    /// Lower jaw
    Mandibular,
}

impl From<ArchArgument> for measure::Arch {
    fn from(argument: ArchArgument) -> Self {
        match argument {
            ArchArgument::Maxillary => Self::Maxillary,
            ArchArgument::Mandibular => Self::Mandibular,
        }
    }
}

/// A stage on the command line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum StageArgument {
    /// The heavy or medium body, before the wash
    FirstPass,
    /// With the wash over it
    Wash,
    /// Taken in one go
    Single,
}

impl From<StageArgument> for Stage {
    fn from(argument: StageArgument) -> Self {
        match argument {
            StageArgument::FirstPass => Self::FirstPass,
            StageArgument::Wash => Self::Wash,
            StageArgument::Single => Self::Single,
        }
    }
}

/// Reads a unit by its symbol.
pub fn unit_parser() -> impl TypedValueParser<Value = Unit> {
    PossibleValuesParser::new(Unit::ALL.map(Unit::symbol)).try_map(|symbol| symbol.parse::<Unit>())
}
