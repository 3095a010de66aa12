//! A case is proposed right, or asked about, whatever the files are called.
#![allow(clippy::unwrap_used)]

use check::proposal::{
    Evidence, Proposal, Role, Stated, case_text, look, neutral_id, propose, scans_in,
};
use judge::{Case, Stage};
use measure::Arch::{Mandibular, Maxillary};
use mesh::Mesh;
use mesh::write::{write_ply, write_stl};
use messages::Language;
use nalgebra::{Isometry3, Vector3};
use phantom::{Arch, Options, WholeCase};
use std::fs;
use std::path::Path;
use std::sync::LazyLock;
use std::time::{Duration, SystemTime};
use tempfile::TempDir;

/// A whole case, as coarse as telling what it is allows.
static WHOLE: LazyLock<WholeCase> = LazyLock::new(|| {
    let options = |arch, seed| Options {
        arch,
        seed,
        edge_mm: 0.8,
        tray_edge_mm: 0.9,
        noise_sd_mm: 0.01,
        ..Options::default()
    };
    let (upper, lower) = (options(Arch::Maxillary, 3), options(Arch::Mandibular, 4));
    let turned = Isometry3::new(
        Vector3::new(0.5, 1.0, -24.0),
        Vector3::y() * std::f64::consts::PI,
    );
    WholeCase::new([&upper, &lower], [&|_, _| 0.35, &|_, _| 0.3], &turned)
});

fn folder(files: &[(&str, &Mesh)]) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    for (name, mesh) in files {
        let path = folder.path().join(name);
        if name.ends_with("stl") {
            write_stl(&path, mesh).unwrap();
        } else {
            write_ply(&path, mesh).unwrap();
        }
    }
    folder
}

fn seen(folder: &Path) -> Evidence {
    look(&scans_in(folder).unwrap(), None, &|_| ())
}

fn role_of(evidence: &Evidence, proposal: &Proposal, name: &str) -> Option<Role> {
    let named = |scan: &check::proposal::SeenScan| scan.file.ends_with(name);
    proposal.settled(evidence.scans.iter().position(named).unwrap())
}

fn impression(arch: measure::Arch, stage: Stage) -> Option<Role> {
    Some(Role::Impression {
        arch,
        stage: Some(stage),
    })
}

#[test]
fn a_whole_case_is_recognised_by_its_surfaces_whatever_the_files_are_called() {
    let whole = &*WHOLE;
    // Jaws exchanged, a tray called an impression, the record called a tray.
    let folder = folder(&[
        ("lower-a.ply", &whole.upper.first_pass.impression),
        ("lower-b.ply", &whole.upper.wash),
        ("upper-tray.stl", &whole.lower.first_pass.tray),
        ("first impression.stl", &whole.upper.first_pass.tray),
        ("x wash.ply", &whole.lower.first_pass.impression),
        ("first.ply", &whole.lower.wash),
        ("tray of both.ply", &whole.record),
    ]);
    // The wash of the upper jaw is the older file.
    let long_ago = SystemTime::UNIX_EPOCH + Duration::from_secs(1_000_000_000);
    let older = fs::File::options()
        .append(true)
        .open(folder.path().join("lower-b.ply"))
        .unwrap();
    older.set_modified(long_ago).unwrap();

    let evidence = seen(folder.path());
    let proposal = propose(&evidence, &Stated::default());
    assert_eq!(proposal.questions, []);
    for (name, role) in [
        ("lower-a.ply", impression(Maxillary, Stage::FirstPass)),
        ("lower-b.ply", impression(Maxillary, Stage::Wash)),
        ("x wash.ply", impression(Mandibular, Stage::FirstPass)),
        ("first.ply", impression(Mandibular, Stage::Wash)),
        ("upper-tray.stl", Some(Role::Tray { arch: Mandibular })),
        ("first impression.stl", Some(Role::Tray { arch: Maxillary })),
        ("tray of both.ply", Some(Role::Record)),
    ] {
        assert_eq!(role_of(&evidence, &proposal, name), role, "{name}");
    }
    let names_heeded = proposal
        .placed
        .iter()
        .filter(|placed| !placed.remarks.is_empty());
    assert!(names_heeded.count() >= 6);

    let text = case_text(
        &evidence,
        &proposal,
        &neutral_id(&evidence),
        Language::English,
    )
    .unwrap();
    let file = folder.path().join("case.toml");
    fs::write(&file, text).unwrap();
    let case = Case::from_file(&file).unwrap();
    let scans: Vec<_> = case
        .impressions
        .iter()
        .map(|one| (one.declared, one.stage))
        .collect();
    assert_eq!(
        scans,
        [
            (Some(Maxillary), Stage::FirstPass),
            (Some(Maxillary), Stage::Wash),
            (Some(Mandibular), Stage::FirstPass),
            (Some(Mandibular), Stage::Wash)
        ]
    );
    assert!(case.impressions.iter().all(|one| one.tray.is_some()));
    assert!(case.jaw_relation.unwrap().scan.is_some());
}

