//! Why a file was not written.

use judge::system_says;
use mesh::read::shown_path;
use mesh::write::{EncodeError, WriteError};
use messages::{Message, message};
use std::io::ErrorKind;

/// Why a scan or a text was not written, as a message that names the file.
#[must_use]
pub fn not_written(error: &WriteError) -> Message {
    match error {
        WriteError::Io { path, source } => {
            let path = shown_path(path);
            match source.kind() {
                ErrorKind::NotFound => message!("unwritten-no-folder", path = path),
                ErrorKind::PermissionDenied => message!("unwritten-permission", path = path),
                ErrorKind::ReadOnlyFilesystem => message!("unwritten-read-only", path = path),
                ErrorKind::StorageFull | ErrorKind::QuotaExceeded => {
                    message!("unwritten-full", path = path)
                }
                ErrorKind::IsADirectory | ErrorKind::DirectoryNotEmpty => {
                    message!("unwritten-folder-there", path = path)
                }
                ErrorKind::NotADirectory => message!("unwritten-file-there", path = path),
                _ => message!("unwritten-other", path = path, reason = system_says(source)),
            }
        }
        WriteError::Content { path, reason } => message!(
            "unwritten-content",
            path = shown_path(path),
            reason = not_encoded(reason)
        ),
        // Other refusals may come.
        other => Message::verbatim(other.to_string()),
    }
}

fn not_encoded(reason: &EncodeError) -> Message {
    match reason {
        EncodeError::Ending => message!("encode-ending"),
        EncodeError::NoColour => message!("encode-no-colour"),
        EncodeError::TooManyTriangles(triangles) => {
            message!("encode-too-many", triangles = triangles.to_string())
        }
        // Of figures that the program itself adds: nobody can mend them.
        other => Message::verbatim(other.to_string()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io;
    use std::path::PathBuf;

    #[test]
    fn the_catalogue_says_in_english_what_the_writers_say() {
        let path = || PathBuf::from("out.ply");
        let kinds = [
            ErrorKind::NotFound,
            ErrorKind::PermissionDenied,
            ErrorKind::ReadOnlyFilesystem,
            ErrorKind::StorageFull,
            ErrorKind::IsADirectory,
            ErrorKind::NotADirectory,
            ErrorKind::TimedOut,
        ];
        let of_system = kinds.map(|kind| WriteError::Io {
            path: path(),
            source: io::Error::from(kind),
        });
        let of_content = [
            EncodeError::Ending,
            EncodeError::NoColour,
            EncodeError::TooManyTriangles(5_000_000_000),
        ]
        .map(|reason| WriteError::Content {
            path: path(),
            reason,
        });
        for error in of_system.into_iter().chain(of_content) {
            let said = not_written(&error);
            assert_eq!(said.to_string(), error.to_string());
            assert_ne!(said.key(), "verbatim", "{error}");
        }
    }
}
