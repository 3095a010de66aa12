//! The window itself, under Xvfb with Mesa's software driver, driven by
//! synthetic keys and clicks (xdotool). Skipped, saying so, where those are
//! missing; see README.md for the packages.

#![allow(clippy::unwrap_used, clippy::print_stderr, reason = "tests")]

mod screen;

use arguments::Source;
use image::{Rgb, RgbImage};
use nalgebra::{Point2, Vector3};
use screen::{HEIGHT, Screen, Viewer, WIDTH, awaited, focused};
use std::fs;
use std::path::Path;
use std::process::Command;
use std::thread::sleep;
use std::time::Duration;
use viewer::app::App;
use viewer::colours::Palette;
use viewer::landmarks::Marks;
use viewer::opened::open;
use viewer::probe::in_sight;
use viewer::window::Layout;

fn is_near(a: Rgb<u8>, b: [u8; 3]) -> bool {
    a.0.iter().zip(b).all(|(a, b)| a.abs_diff(b) < 12)
}

/// Share of a circle that is drawn white.
fn ring_share(image: &RgbImage, middle: Point2<f64>, radius: f64) -> f64 {
    const STEPS: u32 = 360;
    let white = (0..STEPS).filter(|&step| {
        let angle = f64::from(step).to_radians();
        let is_white = |r: f64| {
            let x = middle.x + r * angle.cos();
            let y = middle.y + r * angle.sin();
            is_near(*image.get_pixel(x as u32, y as u32), [255; 3])
        };
        [-1.0, 0.0, 1.0].iter().any(|off| is_white(radius + off))
    });
    white.count() as f64 / f64::from(STEPS)
}

/// Whether a row of the right upper quarter runs through a palette in order.
fn has_scale(image: &RgbImage, palette: Palette) -> bool {
    let (width, height) = image.dimensions();
    (0..height / 2).any(|y| {
        let mut next = 0;
        for x in width / 2..width {
            if next <= 16 && is_near(*image.get_pixel(x, y), palette.at(f64::from(next) / 16.0)) {
                next += 1;
            }
        }
        next > 16
    })
}

/// Share of the picture that is as white as paper.
fn white_share(image: &RgbImage, part: &viewer::view::Canvas) -> f64 {
    let (mut all, mut white) = (0, 0);
    for (x, y, pixel) in image.enumerate_pixels() {
        if part.holds(&Point2::new(f64::from(x), f64::from(y))) {
            all += 1;
            white += u32::from(is_near(*pixel, [255; 3]));
        }
    }
    f64::from(white) / f64::from(all)
}

