//! What may be said on the command line.

use clap::builder::{PossibleValuesParser, TypedValueParser};
use clap::{Args, Parser, Subcommand, ValueEnum};
use mesh::Unit;
use std::path::PathBuf;

/// Checks the quality of 3D scans of edentulous arch impressions.
#[derive(Debug, Parser)]
#[command(version, about, arg_required_else_help = true)]
pub struct Arguments {
    #[command(subcommand)]
    pub command: Command,
}

#[derive(Debug, Subcommand)]
pub enum Command {
    Check(CheckArguments),
    Inspect(InspectArguments),
    /// Write a scan without the text in it, which may name a person
    ///
    /// Header, comments and names are left out; vertices, triangles and colours
    /// stay as they are, but for triangles without area or given twice.
    Clean {
        /// Scan (STL, PLY, OBJ)
        scan: PathBuf,
        /// File to write; its ending (ply, stl, obj) names the format
        out: PathBuf,
    },
    /// Write a demonstration case, with an invented scenario, into a folder
    Demo {
        /// Folder to write into; made if it is not there
        dir: PathBuf,
    },
    /// Explain a check: what it is, why it matters, how it is measured, what is not known
    Explain {
        /// Code of the check, as findings name it; without one, all codes are listed
        code: Option<String>,
    },
    /// Show or check acceptance limits
    Protocol {
        #[command(subcommand)]
        command: ProtocolCommand,
    },
    /// Print the JSON Schema of result.json
    Schema,
    /// Show a result on the impression, in a window
    ///
    /// A case or a scan is checked first. The window is a program of its own,
    /// archproof-viewer, which stands beside this one or on the PATH.
    View {
        /// Result folder, case file (case.toml), or impression scan
        #[arg(value_name = "RESULT|CASE|SCAN")]
        path: PathBuf,
        /// Folder for the results of a check [default: archproof-CASE]
        #[arg(long, value_name = "DIR")]
        out: Option<PathBuf>,
        /// Protocol file with acceptance limits of one's own
        #[arg(long, value_name = "FILE")]
        protocol: Option<PathBuf>,
    },
}

/// Check an impression scan, or a case of several
///
/// Exit status: 0 accept; 1 rework or retake; 3 undecided; 2 wrong use or
/// unreadable input.
#[derive(Debug, Args)]
pub struct CheckArguments {
    /// Impression scan (STL, PLY, OBJ), or a case file (case.toml)
    pub input: PathBuf,
    /// Which jaw the impression is of
    #[arg(long)]
    pub arch: Option<ArchArgument>,
    /// Scan of the empty tray
    #[arg(long, value_name = "SCAN")]
    pub tray: Option<PathBuf>,
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
    /// Print result.json instead of the summary
    #[arg(long)]
    pub json: bool,
    /// Write no report.html
    #[arg(long)]
    pub no_report: bool,
    /// Pseudonym of the case, never a name [default: unnamed]
    #[arg(long, value_name = "ID")]
    pub case: Option<String>,
    /// Number of threads [default: one for each core]
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..))]
    pub threads: Option<u16>,
}

/// Look at scans quickly: one row a file
///
/// Columns: size; unit (with a question mark where nobody named it); what the
/// scan shows; sides scanned; connected parts; boundary loops; faults
/// (non-manifold edges and triangles without area); median edge, mm; noise, mm;
/// the file's name and remarks.
/// Exit status: 0; 2 if any file could not be read, which is said in its row.
#[derive(Debug, Args)]
pub struct InspectArguments {
    /// Scans (STL, PLY, OBJ), or folders to look through
    #[arg(required = true, value_name = "SCAN|FOLDER")]
    pub scans: Vec<PathBuf>,
    /// Unit of the scan files, where they are not in mm
    #[arg(long, value_parser = unit_parser())]
    pub unit: Option<Unit>,
    /// Print the rows as JSON
    #[arg(long)]
    pub json: bool,
}

#[derive(Debug, Subcommand)]
pub enum ProtocolCommand {
    /// Print a protocol with every limit and its source; the default one without a file
    Show {
        /// Protocol file
        file: Option<PathBuf>,
    },
    /// Say whether a protocol file can be used
    Check {
        /// Protocol file
        file: PathBuf,
    },
}

#[derive(Debug, Clone, Copy, ValueEnum)]
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

#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum StageArgument {
    /// The heavy or medium body, before the wash
    FirstPass,
    /// With the wash over it
    Wash,
    /// Taken in one go
    Single,
}

impl From<StageArgument> for judge::Stage {
    fn from(argument: StageArgument) -> Self {
        match argument {
            StageArgument::FirstPass => Self::FirstPass,
            StageArgument::Wash => Self::Wash,
            StageArgument::Single => Self::Single,
        }
    }
}

fn unit_parser() -> impl TypedValueParser<Value = Unit> {
    PossibleValuesParser::new(Unit::ALL.map(Unit::symbol)).try_map(|symbol| symbol.parse::<Unit>())
}
