//! What must hold of any bytes in the place of a file that is read: no panic,
//! memory in proportion to the file, and an error of one line. Hangs are the
//! fuzzer's to see (`-timeout`).

mod any_mesh;

pub use any_mesh::AnyMesh;

use peak_alloc::PeakAlloc;
use std::error::Error;
use std::hint::black_box;
use std::path::Path;
use std::sync::LazyLock;
use tempfile::TempDir;

#[global_allocator]
static HEAP: PeakAlloc = PeakAlloc;

/// Heap that reading may use at its peak, bytes for each byte of the file.
const HEAP_PER_BYTE: usize = 400;
/// What may come on top, bytes: the default limits and the tables of the libraries.
const HEAP_AT_LEAST: usize = 4 << 20;

static FOLDER: LazyLock<TempDir> =
    LazyLock::new(|| tempfile::tempdir().expect("there is room for a folder"));

/// Writes bytes under a name of a folder, and reads them.
fn read(name: &str, bytes: &[u8], read: impl FnOnce(&Path)) {
    let file = FOLDER.path().join(name);
    std::fs::write(&file, bytes).expect("there is room for the file");
    let before = HEAP.current_usage();
    HEAP.reset_peak_usage();
    read(&file);
    let used = HEAP.peak_usage().saturating_sub(before);
    let allowed = HEAP_PER_BYTE * bytes.len() + HEAP_AT_LEAST;
    assert!(
        used <= allowed,
        "{used} bytes of heap for a file of {}",
        bytes.len()
    );
}

/// Holds the message of a refusal to one line.
fn refused<T>(outcome: Result<T, impl Error>) -> Option<T> {
    outcome
        .inspect_err(|error| assert!(!error.to_string().contains('\n'), "{error}"))
        .ok()
}

/// A case file.
pub fn case(bytes: &[u8]) {
    read("case.toml", bytes, |file| {
        refused(judge::Case::from_file(file));
    });
}

/// Acceptance limits.
pub fn limits(bytes: &[u8]) {
    read("limits.toml", bytes, |file| {
        refused(judge::Protocol::from_file(file));
    });
}

/// Landmarks.
pub fn landmarks(bytes: &[u8]) {
    read("landmarks.toml", bytes, |file| {
        refused(judge::read_landmarks(file, None));
    });
}

/// What a scanner adds to a length.
pub fn scanner(bytes: &[u8]) {
    read("scanner.toml", bytes, |file| {
        refused(judge::Scanner::from_file(file));
    });
}

/// An artefact.
pub fn artefact(bytes: &[u8]) {
    read("artefact.toml", bytes, |file| {
        refused(study::artefact::Artefact::from_file(file));
    });
}

/// A baseline.
pub fn baseline(bytes: &[u8]) {
    read("baseline.toml", bytes, |file| {
        refused(report::folder::Baseline::from_file(file));
    });
}

/// Verdicts.
pub fn verdicts(bytes: &[u8]) {
    read("verdicts.csv", bytes, |file| {
        if let Some(study) = refused(study::agreement::agreement_of(file, None)) {
            black_box(report::agreement_text(&report::AgreementResult::of(&study)));
        }
    });
}

/// Readings of a gauge study.
pub fn gauge(bytes: &[u8]) {
    read("readings.csv", bytes, |file| {
        refused(study::gauge::study_of_table(file));
    });
}

/// A result.
pub fn result(bytes: &[u8]) {
    read(report::RESULT_FILE, bytes, |_| {
        refused(report::read_head(FOLDER.path()));
        if let Some(result) = refused(report::read_result(FOLDER.path())) {
            black_box(report::again::judge_again(
                &result,
                &judge::Protocol::default(),
            ));
            for language in report::Language::ALL {
                black_box(report::summary(&result, language));
            }
        }
    });
}

/// Kept studies.
pub fn repeat(bytes: &[u8]) {
    read("repeat.json", bytes, |file| {
        refused(report::KnownRepeatability::from_file(file));
    });
}

/// What a folder says of itself: its manifest, its inputs, the record of a case.
pub fn folder(bytes: &[u8]) {
    let (which, bytes) = bytes.split_first().unwrap_or((&0, bytes));
    let name = match which % 3 {
        0 => "batch.toml",
        1 => "inputs.csv",
        _ => report::folder::CaseRecord::FILE,
    };
    read(name, bytes, |_| match which % 3 {
        0 => drop(refused(batch::Manifest::read(FOLDER.path()))),
        1 => drop(refused(batch::read_inputs(FOLDER.path()))),
        _ => drop(refused(report::folder::CaseRecord::read(FOLDER.path()))),
    });
}

/// A surface with figures.
pub fn surface(bytes: &[u8]) {
    read("surface.ply", bytes, |file| {
        refused(report::read_surface(file));
    });
}
