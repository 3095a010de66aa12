//! What may be said on the command line.

use clap::{Args, Parser, Subcommand};
use mesh::Unit;
use report::{Source, unit_parser};
use std::ffi::OsString;
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
    /// Show, write or check acceptance limits
    Protocol {
        #[command(subcommand)]
        command: ProtocolCommand,
    },
    /// Print the JSON Schema of result.json
    Schema,
    /// Show a result on the impression, in a window
    ///
    /// A case or a scan is checked first, with the options of 'check'. The window
    /// is a program of its own, archproof-viewer, which stands beside this one or
    /// on the PATH.
    View {
        /// Result folder, case file (case.toml) or impression scan, and options
        #[arg(
            required = true,
            trailing_var_arg = true,
            allow_hyphen_values = true,
            value_name = "RESULT|CASE|SCAN"
        )]
        arguments: Vec<OsString>,
    },
}

/// Check an impression scan, or a case of several
///
/// Exit status: 0 accept; 1 rework or retake; 3 undecided; 2 wrong use or
/// unreadable input.
#[derive(Debug, Args)]
pub struct CheckArguments {
    #[command(flatten)]
    pub source: Source,
    /// Print result.json instead of the summary
    #[arg(long)]
    pub json: bool,
    /// Write no report.html
    #[arg(long)]
    pub no_report: bool,
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
    /// Write every limit with its source into a new file, to be changed
    New {
        /// Protocol file to write; one that is there already is left alone
        file: PathBuf,
    },
    /// Say whether a protocol file can be used
    Check {
        /// Protocol file
        file: PathBuf,
    },
}
