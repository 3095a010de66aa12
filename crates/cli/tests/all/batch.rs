//! A folder of cases: nothing lost, mixed or done twice, whatever happens.
#![allow(clippy::unwrap_used, clippy::print_stderr)]

use crate::common::{archproof_beside, coarse, run};
use phantom::Arch;
use std::collections::BTreeMap;
use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Child, Stdio};
use std::sync::LazyLock;
use std::time::{Duration, Instant};
use tempfile::TempDir;

const READABLE: usize = 4;

/// Four invented cases, one whose scan is cut off, one whose case file is
/// broken, and a protocol, which is no case. Made once for all tests.
static CASES: LazyLock<TempDir> = LazyLock::new(|| {
    let folder = tempfile::tempdir().unwrap();
    for seed in 0..READABLE as u64 {
        let (arch, name) = match seed % 2 {
            0 => (Arch::Maxillary, "maxillary"),
            _ => (Arch::Mandibular, "mandibular"),
        };
        let made = coarse(arch, seed, seed == 0);
        let case = folder.path().join(format!("patient-name-{seed}"));
        fs::create_dir(&case).unwrap();
        mesh::write::write_ply(&case.join("john-first.ply"), &made.impression).unwrap();
        mesh::write::write_stl(&case.join("john-tray.stl"), &made.tray).unwrap();
        let text = format!(
            "case = \"B-{seed}\"\n[{name}]\nfirst_pass = \"john-first.ply\"\ntray = \"john-tray.stl\"\n\
             [labels]\nscanner = \"s{}\"\nlot = \"L7\"\n",
            seed % 2
        );
        fs::write(case.join("case.toml"), text).unwrap();
    }
    let cut = folder.path().join("patient-name-cut");
    fs::create_dir(&cut).unwrap();
    let whole = fs::read(folder.path().join("patient-name-0/john-first.ply")).unwrap();
    fs::write(cut.join("john-first.ply"), &whole[..whole.len() / 2]).unwrap();
    let text = "case = \"B-cut\"\n[maxillary]\nfirst_pass = \"john-first.ply\"\n";
    fs::write(cut.join("case.toml"), text).unwrap();
    fs::write(folder.path().join("broken.toml"), "case = ").unwrap();
    fs::write(folder.path().join("ours.toml"), "name = \"ours\"\n").unwrap();
    folder
});

fn cases() -> &'static str {
    CASES.path().to_str().unwrap()
}

type Files = BTreeMap<PathBuf, Vec<u8>>;

fn files_below(folder: &Path) -> Files {
    let mut files = Files::new();
    let mut open = vec![folder.to_owned()];
    while let Some(next) = open.pop() {
        for entry in fs::read_dir(&next).unwrap().map(Result::unwrap) {
            let path = entry.path();
            if path.is_dir() {
                open.push(path);
            } else {
                let name = path.strip_prefix(folder).unwrap().to_owned();
                files.insert(name, fs::read(&path).unwrap());
            }
        }
    }
    files
}

fn same(a: &Files, b: &Files) {
    let names = |files: &Files| files.keys().cloned().collect::<Vec<_>>();
    assert_eq!(names(a), names(b));
    for (name, bytes) in a {
        assert!(b[name] == *bytes, "{} differs", name.display());
    }
}

/// The tables alone, without the workbook, whose links lead to where the cases lie.
fn tables(files: &Files) -> Files {
    let is_table = |name: &Path| {
        let at_top = name.components().count() == 1;
        let is_table = |ending: &OsStr| {
            ["jsonl", "csv", "parquet"]
                .map(OsStr::new)
                .contains(&ending)
        };
        at_top && name.extension().is_some_and(is_table)
    };
    let own = files.iter().filter(|(name, _)| is_table(name));
    own.map(|(name, bytes)| (name.clone(), bytes.clone()))
        .collect()
}

