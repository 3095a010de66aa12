//! What is printed and written for people in German and Spanish holds no English sentence.
#![allow(clippy::unwrap_used)]

use crate::agreement::verdicts;
use crate::artefact;
use crate::common::{coarse, first_pass, run};
use crate::drift::week;
use crate::gauge::example;
use crate::shelf::folder_with_shelf;
use phantom::Arch;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

/// So many words in a row, the same in two languages, are a sentence that was not translated.
const TOGETHER: usize = 3;

/// Words of every language: by them, lists of units, columns or shells are no sentences.
const NAMES: [&str; 7] = ["archproof", "STL", "PLY", "OBJ", "mm", "repeat", "fish"];

/// The runs of so many words in a text. Names of files, options and commands are no words.
fn phrases(text: &str) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for line in text.lines() {
        let words: Vec<&str> = (line.split_whitespace())
            .map(|word| {
                word.trim_start_matches('(')
                    .trim_end_matches([',', '.', ';', ':', ')'])
            })
            .collect();
        let is_word = |word: &&str| {
            word.chars().count() > 1
                && word.chars().all(char::is_alphabetic)
                && !NAMES.iter().any(|name| name.eq_ignore_ascii_case(word))
        };
        let runs = words.windows(TOGETHER);
        let runs = runs.filter(|run| run.iter().all(is_word));
        found.extend(runs.map(|run| run.join(" ")));
    }
    found
}

/// The text of a page, one line for each of its elements.
fn read(page: &str) -> String {
    let (_, body) = page.split_once("<body>").unwrap();
    let pieces = body.split('<').map(|piece| {
        let (tag, text) = piece.split_once('>').unwrap_or(("", piece));
        let labels = tag.split("aria-label=\"").skip(1);
        let labels: Vec<&str> = labels.filter_map(|rest| rest.split('"').next()).collect();
        format!("{}\n{text}", labels.join("\n"))
    });
    pieces.collect::<Vec<_>>().join("\n")
}

/// Asserts that what is said in German and in Spanish shares no phrase with the English.
fn no_english_is_left(said: impl Fn(&str) -> String) {
    let english = phrases(&said("en"));
    assert!(english.len() > 2, "{english:?}");
    for code in ["de", "es"] {
        let text = said(code);
        let left: Vec<String> = phrases(&text).intersection(&english).cloned().collect();
        assert!(left.is_empty(), "{code}: {left:?}\n{text}");
    }
}

/// What a command prints in a language, whatever it came to.
fn printed(folder: &Path, arguments: &[&str], code: &str) -> String {
    let outcome = run(folder, &[arguments, &["--language", code]].concat());
    outcome.out + &outcome.complaint
}

#[test]
fn a_case_proposed_from_scans() {
    let folder = first_pass();
    let path = |name: &str| folder.path().join(name);
    fs::remove_file(path("first-pass.toml")).unwrap();
    fs::copy(path("first.ply"), path("wash again.ply")).unwrap();
    fs::write(
        path("page.stl"),
        "<!DOCTYPE html><html><body>404</body></html>",
    )
    .unwrap();
    let lower = coarse(Arch::Mandibular, 1, false);
    mesh::write::write_stl(&path("other.stl"), &lower.tray).unwrap();
    no_english_is_left(|code| {
        let said = printed(folder.path(), &["new", ".", "--force"], code);
        said + &fs::read_to_string(path("case.toml")).unwrap()
    });
}

#[test]
fn a_folder_of_cases_with_its_page_and_its_charts() {
    let folder = first_pass();
    let path = |name: &str| folder.path().join(name);
    let whole = fs::read(path("first.ply")).unwrap();
    fs::write(path("cut.ply"), &whole[..whole.len() / 2]).unwrap();
    fs::write(
        path("cut.toml"),
        "case = \"CUT\"\n[maxillary]\nwash = \"cut.ply\"\n",
    )
    .unwrap();
    fs::write(path("broken.toml"), "case = ").unwrap();
    let rules = "beyond-limits,two-of-three,four-of-five,eight-in-a-row,ewma";
    let batch = [
        "batch",
        ".",
        "--out",
        "out",
        "--resume",
        "--no-report",
        "--rules",
        rules,
    ];
    no_english_is_left(|code| {
        let said = printed(folder.path(), &batch, code);
        said + &read(&fs::read_to_string(path("out/summary.html")).unwrap())
    });
    no_english_is_left(|code| {
        let joined = format!("joined-{code}");
        let said = printed(folder.path(), &["collect", "out", "--out", &joined], code);
        said + &read(&fs::read_to_string(path(&joined).join("summary.html")).unwrap())
    });
}

