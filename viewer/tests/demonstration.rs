//! The demonstration case, opened as the window opens it, without a window.

#![allow(clippy::unwrap_used, reason = "tests")]

use arguments::Source;
use nalgebra::{Point2, Point3, Vector3};
use report::result::{BorderPart, Side};
use std::path::{Path, PathBuf};
use std::sync::{LazyLock, Mutex};
use tempfile::TempDir;
use viewer::app::{App, Mode, landmarks_file};
use viewer::colours::Palette;
use viewer::command::{Command, Layer};
use viewer::opened::{Opened, open};
use viewer::view::Canvas;
use viewer::window::Layout;

const CANVAS: Canvas = Canvas {
    left: 350.0,
    top: 0.0,
    width: 930.0,
    height: 760.0,
};

fn demonstration() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../test-meshes/demo/case.toml")
}

fn source(path: PathBuf, out: &Path) -> Source {
    Source {
        out: Some(out.to_owned()),
        ..Source::of(&path)
    }
}

/// The case checked once for all tests, and the folder with its result.
static CHECKED: LazyLock<(TempDir, Opened)> = LazyLock::new(|| {
    let out = tempfile::tempdir().unwrap();
    let steps = Mutex::new(0);
    let opened = open(&source(demonstration(), out.path()), &|_| {
        *steps.lock().unwrap() += 1
    })
    .unwrap();
    assert!(*steps.lock().unwrap() > 3);
    (out, opened)
});

/// The result in a folder of its own, which is the test's.
fn result() -> TempDir {
    let own = tempfile::tempdir().unwrap();
    for entry in std::fs::read_dir(CHECKED.0.path()).unwrap() {
        let entry = entry.unwrap();
        std::fs::copy(entry.path(), own.path().join(entry.file_name())).unwrap();
    }
    own
}

fn opened(folder: &Path) -> App {
    let source = source(folder.to_owned(), folder);
    App::new(open(&source, &|_| {}).unwrap(), CANVAS)
}

/// The app once the last flight is over.
fn settled(app: &mut App, command: Command) {
    app.act(command);
    app.pass(10.0);
    assert!(!app.is_flying());
}

#[test]
fn a_case_and_its_result_folder_are_the_same_to_look_at() {
    let (out, case) = &*CHECKED;
    let folder = open(&source(out.path().to_owned(), out.path()), &|_| {}).unwrap();
    assert_eq!(case.result, folder.result);
    let (a, b) = (&case.impressions[0], &folder.impressions[0]);
    assert_eq!(a.surface.triangles(), b.surface.triangles());
    assert_eq!(a.figures, b.figures);
    assert!(a.tray.is_some() && b.tray.is_none());
    let apart = a.surface.vertices().iter().zip(b.surface.vertices());
    assert!(apart.map(|(p, q)| (p - q).norm()).all(|mm| mm < 1e-6));
}

#[test]
fn each_finding_is_flown_to_and_picked_where_it_is() {
    let out = result();
    let mut app = opened(out.path());
    assert!(app.title().contains("DEMO-2"), "{}", app.title());
    let findings = app.opened.result.findings.clone();
    let placed = findings.iter().filter(|f| f.at.is_some()).count();
    assert!(placed >= 3);
    for (number, finding) in findings.iter().enumerate() {
        settled(&mut app, Command::Choose(number));
        settled(&mut app, Command::Fly);
        let Some(at) = finding.at else {
            assert_eq!(app.ringed, None);
            continue;
        };
        assert_eq!(app.ringed, Some(number));
        let middle = CANVAS.middle();
        let place = app.opened.impressions[0].placement.shown(at);
        assert!((app.view.pixel(&CANVAS, &place) - middle).norm() < 1e-6);
        // A border point is the edge of what is seen: the ray may just miss it.
        let (_, probe) = app
            .at(&middle)
            .or_else(|| app.at(&(middle + nalgebra::Vector2::new(0.0, 1.0))))
            .unwrap();
        let error = (Vector3::from(probe.in_file) - Vector3::from(at)).norm();
        assert!(error < 0.3, "{}: {error:.3} mm", finding.id);
        if finding.check == "show-through" {
            let figures = &app.opened.impressions[0].figures;
            let cover = probe.between(&figures["cover_mm"]).unwrap();
            assert!(cover < 0.25, "{}: {cover}", finding.id);
        }
    }
}