/// The whole batch on one thread, undisturbed.
static UNDISTURBED: LazyLock<Files> = LazyLock::new(|| {
    let work = tempfile::tempdir().unwrap();
    let outcome = run(
        work.path(),
        &["batch", cases(), "--out", "out", "--threads", "1"],
    );
    assert_eq!(
        outcome.code,
        Some(1),
        "{}{}",
        outcome.out,
        outcome.complaint
    );
    assert!(
        outcome
            .out
            .starts_with("6 cases, 2 of which could not be checked; "),
        "{}",
        outcome.out
    );
    files_below(&work.path().join("out"))
});

fn text(files: &Files, name: &str) -> String {
    String::from_utf8(files[Path::new(name)].clone()).unwrap()
}

#[test]
fn every_case_is_a_row_and_a_folder_and_no_file_is_named_in_them() {
    let files = &*UNDISTURBED;
    let mut table = csv::Reader::from_reader(&files[Path::new("summary.csv")][..]);
    let head = table.headers().unwrap().clone();
    let column = |name: &str| head.iter().position(|h| h == name).unwrap();
    let rows: Vec<csv::StringRecord> = table.records().map(Result::unwrap).collect();
    let cell = |row: &csv::StringRecord, name| row[column(name)].to_owned();
    let told: Vec<[String; 3]> = rows
        .iter()
        .map(|row| {
            [
                cell(row, "case"),
                cell(row, "case_verdict"),
                cell(row, "arch"),
            ]
        })
        .collect();
    let ids: Vec<&str> = told.iter().map(|t| t[0].as_str()).collect();
    assert_eq!(ids, ["B-0", "B-1", "B-2", "B-3", "B-cut", ""]);
    assert_eq!(told[0][1], "rework");
    assert_eq!(told[1][2], "mandibular");
    assert_eq!(cell(&rows[1], "labels"), "lot=L7 scanner=s1");
    assert!(text(files, "summary.html").contains("scanner: s1"));
    assert!(cell(&rows[0], "failed_checks").contains("show-through"));
    let cut = cell(&rows[4], "problem");
    assert!(cut.starts_with("maxillary first-pass scan: "), "{cut}");
    let broken = cell(&rows[5], "problem");
    assert!(broken.starts_with("case file: line 1: "), "{broken}");
    for row in &rows {
        let folder = Path::new("cases").join(cell(row, "folder"));
        assert!(files.contains_key(&folder.join("record.json")));
        let is_checked = cell(row, "problem").is_empty();
        assert_eq!(files.contains_key(&folder.join("result.json")), is_checked);
    }
    for (name, bytes) in files {
        if name != Path::new("inputs.csv") {
            let held = String::from_utf8_lossy(bytes);
            assert!(
                !held.contains("john") && !held.contains("patient-name"),
                "{name:?}"
            );
        }
    }
    assert!(text(files, "inputs.csv").contains("patient-name-cut/case.toml"));
    assert!(text(files, "findings.csv").contains(",fail,show-through,0,maxillary,"));
}

/// For people the last line, for a machine all counts, for a pipeline the exit status.
#[test]
fn the_verdicts_are_said_to_people_machines_and_pipelines() {
    let work = tempfile::tempdir().unwrap();
    fs::create_dir(work.path().join("in")).unwrap();
    for name in ["patient-name-0", "patient-name-1"] {
        let to = work.path().join("in").join(name);
        fs::create_dir(&to).unwrap();
        for file in ["case.toml", "john-first.ply", "john-tray.stl"] {
            fs::copy(CASES.path().join(name).join(file), to.join(file)).unwrap();
        }
    }
    let again = ["batch", "in", "--out", "out", "--resume"];
    let outcome = run(work.path(), &again);
    let last = outcome.out.lines().last().unwrap();
    assert!(
        last.starts_with("accept ") && last.ends_with(", could not be read 0"),
        "{last}"
    );
    assert_eq!(outcome.code, Some(0));
    for (verdicts, code) in [("rework", 1), ("retake", 0), ("retake,rework", 1)] {
        let outcome = run(
            work.path(),
            &[&again[..], &["--fail-on", verdicts]].concat(),
        );
        assert_eq!(outcome.code, Some(code), "{verdicts}: {last}");
    }
    let outcome = run(work.path(), &[&again[..], &["--json"]].concat());
    let said: serde_json::Value = serde_json::from_str(&outcome.out).unwrap();
    assert_eq!(said["schema"], "archproof-batch/1");
    assert_eq!(said["cases"], 2);
    assert_eq!(said["verdicts"]["unreadable"], 0);
    let schema = run(work.path(), &["schema", "batch"]).out;
    let schema: serde_json::Value = serde_json::from_str(&schema).unwrap();
    assert!(jsonschema::is_valid(&schema, &said), "{said}");
    let page = fs::read_to_string(work.path().join("out/summary.html")).unwrap();
    let digest = said["folder_sha256"].as_str().unwrap();
    assert!(page.contains(digest) && !page.contains("<script"));
    for case in ["B-0", "B-1"] {
        assert!(page.contains(&format!("<th scope=\"row\">{case}</th>")));
    }
}

