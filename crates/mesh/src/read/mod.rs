//! Reading scans.

use crate::{Mesh, MeshError};
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Container and encoding of a scan file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Format {
    /// Binary STL.
    StlBinary,
    /// ASCII STL.
    StlAscii,
    /// Binary little-endian PLY.
    PlyBinaryLe,
    /// Binary big-endian PLY.
    PlyBinaryBe,
    /// ASCII PLY.
    PlyAscii,
    /// Wavefront OBJ, geometry only.
    Obj,
}

/// A scan as read from its file, in the file's own unit.
#[derive(Debug, Clone)]
pub struct Scan {
    /// The surface, exactly equal vertices welded.
    pub mesh: Mesh,
    /// Where it was read from.
    pub path: PathBuf,
    /// SHA-256 of the file's bytes, lower-case hexadecimal.
    pub sha256: String,
    /// What the bytes were (contents decide, not the name).
    pub format: Format,
    /// What was odd about the file and how it was read all the same.
    pub warnings: Vec<ReadWarning>,
}

/// Something odd in a file that could be read all the same.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum ReadWarning {}

/// Why a file could not be read; its text is one line for people.
#[derive(Debug, Error)]
#[non_exhaustive]
pub enum ReadError {
    /// The parts do not make a mesh.
    #[error("{}: {source}; export the scan again", .path.display())]
    Mesh {
        /// The file.
        path: PathBuf,
        /// What is wrong.
        source: MeshError,
    },
}

/// Reads a scan from a file.
///
/// # Errors
/// When the file cannot be opened or its bytes are not a surface.
pub fn read_scan(path: &Path) -> Result<Scan, ReadError> {
    Err(ReadError::Mesh {
        path: path.to_owned(),
        source: MeshError::NotFinite { vertex: 0 },
    })
}
