//! `archproof new`, and `archproof PATH` without a command.

use crate::common::{coarse, first_pass, run};
use mesh::write::{encode_ply, encode_stl};
use phantom::Arch;
use std::fs;
use std::path::Path;
use tempfile::TempDir;

/// An upper impression and its tray under names of a person, in folders below one.
fn folders(names: &[&str]) -> TempDir {
    let folder = tempfile::tempdir().expect("the test is set up");
    let made = coarse(Arch::Maxillary, 0, true);
    for name in names {
        let below = folder.path().join(name);
        fs::create_dir(&below).expect("the test is set up");
        fs::write(
            below.join("Invented Person.ply"),
            encode_ply(&made.impression, &[]).expect("the test is set up"),
        )
        .expect("the test is set up");
        fs::write(
            below.join("impression.stl"),
            encode_stl(&made.tray).expect("the test is set up"),
        )
        .expect("the test is set up");
    }
    folder
}

fn case_of(folder: &Path) -> String {
    fs::read_to_string(folder.join("case.toml")).expect("the test is set up")
}

#[test]
fn a_folder_gets_a_case_file_without_a_name_and_keeps_it() {
    let folder = folders(&["one"]);
    let one = folder.path().join("one");
    let outcome = run(&one, &["new", "."]);
    assert_eq!(
        outcome.code,
        Some(3),
        "{}{}",
        outcome.out,
        outcome.complaint
    );
    assert!(outcome.out.contains("maxillary tray"), "{}", outcome.out);
    let case = case_of(&one);
    assert!(
        case.contains("# before_wash = \"Invented Person.ply\""),
        "{case}"
    );
    assert!(case.contains("case = \"C-"), "{case}");

    let again = run(&one, &["new", ".", "--stage", "before-wash"]);
    assert_eq!(again.code, Some(2));
    assert!(again.complaint.contains("--force"), "{}", again.complaint);
    assert_eq!(case_of(&one), case);

    let forced = run(&one, &["new", ".", "--stage", "before-wash", "--force"]);
    assert_eq!(forced.code, Some(0), "{}", forced.complaint);
    assert!(case_of(&one).contains("\nbefore_wash = \"Invented Person.ply\""));
    assert!(case_of(&one).contains("\ntray = \"impression.stl\""));

    // The folder now holds a case, which is checked.
    let checked = run(folder.path(), &["one"]);
    assert_eq!(
        checked.code,
        Some(1),
        "{}{}",
        checked.out,
        checked.complaint
    );
    assert!(checked.out.contains("REWORK case C-"), "{}", checked.out);
    let results = fs::read_dir(&one)
        .expect("the test is set up")
        .filter_map(Result::ok);
    let mut results = results.filter(|entry| {
        entry
            .file_name()
            .to_string_lossy()
            .starts_with("archproof-C-")
    });
    let results = results.next().expect("results lie beside the case").path();
    assert!(results.join("sheet.html").is_file());
}

#[test]
fn folders_get_the_pseudonyms_of_a_table() {
    let folder = folders(&["one", "two"]);
    let ids = folder.path().join("ids.csv");
    fs::write(&ids, "folder,id\ntwo,D-2\none,D-1\n").expect("the test is set up");
    let arguments = [
        "new", ".", "--yes", "--stage", "one-step", "--ids", "ids.csv",
    ];
    let outcome = run(folder.path(), &arguments);
    assert_eq!(
        outcome.code,
        Some(0),
        "{}{}",
        outcome.out,
        outcome.complaint
    );
    for (name, id) in [("one", "D-1"), ("two", "D-2")] {
        let case = case_of(&folder.path().join(name));
        assert!(case.contains(&format!("case = \"{id}\"")), "{case}");
        assert!(case.contains("\none_step = "), "{case}");
    }
    for table in [
        "folder,id\nthree,D-3\n",
        "folder,id\none,D\ntwo,D\n",
        "a,b\n",
        "folder,id\none,\n",
    ] {
        fs::write(&ids, table).expect("the test is set up");
        let outcome = run(folder.path(), &["new", ".", "--force", "--ids", "ids.csv"]);
        assert_eq!(outcome.code, Some(2), "{table}: {}", outcome.out);
        assert_eq!(
            outcome.complaint.lines().count(),
            1,
            "{}",
            outcome.complaint
        );
    }
}

#[test]
fn a_path_alone_is_checked_and_a_mistyped_command_is_named() {
    let folder = first_pass();
    let case = run(folder.path(), &["first-pass.toml"]);
    assert_eq!(case.code, Some(1), "{}", case.complaint);
    assert!(folder.path().join("archproof-FIRST/result.json").is_file());

    let scan = run(folder.path(), &["first.ply"]);
    assert!(scan.out.contains("one scan"), "{}", scan.out);
    assert!(matches!(scan.code, Some(0 | 1 | 3)), "{}", scan.complaint);

    let missing = run(folder.path(), &["second.ply"]);
    assert_eq!(missing.code, Some(2));
    assert!(
        missing.complaint.contains("second.ply"),
        "{}",
        missing.complaint
    );

    let mistyped = run(folder.path(), &["chekc"]);
    assert_eq!(mistyped.code, Some(2));
    assert!(
        mistyped.complaint.contains("'check'"),
        "{}",
        mistyped.complaint
    );
    assert!(run(folder.path(), &[]).complaint.contains("Usage"));
}

#[test]
fn a_folder_with_scans_alone_is_not_checked_while_something_is_open() {
    let folder = folders(&["one"]);
    let outcome = run(folder.path(), &["one"]);
    assert_eq!(outcome.code, Some(3), "{}", outcome.complaint);
    assert!(outcome.out.contains("Not checked"), "{}", outcome.out);
    assert!(folder.path().join("one/case.toml").is_file());
}
