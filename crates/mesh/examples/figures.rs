//! Prints the figures of mesh files, for comparison with other libraries, as
//! one line of JSON a file: `figures FILE...`.
//!
//! `figures --nearest FILE POINTS DISTANCES` reads points (raw little-endian
//! `f64`, three a point) and writes the distance of each from the file's
//! surface (raw little-endian `f64`). `tests/outside` runs both.

use mesh::{SpatialIndex, Topology, read_scan};
use nalgebra::Point3;
use serde_json::json;
use std::error::Error;
use std::fs;
use std::io::{Write, stdout};
use std::path::Path;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match arguments
        .iter()
        .map(String::as_str)
        .collect::<Vec<_>>()
        .as_slice()
    {
        [] => Err("usage: figures FILE... | figures --nearest FILE POINTS DISTANCES".into()),
        ["--nearest", file, points, distances] => {
            nearest(Path::new(file), Path::new(points), Path::new(distances))
        }
        files => {
            for file in files {
                writeln!(stdout(), "{}", figures(Path::new(file)))?;
            }
            Ok(())
        }
    }
}

/// In the file's own unit; an unreadable file has an `error` instead.
fn figures(file: &Path) -> serde_json::Value {
    let scan = match read_scan(file) {
        Ok(scan) => scan,
        Err(error) => {
            let (whole, reason) = (error.to_string(), error.reason());
            return json!({ "file": file, "error": whole, "reason": reason });
        }
    };
    let warnings: Vec<String> = scan.warnings.iter().map(ToString::to_string).collect();
    let mesh = scan.mesh;
    let topology = Topology::of(&mesh);
    json!({
        "file": file,
        "format": scan.format.name(),
        "warnings": warnings,
        "vertices": mesh.vertices().len(),
        "triangles": mesh.triangles().len(),
        "area": mesh.area(),
        "signed_volume": topology.is_closed().then(|| mesh.signed_volume()),
        "components": topology.components(),
        "boundary_loops": topology.boundary_loops().iter().map(Vec::len).collect::<Vec<_>>(),
        "non_manifold_edges": topology.non_manifold_edges(),
    })
}

fn nearest(file: &Path, points: &Path, distances: &Path) -> Result<(), Box<dyn Error>> {
    let mesh = read_scan(file)?.mesh;
    let numbers: Vec<f64> = fs::read(points)?
        .as_chunks()
        .0
        .iter()
        .map(|&bytes| f64::from_le_bytes(bytes))
        .collect();
    let points: Vec<Point3<f64>> = numbers
        .as_chunks()
        .0
        .iter()
        .map(|&p: &[f64; 3]| Point3::from(p))
        .collect();
    let found: Vec<u8> = SpatialIndex::new(&mesh)
        .nearest_many(&points, f64::INFINITY)
        .iter()
        .flat_map(|nearest| nearest.map_or(f64::NAN, |n| n.distance).to_le_bytes())
        .collect();
    fs::write(distances, found)?;
    Ok(())
}
