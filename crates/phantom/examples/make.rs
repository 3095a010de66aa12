//! Writes a phantom's two scans as binary STL and its truth as JSON:
//! `make FOLDER [maxillary|mandibular] [SEED] [EDGE_MM]`.

use mesh::Mesh;
use phantom::{Arch, Options, Phantom};
use std::error::Error;
use std::path::Path;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = std::env::args().collect();
    let given = |i: usize, or: &str| arguments.get(i).cloned().unwrap_or_else(|| or.into());
    let folder = given(1, "phantom");
    let arch = match given(2, "maxillary").as_str() {
        "mandibular" => Arch::Mandibular,
        _ => Arch::Maxillary,
    };
    let edge_mm = given(4, "0.5").parse()?;
    let made = Phantom::new(&Options {
        arch,
        seed: given(3, "0").parse()?,
        edge_mm,
        tray_edge_mm: edge_mm,
        ..Options::default()
    });
    let folder = Path::new(&folder);
    std::fs::create_dir_all(folder)?;
    std::fs::write(folder.join("impression.stl"), binary_stl(&made.impression))?;
    std::fs::write(folder.join("tray.stl"), binary_stl(&made.tray))?;
    std::fs::write(
        folder.join("truth.json"),
        serde_json::to_vec_pretty(&made.truth)?,
    )?;
    Ok(())
}

fn binary_stl(mesh: &Mesh) -> Vec<u8> {
    let mut bytes = vec![0u8; 80];
    bytes.extend((mesh.triangles().len() as u32).to_le_bytes());
    for t in 0..mesh.triangles().len() {
        // Zero normals are allowed: readers work them out from the corners.
        bytes.extend([0u8; 12]);
        for corner in mesh.corners(t) {
            bytes.extend(corner.iter().flat_map(|&c| (c as f32).to_le_bytes()));
        }
        bytes.extend([0u8; 2]);
    }
    bytes
}
