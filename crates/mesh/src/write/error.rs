//! Why a mesh was not written.

use crate::read::shown_path;
use std::io::{self, ErrorKind};
use std::path::PathBuf;
use thiserror::Error;

/// Why a file could not be written; its text is one line for people.
#[derive(Debug, Error)]
#[non_exhaustive]
pub enum WriteError {
    /// The system refused.
    #[error("{}: could not be written: {}", shown_path(.path), advice(.source))]
    Io {
        /// The file that was to be.
        path: PathBuf,
        /// What the system reports.
        source: io::Error,
    },
    /// The mesh does not fit the format.
    #[error("{}: could not be written: {reason}", shown_path(.path))]
    Content {
        /// The file that was to be.
        path: PathBuf,
        /// What does not fit.
        reason: EncodeError,
    },
}

/// Why a mesh cannot be put into a format.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum EncodeError {
    /// A figure per vertex of another number than the vertices.
    #[error("'{name}' has {values} values for {vertices} vertices")]
    ScalarCount {
        /// Name of the figure.
        name: String,
        /// Length of its list.
        values: usize,
        /// Number of vertices.
        vertices: usize,
    },
    /// A name that a PLY header cannot hold, or that is taken.
    #[error("'{}' cannot name a figure per vertex; use letters, digits and _", .0.escape_default())]
    ScalarName(String),
    /// A name by whose ending no format is known.
    #[error("end its name in .ply, .stl or .obj")]
    Ending,
    /// A format that cannot hold the colours of the mesh.
    #[error("this format holds no colour, and the scan has some; end the name in .ply")]
    NoColour,
    /// More triangles than the format can count.
    #[error("{0} triangles are more than a binary STL can count (4,294,967,295)")]
    TooManyTriangles(usize),
}

fn advice(error: &io::Error) -> String {
    match error.kind() {
        ErrorKind::NotFound => "its folder does not exist; make it first".into(),
        ErrorKind::PermissionDenied => {
            "its folder may not be written to; choose another folder".into()
        }
        ErrorKind::ReadOnlyFilesystem => "the disk is read-only; choose another folder".into(),
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => {
            "the disk is full; make room and try again".into()
        }
        ErrorKind::IsADirectory | ErrorKind::DirectoryNotEmpty => {
            "a folder has this name; choose another name".into()
        }
        ErrorKind::NotADirectory => "its folder is a file; choose another folder".into(),
        _ => format!("{error}; check the folder and the disk"),
    }
}
