//! Text formats: ASCII STL, for coordinates that binary STL would round, and
//! OBJ. Numbers are the shortest decimals that read back as the same.

use crate::Mesh;
use std::io::{self, Write};

/// ASCII STL without a name.
pub(super) fn stl(mesh: &Mesh, out: &mut dyn Write) -> io::Result<()> {
    writeln!(out, "solid")?;
    for triangle in 0..mesh.triangles().len() {
        let area = mesh.area_vector(triangle);
        let normal = area.try_normalize(0.0).unwrap_or_default();
        writeln!(
            out,
            "facet normal {} {} {}\nouter loop",
            normal.x as f32, normal.y as f32, normal.z as f32
        )?;
        for p in mesh.corners(triangle) {
            writeln!(out, "vertex {} {} {}", p.x, p.y, p.z)?;
        }
        writeln!(out, "endloop\nendfacet")?;
    }
    writeln!(out, "endsolid")
}

/// OBJ without names, comments or materials.
pub(super) fn obj(mesh: &Mesh, out: &mut dyn Write) -> io::Result<()> {
    for p in mesh.vertices() {
        writeln!(out, "v {} {} {}", p.x, p.y, p.z)?;
    }
    for corners in mesh.triangles() {
        let [a, b, c] = corners.map(|v| u64::from(v) + 1);
        writeln!(out, "f {a} {b} {c}")?;
    }
    Ok(())
}
