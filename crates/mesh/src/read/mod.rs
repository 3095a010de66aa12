//! Reading scans: STL, PLY and OBJ, told apart by their contents.
//!
//! Three things can come of a file: a [`Scan`], a `Scan` with warnings, or a
//! [`ReadError`]; never a mesh without triangles, and never a part of a scan
//! in silence. Nothing is made room for from a number in a header before that
//! number has been held against the size of the file.

mod error;
mod foreign;
mod format;
mod limits;
mod obj;
mod open;
mod ply;
mod ply_colour;
mod ply_faces;
mod ply_header;
mod ply_values;
mod ply_vertices;
mod polygon;
mod scan;
mod shown;
mod small;
mod sniff;
mod stl_ascii;
mod stl_binary;
mod stl_plain;
mod stored_normals;
mod surface;
mod text;
mod warning;
mod weld;

pub use error::{OpenError, ParseError, Place, ReadError};
pub use foreign::Foreign;
pub use format::Format;
pub use limits::{MAX_FILE_BYTES, MAX_TRIANGLES, MAX_VERTICES};
pub use scan::{Parsed, Scan};
pub use shown::shown_path;
pub use small::{MAX_SETTINGS_BYTES, MAX_TABLE_BYTES, bounded, settings_text};
pub use warning::ReadWarning;

use sha2::{Digest, Sha256};
use std::path::Path;

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