#[test]
fn a_single_impression_is_asked_about_and_left_out_until_it_is_answered() {
    let whole = &*WHOLE;
    let folder = folder(&[
        ("a wash.ply", &whole.upper.first_pass.impression),
        ("b.stl", &whole.upper.first_pass.tray),
        ("c.stl", &whole.lower.first_pass.tray),
    ]);
    let evidence = seen(folder.path());
    let mut stated = Stated::default();
    let proposal = propose(&evidence, &stated);
    // The stage, and whose the other tray is.
    assert_eq!(proposal.questions.len(), 2, "{:#?}", proposal.questions);
    assert!(!proposal.has_impression());
    let text = case_text(&evidence, &proposal, "C-1", Language::English).unwrap();
    assert!(text.contains("\n# before_wash = \"a wash.ply\"\n"));
    assert!(text.contains("\n# one_step = \"a wash.ply\"\n"));
    assert!(!text.lines().any(|line| line.starts_with('[')));

    // The name suggests a wash, which is offered first and no more.
    for question in proposal.questions {
        stated
            .roles
            .extend(question.choices[0].roles.iter().copied());
    }
    let proposal = propose(&evidence, &stated);
    assert_eq!(proposal.questions, []);
    assert_eq!(
        role_of(&evidence, &proposal, "a wash.ply"),
        impression(Maxillary, Stage::Wash)
    );
    assert_eq!(
        role_of(&evidence, &proposal, "b.stl"),
        Some(Role::Tray { arch: Maxillary })
    );
    assert_eq!(role_of(&evidence, &proposal, "c.stl"), Some(Role::LeftOut));
}

#[test]
fn a_record_without_one_of_its_impressions_is_asked_about() {
    let whole = &*WHOLE;
    let folder = folder(&[
        ("a.ply", &whole.lower.wash),
        ("b.ply", &whole.record),
        ("c.ply", &whole.lower.wash),
    ]);
    let evidence = seen(folder.path());
    let stated = Stated {
        stage: Some(Stage::Single),
        ..Stated::default()
    };
    let proposal = propose(&evidence, &stated);
    let [question] = &proposal.questions[..] else {
        panic!("{:#?}", proposal.questions);
    };
    assert_eq!(question.about, [1]);
    assert!(
        question
            .choices
            .iter()
            .any(|one| one.roles == [(1, Role::Record)])
    );
    assert_eq!(
        role_of(&evidence, &proposal, "a.ply"),
        impression(Mandibular, Stage::Single)
    );
    assert_eq!(role_of(&evidence, &proposal, "c.ply"), Some(Role::LeftOut));
}

#[test]
fn parts_of_an_impression_and_a_relieved_tray_are_asked_about() {
    let whole = &*WHOLE;
    let made = &whole.upper.first_pass;
    let mesh = &made.impression;
    let along = |t: usize| {
        let [a, b, c] = mesh.corners(t).map(|corner| corner.coords);
        ((a + b + c) / 3.0).dot(&made.truth.axes.anterior)
    };
    let mut all: Vec<f64> = (0..mesh.triangles().len()).map(along).collect();
    all.sort_by(f64::total_cmp);
    let middle = all[all.len() / 2];
    let front = mesh.filtered(|t| along(t) > middle + 0.4);
    let back = mesh.filtered(|t| along(t) < middle - 0.4);
    let again = made.tray.moved(&Isometry3::translation(3.0, 0.0, 0.0));
    let folder = folder(&[
        ("a.ply", &front),
        ("b.ply", &back),
        ("c.stl", &made.tray),
        ("d.stl", &again),
    ]);
    let evidence = seen(folder.path());
    let mut stated = Stated::default();
    let tray = Role::Tray { arch: Maxillary };
    let relieved = Role::RelievedTray { arch: Maxillary };
    stated.roles.extend([(2, tray), (3, tray)]);
    for scan in [0, 1] {
        let questions = propose(&evidence, &stated).questions;
        let about = questions
            .iter()
            .find(|question| question.about == [scan])
            .unwrap();
        let is_part = |choice: &&check::proposal::Choice| choice.label.key() == "choice-part";
        assert!(
            about.choices.iter().any(|choice| is_part(&choice)),
            "{about:#?}"
        );
        let role = impression(Maxillary, Stage::Wash).unwrap();
        stated.roles.insert(scan, role);
    }
    let proposal = propose(&evidence, &stated);
    assert_eq!(proposal.questions, []);
    let text = case_text(&evidence, &proposal, "C-1", Language::English).unwrap();
    assert!(
        text.contains("\nwash = [\"a.ply\", \"b.ply\"]  # stated"),
        "{text}"
    );
    assert!(
        text.contains("\ntray = [\"c.stl\", \"d.stl\"]  # stated"),
        "{text}"
    );
    stated.roles.insert(3, relieved);
    let proposal = propose(&evidence, &stated);
    let text = case_text(&evidence, &proposal, "C-1", Language::English).unwrap();
    assert!(
        text.contains("\ntray_relieved = \"d.stl\"  # stated"),
        "{text}"
    );
}
