//! The one way through the house: the scans of a case are read, measured and
//! judged.
//!
//! The command, the batch run and the window all go this way, so that one case
//! has one result wherever it is looked at. [`CaseSource`] says how a case is
//! given; [`check_case`] carries it through.
//!
//! ```
//! use check::CaseSource;
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! # let folder = tempfile::tempdir()?;
//! let made = phantom::Phantom::new(&phantom::Options { edge_mm: 0.9, ..Default::default() });
//! let [scan, tray] = ["upper.ply", "tray.ply"].map(|name| folder.path().join(name));
//! mesh::write::write_ply(&scan, &made.impression)?;
//! mesh::write::write_ply(&tray, &made.tray)?;
//!
//! let source = CaseSource { tray: Some(tray), ..CaseSource::of(&scan) };
//! let case = source.case(|statement| "what is said of the scan")?;
//! let checked = source.check(case, &|step| { /* shown as it goes on */ })?;
//! assert!(checked.impressions[0].measured().is_some());
//! # Ok(())
//! # }
//! ```

#![cfg_attr(test, allow(clippy::unwrap_used))]
#![warn(unreachable_pub)]

mod case_source;
mod clock;
mod load;
mod parts;
mod pieces;
pub mod proposal;
pub mod reader;
mod road;
mod several;
mod shelf;
mod shelf_fit;
mod trays;

pub use case_source::{CaseSource, CheckError, NameOf, Statement};
pub use clock::{Clock, Timing};
pub use load::{LoadedScan, load, load_all};
pub use parts::CheckedParts;
pub use pieces::CheckedPieces;
pub use road::{
    CaseNotRead, CheckOptions, CheckedAsSent, CheckedCase, CheckedImpression, CheckedPair, Step,
    check_case, judged,
};
pub use shelf::{CheckedShelf, NamedTrial, Shelf, ShelfError, Shelves};
pub use shelf_fit::{CheckedFit, FitError, FitSource, SuitedTrays};
pub use trays::CheckedRelief;