#[test]
fn front_is_up_and_the_patients_right_is_where_it_should_be() {
    let out = result();
    let app = opened(out.path());
    let shown = &app.opened.impressions[0];
    // Maxillary, seen from the tissue: the patient's right is on the right.
    assert_eq!(shown.placement.right, Some(Vector3::x()));
    let (low, high) = shown.bounds();
    for corner in [low, high] {
        let pixel = app.view.pixel(&CANVAS, &corner);
        assert!(CANVAS.holds(&pixel), "{pixel}");
    }
    let right = app
        .opened
        .result
        .findings
        .iter()
        .find(|f| f.side == Some(Side::Right) && f.at.is_some());
    let place = shown.placement.shown(right.unwrap().at.unwrap());
    assert!(app.view.pixel(&CANVAS, &place).x > CANVAS.middle().x);
}

#[test]
fn picks_are_true_to_the_surface_from_any_side() {
    let out = result();
    let mut app = opened(out.path());
    app.act(Command::Turn(60.0, -45.0));
    app.act(Command::Magnify(1.7));
    let surface = &app.opened.impressions[0].surface;
    let mut tried = 0;
    for (at, vertex) in surface.vertices().iter().enumerate().step_by(97) {
        let pixel = app.view.pixel(&CANVAS, vertex);
        let to_viewer = app.view.turn.inverse_transform_vector(&Vector3::z());
        let seen = viewer::probe::in_sight(&app.opened.impressions[0], vertex, &to_viewer);
        let steep = app.opened.impressions[0].normals[at]
            .normalize()
            .dot(&to_viewer)
            < 0.3;
        if !seen || steep || !CANVAS.holds(&pixel) {
            continue;
        }
        let rounded = Point2::new(pixel.x.round(), pixel.y.round());
        let (_, probe) = app.at(&rounded).unwrap();
        assert!((probe.place - vertex).norm() < 0.5);
        // Right through a corner a ray may slip between its triangles.
        let beside = pixel + nalgebra::Vector2::new(0.013, 0.007);
        let (_, exact) = app.at(&beside).unwrap();
        assert!(
            (exact.place - vertex).norm() < 0.01,
            "{}",
            (exact.place - vertex).norm()
        );
        tried += 1;
    }
    assert!(tried > 50, "{tried}");
}

#[test]
fn landmarks_and_ticks_are_saved_beside_the_result() {
    let out = result();
    let mut app = opened(out.path());
    settled(&mut app, Command::Fly);
    app.act(Command::ToggleDone);
    app.act(Command::Mark);
    assert_eq!(app.mode, Mode::Mark(0));
    app.act(Command::NextLandmark(-1));
    app.act(Command::NextLandmark(1));
    app.act(Command::PickMiddle);
    assert_eq!(app.mode, Mode::Mark(1));
    app.act(Command::PickMiddle);
    app.act(Command::Undo);
    let at = app.finding().unwrap().at.unwrap();
    let again = opened(out.path());
    assert!(again.ticks.is_done(again.finding().unwrap()));
    let marks = again.marks[0].all();
    assert_eq!(marks.len(), 1);
    assert_eq!(
        (marks[0].name.as_str(), marks[0].side),
        again.landmarks()[0]
    );
    let error = (Vector3::from(marks[0].point) - Vector3::from(at)).norm();
    assert!(error < 0.3, "{error}");
    assert!(landmarks_file(&again.opened, 0).ends_with("landmarks.toml"));
}