/// A baseline made under other limits and by another version, invented, whose centre lies
/// far from the cases: it is used, and the page and the JSON say what it is.
#[test]
fn a_frozen_baseline_judges_the_cases_and_says_where_it_differs() {
    let work = tempfile::tempdir().unwrap();
    let digest = "ab".repeat(32);
    let frozen = format!(
        "schema = \"archproof-baseline/1\"\nprogram = \"0.0.9\"\nprotocol = \"other limits\"\n\
         protocol_sha256 = \"{digest}\"\nresults_sha256 = \"{digest}\"\n[[figure]]\narch = \"maxillary\"\n\
         stage = \"first_pass\"\nfigure = \"cover_median_mm\"\ncentre = 9.0\nsigma = 0.1\ncount = 60\n\
         first = \"2026-01-01T00:00:00Z\"\nlast = \"2026-02-01T00:00:00Z\"\n"
    );
    fs::write(work.path().join("base.toml"), frozen).unwrap();
    let arguments = [
        "batch",
        cases(),
        "--out",
        "out",
        "--no-report",
        "--baseline",
        "base.toml",
        "--json",
    ];
    let outcome = run(work.path(), &arguments);
    assert_eq!(outcome.code, Some(1), "{}", outcome.complaint);
    let told: serde_json::Value = serde_json::from_str(&outcome.out).unwrap();
    let signals = told["drift"].as_array().unwrap();
    assert!(!signals.is_empty());
    for signal in signals {
        assert_eq!(signal["group"]["arch"], "maxillary", "{signal}");
        assert_eq!(
            (&signal["limits"], &signal["is_above"]),
            (&"baseline".into(), &false.into())
        );
    }
    let page = fs::read_to_string(work.path().join("out/summary.html")).unwrap();
    for words in [
        "Limits: frozen baseline",
        "made under other limits (other limits)",
        "made with archproof 0.0.9",
        "Too few impressions for limits",
        "baseline (60)",
    ] {
        assert!(page.contains(words), "{words}");
    }
}

#[test]
fn the_number_of_threads_changes_no_byte() {
    let work = tempfile::tempdir().unwrap();
    run(
        work.path(),
        &["batch", cases(), "--out", "out", "--threads", "3"],
    );
    same(&files_below(&work.path().join("out")), &UNDISTURBED);
}

#[test]
fn shards_together_are_the_whole() {
    let work = tempfile::tempdir().unwrap();
    for shard in ["1/3", "2/3", "3/3"] {
        let out = format!("s{}", &shard[..1]);
        run(
            work.path(),
            &["batch", cases(), "--out", &out, "--shard", shard],
        );
    }
    let outcome = run(work.path(), &["collect", "s3", "s1", "s2", "--out", "all"]);
    assert_eq!(outcome.code, Some(1), "{}", outcome.complaint);
    let joined = files_below(&work.path().join("all"));
    same(&tables(&joined), &tables(&UNDISTURBED));
    for (given, says) in [
        (
            &["collect", "s1", "s3", "--out", "x"][..],
            "shards 2 are missing",
        ),
        (&["collect", "s1", "s1", "--out", "x"], "repeats shard 1"),
        (&["collect", "absent", "--out", "x"], "no finished results"),
        (
            &["collect", "s1", "all", "--out", "x"],
            "only matching shards can be joined",
        ),
    ] {
        let outcome = run(work.path(), given);
        assert_eq!(outcome.code, Some(2));
        assert!(outcome.complaint.contains(says), "{}", outcome.complaint);
        assert!(!work.path().join("x").exists());
    }
}

