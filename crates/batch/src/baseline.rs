//! A frozen baseline from the results of a batch.

use crate::error::BatchError;
use crate::output::Manifest;
use report::folder::Baseline;
use std::path::Path;

/// What the results that a batch wrote into a folder say of the process, by jaw, stage and
/// one label.
///
/// # Errors
/// When the folder holds no finished results, or too few of them.
pub fn baseline(folder: &Path, by: Option<String>) -> Result<Baseline, BatchError> {
    let how = Manifest::read(folder)?.conditions();
    Ok(Baseline::of_results(folder, &how, by)?)
}
