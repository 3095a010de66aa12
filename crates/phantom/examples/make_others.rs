//! Writes what is sent in place of impressions as binary STL:
//! `make_others FOLDER [SEEDS] [EDGE_MM]`.

use phantom::{Arch, Other};
use std::error::Error;
use std::path::Path;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = std::env::args().collect();
    let given = |i: usize, or: &str| arguments.get(i).cloned().unwrap_or_else(|| or.into());
    let folder = given(1, "others");
    let seeds: u64 = given(2, "1").parse()?;
    let edge_mm = given(3, "0.7").parse()?;
    let folder = Path::new(&folder);
    std::fs::create_dir_all(folder)?;
    for seed in 0..seeds {
        for (arch, jaw) in [(Arch::Maxillary, "upper"), (Arch::Mandibular, "lower")] {
            for what in Other::ALL {
                let name = format!("{what:?}-{jaw}-{seed}.stl");
                mesh::write::write_stl(&folder.join(name), &what.scan(arch, seed, edge_mm))?;
            }
        }
    }
    Ok(())
}
