//! What may be said on the command line.

mod in_language;
mod protocol;
mod reading;
mod refusal;
mod scans;
mod spoken;
mod studies;

use arguments::{ArchArgument, Source, StageArgument, language_parser, unit_parser};
use batch::{NamePattern, Shard};
use bytesize::ByteSize;
use clap::{Args, Parser, Subcommand, ValueEnum};
use clap_complete::Shell;
use mesh::Unit;
use report::Language;
use statistics::control::Rule;

pub use in_language::in_language;
pub use protocol::ProtocolCommand;
pub use scans::{FitArguments, InspectArguments, NewArguments};
pub use spoken::Spoken;
pub use studies::{
    AgreementArguments, ArtefactArguments, ControlArguments, GaugeArguments, RepeatArguments,
    ScanArguments,
};

use std::ffi::OsString;
use std::path::PathBuf;

/// Checks the quality of 3D scans of edentulous arch impressions.
#[derive(Debug, Parser)]
#[command(
    version,
    about,
    arg_required_else_help = true,
    disable_help_subcommand = true
)]
pub struct Arguments {
    #[command(subcommand)]
    pub command: Command,
}

impl Arguments {
    /// The language that was asked for, or the system's.
    pub fn language(&self) -> Language {
        let asked = match &self.command {
            Command::Check(arguments) => arguments.source.language,
            Command::Batch(arguments) => arguments.of.language,
            Command::Watch(arguments) => arguments.of.language,
            Command::Explain { language, .. } | Command::Help { language, .. } => *language,
            other => other.spoken().language,
        };
        asked.unwrap_or_else(Language::of_system)
    }
}

#[derive(Debug, Subcommand)]
pub enum Command {
    Check(CheckArguments),
    Batch(BatchArguments),
    Collect(CollectArguments),
    Watch(WatchArguments),
    Baseline(BaselineArguments),
    Judge(JudgeArguments),
    Artefact(ArtefactArguments),
    Gauge(GaugeArguments),
    Agreement(AgreementArguments),
    Control(ControlArguments),
    Inspect(InspectArguments),
    Fit(FitArguments),
    New(NewArguments),
    /// Write a scan without the text in it, which may name a person
    ///
    /// Header, comments and names are left out; vertices, triangles and colours
    /// stay as they are, but for triangles without area or given twice.
    Clean {
        /// Scan (STL, PLY, OBJ)
        scan: PathBuf,
        /// File to write; its ending (ply, stl, obj) names the format
        out: PathBuf,
        #[command(flatten)]
        spoken: Spoken,
    },
    /// Write a demonstration case, with an invented scenario, into a folder
    Demo {
        /// Folder to write into; made if it is not there
        dir: PathBuf,
        /// Write a case whose impression was cut apart and whose tray is in two pieces
        #[arg(long)]
        in_pieces: bool,
        #[command(flatten)]
        spoken: Spoken,
    },
    /// Explain a check: what it is, why it matters, how it is measured, what is not known
    Explain {
        /// Code of the check, as findings name it; without one, all codes are listed
        code: Option<String>,
        /// Language of the page [default: the system's]
        #[arg(long, value_name = "LANGUAGE", value_parser = language_parser())]
        language: Option<Language>,
    },
    /// Show, write or check acceptance limits
    Protocol {
        #[command(subcommand)]
        command: ProtocolCommand,
    },
    Repeat(RepeatArguments),
    /// Print the JSON Schema of result.json or of another output
    Schema {
        /// What to print the schema of
        #[arg(default_value = "result")]
        of: SchemaArgument,
    },
    /// Print a script by which a shell completes commands and options
    ///
    /// For bash, write it to ~/.local/share/bash-completion/completions/archproof; for
    /// zsh, to _archproof in a folder of $fpath; for fish, to
    /// ~/.config/fish/completions/archproof.fish. The Debian package brings all three.
    Completions {
        /// Shell to print the script for
        shell: Shell,
    },
    /// Write the manual pages, one for each command, into a folder
    #[command(hide = true)]
    Manual {
        /// Folder to write into; made if it is not there
        dir: PathBuf,
    },
    /// Print the help of a command, or a page on a topic
    ///
    /// Without a name, commands and topics are listed.
    Help {
        /// Command or topic
        #[arg(value_name = "COMMAND|TOPIC")]
        of: Vec<String>,
        /// Write the page on 'scanning' with its drawings, to be printed
        #[arg(long, value_name = "FILE")]
        html: Option<PathBuf>,
        /// Language of the help [default: the system's]
        #[arg(long, value_name = "LANGUAGE", value_parser = language_parser())]
        language: Option<Language>,
    },
    /// Show a result on the impression, in a window
    ///
    /// A case or a scan is checked first, with the options of 'check'. The window
    /// is a separate program, archproof-viewer, found beside this one or on the
    /// PATH.
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

impl Command {
    /// The language of what a command prints, of commands that write no report.
    fn spoken(&self) -> Spoken {
        match self {
            Self::New(arguments) => arguments.spoken,
            Self::Collect(arguments) => arguments.spoken,
            Self::Baseline(arguments) => arguments.spoken,
            Self::Judge(arguments) => arguments.spoken,
            Self::Inspect(arguments) => arguments.spoken,
            Self::Control(arguments) => arguments.spoken,
            Self::Artefact(arguments) => arguments.spoken,
            Self::Agreement(arguments) => arguments.spoken,
            Self::Gauge(arguments) => arguments.spoken,
            Self::Repeat(arguments) => arguments.spoken,
            Self::Fit(arguments) => arguments.spoken,
            Self::Clean { spoken, .. } | Self::Demo { spoken, .. } => *spoken,
            Self::Protocol { command } => command.spoken(),
            _ => Spoken::default(),
        }
    }
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
    /// Write no report.html and no sheet
    #[arg(long)]
    pub no_report: bool,
    /// Open the sheet when it is written
    #[arg(long, conflicts_with = "no_report")]
    pub open: bool,
    /// Write a return note for the clinic, too, where something is asked of it
    ///
    /// One page without the laboratory's limits (return.html, return.pdf), and a
    /// text to paste into a message (return.txt).
    #[arg(long = "return", conflicts_with = "no_report")]
    pub return_note: bool,
    /// List every file that was written
    #[arg(long, conflicts_with = "json")]
    pub verbose: bool,
    /// Print how long each step took, on standard error
    #[arg(long)]
    pub times: bool,
    /// Number of threads [default: one for each core]
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..))]
    pub threads: Option<u16>,
}

