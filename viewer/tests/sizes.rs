//! The window on a large screen, and with large text on a small one, light and
//! dark: from the start to the first finding. Pictures of each step are taken
//! where `ARCHPROOF_PICTURES` names a folder; without it, each size is looked at
//! in one dress.

#![allow(clippy::unwrap_used, clippy::print_stderr, reason = "tests")]

mod screen;

use arguments::Source;
use mesh::write::{write_ply, write_stl};
use nalgebra::Point2;
use phantom::{Arch, Options, Phantom};
use screen::{Screen, Viewer, awaited, focused};
use std::fs;
use std::path::{Path, PathBuf};
use std::thread::sleep;
use std::time::Duration;
use viewer::opened::open;
use viewer::settings::Settings;
use viewer::window::Layout;

/// Two checked cases: the demonstration and a lower jaw.
fn cases(folder: &Path) -> PathBuf {
    let cases = folder.join("cases");
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("../test-meshes/demo/case.toml");
    let lower = folder.join("lower");
    fs::create_dir_all(&lower).unwrap();
    let made = Phantom::new(&Options {
        arch: Arch::Mandibular,
        seed: 8,
        edge_mm: 0.8,
        tray_edge_mm: 0.8,
        ..Options::default()
    });
    write_ply(&lower.join("impression.ply"), &made.impression).unwrap();
    write_stl(&lower.join("tray.stl"), &made.tray).unwrap();
    let text = "case = \"LOWER\"\n[mandibular]\nfirst_pass = \"impression.ply\"\n\
                tray = \"tray.stl\"\n";
    fs::write(lower.join("case.toml"), text).unwrap();
    for (name, case) in [("demo", demo), ("lower", lower.join("case.toml"))] {
        let source = Source {
            out: Some(cases.join(name)),
            ..Source::of(&case)
        };
        open(&source, &|_| {}).unwrap();
    }
    cases
}

#[test]
fn from_start_to_first_finding_at_every_size_of_screen_and_text() {
    let folder = tempfile::tempdir().unwrap();
    let cases = cases(folder.path());
    let is_shown = std::env::var_os("ARCHPROOF_PICTURES").is_some();
    for (size, text_size) in [([1920, 1080], 1.0), ([1280, 800], 1.5)] {
        let Some(screen) = Screen::of_size(size) else {
            return;
        };
        let usual = text_size > 1.0;
        for dark in [false, true]
            .into_iter()
            .filter(|&dark| is_shown || dark == usual)
        {
            let own = tempfile::tempdir().unwrap();
            let settings = own.path().join("archproof");
            fs::create_dir_all(&settings).unwrap();
            let dress = if dark { "dark" } else { "light" };
            let text = format!("text_size = {text_size}\ndark = {dark}\n");
            fs::write(settings.join("window.toml"), text).unwrap();
            let name = |step: &str| format!("{}-{dress}-{step}", size[0]);

            let mut viewer = Viewer::of_size(&screen, None, own.path(), size);
            focused(&screen, &mut viewer, "archproof");
            screen.picture(&name("1-start"));
            viewer.close(&screen);

            let mut viewer = Viewer::of_size(&screen, Some(&cases), own.path(), size);
            awaited("list", || {
                viewer.said().contains("frame of the list").then_some(())
            });
            focused(&screen, &mut viewer, "(in|en) cases");
            screen.picture(&name("2-list"));
            screen.keys(&["Down", "Return"]);
            focused(&screen, &mut viewer, "DEMO-2");
            screen.picture(&name("3-case"));
            screen.keys(&["Return"]);
            sleep(Duration::from_secs(2));
            screen.picture(&name("4-finding"));
            let [width, height] = size.map(f64::from);
            let scale = text_size * (height / 900.0).clamp(1.0, 2.0);
            let strip = Layout::of(width, height, scale, true).strip.unwrap();
            let place = Point2::new(strip.left + 0.3 * strip.width, strip.middle().y);
            screen.keys(&["Home"]);
            sleep(Duration::from_secs(2));
            screen.point(&place);
            screen.picture(&name("5-strip"));
            screen.click(&place);
            sleep(Duration::from_secs(2));
            screen.picture(&name("6-flown"));
            screen.keys(&["h"]);
            screen.picture(&name("7-help"));
            screen.keys(&["h", "F6"]);
            screen.picture(&name("8-decision"));
            screen.keys(&["Escape"]);
            sleep(Duration::from_secs(1));
            screen.keys(&["Prior"]);
            focused(&screen, &mut viewer, "LOWER");
            sleep(Duration::from_secs(2));
            screen.picture(&name("9-lower"));
            // The picture is the first that Tab reaches, and turns by arrow keys.
            screen.keys(&["Tab"]);
            sleep(Duration::from_secs(1));
            screen.keys(&["Right", "Right", "Right", "Right", "Down", "Down"]);
            screen.picture(&name("10-turned"));
            screen.keys(&["Tab", "Tab", "Tab"]);
            screen.picture(&name("11-button"));
            viewer.close(&screen);
            let kept: Settings =
                toml::from_str(&fs::read_to_string(settings.join("window.toml")).unwrap()).unwrap();
            assert_eq!([kept.width, kept.height], size);
        }
    }
}
