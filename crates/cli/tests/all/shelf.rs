//! A shelf of stock trays: the tray of an impression is found on it, and a shelf that cannot
//! be used is refused in one line.
#![allow(clippy::unwrap_used)]

use crate::common::{Outcome, coarse, run};
use mesh::write::{write_ply, write_stl};
use phantom::{Arch, Phantom};
use rstest::rstest;
use serde_json::Value;
use std::fs;
use std::path::Path;
use std::sync::LazyLock;
use tempfile::TempDir;

static MADE: LazyLock<Phantom> = LazyLock::new(|| coarse(Arch::Maxillary, 0, false));

/// Sizes on the shelf; the second is that of the impression.
const SIZES: [f64; 3] = [0.95, 1.0, 1.05];

/// A folder with an impression and a shelf of trays, without those that are not wanted.
pub fn folder_with_shelf(wanted: impl Fn(usize) -> bool) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let shelf = folder.path().join("shelf");
    fs::create_dir(&shelf).unwrap();
    write_ply(&folder.path().join("upper.ply"), &MADE.impression).unwrap();
    for (size, factor) in SIZES.iter().enumerate().filter(|(size, _)| wanted(*size)) {
        let file = shelf.join(format!("upper-{}.stl", size + 1));
        write_stl(&file, &MADE.tray.scaled(*factor)).unwrap();
    }
    folder
}

fn checked(folder: &Path, arguments: &[&str]) -> Value {
    let arguments = [arguments, &["--json", "--no-report"]].concat();
    let outcome = run(folder, &arguments);
    assert_ne!(outcome.code, Some(2), "{}", outcome.complaint);
    serde_json::from_str(&outcome.out).unwrap()
}

const BARE: [&str; 6] = ["check", "upper.ply", "--arch", "upper", "--trays", "shelf"];

#[test]
fn the_tray_is_found_by_itself_and_said_with_the_next() {
    let folder = folder_with_shelf(|_| true);
    let result = checked(folder.path(), &BARE);
    let chosen = &result["impressions"][0]["tray_chosen"];
    assert_eq!(chosen["trays"], 3);
    assert_eq!(chosen["best"]["name"], "upper-2");
    assert!(chosen["best"]["rms_mm"].as_f64().unwrap() < 0.05);
    assert!(chosen["next"]["name"].is_string());
    assert_eq!(result["impressions"][0]["cover"]["method"], "tray-scan");
    // The same as with the tray named.
    let named = [
        "check",
        "upper.ply",
        "--arch",
        "upper",
        "--tray",
        "shelf/upper-2.stl",
    ];
    let named = checked(folder.path(), &named);
    assert_eq!(named["impressions"][0]["tray_chosen"], Value::Null);
    assert_eq!(
        named["impressions"][0]["cover"],
        result["impressions"][0]["cover"]
    );
    let summary = run(folder.path(), &BARE).out;
    assert!(
        summary.contains("tray found on the shelf of 3: upper-2, "),
        "{summary}"
    );
}

#[test]
fn case_and_protocol_name_a_shelf_and_a_tray_of_its_own_comes_first() {
    let folder = folder_with_shelf(|_| true);
    let write = |name: &str, text: &str| fs::write(folder.path().join(name), text).unwrap();
    write(
        "a.toml",
        "case = \"A\"\ntrays = \"shelf/\"\n[maxillary]\none_step = \"upper.ply\"\n",
    );
    write(
        "b.toml",
        "case = \"B\"\n[maxillary]\none_step = \"upper.ply\"\n",
    );
    write(
        "c.toml",
        "case = \"C\"\ntrays = \"shelf\"\n[maxillary]\none_step = \"upper.ply\"\ntray = \"shelf/upper-1.stl\"\n",
    );
    write("protocol.toml", "trays = \"shelf\"\n");
    let name = |result: Value| result["impressions"][0]["tray_chosen"]["best"]["name"].clone();
    assert_eq!(
        name(checked(folder.path(), &["check", "a.toml"])),
        "upper-2"
    );
    let by_protocol = ["check", "b.toml", "--protocol", "protocol.toml"];
    assert_eq!(name(checked(folder.path(), &by_protocol)), "upper-2");
    assert_eq!(
        name(checked(folder.path(), &["check", "c.toml"])),
        Value::Null
    );
    let outcome = run(
        folder.path(),
        &["batch", ".", "--out", "out", "--protocol", "protocol.toml"],
    );
    assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
}

/// What is said of the tray where none was taken from the shelf.
fn question(folder: &TempDir) -> String {
    let result = checked(folder.path(), &BARE);
    assert_eq!(result["verdict"], "undecided");
    assert_eq!(result["impressions"][0]["tray_chosen"], Value::Null);
    let findings = result["findings"].as_array().unwrap();
    let about = findings.iter().find(|f| f["check"] == "cover-not-judged");
    about.unwrap()["instruction"].as_str().unwrap().to_owned()
}

#[test]
fn without_the_right_tray_none_is_taken_and_two_alike_are_asked_about() {
    let said = question(&folder_with_shelf(|size| size != 1));
    assert!(
        said.contains("none of the 2 trays") && said.contains("Scan this tray itself"),
        "{said}"
    );
    let folder = folder_with_shelf(|size| size == 1);
    // The same tray, scanned once more.
    write_ply(
        &folder.path().join("shelf/again.ply"),
        &MADE.tray.scaled(1.0001),
    )
    .unwrap();
    let said = question(&folder);
    assert!(
        said.contains("'again'") && said.contains("Which of them is it?"),
        "{said}"
    );
}

