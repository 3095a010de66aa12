//! `archproof demo`: cases to try the command on, with an invented scenario.

use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::terminal::say;
use mesh::read::shown_path;
use mesh::write::{WriteError, write_atomically, write_ply, write_stl};
use messages::{Language, text};
use nalgebra::{Isometry3, Point3, Vector3};
use phantom::{
    Across, Arch, Blemish, CaseInPieces, FlangeSide, Options, Place, PlantedSpot, SpotKind, Truth,
    WashThickness, WholeCase,
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

const CASE_IN_PIECES: &str = "\
# An invented case: no such patient, no such impression.
case = \"DEMO-4\"

[maxillary]
wash = [\"upper-wash-front.ply\", \"upper-wash-back.ply\"]
tray = \"upper-tray.stl\"

[mandibular]
wash = \"lower-wash.ply\"
tray = [\"lower-tray-front.stl\", \"lower-tray-back.stl\"]

[jaw_relation]
scan = \"record.ply\"
vertical_dimension_mm = 66.0
rest_vertical_dimension_mm = 69.0
papilla_to_lip_mm = 7.5

[consignment]
prescription = true
disinfectant = \"as the protocol of the clinic says\"
disinfection_min = 10
expected = [\"both front parts with the jaw-relation record between them\", \"upper back part\", \"lower back part\"]
packed = [\"both front parts with the jaw-relation record between them\", \"lower back part\"]
";

/// Edge length of the demonstration scans: as fine as clinical scans are, but
/// small enough to be written in a moment.
const EDGE_MM: f64 = 0.4;

/// A file of text: its name, and what it holds in a language.
type Text = (&'static str, fn(Language) -> String);

const WHOLE: [Text; 3] = [
    ("README.txt", |language| {
        text!(language, "demo-read-me") + "\n"
    }),
    ("first-pass.toml", |_| FIRST_PASS.to_owned()),
    ("case.toml", |_| CASE.to_owned()),
];

const IN_PIECES: [Text; 2] = [
    ("README.txt", |language| {
        text!(language, "demo-read-me-in-pieces") + "\n"
    }),
    ("case.toml", |_| CASE_IN_PIECES.to_owned()),
];

pub fn run(folder: &Path, in_pieces: bool, language: Language) -> Result<(), Failure> {
    let texts: &[Text] = if in_pieces { &IN_PIECES } else { &WHOLE };
    fs::create_dir_all(folder).map_err(|source| Failure::Demo {
        path: folder.to_owned(),
        source,
    })?;
    // A demonstration may be written over itself, in any language, but never over a real case.
    for (name, text) in texts {
        let file = folder.join(name);
        let is_own = |there: &[u8]| Language::ALL.iter().any(|it| text(*it).as_bytes() == there);
        if fs::read(&file).is_ok_and(|there| !is_own(&there)) {
            return Err(Failure::CaseInTheWay(file));
        }
    }
    if in_pieces {
        let made = scenario(CaseInPieces::new);
        uninterrupted(|| {
            write_in_pieces(folder, &made).and_then(|()| write_texts(folder, texts, language))
        })?;
    } else {
        let made = scenario(WholeCase::new);
        uninterrupted(|| {
            write_whole(folder, &made).and_then(|()| write_texts(folder, texts, language))
        })?;
    }
    let checks = (texts.iter().filter(|(name, _)| name.ends_with(".toml")))
        .map(|(name, _)| format!("  archproof check {}\n", shown_path(&folder.join(name))));
    say(&format!(
        "{}\n{}",
        text!(language, "demo-written"),
        checks.collect::<String>()
    ))?;
    Ok(())
}

fn write_whole(folder: &Path, made: &WholeCase) -> Result<(), WriteError> {
    for (name, jaw) in [("upper", &made.upper), ("lower", &made.lower)] {
        let file = |end: &str| folder.join(format!("{name}-{end}"));
        write_ply(&file("first.ply"), &jaw.first_pass.impression)?;
        write_ply(&file("wash.ply"), &jaw.wash)?;
        write_stl(&file("tray.stl"), &jaw.first_pass.tray)?;
    }
    write_ply(&folder.join("record.ply"), &made.record)
}

fn write_in_pieces(folder: &Path, made: &CaseInPieces) -> Result<(), WriteError> {
    let [upper_front, upper_back] = &made.upper_parts;
    let [tray_front, tray_back] = &made.lower_pieces;
    write_ply(&folder.join("upper-wash-front.ply"), upper_front)?;
    write_ply(&folder.join("upper-wash-back.ply"), upper_back)?;
    write_stl(&folder.join("upper-tray.stl"), &made.upper_tray)?;
    write_ply(&folder.join("lower-wash.ply"), &made.lower_wash)?;
    write_stl(&folder.join("lower-tray-front.stl"), tray_front)?;
    write_stl(&folder.join("lower-tray-back.stl"), tray_back)?;
    write_ply(&folder.join("record.ply"), &made.record)
}

fn write_texts(folder: &Path, texts: &[Text], language: Language) -> Result<(), WriteError> {
    for (name, text) in texts {
        let text = text(language);
        write_atomically(&folder.join(name), |out| out.write_all(text.as_bytes()))?;
    }
    Ok(())
}

/// The jaws of the scenario, and how far apart they were recorded, as `case` makes them.
fn scenario<T>(case: impl Fn([&Options; 2], [&WashThickness; 2], &Isometry3<f64>) -> T) -> T {
    let space = Isometry3::translation(0.5, 1.0, -24.0)
        * Isometry3::rotation(Vector3::new(0.03, 0.02, 0.01))
        * Isometry3::rotation(Vector3::new(0.0, std::f64::consts::PI, 0.0));
    case(
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

#[cfg(test)]
mod tests {
    use super::*;
    use fixtures::translation::english_words;

    /// What is to be typed.
    fn commands(text: &str) -> Vec<String> {
        let lines = text.lines().filter(|line| line.starts_with("    "));
        lines.map(str::to_owned).collect()
    }

    #[test]
    fn read_me_is_translated_and_names_the_same_commands_and_folder() {
        for (texts, folder) in [
            (&WHOLE[..], "archproof-DEMO-1"),
            (&IN_PIECES, "archproof-DEMO-4"),
        ] {
            let (_, read_me) = texts[0];
            let english = read_me(Language::English);
            let cases = texts[1..].iter();
            let wanted: Vec<String> = cases
                .map(|(name, _)| format!("    archproof check {name}"))
                .collect();
            for language in Language::ALL {
                let text = read_me(language);
                assert_eq!(commands(&text), wanted, "{text}");
                assert!(text.contains(folder) && text.ends_with(".\n"), "{text}");
                if language != Language::English {
                    assert_eq!(english_words(&text), [""; 0], "{text}");
                }
            }
            assert!(!english_words(&english).is_empty());
        }
    }
}
