//! Files that must not be there yet.

use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use mesh::write::temporary_in;
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
    let mut aside = temporary_in(folder.unwrap_or(Path::new(".")))?;
    aside.write_all(bytes)?;
    let name = path.file_name().ok_or(io::ErrorKind::InvalidFilename)?;
    let place = aside.path().with_file_name(name);
    aside
        .persist_noclobber(place)
        .map_err(|refused| refused.error)?;
    Ok(())
}