#[rstest]
#[case::missing(|_: &Path| (), "gone", "cannot be looked into")]
#[case::empty(|shelf: &Path| fs::remove_file(shelf.join("upper-2.stl")).unwrap(), "shelf", "holds no scan of a tray")]
#[case::twice(
    |shelf: &Path| { fs::copy(shelf.join("upper-2.stl"), shelf.join("copy.stl")).unwrap(); },
    "shelf",
    "copy.stl and upper-2.stl are the same scan; take one of them"
)]
#[case::unreadable(|shelf: &Path| fs::write(shelf.join("broken.ply"), "no scan").unwrap(), "shelf", "broken.ply")]
#[case::own_scan(
    |shelf: &Path| { fs::copy(shelf.join("../upper.ply"), shelf.join("upper.ply")).unwrap(); },
    "shelf",
    "is the impression's own scan"
)]
fn a_shelf_that_cannot_be_used_is_refused_in_one_line(
    #[case] spoil: fn(&Path),
    #[case] named: &str,
    #[case] says: &str,
) {
    let folder = folder_with_shelf(|size| size == 1);
    spoil(&folder.path().join("shelf"));
    let Outcome {
        code,
        out,
        complaint,
    } = run(folder.path(), &["check", "upper.ply", "--trays", named]);
    assert_eq!((code, out.as_str()), (Some(2), ""), "{complaint}");
    assert_eq!(complaint.lines().count(), 1, "{complaint}");
    assert!(complaint.contains(says), "{complaint}");
}

#[test]
fn the_size_to_take_is_said_with_a_table() {
    let folder = folder_with_shelf(|_| true);
    let fit = |arguments: &[&str]| run(folder.path(), &[&["fit", "upper.ply"], arguments].concat());
    let table = fit(&["--trays", "shelf"]);
    assert_eq!(table.code, Some(0), "{}", table.complaint);
    assert!(
        table.out.starts_with("TAKE upper-2 (maxillary)"),
        "{}",
        table.out
    );
    let result: Value = serde_json::from_str(&fit(&["--trays", "shelf", "--json"]).out).unwrap();
    assert_eq!(result["schema"], "archproof-fit/1");
    assert_eq!(result["conclusion"], "take");
    assert_eq!(result["tray"], "upper-2");
    let clearance = |tray: usize| &result["trays"][tray]["clearance"];
    assert!(clearance(1)["least_mm"].as_f64().unwrap() > 0.0);
    assert!(clearance(2)["median_mm"].as_f64() > clearance(1)["median_mm"].as_f64());
    assert!(!clearance(1)["edges"].as_array().unwrap().is_empty());
    let none = fit(&[]);
    assert_eq!(none.code, Some(2));
    assert!(none.complaint.contains("--trays"), "{}", none.complaint);
    // The shelf's own tray is no mouth.
    let tray = run(
        folder.path(),
        &["fit", "shelf/upper-1.stl", "--trays", "shelf"],
    );
    assert_eq!(tray.code, Some(2), "{}", tray.out);
    assert_eq!(tray.complaint.lines().count(), 1, "{}", tray.complaint);
}

/// A tray that is too small touches; the page shows it, and the others, in each language.
#[test]
fn the_page_of_a_shelf_has_a_picture_of_each_tray() {
    let folder = folder_with_shelf(|_| true);
    let small = folder.path().join("shelf/small.stl");
    write_stl(&small, &MADE.tray.scaled(0.85)).unwrap();
    for (code, title) in [
        ("en", "TAKE upper-2 (maxillary)"),
        ("de", "upper-2 NEHMEN (Oberkiefer)"),
        ("es", "TOME upper-2 (maxilar superior)"),
    ] {
        let file = format!("{code}.html");
        let write = ["--trays", "shelf", "--write", &file, "--language", code];
        let outcome = run(folder.path(), &[&["fit", "upper.ply"], &write[..]].concat());
        assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
        assert!(outcome.out.starts_with(title), "{}", outcome.out);
        let page = fs::read_to_string(folder.path().join(&file)).unwrap();
        assert!(page.contains(&format!("<html lang=\"{code}\">")));
        assert!(page.contains(title), "{code}");
        assert_eq!(page.matches("data:image/png;base64,").count(), 4);
        // Border and edge of the tray on each, with a light line below the dark one.
        assert_eq!(page.matches("<polygon").count(), 4 * 4);
        // Where the small one touches is marked, and listed.
        assert!(page.contains("<circle") && page.contains("<ol>"), "{code}");
    }
    let again = run(
        folder.path(),
        &["fit", "upper.ply", "--trays", "shelf", "--write", "en.html"],
    );
    assert_eq!(again.code, Some(2), "{}", again.out);
}

// All of the tray within 6 mm of the tissue would be a retake.
#[test]
fn with_a_retake_the_tray_for_the_new_impression_is_said() {
    let folder = folder_with_shelf(|_| true);
    let protocol = "trays = \"shelf\"\n[limits]\nshow_through_mm = { value = 6.0 }\nthin_cover_mm = { value = 7.0 }\n";
    fs::write(folder.path().join("protocol.toml"), protocol).unwrap();
    let strict = ["check", "upper.ply", "--protocol", "protocol.toml"];
    let result = checked(folder.path(), &strict);
    assert_eq!(result["verdict"], "retake", "{}", result["findings"]);
    let next = &result["impressions"][0]["next_tray"];
    assert_eq!(next["conclusion"], "take");
    assert_eq!(next["tray"], "upper-2");
    assert_eq!(next["trays"].as_array().unwrap().len(), 3);
    let summary = run(folder.path(), &[&strict[..], &["--no-report"]].concat()).out;
    let says = "no tray of the shelf suits better than upper-2, which was used";
    assert!(summary.contains(says), "{summary}");
    let sound = checked(folder.path(), &BARE);
    assert_eq!(sound["impressions"][0]["next_tray"], Value::Null);
}
