//! The list of cases in the window, walked through by keys alone: open a folder,
//! search, open a case, decide, go to the next, which is checked, and back.

#![allow(clippy::unwrap_used, clippy::print_stderr, reason = "tests")]

mod screen;

use arguments::Source;
use mesh::write::{write_ply, write_stl};
use phantom::{Arch, Options, Phantom};
use screen::{Screen, Viewer, awaited, focused};
use std::fs;
use std::path::Path;
use std::thread::sleep;
use std::time::Duration;
use viewer::opened::open;
use viewer::queue::decision::Decision;

/// A case of invented scans, as it arrives.
fn arrived(folder: &Path, name: &str, arch: Arch, seed: u64) {
    let made = Phantom::new(&Options {
        arch,
        seed,
        edge_mm: 0.8,
        tray_edge_mm: 0.8,
        ..Options::default()
    });
    let there = folder.join(name);
    fs::create_dir_all(&there).unwrap();
    write_ply(&there.join("impression.ply"), &made.impression).unwrap();
    write_stl(&there.join("tray.stl"), &made.tray).unwrap();
    let jaw = match arch {
        Arch::Maxillary => "maxillary",
        Arch::Mandibular => "mandibular",
    };
    let text = format!(
        "case = \"{name}\"\n[{jaw}]\nfirst_pass = \"impression.ply\"\ntray = \"tray.stl\"\n"
    );
    fs::write(there.join("case.toml"), text).unwrap();
}

fn checked(folder: &Path, name: &str) {
    let there = folder.join(name);
    let source = Source {
        out: Some(there.join(format!("archproof-{name}"))),
        ..Source::of(&there.join("case.toml"))
    };
    open(&source, &|_| {}).unwrap();
}

#[test]
fn a_folder_of_cases_is_walked_through_and_decided_by_keys_alone() {
    let Some(screen) = Screen::open() else {
        return;
    };
    let folder = tempfile::tempdir().unwrap();
    let cases = folder.path().join("cases");
    for (name, arch, seed) in [
        ("D-101", Arch::Maxillary, 7),
        ("D-102", Arch::Mandibular, 8),
        ("D-203", Arch::Maxillary, 9),
    ] {
        arrived(&cases, name, arch, seed);
    }
    checked(&cases, "D-101");
    checked(&cases, "D-203");
    let mut viewer = Viewer::start(&screen, &cases, folder.path());
    awaited("list", || {
        viewer
            .said()
            .contains("first frame of the list")
            .then_some(())
    });
    focused(&screen, &mut viewer, "cases in cases");
    sleep(Duration::from_secs(2));
    screen.picture("1-list");

    screen.write("d-1");
    screen.picture("2-search");
    screen.keys(&["Return"]);
    focused(&screen, &mut viewer, "case D-101");
    screen.picture("3-case");

    // Worked from; a name is refused first.
    let results = cases.join("D-101/archproof-D-101");
    let result = fs::read(results.join("result.json")).unwrap();
    for (key, text) in [("F7", "see the palate"), ("Tab", "Anna")] {
        screen.keys(&[key]);
        // The next field takes letters from the next frame on.
        sleep(Duration::from_secs(3));
        screen.write(text);
    }
    screen.keys(&["Return"]);
    sleep(Duration::from_secs(2));
    screen.picture("4-refused");
    assert_eq!(Decision::load(&results), Ok(None));
    // The field still has the keyboard.
    screen.keys(&["BackSpace"; 4]);
    screen.write("AB");
    screen.picture("5-decision");
    screen.keys(&["Return"]);
    let decision = awaited("decision", || Decision::load(&results).unwrap());
    assert_eq!(decision.state.to_string(), "worked from");
    assert_eq!(
        (&*decision.note, &*decision.initials),
        ("see the palate", "AB")
    );
    assert_eq!(fs::read(results.join("result.json")).unwrap(), result);
    screen.picture("6-decided");

    // The next of those that were searched for is not checked yet.
    let next = cases.join("D-102/archproof-D-102");
    assert!(!next.exists());
    screen.keys(&["Page_Down"]);
    screen.picture("7-checking");
    focused(&screen, &mut viewer, "case D-102");
    assert!(next.join("result.json").is_file());
    screen.picture("8-next");
    screen.keys(&["Page_Up"]);
    focused(&screen, &mut viewer, "case D-101");
    screen.keys(&["Escape"]);
    focused(&screen, &mut viewer, "cases in cases");
    sleep(Duration::from_secs(1));
    screen.picture("9-back");
    // All are there again, the decided one last.
    screen.keys(&["Escape", "Page_Down"]);
    screen.picture("10-all");
    screen.keys(&["Return"]);
    focused(&screen, &mut viewer, "case D-101");

    // What arrives meanwhile shows by itself.
    screen.keys(&["Escape"]);
    arrived(&cases, "A-300", Arch::Mandibular, 10);
    sleep(Duration::from_secs(4));
    screen.write("a-300");
    screen.picture("11-arrived");
    screen.keys(&["Return"]);
    focused(&screen, &mut viewer, "case A-300");
    viewer.close(&screen);
}
