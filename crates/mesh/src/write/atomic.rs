//! All of a file, or what was there before.

use super::error::WriteError;
use std::io::{self, BufWriter, Write};
use std::path::Path;
use tempfile::NamedTempFile;

/// Writes a file by way of a temporary one in the same folder, which takes the
/// name only when it is complete. Whatever happens in between, a full disk or
/// a killed program, an earlier file of this name stays as it was.
///
/// # Errors
/// When the folder cannot be written to, the disk is full, or `contents` fails.
pub fn write_atomically(
    path: &Path,
    contents: impl FnOnce(&mut dyn Write) -> io::Result<()>,
) -> Result<(), WriteError> {
    write(path, contents).map_err(|source| WriteError::Io {
        path: path.to_owned(),
        source,
    })
}

fn write(path: &Path, contents: impl FnOnce(&mut dyn Write) -> io::Result<()>) -> io::Result<()> {
    let folder = match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    let mut file = temporary_in(folder)?;
    let mut writer = BufWriter::with_capacity(1 << 16, &mut file);
    contents(&mut writer)?;
    writer.flush()?;
    drop(writer);
    file.persist(path).map_err(|error| error.error)?;
    Ok(())
}

/// A file that has no name of its own yet, to be given one with `persist`.
///
/// # Errors
/// When the folder cannot be written to.
pub fn temporary_in(folder: &Path) -> io::Result<NamedTempFile> {
    let mut builder = tempfile::Builder::new();
    builder.prefix(".writing-").suffix(".tmp");
    // A temporary file is private by default; a result is an ordinary file,
    // as private as the user's umask says.
    #[cfg(unix)]
    let ordinary = std::os::unix::fs::PermissionsExt::from_mode(0o666);
    #[cfg(unix)]
    builder.permissions(ordinary);
    builder.tempfile_in(folder)
}