/// Check every case of a folder, side by side
///
/// Cases are the case files in the folder and below it or, with --scans, scans
/// of such names. DIR gets a folder for each case, tables over all of them
/// (results.jsonl, summary and findings as CSV and Parquet, summary.xlsx) and inputs.csv,
/// which says which file each case is of. Cases that cannot be read are listed
/// as rows with the reason. The last line counts the verdicts.
/// Exit status: 0 when every case was checked, whatever the verdicts; 1 when
/// one or more could not be read or came to a verdict of --fail-on; 2 wrong use.
#[derive(Debug, Args)]
pub struct BatchArguments {
    #[command(flatten)]
    pub of: FolderArguments,
    /// Continue in DIR: cases that were checked from the same files, with the
    /// same limits and version, are skipped
    #[arg(long)]
    pub resume: bool,
    /// Check share I of N of the cases; 'archproof collect' joins the shares
    #[arg(long, value_name = "I/N", default_value_t = Shard::WHOLE)]
    pub shard: Shard,
    #[command(flatten)]
    pub outcome: OutcomeArguments,
}

/// How drift is looked for.
#[derive(Debug, Default, Args)]
pub struct DriftArguments {
    /// Frozen limits of the control charts, written by 'archproof baseline'
    #[arg(long, value_name = "FILE")]
    pub baseline: Option<PathBuf>,
    /// Label by which control charts are kept apart, beside jaw and stage
    #[arg(long, value_name = "LABEL")]
    pub by: Option<String>,
    /// Rules of the control charts, as in beyond-limits,ewma; also two-of-three,
    /// four-of-five, eight-in-a-row [default: beyond-limits,ewma]
    #[arg(long, value_name = "RULES", value_delimiter = ',')]
    pub rules: Vec<Rule>,
}

/// How it is said what a folder of cases came to.
#[derive(Debug, Default, Args)]
pub struct OutcomeArguments {
    /// Print the counts as JSON ('archproof schema batch' says what they mean)
    #[arg(long)]
    pub json: bool,
    /// Verdicts that set the exit status to 1, as in rework,retake
    #[arg(long, value_name = "VERDICTS", value_delimiter = ',')]
    pub fail_on: Vec<FailOn>,
}

/// A verdict that may set the exit status.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum FailOn {
    /// To be corrected, then a wash
    Rework,
    /// To be taken again
    Retake,
    /// Something is missing, or too close to call
    Undecided,
}

/// Join the results of all shards of a batch into one set of tables
///
/// The results of the cases stay where they are.
/// Exit status: same as 'archproof batch'.
#[derive(Debug, Args)]
pub struct CollectArguments {
    /// Result folders, one of each shard
    #[arg(required = true, value_name = "DIR")]
    pub folders: Vec<PathBuf>,
    /// Folder for the tables
    #[arg(long, value_name = "DIR")]
    pub out: PathBuf,
    #[command(flatten)]
    pub drift: DriftArguments,
    #[command(flatten)]
    pub outcome: OutcomeArguments,
    #[command(flatten)]
    pub spoken: Spoken,
}

