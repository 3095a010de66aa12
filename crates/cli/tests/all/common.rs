//! The command, run in a folder of its own.
#![allow(clippy::unwrap_used)]

use assert_cmd::Command;
use mesh::write::{encode_ply, encode_stl};
use phantom::{Across, Arch, Options, Phantom, Place, PlantedSpot, SpotKind};
use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;
use tempfile::TempDir;

/// The program in a folder of its own: beside the window's program, which may have been
/// built, it opens that where it would otherwise ask.
static ALONE: LazyLock<PathBuf> = LazyLock::new(|| {
    let built = Path::new(env!("CARGO_BIN_EXE_archproof"));
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("alone");
    fs::create_dir_all(&folder).unwrap();
    let program = folder.join(built.file_name().unwrap());
    let new = folder.join(format!("new-{}", std::process::id()));
    if fs::hard_link(built, &new).is_err() {
        fs::copy(built, &new).unwrap();
    }
    fs::rename(&new, &program).unwrap();
    // Renamed onto another link to the same file, it would stay.
    let _ = fs::remove_file(&new);
    program
});

/// The command, to be run in `folder`.
pub fn archproof(folder: &Path) -> Command {
    Command::from_std(archproof_beside(folder))
}

/// The same, to run beside the test. It speaks English whatever the system's language.
pub fn archproof_beside(folder: &Path) -> std::process::Command {
    let mut command = std::process::Command::new(&*ALONE);
    command.current_dir(folder).env_remove("NO_COLOR");
    command.env("LC_ALL", "C").env_remove("LANGUAGE");
    command
}

/// What a run came to.
pub struct Outcome {
    pub code: Option<i32>,
    pub out: String,
    pub complaint: String,
}

/// Runs the command with these arguments.
pub fn run(folder: &Path, arguments: &[&str]) -> Outcome {
    let output = archproof(folder)
        .args(arguments)
        .output()
        .expect("the command starts");
    Outcome {
        code: output.status.code(),
        out: String::from_utf8(output.stdout).expect("output is UTF-8"),
        complaint: String::from_utf8(output.stderr).expect("complaints are UTF-8"),
    }
}

/// The files of the demonstration, made once for all tests.
static DEMONSTRATION: LazyLock<Vec<(OsString, Vec<u8>)>> = LazyLock::new(|| {
    let folder = tempfile::tempdir().unwrap();
    let outcome = run(folder.path(), &["demo", "."]);
    assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
    fs::read_dir(folder.path())
        .unwrap()
        .map(|entry| entry.unwrap())
        .map(|entry| (entry.file_name(), fs::read(entry.path()).unwrap()))
        .collect()
});

/// An impression nearly as coarse as cover allows, which is quickly checked.
/// Where tray shows through, it is to be reworked.
pub fn coarse(arch: Arch, seed: u64, shows_through: bool) -> Phantom {
    let show_through = PlantedSpot {
        place: Place::Arch {
            station: -0.4,
            across: Across::Crest,
        },
        kind: SpotKind::ShowThrough { area_mm2: 12.0 },
    };
    Phantom::new(&Options {
        arch,
        seed,
        edge_mm: 0.8,
        tray_edge_mm: 0.8,
        spots: shows_through.then_some(show_through).into_iter().collect(),
        ..Options::default()
    })
}

/// The files of a coarse first pass, made once for all tests.
static FIRST_PASS: LazyLock<[(&str, Vec<u8>); 3]> = LazyLock::new(|| {
    let made = coarse(Arch::Maxillary, 0, true);
    let case = "case = \"FIRST\"\n[maxillary]\nfirst_pass = \"first.ply\"\ntray = \"tray.stl\"\n";
    [
        ("first-pass.toml", case.into()),
        ("first.ply", encode_ply(&made.impression, &[]).unwrap()),
        ("tray.stl", encode_stl(&made.tray).unwrap()),
    ]
});

/// A folder with a coarse first pass, its tray and its case file.
pub fn first_pass() -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    for (name, bytes) in &*FIRST_PASS {
        fs::write(folder.path().join(name), bytes).unwrap();
    }
    folder
}

/// A folder with the first pass of the demonstration in it.
pub fn demonstration() -> TempDir {
    demonstration_files(&|name| {
        ["first-pass.toml", "upper-first.ply", "upper-tray.stl"].contains(&name)
    })
}

/// A folder with those files of the demonstration whose names are wanted.
pub fn demonstration_files(wanted: &dyn Fn(&str) -> bool) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let is_wanted = |name: &OsString| name.to_str().is_some_and(wanted);
    for (name, bytes) in DEMONSTRATION.iter().filter(|(name, _)| is_wanted(name)) {
        fs::write(folder.path().join(name), bytes).unwrap();
    }
    folder
}

/// A case that was checked once for all tests, which only read its results.
pub struct Checked {
    /// Holds the folder `results`.
    pub folder: TempDir,
    pub outcome: Outcome,
}

impl Checked {
    fn of(folder: TempDir, case: &str) -> Self {
        let check = ["check", case, "--out", "results", "--return"];
        let outcome = run(folder.path(), &check);
        let said = format!("{}{}", outcome.out, outcome.complaint);
        assert_eq!(outcome.code, Some(1), "{said}");
        Self { folder, outcome }
    }

    pub fn results(&self) -> PathBuf {
        self.folder.path().join("results").canonicalize().unwrap()
    }
}

/// The demonstration of two jaws.
pub static WHOLE_CASE: LazyLock<Checked> =
    LazyLock::new(|| Checked::of(demonstration_files(&|_| true), "case.toml"));

/// The demonstration that the repository holds, of one jaw.
pub static KEPT_CASE: LazyLock<Checked> = LazyLock::new(|| {
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../test-meshes/demo/case.toml");
    Checked::of(tempfile::tempdir().unwrap(), kept.to_str().unwrap())
});

/// A page without its elements of class `time`.
pub fn timeless(page: &str) -> String {
    const CLASS: &str = "class=\"time\"";
    let mut rest = page;
    let mut kept = String::new();
    while let Some((before, after)) = rest.split_once(CLASS) {
        let (outside, tag) = before.rsplit_once('<').unwrap();
        kept += outside;
        rest = after.split_once(&format!("</{}>", tag.trim())).unwrap().1;
    }
    assert!(kept.len() > 1000, "the page states its times");
    kept + rest
}