#[test]
fn distances_and_sections_are_those_of_the_surface() {
    let out = result();
    let mut app = opened(out.path());
    app.act(Command::Measure);
    for x in [-40.0, 40.0] {
        app.click(&(CANVAS.middle() + nalgebra::Vector2::new(x, 0.0)));
    }
    let distance = app.distance.unwrap();
    let mm = (distance.to.unwrap() - distance.from).norm();
    assert!(mm >= 80.0 * app.view.mm_per_pixel(&CANVAS) - 1e-6);
    app.act(Command::Leave);
    assert_eq!((app.mode, app.distance), (Mode::Look, None));

    settled(&mut app, Command::Fly);
    app.act(Command::Section);
    app.act(Command::MoveSection(1.0));
    app.act(Command::TurnSection(0.2));
    let section = app.section.clone().unwrap();
    let shown = &app.opened.impressions[0];
    let points = section.cut.iter().flatten();
    let places: Vec<Point3<f64>> = points.map(|p| section.plane.shown(p)).collect();
    assert!(places.len() > 50);
    for place in places {
        assert!(shown.index.nearest(&place, 1.0).unwrap().distance < 1e-3);
    }
}

#[test]
fn two_stages_stand_side_by_side_and_are_looked_at_alike() {
    let out = tempfile::tempdir().unwrap();
    let demo = demonstration();
    let scan = |name: &str| demo.with_file_name(name).canonicalize().unwrap();
    let case = out.path().join("case.toml");
    // The same scan as first pass and wash: both must then look the same.
    let text = format!(
        "case = \"PAIR\"\n[maxillary]\nfirst_pass = {first:?}\nwash = {first:?}\ntray = {tray:?}\n",
        first = scan("upper-first.ply"),
        tray = scan("upper-tray.stl"),
    );
    std::fs::write(&case, text).unwrap();
    let mut app = App::new(open(&source(case, out.path()), &|_| {}).unwrap(), CANVAS);
    settled(&mut app, Command::Beside);
    settled(&mut app, Command::Fly);
    let slots = app.slots();
    assert_eq!(slots.len(), 2);
    let [left, right] = [slots[0].1, slots[1].1];
    assert_eq!(left.width, CANVAS.width / 2.0);
    assert_eq!(left.left + left.width, right.left);
    let picked = [left, right].map(|part| app.at(&part.middle()).unwrap());
    assert_eq!([picked[0].0, picked[1].0], [0, 1]);
    assert!((picked[0].1.place - picked[1].1.place).norm() < 1e-6);
    // Landmarks go to the impression that was clicked, in a file of its own.
    app.act(Command::Mark);
    app.click(&right.middle());
    assert_eq!(
        (
            app.front,
            app.marks[0].all().len(),
            app.marks[1].all().len()
        ),
        (1, 0, 1)
    );
    assert!(out.path().join("landmarks-maxillary-wash.toml").exists());
}

#[test]
fn every_command_can_be_given_at_any_time() {
    let out = result();
    let mut app = opened(out.path());
    for _ in 0..6 {
        for command in [
            Command::NextMap,
            Command::Slide(0.3),
            Command::Drawing,
            Command::PreviousMap,
            Command::NextMap,
            Command::NextPalette,
            Command::NextBorderFigure,
            Command::Stretch(1.25),
            Command::Toggle(Layer::Border),
            Command::Toggle(Layer::Crest),
            Command::Beside,
            Command::NextImpression,
            Command::Mark,
            Command::NextLandmark(-3),
            Command::Choose(9999),
            Command::Next,
            Command::Fly,
            Command::Section,
            Command::Undo,
            Command::Help,
            Command::TextSize(1.3),
            Command::Magnify(0.001),
            Command::PickMiddle,
            Command::Whole,
        ] {
            app.act(command);
            app.pass(0.1);
            let _ = (
                app.border_scale(),
                app.border_limits(),
                app.map_limits(),
                app.scale(),
                app.slots(),
            );
        }
    }
    assert_eq!(app.palette, Palette::Viridis);
    // There is nothing to stand beside.
    assert_eq!(app.slots().len(), 1);
}

