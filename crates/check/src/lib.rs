//! The one way through the house: the scans of a case are read, measured and
//! judged.
//!
//! The command, the batch run and the window all go this way, so that one case
//! has one result wherever it is looked at. [`CaseSource`] says how a case is
//! given; [`check_case`] carries it through.

#![cfg_attr(test, allow(clippy::unwrap_used))]
#![warn(unreachable_pub)]

mod case_source;
mod load;
mod road;

pub use case_source::{CaseSource, CheckError, NameOf, Statement};
pub use load::{LoadedScan, load, load_all};
pub use road::{
    CheckOptions, CheckedCase, CheckedImpression, CheckedPair, Step, check_case, judged,
};
