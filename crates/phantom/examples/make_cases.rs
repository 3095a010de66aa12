//! Writes a folder of invented cases, a folder each, for trying and timing
//! batches: `make_cases FOLDER [COUNT] [EDGE_MM] [faults]`. Upper and lower jaws
//! take turns; every third case has a place where the tray shows through. With
//! `faults`, cases take turns in every kind of fault, sides and colours, too.

use mesh::write::{write_ply, write_stl};
use phantom::{
    Across, Arch, Blemish, Colouring, FlangeSide, Options, Phantom, Place, PlantedSpot, RimFaults,
    Sides, SpotKind,
};
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
            given(4, "") == "faults",
        )?;
    }
    Ok(())
}

fn write_case(
    folder: &Path,
    seed: u64,
    edge_mm: f64,
    with_faults: bool,
) -> Result<(), Box<dyn Error>> {
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
    let options = Options {
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
    };
    let made = Phantom::new(&if with_faults {
        full_of_faults(options)
    } else {
        options
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

/// The same impression with faults of every kind in turn.
fn full_of_faults(options: Options) -> Options {
    let Options { arch, seed, .. } = options;
    let flange = FlangeSide::Outer;
    let mut blemishes = match seed % 3 {
        0 => Blemish::random_voids(arch, seed, 6),
        1 => Blemish::random_nodules(arch, seed, 6),
        _ => Blemish::random_folds(arch, seed, 3),
    };
    blemishes.push(match seed / 2 % 4 {
        0 => Blemish::ShortBorder {
            flange,
            station: -0.4,
            length_mm: 8.0,
            by_mm: 3.0,
        },
        1 => Blemish::CutScan {
            flange,
            station: 0.4,
            length_mm: 20.0,
            by_mm: 3.0,
        },
        2 => Blemish::KnifeEdge {
            flange,
            station: 0.5,
            length_mm: 10.0,
            radius_mm: 0.3,
        },
        _ => Blemish::Hole {
            place: Place::Arch {
                station: 0.1,
                across: Across::Crest,
            },
            diameter_mm: 4.0,
        },
    });
    let turn = seed / 2 % 5;
    Options {
        spots: PlantedSpot::random(arch, seed, 2, 2),
        blemishes,
        sides: if turn == 3 {
            Sides::Tissue
        } else {
            Sides::Both
        },
        colour: (turn == 4).then(Colouring::default),
        rim: RimFaults {
            bites_mm: if turn == 3 { 1.5 } else { 0.0 },
            islands: if turn == 3 { 2 } else { 0 },
            holes: if turn == 3 { 2 } else { 0 },
        },
        ..options
    }
}