#[test]
fn what_cannot_be_opened_is_told_as_the_command_tells_it() {
    let out = tempfile::tempdir().unwrap();
    let refused = |path: PathBuf| match open(&source(path, out.path()), &|_| {}) {
        Ok(_) => panic!("opened"),
        Err(error) => error.to_string(),
    };
    let text = refused(out.path().to_owned());
    assert!(text.contains("result.json"), "{text}");
    let broken = out.path().join("scan.stl");
    std::fs::write(&broken, "no mesh").unwrap();
    let text = refused(broken);
    assert!(text.contains("scan.stl") && !text.contains('\n'), "{text}");
    let text = refused(out.path().join("case.toml"));
    assert!(text.contains("case.toml"), "{text}");
}

#[test]
fn the_border_strip_and_the_surface_lead_to_each_other() {
    let out = result();
    let mut app = opened(out.path());
    // Its parts, at one pixel to a point.
    let layout = Layout::of(1280.0, 800.0, 1.0, true);
    (app.canvas, app.strip_area) = (layout.picture, layout.strip);
    settled(&mut app, Command::Whole);
    let area = layout.strip.unwrap();
    let whole = app.view;
    let strip = app.strip().unwrap();
    let border = app.front_border().unwrap().clone();
    assert_eq!(strip.tracks.len(), 1, "an upper jaw has no lingual border");
    let placement = app.opened.impressions[0].placement.clone();
    let mut flown = 0;
    for (number, station) in border.stations.iter().enumerate().step_by(9) {
        let along = strip.tracks[0].along(number).unwrap();
        let pixel = Point2::new(strip.x(0, along), area.middle().y);
        assert!(area.holds(&pixel));
        // On the strip: the station's place, and its figure in words.
        app.point_at(&pixel);
        let spot = app.spot.unwrap();
        let place = placement.shown(station.point);
        assert!((app.border_point(&spot).unwrap() - place).norm() < 1e-6);
        let words = app.words_of_spot(&spot).unwrap();
        match station.flange_height_mm {
            Some(mm) => assert!(
                words.contains(&format!("flange height {mm:.2} ±")),
                "{words}"
            ),
            None => assert!(words.contains("flange height not known"), "{words}"),
        }
        // The patient's right is on the right, as in the picture.
        let seen = whole.pixel(&layout.picture, &place).x - layout.picture.middle().x;
        if station.side == Some(Side::Right) && station.part == BorderPart::Outer {
            assert!(along > 0.0 && seen > 0.0, "{along:.1} mm, {seen:.0} pixels");
        }
        // A click flies there.
        app.click(&pixel);
        app.pass(10.0);
        assert!((app.view.pixel(&layout.picture, &place) - layout.picture.middle()).norm() < 1e-6);
        // On the surface close by: the same place of the strip.
        let inward = layout.picture.middle() + nalgebra::Vector2::new(0.0, 1.0);
        app.point_at(&inward);
        if let Some((_, probe)) = app.hover.clone()
            && (probe.place - place).norm() < 1.0
        {
            let back = strip.x_of(&app.spot.unwrap()).unwrap();
            let apart = (back - pixel.x).abs() / strip.px_per_mm;
            let wraps = apart > 0.9 * border.length_mm;
            assert!(apart < 1.5 || wraps, "{apart:.2} mm along the border");
            flown += 1;
        }
    }
    assert!(flown > 5, "{flown}");
    // Away from the border, and where the strip is hidden, there is no such place.
    settled(&mut app, Command::Whole);
    app.point_at(&layout.picture.middle());
    assert!(app.hover.is_some() && app.spot.is_none());
    app.strip_area = None;
    app.point_at(&area.middle());
    assert!(app.spot.is_none());
}
