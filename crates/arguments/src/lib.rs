//! The arguments that the command and the window share: what is checked, and how.

#![warn(unreachable_pub)]

use check::{CaseSource, CheckError, CheckedCase, Statement, Step};
use clap::builder::{PossibleValuesParser, TypedValueParser};
use clap::{Args, ValueEnum};
use judge::{Case, Stage};
use mesh::Unit;
use messages::Language;
use std::path::{Path, PathBuf};

/// A bare scan with what is said of it, or a case file, and how it is checked.
#[derive(Debug, Clone, Default, PartialEq, Args)]
pub struct Source {
    /// Impression scan (STL, PLY, OBJ), or a case file (case.toml)
    pub input: PathBuf,
    /// Jaw of the impression (upper and lower are understood, too)
    #[arg(long)]
    pub arch: Option<ArchArgument>,
    /// Scan of the empty tray
    #[arg(long, value_name = "SCAN")]
    pub tray: Option<PathBuf>,
    /// Folder with scans of your empty stock trays; the one that fits is found
    #[arg(long, value_name = "DIR", conflicts_with_all = ["tray", "tray_thickness"])]
    pub trays: Option<PathBuf>,
    /// Thickness of the tray in mm, if it was not scanned
    #[arg(long, value_name = "MM", conflicts_with = "tray")]
    pub tray_thickness: Option<f64>,
    /// Uncertainty (k = 2) of that thickness in mm [default: 0.5]
    #[arg(long, value_name = "MM")]
    pub tray_thickness_uncertainty: Option<f64>,
    /// Colour of the tray in a coloured scan, as #rrggbb [default: found in the scan]
    #[arg(long, value_name = "COLOUR")]
    pub tray_colour: Option<String>,
    /// Landmarks marked by hand (landmarks.toml); these replace automatic detection
    #[arg(long, value_name = "FILE")]
    pub landmarks: Option<PathBuf>,
    /// Stage of the impression [default: one-step]
    #[arg(long)]
    pub stage: Option<StageArgument>,
    /// Unit of the scan files, if not mm
    #[arg(long, value_parser = unit_parser())]
    pub unit: Option<Unit>,
    /// File with your own acceptance limits
    #[arg(long, value_name = "FILE")]
    pub protocol: Option<PathBuf>,
    /// Folder for the results [default: archproof-CASE, or by time and checksum without a case code]
    #[arg(long, value_name = "DIR")]
    pub out: Option<PathBuf>,
    /// Case code (never the patient's name)
    #[arg(long, value_name = "ID")]
    pub case: Option<String>,
    // Not a group of its own: an optional `Source` that holds one is never there.
    /// Language of summary, report and sheets [default: the system's]
    ///
    /// The summary on the terminal, messages, report, sheets and return note are in it;
    /// result.json and tables are in English.
    #[arg(long, value_name = "LANGUAGE", value_parser = language_parser())]
    pub language: Option<Language>,
}

/// The option by which something is said of a scan.
fn option(statement: Statement) -> &'static str {
    match statement {
        Statement::Arch => "--arch",
        Statement::Tray => "--tray",
        Statement::TrayThickness => "--tray-thickness",
        Statement::TrayThicknessUncertainty => "--tray-thickness-uncertainty",
        Statement::TrayColour => "--tray-colour",
        Statement::Landmarks => "--landmarks",
        Statement::Stage => "--stage",
        Statement::CaseId => "--case",
    }
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

    /// The language that was asked for, or the system's.
    #[must_use]
    pub fn language(&self) -> Language {
        self.language.unwrap_or_else(Language::of_system)
    }

    /// The case that is to be checked.
    ///
    /// # Errors
    /// As for [`CaseSource::case`], options by their names.
    pub fn case(&self) -> Result<Case, CheckError> {
        self.case_source().case(option)
    }

    /// Reads, measures and judges a case; each step is given to `progress`.
    ///
    /// # Errors
    /// As for [`CaseSource::check`].
    pub fn check(
        &self,
        case: Case,
        progress: &(dyn Fn(Step) + Sync),
    ) -> Result<CheckedCase, CheckError> {
        self.case_source().check(case, progress)
    }

    /// Whether a case file is given, which names the case.
    #[must_use]
    pub fn is_case_file(&self) -> bool {
        self.case_source().is_case_file()
    }

    fn case_source(&self) -> CaseSource {
        CaseSource {
            input: self.input.clone(),
            arch: self.arch.map(Into::into),
            stage: self.stage.map(Into::into),
            tray: self.tray.clone(),
            trays: self.trays.clone(),
            tray_thickness_mm: self.tray_thickness,
            tray_thickness_uncertainty_mm: self.tray_thickness_uncertainty,
            tray_colour: self.tray_colour.clone(),
            landmarks: self.landmarks.clone(),
            case_id: self.case.clone(),
            unit: self.unit,
            protocol: self.protocol.clone(),
        }
    }
}

/// A jaw on the command line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum ArchArgument {
    /// Upper jaw
    #[value(alias = "upper")]
    Maxillary,
    /// Lower jaw
    #[value(alias = "lower")]
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
    #[value(name = "before-wash", alias = "first-pass")]
    FirstPass,
    /// With the wash over it
    Wash,
    /// Taken in one step
    #[value(name = "one-step", alias = "single")]
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

/// Reads a language by its code.
pub fn language_parser() -> impl TypedValueParser<Value = Language> {
    PossibleValuesParser::new(Language::ALL.map(Language::code))
        .try_map(|code| code.parse::<Language>())
}

/// Reads a unit by its symbol.
pub fn unit_parser() -> impl TypedValueParser<Value = Unit> {
    PossibleValuesParser::new(Unit::ALL.map(Unit::symbol)).try_map(|symbol| symbol.parse::<Unit>())
}
