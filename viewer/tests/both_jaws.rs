//! A case of both jaws with first pass and wash, made by formula, opened as the
//! window opens it: linked cameras, maps and outlines against what was planted.

#![allow(clippy::unwrap_used, reason = "tests")]

use arguments::Source;
use mesh::write::write_ply;
use nalgebra::{Isometry3, Point2, Point3, Translation3, UnitQuaternion};
use phantom::{Across, Arch, Blemish, Options, Phantom, Place, Pose};
use report::figures::StationFigure;
use report::result::{DefectKind, Side};
use std::path::{Path, PathBuf};
use std::sync::OnceLock;
use viewer::app::App;
use viewer::command::Command;
use viewer::maps::Map;
use viewer::opened::{Shown, open};
use viewer::view::Canvas;

const CANVAS: Canvas = Canvas {
    left: 350.0,
    top: 0.0,
    width: 930.0,
    height: 760.0,
};

/// How the scan of each impression lies, from where it was made.
fn poses() -> [Isometry3<f64>; 2] {
    let turn = |x: f64, y: f64, z: f64| UnitQuaternion::from_euler_angles(x, y, z);
    [
        Isometry3::from_parts(Translation3::new(5.0, -3.0, 11.0), turn(0.2, 0.1, 2.0)),
        Isometry3::from_parts(Translation3::new(-9.0, 4.0, 1.0), turn(-0.3, 0.2, -0.7)),
    ]
}

const VOID: Place = Place::Arch {
    station: -0.4,
    across: Across::Crest,
};
const HOLE: Place = Place::Arch {
    station: 0.45,
    across: Across::Crest,
};

fn phantom(arch: Arch, stage: usize) -> Phantom {
    let blemishes = match (arch, stage) {
        (Arch::Maxillary, 0) => vec![
            Blemish::Void {
                place: VOID,
                diameter_mm: 3.0,
                depth_mm: 1.0,
            },
            Blemish::Hole {
                place: HOLE,
                diameter_mm: 3.0,
            },
        ],
        _ => Vec::new(),
    };
    Phantom::new(&Options {
        arch,
        seed: 7,
        edge_mm: 0.4,
        tray_edge_mm: 0.6,
        pose: Pose::Given(poses()[stage]),
        noise_sd_mm: 0.01,
        blemishes,
        ..Options::default()
    })
}

struct Checked {
    _folder: tempfile::TempDir,
    case: PathBuf,
    out: PathBuf,
    first: Phantom,
}

/// The case, checked once for all tests.
fn checked() -> &'static Checked {
    static CHECKED: OnceLock<Checked> = OnceLock::new();
    CHECKED.get_or_init(|| {
        let folder = tempfile::tempdir().unwrap();
        let there = |name: &str| folder.path().join(name);
        for (jaw, arch) in [("upper", Arch::Maxillary), ("lower", Arch::Mandibular)] {
            for (stage, name) in ["first", "wash"].into_iter().enumerate() {
                let made = phantom(arch, stage);
                let file = there(&format!("{jaw}-{name}.ply"));
                write_ply(&file, &made.impression).unwrap();
                if stage == 0 {
                    write_ply(&there(&format!("{jaw}-tray.ply")), &made.tray).unwrap();
                }
            }
        }
        let case = there("case.toml");
        // The lower jaw without its tray: no cover there.
        let text = "case = \"BOTH\"\n\
            [maxillary]\nfirst_pass = \"upper-first.ply\"\nwash = \"upper-wash.ply\"\n\
            tray = \"upper-tray.ply\"\n\
            [mandibular]\nfirst_pass = \"lower-first.ply\"\nwash = \"lower-wash.ply\"\n";
        std::fs::write(&case, text).unwrap();
        let out = there("results");
        let source = Source {
            out: Some(out.clone()),
            ..Source::of(&case)
        };
        open(&source, &|_| {}).unwrap();
        Checked {
            _folder: folder,
            case,
            out,
            first: phantom(Arch::Maxillary, 0),
        }
    })
}

fn opened(folder: &Path) -> App {
    App::new(open(&Source::of(folder), &|_| {}).unwrap(), CANVAS)
}

