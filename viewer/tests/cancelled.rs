//! A check that is cancelled ends soon and leaves nothing behind.

#![allow(clippy::unwrap_used, clippy::print_stderr, reason = "tests")]

use arguments::Source;
use mesh::write::{write_ply, write_stl};
use phantom::{Options, Phantom};
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};
use viewer::opened::{OpenError, open_unless};

/// An impression in its tray, with edges of this length, and how it is checked.
fn case(folder: &Path, edge_mm: f64) -> Source {
    let made = Phantom::new(&Options {
        edge_mm,
        tray_edge_mm: edge_mm,
        ..Options::default()
    });
    let there = |name: &str| folder.join(name);
    write_ply(&there("impression.ply"), &made.impression).unwrap();
    write_stl(&there("tray.stl"), &made.tray).unwrap();
    let text = "case = \"C-1\"\n[maxillary]\none_step = \"impression.ply\"\ntray = \"tray.stl\"\n";
    std::fs::write(there("case.toml"), text).unwrap();
    Source {
        out: Some(there("results")),
        ..Source::of(&there("case.toml"))
    }
}

#[test]
fn a_check_is_left_at_every_look_and_nothing_is_written() {
    let folder = tempfile::tempdir().unwrap();
    let source = case(folder.path(), 0.9);
    let results = folder.path().join("results");
    // How often a whole check looks, and the steps between which it does.
    let looks = AtomicUsize::new(0);
    let steps = Mutex::new(Vec::new());
    let counted = || {
        looks.fetch_add(1, Ordering::Relaxed);
        false
    };
    let noted = |step| steps.lock().unwrap().push(step);
    open_unless(&source, &noted, &counted).unwrap();
    let all = looks.into_inner();
    let steps = steps.into_inner().unwrap();
    assert!(steps.len() >= 12, "{steps:?}");
    assert!(all >= steps.len() + 6, "{all} looks, {} steps", steps.len());

    std::fs::remove_dir_all(&results).unwrap();
    for last in (1..=all).step_by(3).chain([all]) {
        let looks = AtomicUsize::new(0);
        let is_cancelled = || looks.fetch_add(1, Ordering::Relaxed) + 1 >= last;
        let opened = open_unless(&source, &|_| {}, &is_cancelled);
        assert!(matches!(opened, Err(OpenError::Cancelled)), "look {last}");
        assert!(!results.exists(), "look {last}");
    }
    // It can be checked after all.
    open_unless(&source, &|_| {}, &|| false).unwrap();
    assert!(results.join("result.json").is_file());
}

/// The longest time between two looks is how late a check ends once it is
/// cancelled. Printed, since it depends on the machine.
#[test]
fn the_longest_time_between_two_looks_is_measured() {
    let folder = tempfile::tempdir().unwrap();
    let edge = std::env::var("ARCHPROOF_EDGE_MM").ok();
    let edge = edge.and_then(|edge| edge.parse().ok()).unwrap_or(0.7);
    let source = case(folder.path(), edge);
    let looks = Mutex::new((Instant::now(), Duration::ZERO, String::new()));
    let step = Mutex::new(String::new());
    let is_cancelled = || {
        let mut looks = looks.lock().unwrap();
        if looks.0.elapsed() > looks.1 {
            looks.1 = looks.0.elapsed();
            looks.2.clone_from(&step.lock().unwrap());
        }
        looks.0 = Instant::now();
        false
    };
    let begun = Instant::now();
    let noted = |at| *step.lock().unwrap() = at;
    let opened = open_unless(&source, &noted, &is_cancelled).unwrap();
    let all = begun.elapsed();
    let (_, longest, at) = looks.into_inner().unwrap();
    let triangles = opened.result.impressions[0].scan.triangles;
    eprintln!("{triangles} triangles: {all:.2?}; longest between two looks {longest:.2?}: {at}");
    assert!(longest < all);
}
