//! Data that are shared between projects are not copied into this one.

use crate::common::{assert_none, repo};
use crate::top_level::kept_files;
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use walkdir::WalkDir;

#[test]
fn no_shared_file_is_copied_here() {
    let shared = repo().join("../shared/data");
    let mut kept: BTreeMap<u64, Vec<PathBuf>> = BTreeMap::new();
    for path in kept_files() {
        let path = repo().join(path);
        // Files of no bytes are all alike.
        if let Ok(found) = fs::metadata(&path)
            && found.len() > 0
        {
            kept.entry(found.len()).or_default().push(path);
        }
    }
    let mut copied = Vec::new();
    for entry in WalkDir::new(shared).into_iter().filter_map(Result::ok) {
        let size = entry.metadata().map_or(0, |found| found.len());
        let Some(alike) = kept.get(&size).filter(|_| entry.file_type().is_file()) else {
            continue;
        };
        let wanted = digest(entry.path());
        let copies = alike.iter().filter(|path| digest(path) == wanted);
        copied.extend(copies.map(|path| format!("{} is shared data", path.display())));
    }
    assert_none(&copied);
}

fn digest(path: &Path) -> Vec<u8> {
    Sha256::digest(fs::read(path).unwrap()).to_vec()
}