fn settled(app: &mut App, command: Command) {
    app.act(command);
    app.pass(10.0);
}

#[test]
fn both_stages_of_both_jaws_are_looked_at_by_linked_cameras() {
    let mut app = opened(&checked().out);
    assert_eq!(app.opened.impressions.len(), 4);
    settled(&mut app, Command::Beside);
    let mut seen = Vec::new();
    for _ in 0..4 {
        settled(&mut app, Command::Whole);
        app.act(Command::Turn(25.0, -40.0));
        app.act(Command::Magnify(2.0));
        let slots = app.slots();
        assert_eq!(slots.len(), 2);
        let jaws = [slots[0].0, slots[1].0].map(|n| app.opened.result.impressions[n].arch.declared);
        assert_eq!(jaws[0], jaws[1], "a jaw stands beside itself");
        seen.push(slots[0].0.min(slots[1].0));
        // What lies under the same pixel of both is the same place of the mouth.
        let middles = [slots[0].1.middle(), slots[1].1.middle()];
        let mut tried = 0;
        for off in [[-60.0, 40.0], [70.0, 80.0], [0.0, 120.0], [-120.0, -60.0]] {
            let places = middles.map(|middle| {
                let pixel = Point2::new(middle.x + off[0], middle.y + off[1]);
                app.at(&pixel)
            });
            let [Some((first, a)), Some((wash, b))] = places else {
                continue;
            };
            assert_eq!([first, wash], [slots[0].0, slots[1].0]);
            let made = [
                poses()[0].inverse() * Point3::from(a.in_file),
                poses()[1].inverse() * Point3::from(b.in_file),
            ];
            // Two frames, each found by itself to about a degree.
            let apart = (made[0] - made[1]).norm();
            assert!(apart < 2.0, "{apart:.2} mm");
            tried += 1;
        }
        assert!(tried >= 2, "{tried}");
        settled(&mut app, Command::NextImpression);
    }
    assert!(seen.contains(&0) && seen.contains(&2), "{seen:?}");
}

#[test]
fn a_defect_is_outlined_where_it_was_planted() {
    let checked = checked();
    let app = opened(&checked.out);
    let first = &app.opened.result.impressions[0];
    let planted = &checked.first.truth.blemishes;
    let found = |kind: DefectKind, centre: &Point3<f64>| {
        let near = |d: &&report::result::Defect| {
            d.kind == kind && (Point3::from(d.centre) - centre).norm() < 1.0
        };
        first.defects.iter().find(near).unwrap().outline.clone()
    };
    // The ball of 3 mm, 1 mm deep, meets a level surface in a circle of this radius.
    let rim = (3.0_f64 * 1.0 - 1.0 * 1.0).sqrt();
    let void = found(DefectKind::Void, &planted[0].centre);
    assert!(void.len() >= 12);
    for point in &void {
        let radius = (Point3::from(*point) - planted[0].centre).norm();
        assert!((radius - rim).abs() < 0.35, "{radius:.2} of {rim:.2} mm");
    }
    // A hole's outline is its rim: on the ball that was lost, or a triangle off.
    let hole = found(DefectKind::Hole, &planted[1].centre);
    assert!(hole.len() >= 12);
    for point in &hole {
        let radius = (Point3::from(*point) - planted[1].centre).norm();
        assert!((1.2..2.3).contains(&radius), "{radius:.2} mm");
    }
}

