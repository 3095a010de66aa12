//! Writes a folder of invented cases, a folder each, for trying and timing
//! batches: `make_cases FOLDER [COUNT] [EDGE_MM]`. Upper and lower jaws take
//! turns; every third case has a place where the tray shows through.

use mesh::write::{write_ply, write_stl};
use phantom::{Across, Arch, Options, Phantom, Place, PlantedSpot, SpotKind};
use std::error::Error;
use std::fs;
use std::path::Path;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = std::env::args().collect();
    let given = |i: usize, or: &str| arguments.get(i).cloned().unwrap_or_else(|| or.into());
    let folder = given(1, "cases");
    let (count, edge_mm): (u64, f64) = (given(2, "30").parse()?, given(3, "0.6").parse()?);
    for seed in 0..count {
        write_case(
            &Path::new(&folder).join(format!("{seed:05}")),
            seed,
            edge_mm,
        )?;
    }
    Ok(())
}

fn write_case(folder: &Path, seed: u64, edge_mm: f64) -> Result<(), Box<dyn Error>> {
    let (arch, name) = match seed % 2 {
        0 => (Arch::Maxillary, "maxillary"),
        _ => (Arch::Mandibular, "mandibular"),
    };
    let show_through = PlantedSpot {
        place: Place::Arch {
            station: -0.4,
            across: Across::Crest,
        },
        kind: SpotKind::ShowThrough { area_mm2: 10.0 },
    };
    let made = Phantom::new(&Options {
        arch,
        seed,
        edge_mm,
        tray_edge_mm: edge_mm,
        noise_sd_mm: 0.01,
        spots: if seed.is_multiple_of(3) {
            vec![show_through]
        } else {
            Vec::new()
        },
        ..Options::default()
    });
    fs::create_dir_all(folder)?;
    write_ply(&folder.join("first.ply"), &made.impression)?;
    write_stl(&folder.join("tray.stl"), &made.tray)?;
    let case = format!(
        "# An invented case.\ncase = \"T-{seed:05}\"\n[{name}]\nfirst_pass = \"first.ply\"\n\
         tray = \"tray.stl\"\n"
    );
    fs::write(folder.join("case.toml"), case)?;
    Ok(())
}
