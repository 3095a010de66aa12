//! `archproof demo`: cases to try the command on, with an invented scenario.

use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::terminal::say;
use mesh::read::shown_path;
use mesh::write::{WriteError, write_atomically, write_ply, write_stl};
use nalgebra::{Isometry3, Point3, Vector3};
use phantom::{
    Across, Arch, Blemish, FlangeSide, Options, Place, PlantedSpot, SpotKind, Truth, WholeCase,
};
use std::fs;
use std::path::Path;

const FIRST_PASS: &str = "\
# An invented case: no such patient, no such impression.
case = \"DEMO-1\"

[maxillary]
first_pass = \"upper-first.ply\"
tray = \"upper-tray.stl\"
";

const CASE: &str = "\
# An invented case: no such patient, no such impression.
case = \"DEMO-3\"

[maxillary]
first_pass = \"upper-first.ply\"
wash = \"upper-wash.ply\"
tray = \"upper-tray.stl\"

[mandibular]
first_pass = \"lower-first.ply\"
wash = \"lower-wash.ply\"
tray = \"lower-tray.stl\"

[jaw_relation]
scan = \"record.ply\"
vertical_dimension_mm = 66.0
rest_vertical_dimension_mm = 69.0
papilla_to_lip_mm = 7.5

[consignment]
prescription = true
disinfectant = \"as the protocol of the clinic says\"
disinfection_min = 10
expected = [\"upper impression\", \"lower impression\", \"jaw-relation record\"]
packed = [\"upper impression\", \"lower impression\"]
";

const READ_ME: &str = "\
Demonstration cases for archproof. Everything here is invented: the scans were
made by formula, and there is no such patient.

    archproof check first-pass.toml

With the patient still in the chair: a maxillary impression before its wash, in a stock tray,
scanned from all sides, and a scan of the same tray, empty, which lies in
coordinates of its own. The tray was pressed up too far on the patient's right:
it shows through on the crest of the ridge there and on the palate beside the
midline. On the left the material is thin on the facial slope in front. It
should say `rework`, name the two places where tray shows and the thin one, and
leave report.html, the thickness map and result.json in the folder archproof-DEMO-1.

    archproof check case.toml

Before the parcel goes: both jaws, each before and after the wash, with its tray, the scan
of the jaw-relation record, and what was packed. The wash covers the palate and
the thin place, but over the bare crest there is hardly any of it: tray still
shows. On the lower jaw the lingual border is short on the patient's left, and
air left a pit on the ridge on the right. The record was not packed. It should
say `rework`, and show where each of these lies.
";

/// Edge length of the demonstration scans: as fine as clinical scans are, but
/// small enough to be written in a moment.
const EDGE_MM: f64 = 0.4;

pub fn run(folder: &Path) -> Result<(), Failure> {
    fs::create_dir_all(folder).map_err(|source| Failure::Demo {
        path: folder.to_owned(),
        source,
    })?;
    // A demonstration may be written over itself, but never over a real case.
    for (name, text) in TEXTS {
        let file = folder.join(name);
        if fs::read(&file).is_ok_and(|there| there != text.as_bytes()) {
            return Err(Failure::CaseInTheWay(file));
        }
    }
    let made = scenario();
    uninterrupted(|| write_case(folder, &made))?;
    let [first_pass, case] =
        ["first-pass.toml", "case.toml"].map(|name| shown_path(&folder.join(name)).to_string());
    say(&format!(
        "Demonstration cases (invented) were written. Check them with:\n  archproof check \
         {first_pass}\n  archproof check {case}\n"
    ))?;
    Ok(())
}

const TEXTS: [(&str, &str); 3] = [
    ("README.txt", READ_ME),
    ("first-pass.toml", FIRST_PASS),
    ("case.toml", CASE),
];

fn write_case(folder: &Path, made: &WholeCase) -> Result<(), WriteError> {
    for (name, jaw) in [("upper", &made.upper), ("lower", &made.lower)] {
        let file = |end: &str| folder.join(format!("{name}-{end}"));
        write_ply(&file("first.ply"), &jaw.first_pass.impression)?;
        write_ply(&file("wash.ply"), &jaw.wash)?;
        write_stl(&file("tray.stl"), &jaw.first_pass.tray)?;
    }
    write_ply(&folder.join("record.ply"), &made.record)?;
    for (name, text) in TEXTS {
        write_atomically(&folder.join(name), |out| out.write_all(text.as_bytes()))?;
    }
    Ok(())
}

/// The jaws of the scenario, and how far apart they were recorded.
fn scenario() -> WholeCase {
    let space = Isometry3::translation(0.5, 1.0, -24.0)
        * Isometry3::rotation(Vector3::new(0.03, 0.02, 0.01))
        * Isometry3::rotation(Vector3::new(0.0, std::f64::consts::PI, 0.0));
    WholeCase::new(
        [&upper(), &lower()],
        [&upper_wash_mm, &lower_wash_mm],
        &space,
    )
}

/// A wash of 0.3 to 0.7 mm, but next to none over the bare crest on the
/// patient's right.
fn upper_wash_mm(p: &Point3<f64>, truth: &Truth) -> f64 {
    const LACKING_MM: f64 = 6.0;
    let bare = truth
        .spots
        .first()
        .map_or(f64::INFINITY, |spot| (p - spot.centre).norm());
    let lacking = (-(bare / LACKING_MM).powi(2) / 2.0).exp();
    (0.5 - 0.2 * (p.x / 12.0).sin()) * (1.0 - 0.98 * lacking)
}

fn lower_wash_mm(p: &Point3<f64>, _: &Truth) -> f64 {
    0.4 + 0.15 * (p.y / 10.0).cos()
}

fn upper() -> Options {
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

fn lower() -> Options {
    Options {
        arch: Arch::Mandibular,
        seed: 1043,
        edge_mm: EDGE_MM,
        tray_edge_mm: EDGE_MM,
        noise_sd_mm: 0.01,
        blemishes: vec![
            Blemish::ShortBorder {
                flange: FlangeSide::Lingual,
                station: 0.5,
                length_mm: 10.0,
                by_mm: 4.0,
            },
            Blemish::Void {
                place: Place::Arch {
                    station: -0.4,
                    across: Across::Crest,
                },
                diameter_mm: 3.0,
                depth_mm: 1.0,
            },
        ],
        ..Options::default()
    }
}