fn start(folder: &Path, arguments: &[&str]) -> Child {
    archproof_beside(folder)
        .args(arguments)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .unwrap()
}

fn records(out: &Path) -> usize {
    fs::read_dir(out.join("cases")).map_or(0, |entries| {
        let each = entries.filter_map(Result::ok);
        each.filter(|e| e.path().join("record.json").exists())
            .count()
    })
}

fn wait_for(what: impl Fn() -> bool) {
    let started = Instant::now();
    while !what() {
        assert!(
            started.elapsed() < Duration::from_secs(240),
            "waited too long"
        );
        std::thread::sleep(Duration::from_millis(20));
    }
}

#[test]
fn killed_and_taken_up_again_it_comes_to_the_same() {
    let work = tempfile::tempdir().unwrap();
    let out = work.path().join("out");
    let arguments = ["batch", cases(), "--out", "out", "--threads", "2"];
    // Killed after one case, then after three, each time in the middle of others.
    for done in [1, 3] {
        let mut child = start(work.path(), &[&arguments[..], &["--resume"]].concat());
        wait_for(|| records(&out) >= done);
        child.kill().unwrap();
        child.wait().unwrap();
    }
    let refused = run(work.path(), &arguments);
    assert_eq!(refused.code, Some(2));
    assert!(
        refused.complaint.contains("--resume"),
        "{}",
        refused.complaint
    );
    let before = records(&out);
    let outcome = run(work.path(), &[&arguments[..], &["--resume"]].concat());
    let skipped = format!("; {before} of them done before; ");
    assert!(outcome.out.contains(&skipped), "{}", outcome.out);
    same(&files_below(&out), &UNDISTURBED);
}

#[test]
fn only_what_changed_is_done_again() {
    let work = tempfile::tempdir().unwrap();
    let case = work.path().join("in/a");
    fs::create_dir_all(&case).unwrap();
    let from = CASES.path().join("patient-name-1");
    for name in ["case.toml", "john-first.ply", "john-tray.stl"] {
        fs::copy(from.join(name), case.join(name)).unwrap();
    }
    let resume = ["batch", "in", "--out", "in/out", "--resume"];
    let said = |arguments: &[&str]| run(work.path(), arguments).out;
    assert!(said(&resume).starts_with("1 case checked; "));
    let again = said(&resume);
    assert!(again.contains("1 of them done before"), "{again}");
    fs::write(
        work.path().join("ours.toml"),
        "name = \"ours\"\n[limits]\nshow_through_mm = { value = 0.3, source = \"ours\" }\n",
    )
    .unwrap();
    let other_limits = said(&[&resume[..], &["--protocol", "ours.toml"]].concat());
    assert!(!other_limits.contains("done before"), "{other_limits}");
    let file = case.join("case.toml");
    let text = fs::read_to_string(&file).unwrap();
    let by_ours = [&resume[..], &["--protocol", "ours.toml"]].concat();
    // A file that the case names counts as the case file itself does.
    let scanner = case.join("scanner.toml");
    fs::write(&file, format!("scanner = \"scanner.toml\"\n{text}")).unwrap();
    for mm in ["0.02", "0.03"] {
        let found = format!("length_uncertainty_mm = {mm}\nsource = \"invented\"\n");
        fs::write(&scanner, found).unwrap();
        let changed = said(&by_ours);
        assert!(!changed.contains("done before"), "{changed}");
    }
    assert!(said(&by_ours).contains("1 of them done before"));
}

