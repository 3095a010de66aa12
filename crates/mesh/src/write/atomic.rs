//! All of a file, or what was there before.

use super::error::WriteError;
use std::ffi::OsStr;
use std::io::{self, BufWriter, Write};
use std::path::{Path, PathBuf};
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
    let name = path.file_name().ok_or(io::ErrorKind::InvalidFilename)?;
    let mut file = temporary_in(folder)?;
    let mut writer = BufWriter::with_capacity(1 << 16, &mut file);
    contents(&mut writer)?;
    writer.flush()?;
    drop(writer);
    persist(file, name)
}

/// Gives a temporary file its name, in the folder where it lies; an earlier file of
/// this name is replaced.
///
/// # Errors
/// When the folder cannot be written to, or something else is in the way.
pub fn persist(file: NamedTempFile, name: impl AsRef<OsStr>) -> io::Result<()> {
    let place = file.path().with_file_name(name);
    file.persist(place).map_err(|refused| refused.error)?;
    Ok(())
}

/// A file that has no name of its own yet, to be given one with [`persist`].
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
    builder.tempfile_in(of_any_length(folder))
}

/// A folder as the system takes it whatever its length: the call of Windows that gives a
/// temporary file its name refuses ordinary paths of 260 characters and more.
fn of_any_length(folder: &Path) -> PathBuf {
    let whole = cfg!(windows).then(|| folder.canonicalize().ok()).flatten();
    whole.unwrap_or_else(|| folder.to_owned())
}
