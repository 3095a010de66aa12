//! Writing by a name's ending so that every bit of the mesh is kept.

use super::atomic::write_atomically;
use super::error::{EncodeError, WriteError};
use super::{ply, stl, text};
use crate::{Format, Mesh};
use std::io::{self, Write};
use std::path::Path;

/// Writes a mesh in the format that the ending of `path` names (stl, ply, obj),
/// without any text: vertices, triangles and colours stay as they are. STL is
/// binary where that keeps every coordinate, otherwise ASCII. Gives the format.
///
/// # Errors
/// When the ending names no format, when the format cannot hold the mesh's
/// colours, or when the file cannot be written.
pub fn write_exactly(path: &Path, mesh: &Mesh) -> Result<Format, WriteError> {
    let format = format_for(path, mesh).map_err(|reason| WriteError::Content {
        path: path.to_owned(),
        reason,
    })?;
    write_atomically(path, |out| encode(mesh, format, out))?;
    Ok(format)
}

/// The bytes that [`write_exactly`] writes to a file of such a name.
///
/// # Errors
/// When the ending names no format or the format cannot hold the mesh.
pub fn encode_exactly(path: &Path, mesh: &Mesh) -> Result<Vec<u8>, EncodeError> {
    let format = format_for(path, mesh)?;
    let mut bytes = Vec::new();
    // Writing to memory has nothing that could fail.
    let _ = encode(mesh, format, &mut bytes);
    Ok(bytes)
}

fn format_for(path: &Path, mesh: &Mesh) -> Result<Format, EncodeError> {
    let ending = path.extension().and_then(|ending| ending.to_str());
    match ending.map(str::to_ascii_lowercase).as_deref() {
        Some("ply") => Ok(Format::PlyBinaryLe),
        Some("stl" | "obj") if mesh.colours().is_some() => Err(EncodeError::NoColour),
        Some("stl") if mesh.is_single() => {
            stl::check(mesh)?;
            Ok(Format::StlBinary)
        }
        Some("stl") => Ok(Format::StlAscii),
        Some("obj") => Ok(Format::Obj),
        _ => Err(EncodeError::Ending),
    }
}

fn encode(mesh: &Mesh, format: Format, out: &mut dyn Write) -> io::Result<()> {
    match format {
        Format::StlBinary => stl::encode(mesh, out),
        Format::StlAscii => text::stl(mesh, out),
        Format::PlyBinaryLe | Format::PlyBinaryBe | Format::PlyAscii => ply::encode(mesh, &[], out),
        Format::Obj => text::obj(mesh, out),
    }
}
