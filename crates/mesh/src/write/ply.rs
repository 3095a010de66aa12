//! Binary little-endian PLY.

use super::atomic::write_atomically;
use super::error::{EncodeError, WriteError};
use crate::Mesh;
use ply_rs::ply::{
    Addable, DefaultElement, ElementDef, Encoding, Header, PropertyDef, PropertyType, ScalarType,
};
use ply_rs::writer::Writer;
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

pub(super) fn encode(
    mesh: &Mesh,
    scalars: &[(&str, &[f32])],
    mut out: &mut dyn Write,
) -> io::Result<()> {
    let single = mesh.is_single();
    Writer::<DefaultElement>::new().write_header(&mut out, &header(mesh, scalars, single))?;

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

/// What stands before the records; the format's own rules are ply-rs's.
fn header(mesh: &Mesh, scalars: &[(&str, &[f32])], single: bool) -> Header {
    let coordinate = if single {
        ScalarType::Float
    } else {
        ScalarType::Double
    };
    // `int`, because not every reader takes `uint`; beyond it there is no way.
    let index = if mesh.vertices().len() > i32::MAX as usize {
        ScalarType::UInt
    } else {
        ScalarType::Int
    };
    let colour: &[&str] = match mesh.colours() {
        Some(_) => &["red", "green", "blue"],
        None => &[],
    };
    let scalar = |name: &str, kind| property(name, PropertyType::Scalar(kind));
    let of_vertex = ["x", "y", "z"]
        .map(|axis| scalar(axis, coordinate.clone()))
        .into_iter()
        .chain(colour.iter().map(|c| scalar(c, ScalarType::UChar)))
        .chain(
            scalars
                .iter()
                .map(|(name, _)| scalar(name, ScalarType::Float)),
        );
    let of_face = property(
        "vertex_indices",
        PropertyType::List(ScalarType::UChar, index),
    );
    let mut header = Header::new();
    header.encoding = Encoding::BinaryLittleEndian;
    for definition in [
        element("vertex", mesh.vertices().len(), of_vertex),
        element("face", mesh.triangles().len(), [of_face]),
    ] {
        header.elements.add(definition);
    }
    header
}

fn element(
    name: &str,
    count: usize,
    properties: impl IntoIterator<Item = PropertyDef>,
) -> ElementDef {
    let mut element = ElementDef::new(name.to_owned());
    element.count = count;
    for property in properties {
        element.properties.add(property);
    }
    element
}

fn property(name: &str, kind: PropertyType) -> PropertyDef {
    PropertyDef::new(name.to_owned(), kind)
}
