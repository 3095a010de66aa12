//! Binary little-endian PLY.

use super::{EncodeError, WriteError, write_atomically};
use crate::Mesh;
use std::io::{self, Write};
use std::path::Path;

/// Names that the mesh itself uses.
const TAKEN: [&str; 6] = ["x", "y", "z", "red", "green", "blue"];

/// Writes a mesh as binary little-endian PLY, with its colours where it has
/// any. Coordinates are stored as `float` if that keeps each of them exactly
/// (as in most scans), otherwise as `double`: nothing is ever rounded.
///
/// # Errors
/// When the file cannot be written.
pub fn write_ply(path: &Path, mesh: &Mesh) -> Result<(), WriteError> {
    write_ply_with(path, mesh, &[])
}

/// Writes a mesh as [`write_ply`] does, with named figures per vertex, each a
/// `float` property. A figure that could not be had is NaN, never 0.
///
/// # Errors
/// When a figure's name is not a word of letters, digits and `_` or is taken
/// (x, y, z, red, green, blue), when it has another number of values than
/// there are vertices, or when the file cannot be written.
pub fn write_ply_with(
    path: &Path,
    mesh: &Mesh,
    scalars: &[(&str, &[f32])],
) -> Result<(), WriteError> {
    check(mesh, scalars).map_err(|reason| WriteError::Content {
        path: path.to_owned(),
        reason,
    })?;
    write_atomically(path, |out| encode(mesh, scalars, out))
}

/// The bytes that [`write_ply_with`] writes.
///
/// # Errors
/// When a figure has a bad name or another number of values than there are
/// vertices.
pub fn encode_ply(mesh: &Mesh, scalars: &[(&str, &[f32])]) -> Result<Vec<u8>, EncodeError> {
    check(mesh, scalars)?;
    let mut bytes = Vec::new();
    // Writing to memory has nothing that could fail.
    let _ = encode(mesh, scalars, &mut bytes);
    Ok(bytes)
}

fn check(mesh: &Mesh, scalars: &[(&str, &[f32])]) -> Result<(), EncodeError> {
    let vertices = mesh.vertices().len();
    for (number, &(name, values)) in scalars.iter().enumerate() {
        let is_word = name.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'_');
        let is_taken = TAKEN.contains(&name) || scalars[..number].iter().any(|s| s.0 == name);
        if name.is_empty() || !is_word || is_taken {
            return Err(EncodeError::ScalarName(name.to_owned()));
        }
        if values.len() != vertices {
            return Err(EncodeError::ScalarCount {
                name: name.to_owned(),
                values: values.len(),
                vertices,
            });
        }
    }
    Ok(())
}

fn encode(mesh: &Mesh, scalars: &[(&str, &[f32])], out: &mut dyn Write) -> io::Result<()> {
    let single = mesh
        .vertices()
        .iter()
        .flat_map(|p| p.coords.iter())
        .all(|&c| f64::from(c as f32) == c);
    header(mesh, scalars, single, out)?;

    let colours = mesh.colours();
    let mut record = Vec::new();
    for (number, point) in mesh.vertices().iter().enumerate() {
        record.clear();
        for &c in point.coords.iter() {
            if single {
                record.extend((c as f32).to_le_bytes());
            } else {
                record.extend(c.to_le_bytes());
            }
        }
        record.extend(colours.iter().flat_map(|all| all[number]));
        record.extend(
            scalars
                .iter()
                .flat_map(|(_, all)| all[number].to_le_bytes()),
        );
        out.write_all(&record)?;
    }
    for triangle in mesh.triangles() {
        let mut record = [3; 13];
        for (slot, index) in record[1..].chunks_exact_mut(4).zip(triangle) {
            slot.copy_from_slice(&index.to_le_bytes());
        }
        out.write_all(&record)?;
    }
    Ok(())
}

fn header(
    mesh: &Mesh,
    scalars: &[(&str, &[f32])],
    single: bool,
    out: &mut dyn Write,
) -> io::Result<()> {
    let coordinate = if single { "float" } else { "double" };
    writeln!(out, "ply\nformat binary_little_endian 1.0")?;
    writeln!(out, "element vertex {}", mesh.vertices().len())?;
    for axis in ["x", "y", "z"] {
        writeln!(out, "property {coordinate} {axis}")?;
    }
    if mesh.colours().is_some() {
        for channel in ["red", "green", "blue"] {
            writeln!(out, "property uchar {channel}")?;
        }
    }
    for (name, _) in scalars {
        writeln!(out, "property float {name}")?;
    }
    // `int`, because not every reader takes `uint`; beyond it there is no way.
    let index = if mesh.vertices().len() > i32::MAX as usize {
        "uint"
    } else {
        "int"
    };
    writeln!(out, "element face {}", mesh.triangles().len())?;
    writeln!(
        out,
        "property list uchar {index} vertex_indices\nend_header"
    )
}
