//! A folder of cases: found, admitted by their size, checked side by side,
//! taken up again after a stop, joined from shards, watched. Every case goes
//! the one way of [`check::check_case`] and has a result folder of its own.
//!
//! A case is known by its *place*: its path below the folder that was given. Its
//! results lie in a folder named after its pseudonym and the SHA-256 of the
//! place, so that no two cases ever share one, and the shard that it belongs to
//! follows from that digest alone. Names of files reach `inputs.csv`, which is
//! the operator's own, and no result.
//!
//! ```no_run
//! use batch::{Job, Settings, Shard};
//! use judge::{Protocol, Stage};
//! use report::Language;
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! let options = check::CheckOptions { unit: None, protocol: Protocol::default(), shelves: check::Shelves::default() };
//! let (arch, stage) = (None, Stage::Single);
//! let settings = Settings { options, arch, stage, ids_from_names: false, no_report: false, language: Language::English };
//! let (out, shard) = ("results".into(), Shard::WHOLE);
//! let drift = report::folder::DriftOptions::default();
//! let job = Job { out, settings, threads: 2, memory: 4 << 30, resume: false, shard, drift };
//!
//! let found = batch::find("cases".as_ref(), None)?;
//! let overview = batch::run(&found, &job, &|step| { /* shown as it goes on */ })?;
//! # Ok(())
//! # }
//! ```

#![cfg_attr(test, allow(clippy::unwrap_used))]

mod again;
mod baseline;
mod budget;
mod digest;
mod error;
mod find;
mod given;
mod joined;
mod one;
mod output;
mod pattern;
mod run;
mod settings;
mod shard;
mod watching;

pub use again::judge_again;
pub use baseline::baseline;
pub use error::BatchError;
pub use find::{Found, Source, find};
pub use joined::collect;
pub use output::{Input, Manifest, read_inputs};
pub use pattern::{NamePattern, Pattern, PatternError};
pub use run::{Job, Progress, run};
pub use settings::Settings;
pub use shard::{Shard, ShardError};
pub use watching::watch;