#[test]
fn help_of_the_program_and_of_every_command() {
    let folder = tempfile::tempdir().unwrap();
    let commands = run(folder.path(), &["--help"]).out;
    let (_, commands) = commands.split_once("Commands:\n").unwrap();
    let commands = commands
        .lines()
        .map_while(|line| line.split_whitespace().next());
    let commands: Vec<&str> = commands.collect();
    assert!(commands.len() > 20, "{commands:?}");
    no_english_is_left(|code| printed(folder.path(), &["help"], code));
    for command in commands {
        // Command and topic of one name: the page has a test of its own.
        let help = |code: &str| {
            let help = printed(folder.path(), &["help", command], code);
            help.split("\n# ").next().unwrap_or_default().to_owned()
        };
        no_english_is_left(help);
    }
}

#[test]
fn results_judged_again() {
    let folder = first_pass();
    let path = |name: &str| folder.path().join(name);
    fs::write(
        path("gone.toml"),
        "case = \"GONE\"\n[maxillary]\nwash = \"gone.ply\"\n",
    )
    .unwrap();
    let batch = ["batch", ".", "--out", "own", "--no-report"];
    run(folder.path(), &batch);
    let loose = "[limits]\nshow_through_share_percent = { value = 100.0, level = \"note\" }\n";
    let tight = "[limits]\nflange_height_mm = { value = 30.0, level = \"fail\" }\n\
                 show_through_mm = { value = 0.1, level = \"fail\" }\n";
    for (name, limits) in [("loose.toml", loose), ("tight.toml", tight)] {
        fs::write(path(name), limits).unwrap();
        let arguments = ["judge", "own", "--protocol", name];
        no_english_is_left(|code| printed(folder.path(), &arguments, code));
    }
}

#[test]
fn scans_at_a_glance() {
    let folder = first_pass();
    let path = |name: &str| folder.path().join(name);
    let whole = fs::read(path("first.ply")).unwrap();
    fs::write(path("cut.ply"), &whole[..whole.len() / 2]).unwrap();
    let scan = mesh::read_scan(&path("first.ply")).unwrap().mesh;
    // In centimetres, in micrometres, with a name, with attribute bytes and in two layers.
    let mut stl = mesh::write::encode_stl(&scan.scaled(0.1)).unwrap();
    stl[..6].copy_from_slice(b"Quxley");
    let end = stl.len();
    stl[end - 2..].copy_from_slice(&[0x1F, 0x80]);
    fs::write(path("small.stl"), stl).unwrap();
    mesh::write::write_stl(&path("large.stl"), &scan.scaled(1e4)).unwrap();
    no_english_is_left(|code| printed(folder.path(), &["inspect", "."], code));
}

#[test]
fn a_scan_without_its_text() {
    let folder = first_pass();
    let path = |name: &str| folder.path().join(name);
    let scan = mesh::read_scan(&path("first.ply")).unwrap().mesh;
    let mut stl = mesh::write::encode_stl(&scan).unwrap();
    let end = stl.len();
    stl[end - 2..].copy_from_slice(&[0x1F, 0x80]);
    stl.extend_from_slice(b"twelve bytes");
    fs::write(path("odd.stl"), stl).unwrap();
    for scan in ["odd.stl", "first.ply"] {
        no_english_is_left(|code| {
            let clean = |to: &str| printed(folder.path(), &["clean", scan, to], code);
            clean("clean.ply") + &clean(scan)
        });
    }
}

