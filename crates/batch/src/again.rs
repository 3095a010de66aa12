//! Results judged again by other limits, in the order of their folders.

use crate::error::BatchError;
use judge::Protocol;
use rayon::prelude::*;
use report::again::{CaseAgain, judge_again as of_result};
use report::{RESULT_FILE, read_result};
use std::fs;
use std::path::Path;

/// Results in hand at a time: memory does not grow with their number.
const IN_HAND: usize = 64;

/// Judges the results in a folder again by other limits; each case is given to `each` with
/// the name of its result folder. The folder is one that a batch wrote, or holds one result.
/// Gives the number of cases that hold no result, since they could not be read.
///
/// # Errors
/// When there are no results, one cannot be read, or `each` says why it cannot go on.
pub fn judge_again<E: From<BatchError>>(
    folder: &Path,
    protocol: &Protocol,
    mut each: impl FnMut(&str, CaseAgain) -> Result<(), E>,
) -> Result<u64, E> {
    if folder.join(RESULT_FILE).exists() {
        let result = read_result(folder).map_err(BatchError::from)?;
        each("", of_result(&result, protocol))?;
        return Ok(0);
    }
    let cases = folder.join("cases");
    let names = names_in(&cases).map_err(|_| BatchError::NoResults(folder.to_owned()))?;
    let mut without = 0;
    for some in names.chunks(IN_HAND) {
        let judged: Vec<_> = some
            .par_iter()
            .map(|name| {
                let case = cases.join(name);
                let holds_result = case.join(RESULT_FILE).exists();
                let result = holds_result.then(|| read_result(&case)).transpose()?;
                Ok(result.map(|result| of_result(&result, protocol)))
            })
            .collect::<Result<_, BatchError>>()?;
        for (name, again) in some.iter().zip(judged) {
            match again {
                Some(again) => each(name, again)?,
                None => without += 1,
            }
        }
    }
    Ok(without)
}

/// Names of the folders of cases, in order; at least one.
fn names_in(cases: &Path) -> std::io::Result<Vec<String>> {
    let mut names = Vec::new();
    for entry in fs::read_dir(cases)? {
        let name = entry?.file_name().to_string_lossy().into_owned();
        if !name.starts_with('.') {
            names.push(name);
        }
    }
    names.sort();
    if names.is_empty() {
        return Err(std::io::ErrorKind::NotFound.into());
    }
    Ok(names)
}
