//! `archproof demo`: a case to try the command on, with an invented scenario.

use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::terminal::say;
use mesh::read::shown_path;
use mesh::write::{WriteError, write_atomically, write_ply, write_stl};
use phantom::{Across, Arch, Options, Phantom, Place, PlantedSpot, SpotKind};
use std::fs;
use std::path::Path;

const CASE: &str = "\
# An invented case: no such patient, no such impression.
case = \"DEMO-1\"

[maxillary]
first_pass = \"upper-first.ply\"
tray = \"upper-tray.stl\"
";

const READ_ME: &str = "\
A demonstration case for archproof. Everything here is invented: the scans were
made by formula, and there is no such patient.

The invented scenario: a maxillary first pass in a stock tray, scanned from all
sides with the patient still in the chair, and a scan of the same tray, empty,
which lies in coordinates of its own. The tray was pressed up too far on the
patient's right: it shows through on the crest of the ridge there and on the
palate beside the midline. On the left the material is thin on the facial slope
in front.

    archproof check case.toml

should say `rework`, name the two places where tray shows and the thin one, and
leave the cover map and result.json in the folder archproof-DEMO-1.
";

/// Edge length of the demonstration scans: as fine as clinical scans are, but
/// small enough to be written in a moment.
const EDGE_MM: f64 = 0.4;

pub fn run(folder: &Path) -> Result<(), Failure> {
    fs::create_dir_all(folder).map_err(|source| Failure::Demo {
        path: folder.to_owned(),
        source,
    })?;
    let case_file = folder.join("case.toml");
    // A demonstration may be written over itself, but never over a real case.
    if fs::read(&case_file).is_ok_and(|there| there != CASE.as_bytes()) {
        return Err(Failure::CaseInTheWay(case_file));
    }
    let made = Phantom::new(&scenario());
    uninterrupted(|| write_case(folder, &made))?;
    let case = shown_path(&case_file);
    say(&format!(
        "A demonstration case (invented) was written. Check it with:\n  archproof check {case}\n"
    ))?;
    Ok(())
}

fn write_case(folder: &Path, made: &Phantom) -> Result<(), WriteError> {
    write_ply(&folder.join("upper-first.ply"), &made.impression)?;
    write_stl(&folder.join("upper-tray.stl"), &made.tray)?;
    for (name, text) in [("README.txt", READ_ME), ("case.toml", CASE)] {
        write_atomically(&folder.join(name), |out| out.write_all(text.as_bytes()))?;
    }
    Ok(())
}

fn scenario() -> Options {
    Options {
        arch: Arch::Maxillary,
        seed: 1042,
        edge_mm: EDGE_MM,
        tray_edge_mm: EDGE_MM,
        noise_sd_mm: 0.01,
        spots: vec![
            PlantedSpot {
                place: Place::Arch {
                    station: -0.55,
                    across: Across::Crest,
                },
                kind: SpotKind::ShowThrough { area_mm2: 12.0 },
            },
            PlantedSpot {
                place: Place::Palate {
                    right_mm: 6.0,
                    anterior_mm: 8.0,
                },
                kind: SpotKind::ShowThrough { area_mm2: 6.0 },
            },
            PlantedSpot {
                place: Place::Arch {
                    station: 0.3,
                    across: Across::OuterSlope,
                },
                kind: SpotKind::Thin {
                    least_mm: 0.5,
                    area_mm2: 10.0,
                },
            },
        ],
        ..Options::default()
    }
}
