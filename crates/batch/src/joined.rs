//! Joins the results of shards into one set of tables.

use crate::error::BatchError;
use crate::output::{Manifest, read_inputs, write_tables};
use crate::shard::Shard;
use report::Language;
use report::folder::{Conditions, DriftOptions, Overview};
use same_file::is_same_file;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// Joins the tables of these result folders, which must be all shards of one
/// batch, each finished, and makes the page over them in a language. The results of the cases
/// stay where they are.
///
/// # Errors
/// When a shard is missing, unfinished, given twice or of another batch, or the
/// tables cannot be written.
pub fn collect(
    folders: &[PathBuf],
    out: &Path,
    drift: &DriftOptions,
    language: Language,
) -> Result<Overview, BatchError> {
    let manifests: Vec<Manifest> = folders
        .iter()
        .map(|folder| Manifest::read(folder))
        .collect::<Result<_, _>>()?;
    let Some(first) = manifests.first() else {
        return Err(BatchError::Missing("1".to_owned()));
    };
    let mut seen = BTreeSet::new();
    for (manifest, folder) in manifests.iter().zip(folders) {
        let alike = (
            &manifest.program,
            &manifest.settings_sha256,
            manifest.shards,
        ) == (&first.program, &first.settings_sha256, first.shards);
        if !alike {
            return Err(BatchError::Unlike(folder.clone()));
        }
        if !seen.insert(manifest.shard) {
            return Err(BatchError::Twice {
                path: folder.clone(),
                shard: manifest.shard,
            });
        }
    }
    let missing: Vec<String> = (1..=first.shards)
        .filter(|number| !seen.contains(number))
        .map(|number| number.to_string())
        .collect();
    if !missing.is_empty() {
        return Err(BatchError::Missing(missing.join(", ")));
    }
    let mut cases = Vec::new();
    for folder in folders {
        let inputs = read_inputs(folder)?;
        cases.extend(inputs.into_iter().map(|input| (folder.as_path(), input)));
    }
    fs::create_dir_all(out).map_err(BatchError::write(out))?;
    if folders
        .iter()
        .any(|folder| is_same_file(folder, out).unwrap_or(false))
    {
        return Err(BatchError::IntoItself(out.to_owned()));
    }
    let conditions = Conditions {
        program: first.program.clone(),
        protocol: first.protocol.clone(),
        protocol_sha256: first.protocol_sha256.clone(),
        shard: None,
        shards: first.shards,
    };
    let about = Manifest {
        shard: Shard::WHOLE.number,
        shards: Shard::WHOLE.of,
        ..first.clone()
    };
    write_tables(out, cases, (conditions, (drift, language)), about)
}
