//! Getting at the bytes of a scan, with a reason of its own for each way in
//! which that can fail.

use super::error::OpenError;
use super::limits::{MAX_FILE_BYTES, MAX_TRIANGLES};
use super::{ply_header, stl_binary};
use std::fs::{self, File, Metadata};
use std::io::{ErrorKind, Read, Seek, SeekFrom};
use std::path::Path;

/// The beginning of a file that is looked at before the rest is read.
const PEEK: u64 = 1 << 16;

/// Bytes of a file, or why they are not worth reading.
pub(super) enum Bytes {
    /// All of them.
    Read(Vec<u8>),
    /// The beginning says that there are more triangles than are ever read.
    TooManyTriangles,
}

/// Reads an ordinary file whole.
pub(super) fn bytes_of(path: &Path) -> Result<Bytes, OpenError> {
    // Looked at before it is opened: opening a pipe would wait for a writer.
    let metadata = fs::metadata(path).map_err(|error| reason(path, error))?;
    check(&metadata)?;
    let mut file = File::open(path).map_err(|error| reason(path, error))?;
    let metadata = file.metadata().map_err(OpenError::Io)?;
    check(&metadata)?;
    let before = metadata.len();

    let mut bytes = Vec::new();
    (&file)
        .take(PEEK)
        .read_to_end(&mut bytes)
        .map_err(OpenError::Io)?;
    if declares_too_many_triangles(&bytes, before) {
        return Ok(Bytes::TooManyTriangles);
    }
    file.seek(SeekFrom::Start(0)).map_err(OpenError::Io)?;
    bytes.clear();
    bytes.reserve_exact(usize::try_from(before).unwrap_or(0).saturating_add(1));
    (&file)
        .take(MAX_FILE_BYTES + 1)
        .read_to_end(&mut bytes)
        .map_err(OpenError::Io)?;
    let after = file.metadata().map_err(OpenError::Io)?.len();
    for after in [bytes.len() as u64, after] {
        if after != before {
            return Err(OpenError::Changed { before, after });
        }
    }
    Ok(Bytes::Read(bytes))
}

fn check(metadata: &Metadata) -> Result<(), OpenError> {
    if metadata.is_dir() {
        Err(OpenError::Directory)
    } else if !metadata.is_file() {
        Err(OpenError::Special)
    } else if metadata.len() > MAX_FILE_BYTES {
        Err(OpenError::TooLarge(metadata.len()))
    } else {
        Ok(())
    }
}

fn reason(path: &Path, error: std::io::Error) -> OpenError {
    let is_link = fs::symlink_metadata(path).is_ok_and(|m| m.is_symlink());
    match error.kind() {
        ErrorKind::NotFound if is_link => OpenError::DanglingLink,
        ErrorKind::NotFound | ErrorKind::NotADirectory => OpenError::Missing,
        ErrorKind::PermissionDenied => OpenError::PermissionDenied,
        // A link that can be seen but not followed, and not for want of a
        // target or a permission, goes round.
        _ if is_link => OpenError::LinkLoop,
        _ => OpenError::Io(error),
    }
}

fn declares_too_many_triangles(beginning: &[u8], size: u64) -> bool {
    let stl = stl_binary::declared(beginning)
        .is_some_and(|n| n > MAX_TRIANGLES && stl_binary::size_for(n) == size);
    stl || ply_header::begins(beginning)
        && ply_header::parse_within(beginning, size)
            .is_ok_and(|h| h.element("face").is_some_and(|f| f.count > MAX_TRIANGLES))
}