#[test]
fn scans_are_cases_by_their_names_and_keep_them_to_themselves() {
    let work = tempfile::tempdir().unwrap();
    let from = CASES.path().join("patient-name-1");
    fs::create_dir(work.path().join("in")).unwrap();
    for (name, to) in [
        ("john-first.ply", "jane-lower.ply"),
        ("john-tray.stl", "jane-tray.stl"),
    ] {
        fs::copy(from.join(name), work.path().join("in").join(to)).unwrap();
    }
    let none = run(work.path(), &["batch", "in", "--out", "out"]);
    assert_eq!(none.code, Some(2));
    assert!(
        none.complaint.contains("no case file"),
        "{}",
        none.complaint
    );
    let by_name = [
        "batch",
        "in",
        "--scans",
        "*-lower.ply",
        "--trays",
        "*-tray.stl",
        "--arch",
        "mandibular",
    ];
    let outcome = run(work.path(), &[&by_name[..], &["--out", "out"]].concat());
    assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
    let files = files_below(&work.path().join("out"));
    let summary = text(&files, "summary.csv");
    assert!(
        summary.contains("\nscan-") && !summary.contains("jane"),
        "{summary}"
    );
    assert!(summary.contains(",mandibular,single,"), "{summary}");
    run(
        work.path(),
        &[&by_name[..], &["--ids-from-names", "--out", "named"]].concat(),
    );
    let named = files_below(&work.path().join("named"));
    assert!(text(&named, "summary.csv").contains("\njane-"));
}

#[test]
fn a_case_too_large_for_the_memory_is_a_row() {
    let work = tempfile::tempdir().unwrap();
    let small = ["batch", cases(), "--out", "out", "--memory", "20MiB"];
    let outcome = run(work.path(), &small);
    assert_eq!(outcome.code, Some(1));
    let summary = text(&files_below(&work.path().join("out")), "summary.csv");
    assert_eq!(
        summary.matches("allow more with --memory").count(),
        6,
        "{summary}"
    );
    // With more of it they are taken up again.
    let more = ["batch", cases(), "--out", "out", "--resume"];
    run(work.path(), &more);
    let files = files_below(&work.path().join("out"));
    same(&tables(&files), &tables(&UNDISTURBED));
}

#[test]
fn what_arrives_is_checked_once_it_is_whole_and_not_again_after_a_restart() {
    let work = tempfile::tempdir().unwrap();
    let case = work.path().join("in/a");
    fs::create_dir_all(&case).unwrap();
    let from = CASES.path().join("patient-name-1");
    for name in ["case.toml", "john-tray.stl"] {
        fs::copy(from.join(name), case.join(name)).unwrap();
    }
    let out = work.path().join("out");
    let summary = || fs::read_to_string(out.join("summary.csv")).unwrap_or_default();
    let watch = ["watch", "in", "--out", "out", "--settle", "2"];
    let mut child = start(work.path(), &watch);
    // The scan arrives in pieces, each sooner than it would be settled.
    let whole = fs::read(from.join("john-first.ply")).unwrap();
    for part in 1..=6 {
        std::thread::sleep(Duration::from_millis(700));
        assert_eq!(records(&out), 0, "checked before it was whole");
        fs::write(
            case.join("john-first.ply"),
            &whole[..whole.len() * part / 6],
        )
        .unwrap();
    }
    wait_for(|| summary().contains("B-1,"));
    child.kill().unwrap();
    child.wait().unwrap();
    let record = fs::read_dir(out.join("cases"))
        .unwrap()
        .next()
        .unwrap()
        .unwrap()
        .path();
    let made = |file: &Path| {
        fs::metadata(file.join("record.json"))
            .unwrap()
            .modified()
            .unwrap()
    };
    let first = made(&record);
    let mut child = start(work.path(), &watch);
    let two = work.path().join("in/b");
    fs::create_dir(&two).unwrap();
    for name in ["case.toml", "john-tray.stl", "john-first.ply"] {
        fs::copy(
            CASES.path().join("patient-name-2").join(name),
            two.join(name),
        )
        .unwrap();
    }
    wait_for(|| summary().contains("B-2,"));
    child.kill().unwrap();
    child.wait().unwrap();
    assert_eq!(made(&record), first, "done again");
    assert!(summary().contains("B-1,") && !summary().contains("cannot"));
}
