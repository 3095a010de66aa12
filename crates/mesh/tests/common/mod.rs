//! Shared data, which may be absent.
#![allow(dead_code)]

use std::path::{Path, PathBuf};

/// A folder of the shared data, or `None`, said on standard error, where it
/// is absent.
pub fn shared(folder: &str) -> Option<PathBuf> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../../shared/data")
        .join(folder);
    if path.is_dir() {
        Some(path)
    } else {
        eprintln!("skipped: no folder ../shared/data/{folder}");
        None
    }
}

/// Every file below a folder, in order.
pub fn files_below(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            files.extend(files_below(&path));
        } else {
            files.push(path);
        }
    }
    files.sort();
    files
}
