//! A check that is cancelled ends soon and leaves nothing behind.

#![allow(clippy::unwrap_used, clippy::print_stderr, reason = "tests")]

use arguments::Source;
use mesh::write::{write_ply, write_stl};
use phantom::{Arch, Options, Phantom};
use std::collections::BTreeMap;
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
    let source = case(folder.path(), 0.72);
    let results = folder.path().join("results");
    // How often a whole check looks, and in which step.
    let step = Mutex::new("opening".to_owned());
    let looks = Mutex::new(BTreeMap::<String, usize>::new());
    let counted = || {
        let step = step.lock().unwrap().clone();
        *looks.lock().unwrap().entry(step).or_default() += 1;
        false
    };
    let noted = |at| *step.lock().unwrap() = at;
    open_unless(&source, &noted, &counted).unwrap();
    let looks = looks.into_inner().unwrap();
    assert!(looks.len() >= 12, "{looks:?}");
    // The steps that take longest look often.
    for (step, least) in [
        ("joining triangles", 8),
        ("measuring the material thickness", 6),
        ("looking for voids, nodules, folds and holes", 4),
        ("writing the results", 20),
    ] {
        assert!(looks[step] >= least, "{step}: {looks:?}");
    }
    let all: usize = looks.values().sum();

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

/// Both jaws with first pass and wash, each in its tray.
fn both_jaws(folder: &Path, edge_mm: f64) -> Source {
    let mut text = "case = \"C-2\"\n".to_owned();
    for (jaw, arch) in [
        ("maxillary", Arch::Maxillary),
        ("mandibular", Arch::Mandibular),
    ] {
        let made = [1, 2].map(|seed| {
            Phantom::new(&Options {
                arch,
                seed,
                edge_mm,
                tray_edge_mm: edge_mm,
                ..Options::default()
            })
        });
        let there = |name: &str| folder.join(format!("{jaw}-{name}"));
        write_ply(&there("first.ply"), &made[0].impression).unwrap();
        write_ply(&there("wash.ply"), &made[1].impression).unwrap();
        write_stl(&there("tray.stl"), &made[0].tray).unwrap();
        text += &format!(
            "[{jaw}]\nfirst_pass = \"{jaw}-first.ply\"\nwash = \"{jaw}-wash.ply\"\n\
             tray = \"{jaw}-tray.stl\"\n"
        );
    }
    std::fs::write(folder.join("both.toml"), text).unwrap();
    Source {
        out: Some(folder.join("both-results")),
        ..Source::of(&folder.join("both.toml"))
    }
}

/// The longest time between two looks is how late a check ends once it is
/// cancelled. Printed, since it depends on the machine; `ARCHPROOF_EDGE_MM=0.238`
/// makes scans of half a million triangles.
#[test]
fn the_longest_time_between_two_looks_is_measured() {
    let folder = tempfile::tempdir().unwrap();
    let asked = std::env::var("ARCHPROOF_EDGE_MM").ok();
    let asked: Option<f64> = asked.and_then(|edge| edge.parse().ok());
    let mut sources = vec![case(folder.path(), asked.unwrap_or(0.7))];
    // Larger ones where somebody waits for them.
    sources.extend(asked.map(|edge| both_jaws(folder.path(), edge)));
    for source in sources {
        let whole = print_looks(&source);
        print_delays(&source, whole);
    }
}

/// Cancels at several moments of a check that lasts so long, and prints how late
/// each of them ends.
fn print_delays(source: &Source, whole: Duration) {
    const MOMENTS: u32 = 5;
    let delays = (1..=MOMENTS).map(|moment| {
        let at = whole * moment / (MOMENTS + 1);
        let begun = Instant::now();
        // What is written lies there already: it may end before it is cancelled.
        let _ = open_unless(source, &|_| {}, &|| begun.elapsed() >= at);
        begun.elapsed().saturating_sub(at)
    });
    let delays: Vec<String> = delays.map(|delay| format!("{delay:.2?}")).collect();
    eprintln!(
        "cancelled at {MOMENTS} moments, it ends after {}",
        delays.join(", ")
    );
}

/// Prints how often each step looks and how long it does not; gives how long all took.
fn print_looks(source: &Source) -> Duration {
    // The last look, and for each step how often it looked and the longest time between.
    let looks = Mutex::new((Instant::now(), Vec::<(String, usize, Duration)>::new()));
    let step = Mutex::new("opening".to_owned());
    let is_cancelled = || {
        let mut looks = looks.lock().unwrap();
        let (since, at) = (looks.0.elapsed(), step.lock().unwrap().clone());
        match looks.1.iter_mut().find(|(step, ..)| *step == at) {
            Some((_, count, longest)) => {
                *count += 1;
                *longest = since.max(*longest);
            }
            None => looks.1.push((at, 1, since)),
        }
        looks.0 = Instant::now();
        false
    };
    let begun = Instant::now();
    let noted = |at| *step.lock().unwrap() = at;
    let opened = open_unless(source, &noted, &is_cancelled).unwrap();
    let all = begun.elapsed();
    let (last, steps) = looks.into_inner().unwrap();
    let triangles = opened.result.impressions[0].scan.triangles;
    for (step, count, longest) in &steps {
        eprintln!("{step}: {count} looks, at most {longest:.2?} between two");
    }
    let longest = steps.iter().map(|(.., longest)| *longest).max().unwrap();
    eprintln!(
        "{triangles} triangles: {all:.2?}, {:.2?} after the last look; longest {longest:.2?}",
        last.elapsed()
    );
    assert!(longest < all);
    all
}
