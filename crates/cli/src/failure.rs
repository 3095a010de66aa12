//! Wrong use or unreadable input: one line on standard error, exit code 2.

use check::CheckError;
use judge::ProtocolError;
use judge::explained::UnknownCode;
use mesh::ReadError;
use report::WriteError;
use std::io;
use std::path::PathBuf;
use study::agreement::AgreementError;
use study::artefact::ArtefactCheckError;
use study::gauge::GaugeError;
use study::repeats::RepeatError;
use thiserror::Error;

/// Exit code for every failure.
pub const EXIT_CODE: u8 = 2;

/// Why a command could not be carried out; its text is one line for people.
#[derive(Debug, Error)]
pub enum Failure {
    #[error(transparent)]
    Scan(#[from] ReadError),
    #[error(transparent)]
    Checking(#[from] CheckError),
    #[error(transparent)]
    Fit(#[from] check::FitError),
    #[error(transparent)]
    Write(#[from] WriteError),
    #[error(transparent)]
    Protocol(#[from] ProtocolError),
    #[error(transparent)]
    Agreement(#[from] AgreementError),
    #[error(transparent)]
    Control(#[from] report::ControlError),
    #[error(transparent)]
    Known(#[from] report::NotKnown),
    #[error(transparent)]
    Gauge(#[from] GaugeError),
    #[error(transparent)]
    Artefact(#[from] ArtefactCheckError),
    #[error(
        "the artefact's description certifies no length; give a diameter, a distance or a step"
    )]
    NoCertifiedLength,
    #[error(transparent)]
    Repeat(#[from] RepeatError),
    #[error("{0} ('archproof explain' lists all codes)")]
    Code(#[from] UnknownCode),
    #[error("'{0}' is not a command or a topic; 'archproof help' lists them all")]
    Topic(String),
    #[error("only the page on scanning has drawings: 'archproof help scanning --html FILE'")]
    NoDrawings,
    #[error("the threads could not be started ({0}); try a smaller number with --threads")]
    Threads(#[from] rayon::ThreadPoolBuildError),
    #[error(transparent)]
    Scans(#[from] mesh::write::WriteError),
    #[error("the sheet was written but cannot be opened ({0}); open it by hand")]
    Opening(io::Error),
    #[error("{}: cannot be written ({source}); free space or give another folder", mesh::read::shown_path(.path))]
    Demo { path: PathBuf, source: io::Error },
    #[error("{}: cannot be written ({source}); give a file that is not there yet", mesh::read::shown_path(.path))]
    NewFile { path: PathBuf, source: io::Error },
    #[error("{}: is a case already; give another folder for the demonstration", mesh::read::shown_path(.0))]
    CaseInTheWay(PathBuf),
    #[error("{}: holds no scan (STL, PLY, OBJ); give another folder", mesh::read::shown_path(.0))]
    NoScans(PathBuf),
    #[error("{}: is the scan itself; give another file to write", mesh::read::shown_path(.0))]
    OverItself(PathBuf),
    #[error(
        "the window is a program of its own, archproof-viewer, and is neither beside this one nor \
         on the PATH; install it with 'cargo install --path viewer --locked'"
    )]
    NoViewer,
    #[error(
        "archproof-viewer cannot be started ({0}); install it anew with 'cargo install --path viewer --locked'"
    )]
    Viewer(io::Error),
    #[error(transparent)]
    Proposal(#[from] check::proposal::ProposalError),
    #[error(transparent)]
    ScanName(#[from] check::proposal::NameNotText),
    #[error("{}: {why}", mesh::read::shown_path(.path))]
    Ids { path: PathBuf, why: String },
    #[error(transparent)]
    Baseline(#[from] report::folder::BaselineError),
    #[error(transparent)]
    Batch(#[from] batch::BatchError),
    #[error("standard output cannot be written ({0})")]
    Output(#[from] io::Error),
}