#[test]
fn acceptance_limits_of_a_file() {
    let folder = tempfile::tempdir().unwrap();
    let impossible = "[limits.show_through_mm]\nvalue = 1.5\n";
    fs::write(folder.path().join("impossible.toml"), impossible).unwrap();
    no_english_is_left(|code| {
        let own = format!("{code}.toml");
        let protocol =
            |what: &[&str]| printed(folder.path(), &[&["protocol"], what].concat(), code);
        let new = protocol(&["new", &own]);
        let check = protocol(&["check", &own]);
        new + &check + &protocol(&["new", &own]) + &protocol(&["show", "impossible.toml"])
    });
}

/// In one folder for all languages: a demonstration may be written over that of another.
#[test]
fn a_demonstration() {
    let folder = tempfile::tempdir().unwrap();
    no_english_is_left(|code| {
        let said = printed(folder.path(), &["demo", ".", "--in-pieces"], code);
        said + &fs::read_to_string(folder.path().join("README.txt")).unwrap()
    });
}

#[test]
fn a_check_standard_over_time() {
    let folder = tempfile::tempdir().unwrap();
    let standard = folder.path().join("standard");
    fs::create_dir(&standard).unwrap();
    (0..4).for_each(|number| week(&standard, number, 0.0));
    no_english_is_left(|code| printed(folder.path(), &["control", "standard"], code));
    (4..19).for_each(|number| week(&standard, number, if number < 16 { 0.0 } else { 0.02 }));
    no_english_is_left(|code| {
        let page = format!("{code}.html");
        let control = ["control", "standard", "--first", "12", "--write", &page];
        let said = printed(folder.path(), &control, code);
        said + &read(&fs::read_to_string(folder.path().join(&page)).unwrap())
    });
}

#[test]
fn studies_of_readings_and_verdicts() {
    let folder = tempfile::tempdir().unwrap();
    let write = |name: &str, text: &str| fs::write(folder.path().join(name), text).unwrap();
    write("study.csv", &example());
    write("spoilt.csv", &example().replacen("0.47\n", "zero\n", 1));
    write("verdicts.csv", &verdicts());
    for arguments in [
        &["gauge", "study.csv", "--least", "-4", "--most", "2"][..],
        &["gauge", "spoilt.csv"],
        &["gauge", "."],
        &["agreement", "verdicts.csv", "--beside", "panel"],
        &["agreement", "study.csv"],
        &["repeat", "none.stl", "none.stl", "--known", "gone.json"],
    ] {
        no_english_is_left(|code| printed(folder.path(), arguments, code));
    }
}

#[test]
fn scans_of_an_artefact() {
    let folder = tempfile::tempdir().unwrap();
    let write = |name: &str, text: &str| fs::write(folder.path().join(name), text).unwrap();
    write("balls.toml", artefact::DESCRIPTION);
    write(
        "spoilt.toml",
        &artefact::DESCRIPTION.replacen("10.0", "-10.0", 1),
    );
    artefact::write_scan(folder.path(), "a.stl", 1, 1.0);
    artefact::write_scan(folder.path(), "b.stl", 2, 1.002);
    for description in ["balls.toml", "spoilt.toml"] {
        no_english_is_left(|code| {
            let scanner = format!("scanner-{code}.toml");
            let arguments = [
                "artefact",
                description,
                "a.stl",
                "b.stl",
                "--write",
                &scanner,
            ];
            let said = printed(folder.path(), &arguments, code);
            said + &fs::read_to_string(folder.path().join(&scanner)).unwrap_or_default()
        });
    }
}

#[test]
fn trays_of_a_shelf() {
    let folder = folder_with_shelf(|_| true);
    let arguments = ["fit", "upper.ply", "--trays", "shelf"];
    no_english_is_left(|code| printed(folder.path(), &arguments, code));
}

#[test]
fn repeated_scans() {
    let folder = first_pass();
    let again = coarse(Arch::Maxillary, 0, false);
    let second = folder.path().join("second.ply");
    mesh::write::write_ply(&second, &again.impression).unwrap();
    let arguments = ["repeat", "first.ply", "second.ply"];
    no_english_is_left(|code| printed(folder.path(), &arguments, code));
}
