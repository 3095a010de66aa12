//! Ordinary files that are no scans: read whole, if they are no larger than such a file is.

use std::fs::{File, metadata};
use std::io::{Error, ErrorKind, Read};
use std::path::Path;

/// Most bytes of a settings file: case, limits, landmarks, decisions.
pub const MAX_SETTINGS_BYTES: u64 = 1 << 20;
/// Most bytes of a table or a result that is read back.
pub const MAX_TABLE_BYTES: u64 = 256 << 20;

/// The bytes of an ordinary file of at most so many.
///
/// # Errors
/// When it cannot be read, is larger, or is no ordinary file: a pipe would keep its reader
/// waiting.
pub fn bounded(path: &Path, most: u64) -> Result<Vec<u8>, Error> {
    let too_large = || {
        let size = match most >> 20 {
            0 => format!("{most} bytes"),
            mebibytes => format!("{mebibytes} MiB"),
        };
        let why = format!("it is larger than {size}, the most that such a file may be");
        Error::new(ErrorKind::InvalidData, why)
    };
    // Looked at before it is opened: opening a pipe would wait for a writer.
    let about = metadata(path)?;
    if about.is_dir() {
        return Err(Error::new(ErrorKind::InvalidInput, "it is a folder"));
    }
    if !about.is_file() {
        return Err(Error::new(
            ErrorKind::InvalidInput,
            "it is no ordinary file",
        ));
    }
    if about.len() > most {
        return Err(too_large());
    }
    let mut bytes = Vec::new();
    File::open(path)?.take(most + 1).read_to_end(&mut bytes)?;
    if bytes.len() as u64 > most {
        return Err(too_large());
    }
    Ok(bytes)
}

/// The text of a settings file.
///
/// # Errors
/// As for [`bounded`], and when it is not UTF-8.
pub fn settings_text(path: &Path) -> Result<String, Error> {
    let bytes = bounded(path, MAX_SETTINGS_BYTES)?;
    let why = |_| Error::new(ErrorKind::InvalidData, "it is not text in UTF-8");
    String::from_utf8(bytes).map_err(why)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_file_may_be_as_large_as_is_allowed_and_no_larger() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("file");
        std::fs::write(&file, [7; 10]).unwrap();
        assert_eq!(bounded(&file, 10).unwrap(), [7; 10]);
        let why = bounded(&file, 9).unwrap_err().to_string();
        assert_eq!(
            why,
            "it is larger than 9 bytes, the most that such a file may be"
        );
    }

    #[test]
    fn a_file_too_large_is_refused_unread() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("case.toml");
        File::create(&path)
            .unwrap()
            .set_len(MAX_SETTINGS_BYTES + 1)
            .unwrap();
        let why = settings_text(&path).unwrap_err().to_string();
        assert!(why.contains("larger than 1 MiB"), "{why}");
    }

    #[cfg(unix)]
    #[test]
    fn a_device_is_refused() {
        let why = settings_text(Path::new("/dev/zero"))
            .unwrap_err()
            .to_string();
        assert_eq!(why, "it is no ordinary file");
    }
}
