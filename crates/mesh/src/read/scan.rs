//! What a file of a scan holds.

use super::format::Format;
use super::warning::ReadWarning;
use crate::Mesh;
use std::path::PathBuf;

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
    /// Size of the file, bytes.
    pub file_bytes: u64,
    /// Solids in an ASCII STL; 1 for every other format.
    pub solids: u64,
    /// Whether there is free text in the file (header, comment, name), which
    /// may hold a person's name. The text itself is not kept.
    pub carries_text: bool,
    /// Whether a binary STL has attribute bytes that are not zero. Two
    /// conventions for colour there contradict each other, so none is used.
    pub stl_attributes: bool,
}

/// What bytes hold.
#[derive(Debug, Clone)]
pub struct Parsed {
    /// The surface, exactly equal vertices welded.
    pub mesh: Mesh,
    /// What the bytes were.
    pub format: Format,
    /// What was odd and how it was read all the same.
    pub warnings: Vec<ReadWarning>,
    /// Solids in an ASCII STL; 1 for every other format.
    pub solids: u64,
    /// Whether there is free text.
    pub carries_text: bool,
    /// Whether a binary STL has attribute bytes that are not zero.
    pub stl_attributes: bool,
}
