//! Shared data, which may be absent, and small meshes of known make.
#![allow(dead_code, clippy::unwrap_used, clippy::print_stderr)]

use mesh::Mesh;
use mesh::read::parse;
use nalgebra::Point3;
use std::collections::HashMap;
use std::path::{Path, PathBuf};

/// A folder of the shared data, or `None`, said on standard error, where it
/// is absent.
pub fn shared(folder: &str) -> Option<PathBuf> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../../shared/data")
        .join(folder);
    if path.is_dir() {
        Some(path)
    } else {
        eprintln!("skipped: there is no ../shared/data/{folder}");
        None
    }
}

/// The mesh of a file that is read without any warning.
pub fn read(bytes: impl AsRef<[u8]>) -> Mesh {
    let parsed = parse(bytes.as_ref()).unwrap();
    assert_eq!(parsed.warnings, []);
    parsed.mesh
}

/// Why a file is refused.
pub fn refusal(bytes: impl AsRef<[u8]>) -> String {
    parse(bytes.as_ref()).unwrap_err().to_string()
}

/// Every file below a folder, in order.
pub fn files_below(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            files.extend(files_below(&path));
        } else {
            files.push(path);
        }
    }
    files.sort();
    files
}

/// A bowl of `n` by `n` squares, each two triangles; its coordinates are exact
/// in 32-bit floating point, and every vertex is used in order of its number.
pub fn bowl(n: u32) -> Mesh {
    let mut vertices = Vec::new();
    let mut numbers = HashMap::new();
    let mut number = |(i, j): (u32, u32)| {
        *numbers.entry((i, j)).or_insert_with(|| {
            let (x, y) = (f64::from(i) * 1.25, f64::from(j) * 1.5);
            vertices.push(Point3::new(x, y, (x * x + y * y) / 64.0));
            vertices.len() as u32 - 1
        })
    };
    let mut triangles = Vec::new();
    for (i, j) in (0..n).flat_map(|i| (0..n).map(move |j| (i, j))) {
        let (a, b, c, d) = ((i, j), (i, j + 1), (i + 1, j), (i + 1, j + 1));
        triangles.push([a, c, b].map(&mut number));
        triangles.push([b, c, d].map(&mut number));
    }
    Mesh::new(vertices, triangles, None).unwrap()
}

/// The corners of every triangle: what stays the same however vertices are
/// numbered.
pub fn soup(mesh: &Mesh) -> Vec<[Point3<f64>; 3]> {
    (0..mesh.triangles().len())
        .map(|t| mesh.corners(t))
        .collect()
}

/// A mesh as ASCII STL, in plain spelling.
pub fn ascii_stl(mesh: &Mesh) -> String {
    let mut text = String::from("solid bowl\n");
    for corners in soup(mesh) {
        text.push_str("  facet normal 0 0 1\n    outer loop\n");
        for p in corners {
            text.push_str(&format!("      vertex {:e} {:e} {:e}\n", p.x, p.y, p.z));
        }
        text.push_str("    endloop\n  endfacet\n");
    }
    text + "endsolid bowl\n"
}

/// A mesh as ASCII PLY.
pub fn ascii_ply(mesh: &Mesh) -> String {
    let mut text = format!(
        "ply\nformat ascii 1.0\nelement vertex {}\nproperty double x\nproperty double y\n\
         property double z\nelement face {}\nproperty list uchar int vertex_indices\nend_header\n",
        mesh.vertices().len(),
        mesh.triangles().len()
    );
    for p in mesh.vertices() {
        text.push_str(&format!("{} {} {}\n", p.x, p.y, p.z));
    }
    for [a, b, c] in mesh.triangles() {
        text.push_str(&format!("3 {a} {b} {c}\n"));
    }
    text
}

/// A mesh as OBJ.
pub fn obj(mesh: &Mesh) -> String {
    let mut text = String::from("# a bowl\no bowl\n");
    for p in mesh.vertices() {
        text.push_str(&format!("v {} {} {}\n", p.x, p.y, p.z));
    }
    for corners in mesh.triangles() {
        let [a, b, c] = corners.map(|v| v + 1);
        text.push_str(&format!("f {a} {b} {c}\n"));
    }
    text
}
