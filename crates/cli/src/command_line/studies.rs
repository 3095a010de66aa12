//! What may be said to the commands that study a scanner or a method of measuring.

use super::Spoken;
use arguments::{ArchArgument, Source, unit_parser};
use clap::Args;
use mesh::Unit;
use statistics::control::Rule;
use std::path::{Path, PathBuf};

/// Check a scanner on a reference artefact with spheres and steps of certified sizes
///
/// Errors of diameters and centre distances, in the sense of ISO 12836 and ISO
/// 10360, and whether each is within the limit that the description states.
/// Exit status: 0 all conforming; 1 something not conforming; 3 borderline, or
/// no limit stated; 2 wrong use, or the artefact is not in a scan.
#[derive(Debug, Args)]
pub struct ArtefactArguments {
    /// Description of the artefact, a TOML file (see 'archproof help measuring')
    pub description: PathBuf,
    /// Scans of it, in any pose
    #[arg(required = true, value_name = "SCAN")]
    pub scans: Vec<PathBuf>,
    /// Unit of the scan files, if not mm
    #[arg(long, value_parser = unit_parser())]
    pub unit: Option<Unit>,
    /// Write what the scans say of the scanner to this new file; name it as 'scanner'
    /// in the case file or in the protocol
    #[arg(long, value_name = "FILE")]
    pub write: Option<PathBuf>,
    /// Print all of it as JSON
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub spoken: Spoken,
}

/// Say whether measuring is in control, by a check standard measured again and again
///
/// The folder holds results of one impression ('archproof check --out DIR/WEEK') or of the
/// reference artefact ('archproof artefact … --json > DIR/WEEK.json'), one for each time.
/// They are put in order by the times of their scan files.
/// Exit status: 0 in control at the latest measurement; 1 out of control; 3 too few; 2 wrong use.
#[derive(Debug, Args)]
pub struct ControlArguments {
    /// Folder with the results
    pub dir: PathBuf,
    /// Measurements, from the first, that the limits are made from (8 or more)
    #[arg(long, value_name = "N", default_value_t = 20, value_parser = clap::value_parser!(u16).range(8..))]
    pub first: u16,
    /// Rules of the control charts, as in 'archproof batch' [default: beyond-limits,ewma]
    #[arg(long, value_name = "RULES", value_delimiter = ',')]
    pub rules: Vec<Rule>,
    /// Write a page with the charts to this new file
    #[arg(long, value_name = "FILE")]
    pub write: Option<PathBuf>,
    /// Print all of it as JSON
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub spoken: Spoken,
}

/// Compare the verdicts of people with each other and with the program
///
/// By the share of agreement beyond chance (Cohen's and Fleiss' kappa), and by what each
/// rater misses and fails beside a chosen one.
#[derive(Debug, Args)]
pub struct AgreementArguments {
    /// CSV file with a column 'case' and one for each rater, under a code for them;
    /// a cell holds a verdict, as accept or rework, or nothing
    pub verdicts: PathBuf,
    /// Column that the others are compared with: what they missed, and false alarms
    #[arg(long, value_name = "RATER")]
    pub beside: Option<String>,
    /// Print the study as JSON
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub spoken: Spoken,
}

/// Analyse a gauge repeatability and reproducibility study
///
/// By analysis of variance of two crossed random factors. Where operators do
/// not differ from part to part (p above 0.25), that is pooled with the repeats.
#[derive(Debug, Args)]
pub struct GaugeArguments {
    /// CSV file with the columns operator, part, repeat, value; or a folder with
    /// OPERATOR/PART/REPEAT, each repeat a scan or a result folder
    pub study: PathBuf,
    /// Least that the readings of a table may be, to compare the gauge with
    #[arg(long, value_name = "VALUE", allow_negative_numbers = true)]
    pub least: Option<f64>,
    /// Most that the readings of a table may be
    #[arg(long, value_name = "VALUE", allow_negative_numbers = true)]
    pub most: Option<f64>,
    /// Print the study as JSON
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub spoken: Spoken,
    #[command(flatten)]
    pub scans: ScanArguments,
}

/// Compare repeated scans of one impression
///
/// The scans are aligned with the first. Reports the spread at each point, the
/// regions where the scans differ by more than noise and alignment explain, and
/// the repeatability standard deviation of each figure that 'check' gives.
#[derive(Debug, Args)]
pub struct RepeatArguments {
    /// Scans of one impression, two or more
    #[arg(required = true, num_args = 2.., value_name = "SCAN")]
    pub scans: Vec<PathBuf>,
    /// Folder for repeat.json and the map spread.ply
    #[arg(long, value_name = "DIR", default_value = "archproof-repeat")]
    pub out: PathBuf,
    /// repeat.json of an earlier study: judge the ranges by its standard deviations
    #[arg(long, value_name = "FILE")]
    pub known: Option<PathBuf>,
    /// Print repeat.json instead of the summary
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub spoken: Spoken,
    #[command(flatten)]
    pub how: ScanArguments,
}

/// How scans are checked of which there are several.
#[derive(Debug, Args)]
#[command(next_help_heading = "How scans are checked")]
pub struct ScanArguments {
    /// Jaw of the impressions
    #[arg(long)]
    pub arch: Option<ArchArgument>,
    /// Scan of the empty tray of them all
    #[arg(long, value_name = "SCAN")]
    pub tray: Option<PathBuf>,
    /// Unit of the scan files, if not mm
    #[arg(long, value_parser = unit_parser())]
    pub unit: Option<Unit>,
    /// Protocol file, for the depth at which flange thickness is taken
    #[arg(long, value_name = "FILE")]
    pub protocol: Option<PathBuf>,
}

impl ScanArguments {
    /// How one of the scans is checked.
    pub fn source(&self, scan: &Path) -> Source {
        Source {
            arch: self.arch,
            tray: self.tray.clone(),
            unit: self.unit,
            protocol: self.protocol.clone(),
            ..Source::of(scan)
        }
    }
}
