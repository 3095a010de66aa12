//! Meshes put together again from their parts.

use mesh::Mesh;
use nalgebra::Point3;

/// A mesh from parts that are sound by construction.
pub(crate) fn rebuilt(
    vertices: Vec<Point3<f64>>,
    triangles: Vec<[u32; 3]>,
    colours: Option<Vec<[u8; 3]>>,
) -> Mesh {
    Mesh::new(vertices, triangles, colours).unwrap_or_default()
}