#[test]
fn the_demonstration_is_flown_through_marked_and_saved() {
    let Some(screen) = Screen::open() else {
        return;
    };
    let folder = tempfile::tempdir().unwrap();
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("../test-meshes/demo/case.toml");
    let mut viewer = Viewer::start(&screen, &demo, folder.path());
    awaited("first frame", || {
        viewer.said().contains("first frame").then_some(())
    });
    focused(&screen, &mut viewer, "DEMO-2");

    // The same case without a window says where things ought to be.
    let source = Source::of(&viewer.out);
    let part = Layout::of(f64::from(WIDTH), f64::from(HEIGHT), 1.0, true).picture;
    let app = App::new(open(&source, &|_| {}).unwrap(), part);
    let findings = &app.opened.result.findings;
    let middle = part.middle();

    let whole = viewer.screenshot(&screen, 1);
    assert_eq!(whole.dimensions(), (WIDTH, HEIGHT));
    assert!(has_scale(&whole, Palette::Viridis));
    assert!(ring_share(&whole, middle, 34.0) < 0.5);

    // A known corner of the mesh, clicked in sight of the whole.
    let shown = &app.opened.impressions[0];
    let corner = shown
        .surface
        .vertices()
        .iter()
        .zip(&shown.normals)
        .find(|(p, n)| {
            (app.view.pixel(&part, p) - middle).norm() < 250.0
                && n.normalize().z > 0.9
                && in_sight(shown, p, &Vector3::z())
        })
        .unwrap()
        .0;
    screen.keys(&["l"]);
    screen.click(&app.view.pixel(&part, corner));
    let file = viewer.out.join("landmarks.toml");
    awaited("landmarks", || file.exists().then_some(()));
    let error = |known: [f64; 3], number: usize| {
        let mark = awaited("mark", || {
            let marks = Marks::load(&file).ok()?;
            marks.all().get(number).cloned()
        });
        (Vector3::from(mark.point) - Vector3::from(known)).norm()
    };
    let mut worst = error(shown.placement.in_file(corner), 0);
    screen.keys(&["l"]);

    for (number, finding) in findings.iter().enumerate() {
        if number > 0 {
            screen.keys(&["Down"]);
        }
        screen.keys(&["Return"]);
        let picture = viewer.screenshot(&screen, 2 + number as u32);
        let share = ring_share(&picture, middle, 34.0);
        match finding.at {
            Some(_) => assert!(share > 0.9, "{}: ring {share}", finding.id),
            None => assert!(share < 0.5, "{}: ring {share}", finding.id),
        }
        if number == 0 {
            screen.keys(&["l", "n"]);
            screen.click(&middle);
            worst = worst.max(error(finding.at.unwrap(), 1));
            screen.keys(&["l"]);
        }
    }
    eprintln!("worst pick error {worst:.3} mm");
    assert!(worst <= 0.3);

    let mut number = 2 + findings.len() as u32;
    screen.keys(&["p"]);
    let other = viewer.screenshot(&screen, number);
    assert!(has_scale(&other, Palette::Cividis) && !has_scale(&other, Palette::Viridis));
    // Wash (which this case lacks), scan quality, two figures of the flange, none.
    for (map, there) in [false, true, true, true, false].into_iter().enumerate() {
        screen.keys(&["m"]);
        number += 1;
        let shown = viewer.screenshot(&screen, number);
        assert_eq!(has_scale(&shown, Palette::Cividis), there, "map {map}");
    }
    screen.keys(&["f"]);
    number += 1;
    assert!(has_scale(
        &viewer.screenshot(&screen, number),
        Palette::Cividis
    ));
    // Nothing changes, nothing is drawn (but what the screenshot itself said).
    sleep(Duration::from_secs(2));
    if let Some(before) = viewer.busy() {
        sleep(Duration::from_secs(2));
        let ticks = viewer.busy().unwrap() - before;
        assert!(ticks < 20, "{ticks} hundredths of a second of work at rest");
    }

    // The section drawing of a finding that has one: small, then large.
    let drawn = findings.iter().position(|f| f.drawing.is_some()).unwrap();
    screen.keys(&vec!["Up"; findings.len()]);
    screen.keys(&vec!["Down"; drawn]);
    screen.keys(&["Return"]);
    number += 1;
    let small = white_share(&viewer.screenshot(&screen, number), &part);
    screen.keys(&["g"]);
    number += 1;
    let large = white_share(&viewer.screenshot(&screen, number), &part);
    assert!((0.08..0.25).contains(&small), "{small}");
    assert!(large > 0.5, "{large}");
    viewer.close(&screen);
    assert!(folder.path().join("archproof/window.toml").exists());
}

#[test]
fn bad_input_is_told_in_the_window_which_stays() {
    let Some(screen) = Screen::open() else {
        return;
    };
    let folder = tempfile::tempdir().unwrap();
    let scan = folder.path().join("scan.stl");
    fs::write(&scan, "no mesh").unwrap();
    let mut viewer = Viewer::start(&screen, &scan, folder.path());
    focused(&screen, &mut viewer, "scan.stl");
    assert!(viewer.process.try_wait().unwrap().is_none());
    viewer.close(&screen);
}

/// Runs the viewer where it can have no window; what it says.
fn refusal(change: impl FnOnce(&mut Command)) -> String {
    let mut command = Command::new(env!("CARGO_BIN_EXE_archproof-viewer"));
    let folder = tempfile::tempdir().unwrap();
    command
        .arg("nothing.toml")
        .env_remove("WAYLAND_DISPLAY")
        .env("XDG_RUNTIME_DIR", folder.path());
    change(&mut command);
    let run = command.output().unwrap();
    assert_eq!(run.status.code(), Some(2));
    let said = String::from_utf8(run.stderr).unwrap();
    assert_eq!(said.trim_end().lines().count(), 1, "{said}");
    said
}

#[test]
fn without_a_screen_or_graphics_one_line_says_what_is_missing() {
    if !cfg!(target_os = "linux") {
        return;
    }
    let said = refusal(|command| {
        command.env_remove("DISPLAY");
    });
    assert!(
        said.contains("no screen") && said.contains("result folder"),
        "{said}"
    );
    let said = refusal(|command| {
        command.env("DISPLAY", ":98765");
    });
    assert!(said.contains("cannot be used"), "{said}");
    let Some(screen) = Screen::open() else {
        return;
    };
    let said = refusal(|command| {
        command
            .env("DISPLAY", &screen.name)
            .env("VK_DRIVER_FILES", "/none")
            .env("VK_ICD_FILENAMES", "/none")
            .env("__EGL_VENDOR_LIBRARY_FILENAMES", "/none");
    });
    assert!(said.contains("mesa-vulkan-drivers"), "{said}");
}
