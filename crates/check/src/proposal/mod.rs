//! A case proposed from the scans of a folder: what each scan is, and which
//! belong together.
//!
//! [`look`] gathers the evidence from the surfaces, [`propose`] draws the
//! conclusions from it and from what a person has stated, and [`case_text`]
//! writes them as a case file. What the surfaces leave in doubt is a
//! [`Question`]; a file's name or time settles nothing.

mod case_text;
mod concluded;
mod draft;
mod evidence;
mod folder;
mod impressions;
mod looking;
mod names;
mod proposing;
mod question;
mod role;
mod table;

pub use case_text::{NameNotText, case_text, neutral_id};
pub use concluded::{Placed, Proposal, Stated};
pub use evidence::{Couple, Evidence, Layers, NoRecord, RecordTrial, SeenScan, Shows, TrayTrial};
pub use folder::{
    CASE_FILE, ProposalError, case_folders, is_scan, scans_in, write_another_case, write_case,
};
pub use looking::{Looking, look};
pub use proposing::propose;
pub use question::{Choice, Question};
pub use role::{Role, Surety};
pub use table::{file_name, table};
