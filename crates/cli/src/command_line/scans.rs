//! What may be said to the commands that look at scans without judging them.

use super::Spoken;
use arguments::{ArchArgument, StageArgument, unit_parser};
use clap::Args;
use mesh::Unit;
use std::path::PathBuf;

/// Say which of your stock trays fits a mouth
///
/// For each tray: the place of most even clearance, the least and the median clearance there,
/// where it touches, and the distance from its edge to the border. Exit status: 0 take one as
/// it is; 1 none fits as it is; 3 no tray of this jaw; 2 wrong use or unreadable input.
#[derive(Debug, Args)]
pub struct FitArguments {
    /// Scan of an impression, of the mouth or of a cast (STL, PLY, OBJ)
    pub scan: PathBuf,
    /// Folder with scans of your empty stock trays [default: that of the protocol]
    #[arg(long, value_name = "DIR")]
    pub trays: Option<PathBuf>,
    /// Jaw (upper and lower are understood, too)
    #[arg(long)]
    pub arch: Option<ArchArgument>,
    /// Unit of the scan, if not mm
    #[arg(long, value_parser = unit_parser())]
    pub unit: Option<Unit>,
    /// File with your own acceptance limits
    #[arg(long, value_name = "FILE")]
    pub protocol: Option<PathBuf>,
    /// Write a page with a picture of each tray in the mouth to this new file
    #[arg(long, value_name = "FILE")]
    pub write: Option<PathBuf>,
    /// Print the figures as JSON
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub spoken: Spoken,
}

/// List scans with size, unit, kind and quality, one row per file
///
/// Columns: size, mm; unit (with a question mark where it is in doubt); what the
/// scan shows; sides scanned; number of connected parts, of boundary loops and of
/// faults (non-manifold edges and triangles without area); median edge, mm; noise,
/// mm; the file's name and remarks.
/// Exit status: 0; 2 if any file could not be read, which is said in its row.
#[derive(Debug, Args)]
pub struct InspectArguments {
    /// Scans (STL, PLY, OBJ), or folders to look through
    #[arg(required = true, value_name = "SCAN|FOLDER")]
    pub scans: Vec<PathBuf>,
    /// Unit of the scan files, if not mm
    #[arg(long, value_parser = unit_parser())]
    pub unit: Option<Unit>,
    /// Print the rows as JSON
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub spoken: Spoken,
}

/// Propose a case file from the scans in a folder
///
/// Each scan is looked at: which is an impression and of which jaw, which a tray and
/// whose, which the jaw-relation record, and of two impressions of one jaw which is the
/// wash. A table says what each was taken for, how surely and why. What the surfaces
/// do not show is asked about or, without a terminal, left out of the case file as a
/// comment. A folder of such folders gets one case file in each.
/// Exit status: 0 nothing left open; 3 a question is left open; 2 wrong use.
#[derive(Debug, Args)]
pub struct NewArguments {
    /// Folder with the scans of a case, or with such folders
    pub folder: PathBuf,
    /// Pseudonyms, a CSV file with the columns folder, id [default: made from checksums]
    #[arg(long, value_name = "FILE")]
    pub ids: Option<PathBuf>,
    /// Stage of each impression that is the only one of its jaw
    #[arg(long)]
    pub stage: Option<StageArgument>,
    /// Unit of the scan files, if not mm
    #[arg(long, value_parser = unit_parser())]
    pub unit: Option<Unit>,
    /// Ask nothing; what is in doubt is left out
    #[arg(long)]
    pub yes: bool,
    /// Replace a case file that is there already
    #[arg(long)]
    pub force: bool,
    #[command(flatten)]
    pub spoken: Spoken,
}