#[test]
fn maps_show_the_figures_of_the_result() {
    let mut app = opened(&checked().out);
    // Cover was measured on the upper jaw alone, and that is said of the lower.
    assert!(app.map_of(0).is_some() && app.missing_map().is_none());
    app.front = 2;
    let missing = app.missing_map().unwrap();
    assert!(
        missing.contains("cover") && missing.contains("tray"),
        "{missing}"
    );
    app.front = 0;

    let to = |app: &mut App, map: &Map| {
        for _ in 0..=app.maps.len() {
            if app.map.as_ref() == Some(map) {
                return;
            }
            app.act(Command::NextMap);
        }
        panic!("{map:?} cannot be chosen");
    };
    to(&mut app, &Map::Vertex("wash_mm".to_owned()));
    assert!(app.missing_map().unwrap().contains("wash"));

    for (map, value) in [
        (
            Map::Flange(StationFigure::Height),
            (|s| s.flange_height_mm) as fn(&report::result::Station) -> Option<f64>,
        ),
        (Map::Flange(StationFigure::Thickness), |s| {
            s.flange_thickness_mm
        }),
    ] {
        to(&mut app, &map);
        for number in [0, 2] {
            let shown = &app.opened.impressions[number];
            let border = app.opened.result.impressions[number]
                .border
                .as_ref()
                .unwrap();
            let figures = app.map_of(number).unwrap();
            let known = figures.iter().flatten().count();
            assert!(known > 2000, "{known} coloured vertices");
            // A place of the flange close to the border has the figure of a
            // station beside it.
            let mut tried = 0;
            for (vertex, figure) in shown.surface.vertices().iter().zip(figures) {
                let Some(figure) = figure else { continue };
                let at = |s: &report::result::Station| shown.placement.shown(s.point);
                let near: Vec<f64> = border
                    .stations
                    .iter()
                    .filter(|s| (at(s) - vertex).norm() < 2.5)
                    .filter_map(value)
                    .collect();
                let closest = border.stations.iter().map(|s| (at(s) - vertex).norm());
                if closest.fold(f64::INFINITY, f64::min) > 0.4 || near.is_empty() {
                    continue;
                }
                let off = near.iter().map(|mm| (mm - f64::from(*figure)).abs());
                let off = off.fold(f64::INFINITY, f64::min);
                assert!(off < 1e-4, "{off} mm");
                tried += 1;
            }
            assert!(tried > 100, "{tried}");
        }
    }

    to(&mut app, &Map::ScanQuality);
    let of = &app.opened.result.impressions[0];
    let (least, most) = of.zones.iter().fold((f64::MAX, 0.0_f64), |(l, m), zone| {
        (
            l.min(zone.least_void_across_mm),
            m.max(zone.least_void_across_mm),
        )
    });
    let mut shown = app
        .map_of(0)
        .unwrap()
        .iter()
        .flatten()
        .map(|mm| f64::from(*mm));
    assert!(shown.all(|mm| mm > least - 1e-4 && mm < most + 1e-4));
}

/// A map of any other figure: written by formula into the result's folder.
#[test]
fn a_figure_at_the_vertices_of_a_file_is_a_map_of_its_own() {
    let folder = tempfile::tempdir().unwrap();
    for entry in std::fs::read_dir(&checked().out).unwrap() {
        let path = entry.unwrap().path();
        std::fs::copy(&path, folder.path().join(path.file_name().unwrap())).unwrap();
    }
    let mut result = report::read_result(folder.path()).unwrap();
    let wash = result.impressions.iter().position(|i| {
        i.stage == report::result::Stage::Wash
            && i.arch.declared == Some(report::result::Arch::Maxillary)
    });
    let wash = wash.unwrap();
    let surface = result.impressions[wash].surface.clone().unwrap();
    let mesh = report::read_surface(&folder.path().join(&surface.file))
        .unwrap()
        .mesh;
    let formula = |p: &Point3<f64>| 1.0 + 0.01 * p.x - 0.02 * p.y + 0.005 * p.z;
    let values: Vec<f32> = mesh
        .vertices()
        .iter()
        .enumerate()
        .map(|(n, p)| {
            if n % 50 == 0 {
                f32::NAN
            } else {
                formula(p) as f32
            }
        })
        .collect();
    let file = "added-maxillary.ply";
    mesh::write::write_ply_with(&folder.path().join(file), &mesh, &[("added_mm", &values)])
        .unwrap();
    result
        .files
        .retain(|file| file.kind != report::result::FileKind::WashMap);
    result.files.push(report::result::OutputFile {
        file: file.to_owned(),
        kind: report::result::FileKind::Surface,
        impression: Some(wash as u64),
        finding: None,
    });
    std::fs::write(
        folder.path().join("result.json"),
        report::result_json(&result),
    )
    .unwrap();

    let mut app = opened(folder.path());
    app.front = wash;
    settled(&mut app, Command::Whole);
    let own = Some(Map::Vertex("added_mm".to_owned()));
    for _ in 0..10 {
        if app.map != own {
            app.act(Command::NextMap);
        }
    }
    assert_eq!(app.map, own);
    assert!(app.missing_map().is_none());
    let scale = app.scale().unwrap();
    let most = values.iter().copied().fold(0.0, f32::max);
    assert!(scale.from == 0.0 && scale.to <= f64::from(most).ceil().max(1.0) + 1e-9);
    app.act(Command::Stretch(2.0));
    assert!((app.scale().unwrap().to - 2.0 * scale.to).abs() < 1e-9);
    let middle = CANVAS.middle();
    let mut tried = 0;
    for step in 0..200 {
        let (x, y) = (f64::from(step % 20) - 10.0, f64::from(step / 20) - 5.0);
        let pixel = Point2::new(middle.x + 25.0 * x, middle.y + 40.0 * y);
        let Some((number, probe)) = app.at(&pixel) else {
            continue;
        };
        let figure = probe.between(app.map_of(number).unwrap());
        let known = formula(&Point3::from(probe.in_file));
        // One corner in fifty is not known, and then nothing is.
        if let Some(figure) = figure {
            assert!((figure - known).abs() < 1e-3, "{figure} {known}");
            tried += 1;
            let words = app.words_of(number, &probe);
            assert!(words.contains(&format!("{figure:.2}")), "{words}");
        }
    }
    assert!(tried > 40, "{tried}");
}

