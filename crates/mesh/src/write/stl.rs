//! Binary STL.

use super::atomic::write_atomically;
use super::error::{EncodeError, WriteError};
use crate::Mesh;
use std::io::{self, Write};
use std::path::Path;
use stl_io::{Normal, Triangle, Vertex};

/// Writes a mesh as binary STL: a header of zeros, unit normals (zero for a
/// triangle without area), coordinates rounded to 32-bit floating point, no
/// colour.
///
/// # Errors
/// When there are more than 2^32 - 1 triangles or the file cannot be written.
pub fn write_stl(path: &Path, mesh: &Mesh) -> Result<(), WriteError> {
    check(mesh).map_err(|reason| WriteError::Content {
        path: path.to_owned(),
        reason,
    })?;
    write_atomically(path, |out| encode(mesh, out))
}

/// The bytes that [`write_stl`] writes.
///
/// # Errors
/// When there are more than 2^32 - 1 triangles.
pub fn encode_stl(mesh: &Mesh) -> Result<Vec<u8>, EncodeError> {
    check(mesh)?;
    let mut bytes = Vec::with_capacity(84 + 50 * mesh.triangles().len());
    // Writing to memory has nothing that could fail.
    let _ = encode(mesh, &mut bytes);
    Ok(bytes)
}

pub(super) fn check(mesh: &Mesh) -> Result<(), EncodeError> {
    let triangles = mesh.triangles().len();
    if u32::try_from(triangles).is_err() {
        return Err(EncodeError::TooManyTriangles(triangles));
    }
    Ok(())
}

pub(super) fn encode(mesh: &Mesh, mut out: &mut dyn Write) -> io::Result<()> {
    let triangles = (0..mesh.triangles().len()).map(|number| {
        let normal = mesh
            .area_vector(number)
            .try_normalize(0.0)
            .unwrap_or_default();
        Triangle {
            normal: Normal::new([normal.x, normal.y, normal.z].map(|c| c as f32)),
            vertices: mesh
                .corners(number)
                .map(|p| Vertex::new([p.x, p.y, p.z].map(|c| c as f32))),
        }
    });
    stl_io::write_stl(&mut out, triangles)
}
