//! Files that must not be there yet.

use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use std::io::{self, Write};
use std::path::Path;

/// Writes a file that must not be there yet, whole or not at all.
pub fn write_new(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    uninterrupted(|| written(path, bytes)).map_err(|source| Failure::NewFile {
        path: path.to_owned(),
        source,
    })
}

fn written(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let folder = path
        .parent()
        .filter(|folder| !folder.as_os_str().is_empty());
    let mut aside = tempfile::NamedTempFile::new_in(folder.unwrap_or(Path::new(".")))?;
    aside.write_all(bytes)?;
    aside
        .persist_noclobber(path)
        .map_err(|refused| refused.error)?;
    Ok(())
}