#[test]
fn a_place_is_named_by_its_zone_and_side() {
    let app = opened(&checked().out);
    let first = &checked().first;
    let shown: &Shown = &app.opened.impressions[0];
    let zone_at = |at: &Point3<f64>| {
        let place = shown.placement.shown((*at).into());
        let (_, probe) = app.at(&app.view.pixel(&CANVAS, &place)).unwrap();
        let error = (Point3::from(probe.in_file) - at).norm();
        (app.words_of(0, &probe), error)
    };
    for landmark in &first.truth.landmarks {
        if landmark.name == "incisive papilla" {
            let (words, error) = zone_at(&landmark.point);
            assert!(error < 1.0 && words.contains("incisive papilla"), "{words}");
        }
    }
    for (point, side) in [
        (first.truth.crest_line.len() / 5, Side::Right),
        (first.truth.crest_line.len() * 4 / 5, Side::Left),
    ] {
        let (words, _) = zone_at(&first.truth.crest_line[point]);
        let named = match side {
            Side::Right => "residual ridge, patient's right",
            Side::Left => "residual ridge, patient's left",
        };
        assert!(words.contains(named), "{words}");
        assert!(
            words.contains("thickness ") && words.contains("; x "),
            "{words}"
        );
    }
}

/// Options of a bare scan are those of the command.
#[test]
fn a_bare_scan_is_opened_with_its_tray_and_jaw() {
    let checked = checked();
    let folder = tempfile::tempdir().unwrap();
    let there = |name: &str| checked.case.with_file_name(name);
    let source = Source {
        arch: Some(arguments::ArchArgument::Maxillary),
        tray: Some(there("upper-tray.ply")),
        stage: Some(arguments::StageArgument::Wash),
        case: Some("BARE".to_owned()),
        out: Some(folder.path().to_owned()),
        ..Source::of(&there("upper-wash.ply"))
    };
    let opened = open(&source, &|_| {}).unwrap();
    assert_eq!(opened.result.case, "BARE");
    assert!(opened.impressions[0].figures.contains_key("cover_mm"));
    assert!(opened.impressions[0].tray.is_some());
    assert_eq!(
        opened.result.impressions[0].stage,
        report::result::Stage::Wash
    );
    let refused = open(
        &Source {
            arch: Some(arguments::ArchArgument::Maxillary),
            ..Source::of(&checked.case)
        },
        &|_| {},
    );
    let text = refused.err().unwrap().to_string();
    assert!(
        text.contains("--arch cannot be used with a case file"),
        "{text}"
    );
}