/// Watch a folder and check each new case when its files are complete
///
/// Runs 'archproof batch --resume' repeatedly until it is stopped (Ctrl-C).
/// A case is checked again only when its files change.
#[derive(Debug, Args)]
pub struct WatchArguments {
    #[command(flatten)]
    pub of: FolderArguments,
    /// Seconds for which the files of a case must not have changed
    #[arg(long, value_name = "SECONDS", default_value_t = 10)]
    pub settle: u64,
}

/// Freeze the limits of the control charts from results of a time when all was well
///
/// Of each jaw and stage with 20 impressions or more: centre, standard deviation and
/// number of each charted figure, and the share that fails. 'archproof batch --baseline'
/// judges later cases by them.
#[derive(Debug, Args)]
pub struct BaselineArguments {
    /// Folder that 'archproof batch' or 'archproof collect' wrote
    pub dir: PathBuf,
    /// File to write; one that is there already is left alone
    #[arg(long, value_name = "FILE")]
    pub write: PathBuf,
    /// Label by which charts are kept apart, beside jaw and stage
    #[arg(long, value_name = "LABEL")]
    pub by: Option<String>,
    #[command(flatten)]
    pub spoken: Spoken,
}

/// Judge measured results again by other limits, without measuring again
///
/// Says which cases change their verdict, and why. A check is judged again only where
/// the results hold all its figures; otherwise the case counts as 'measure again', and
/// never as passed.
#[derive(Debug, Args)]
pub struct JudgeArguments {
    /// Folder that 'archproof batch' or 'archproof check' wrote
    pub dir: PathBuf,
    /// File with the limits to judge by
    #[arg(long, value_name = "FILE")]
    pub protocol: PathBuf,
    /// Print a line of JSON for each case ('archproof schema judge' says what it means)
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub spoken: Spoken,
}

/// Which cases of a folder are checked, and how.
#[derive(Debug, Args)]
pub struct FolderArguments {
    /// Folder with the cases
    pub folder: PathBuf,
    /// Folder for the results
    #[arg(long, value_name = "DIR")]
    pub out: PathBuf,
    /// Names of impression scans that are cases without a case file, as in '*-upper.ply'
    #[arg(long, value_name = "PATTERN")]
    pub scans: Option<NamePattern>,
    /// Names of their trays, the * standing for the same, as in '*-tray.stl'
    #[arg(long, value_name = "PATTERN", requires = "scans")]
    pub trays: Option<NamePattern>,
    /// Say that what the * stands for is a pseudonym, and name the cases by it
    #[arg(long, requires = "scans")]
    pub ids_from_names: bool,
    /// Jaw of the scans without a case file
    #[arg(long, requires = "scans")]
    pub arch: Option<ArchArgument>,
    /// Stage of their impressions [default: one-step]
    #[arg(long, requires = "scans")]
    pub stage: Option<StageArgument>,
    /// Unit of the scan files, if not mm
    #[arg(long, value_parser = unit_parser())]
    pub unit: Option<Unit>,
    /// File with your own acceptance limits
    #[arg(long, value_name = "FILE")]
    pub protocol: Option<PathBuf>,
    /// Write no report.html and no sheet for the cases
    #[arg(long)]
    pub no_report: bool,
    /// Language of reports, sheets and the page over all cases [default: the system's]
    #[arg(long, value_name = "LANGUAGE", value_parser = language_parser())]
    pub language: Option<Language>,
    /// Memory for the cases in hand, as in 8GiB or in bytes
    #[arg(long, value_name = "BYTES", default_value = "4GiB")]
    pub memory: ByteSize,
    /// Cases checked at a time [default: one for each core]
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..))]
    pub threads: Option<u16>,
    #[command(flatten)]
    pub drift: DriftArguments,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum SchemaArgument {
    /// result.json
    Result,
    /// A row of results.jsonl, summary.csv and summary.parquet
    Summary,
    /// A row of findings.jsonl, findings.csv and findings.parquet
    Findings,
    /// What `batch --json` prints
    Batch,
    /// A line of what `judge --json` prints
    Judge,
    /// What `inspect --json` prints
    Inspect,
    /// repeat.json
    Repeat,
    /// What `gauge --json` prints
    Gauge,
    /// What `agreement --json` prints
    Agreement,
    /// What `artefact --json` prints
    Artefact,
    /// What `control --json` prints
    Control,
    /// What `fit --json` prints
    Fit,
}
