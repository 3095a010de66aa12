//! Reading scans: STL, PLY and OBJ, told apart by their contents.
//!
//! Three things can come of a file: a [`Scan`], a `Scan` with warnings, or a
//! [`ReadError`]; never a mesh without triangles, and never a part of a scan
//! in silence. Nothing is made room for from a number in a header before that
//! number has been held against the size of the file.

mod error;
mod obj;
mod open;
mod ply;
mod ply_colour;
mod ply_faces;
mod ply_header;
mod ply_values;
mod polygon;
mod shown;
mod sniff;
mod stl_ascii;
mod stl_binary;
mod stored_normals;
mod surface;
mod text;
mod warning;
mod weld;

pub use error::{OpenError, ParseError, Place, ReadError};
pub use shown::shown_path;
pub use sniff::Foreign;
pub use warning::ReadWarning;

use crate::Mesh;
use sha2::{Digest, Sha256};
use std::path::{Path, PathBuf};

/// Greatest file that is read: 4 GiB.
pub const MAX_FILE_BYTES: u64 = 4 << 30;
/// Most triangles that are read.
pub const MAX_TRIANGLES: u64 = 20_000_000;
/// Most vertices that are read: those of as many triangles that share none.
pub const MAX_VERTICES: u64 = 3 * MAX_TRIANGLES;

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

impl Format {
    /// Name for people.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::StlBinary => "binary STL",
            Self::StlAscii => "ASCII STL",
            Self::PlyBinaryLe => "binary little-endian PLY",
            Self::PlyBinaryBe => "binary big-endian PLY",
            Self::PlyAscii => "ASCII PLY",
            Self::Obj => "OBJ",
        }
    }

    /// Whether vertices are had from the corners of triangles, so that none is
    /// without a triangle.
    fn numbers_corners_only(self) -> bool {
        matches!(self, Self::StlBinary | Self::StlAscii)
    }

    /// Extension of files of this format, lower case, without the dot.
    #[must_use]
    pub fn extension(self) -> &'static str {
        match self {
            Self::StlBinary | Self::StlAscii => "stl",
            Self::PlyBinaryLe | Self::PlyBinaryBe | Self::PlyAscii => "ply",
            Self::Obj => "obj",
        }
    }
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

/// Reads a scan from a file.
///
/// # Errors
/// When the file cannot be opened or its bytes are not a surface.
pub fn read_scan(path: &Path) -> Result<Scan, ReadError> {
    let refused = |reason| ReadError::Content {
        path: path.to_owned(),
        reason,
    };
    let bytes = match open::bytes_of(path) {
        Ok(open::Bytes::Read(bytes)) => bytes,
        Ok(open::Bytes::TooManyTriangles) => return Err(refused(ParseError::TooManyTriangles)),
        Err(reason) => {
            return Err(ReadError::Open {
                path: path.to_owned(),
                reason,
            });
        }
    };
    let (parsed, sha256) = rayon::join(|| parse(&bytes), || sha256_of(&bytes));
    let mut parsed = parsed.map_err(refused)?;
    if let Some(named) = other_extension(path, parsed.format) {
        parsed.warnings.insert(
            0,
            ReadWarning::WrongExtension {
                named,
                format: parsed.format,
            },
        );
    }
    Ok(Scan {
        mesh: parsed.mesh,
        path: path.to_owned(),
        sha256,
        format: parsed.format,
        warnings: parsed.warnings,
        file_bytes: bytes.len() as u64,
        solids: parsed.solids,
        carries_text: parsed.carries_text,
        stl_attributes: parsed.stl_attributes,
    })
}

/// Reads a scan from bytes.
///
/// # Errors
/// When they are not a surface.
pub fn parse(bytes: &[u8]) -> Result<Parsed, ParseError> {
    match sniff::kind_of(bytes)? {
        sniff::Kind::StlBinary => stl_binary::parse(bytes),
        sniff::Kind::StlAscii => stl_ascii::parse(bytes),
        sniff::Kind::Ply => ply::parse(bytes),
        sniff::Kind::Obj => obj::parse(bytes),
    }
}

/// SHA-256 of bytes, lower-case hexadecimal.
#[must_use]
pub fn sha256_of(bytes: &[u8]) -> String {
    Sha256::digest(bytes)
        .iter()
        .flat_map(|byte| [byte >> 4, byte & 15])
        .filter_map(|digit| char::from_digit(u32::from(digit), 16))
        .collect()
}

/// The extension of a name that promises another format.
fn other_extension(path: &Path, format: Format) -> Option<&'static str> {
    let extension = path.extension()?;
    ["stl", "ply", "obj"]
        .into_iter()
        .find(|known| extension.eq_ignore_ascii_case(known))
        .filter(|&known| known != format.extension())
}
