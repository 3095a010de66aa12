//! Wrong use or unreadable input: one line on standard error, exit code 2.

use check::CheckError;
use check::reader::{not_written, refused};
use judge::explained::UnknownCode;
use judge::{ProtocolError, system_says};
use mesh::ReadError;
use mesh::read::shown_path;
use messages::{Message, message};
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
#[error("{}", self.message())]
pub enum Failure {
    Scan(#[from] ReadError),
    Checking(#[from] CheckError),
    Fit(#[from] check::FitError),
    Write(#[from] WriteError),
    Protocol(#[from] ProtocolError),
    Agreement(#[from] AgreementError),
    Control(#[from] report::ControlError),
    Known(#[from] report::NotKnown),
    Gauge(#[from] GaugeError),
    Artefact(#[from] ArtefactCheckError),
    NoCertifiedLength,
    Repeat(#[from] RepeatError),
    Code(#[from] UnknownCode),
    Topic(String),
    NoDrawings,
    Threads(#[from] rayon::ThreadPoolBuildError),
    Scans(#[from] mesh::write::WriteError),
    Opening(io::Error),
    Demo { path: PathBuf, source: io::Error },
    NewFile { path: PathBuf, source: io::Error },
    CaseInTheWay(PathBuf),
    NoScans(PathBuf),
    OverItself(PathBuf),
    NoViewer,
    Viewer(io::Error),
    Proposal(#[from] check::proposal::ProposalError),
    ScanName(#[from] check::proposal::NameNotText),
    Ids { path: PathBuf, why: Message },
    Baseline(#[from] report::folder::BaselineError),
    Batch(#[from] batch::BatchError),
    Output(#[from] io::Error),
}

impl Failure {
    /// What is wrong and what to do, as a message of the catalogue.
    pub fn message(&self) -> Message {
        match self {
            Self::Scan(error) => refused(error),
            Self::Checking(error) => error.message(),
            Self::Fit(error) => error.message(),
            Self::Write(error) => error.message(),
            Self::Protocol(error) => error.message(),
            Self::Code(error) => message!("unknown-code-of-all", refused = error.message()),
            Self::Scans(error) => not_written(error),
            Self::Proposal(error) => error.message(),
            Self::ScanName(error) => error.message(),
            Self::Baseline(error) => error.message(),
            Self::Batch(error) => error.message(),
            Self::Ids { path, why } => {
                message!("of-file", path = shown_path(path), problem = why.clone())
            }
            Self::Agreement(error) => error.message(),
            Self::Control(error) => error.message(),
            Self::Known(error) => error.message(),
            Self::Gauge(error) => error.message(),
            Self::Artefact(error) => error.message(),
            Self::Repeat(error) => error.message(),
            other => other.own_message(),
        }
    }

    /// What the command itself says.
    fn own_message(&self) -> Message {
        match self {
            Self::NoCertifiedLength => message!("no-certified-length"),
            Self::Topic(name) => message!("unknown-topic", name = name.as_str()),
            Self::NoDrawings => message!("no-drawings"),
            Self::Threads(error) => message!("no-threads", reason = error.to_string()),
            Self::Opening(error) => message!("sheet-not-opened", reason = system_says(error)),
            Self::Demo { path, source } => message!(
                "demo-unwritten",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::NewFile { path, source } => message!(
                "new-file-unwritten",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::CaseInTheWay(path) => message!("demo-in-the-way", path = shown_path(path)),
            Self::NoScans(path) => message!("proposal-no-scans", path = shown_path(path)),
            Self::OverItself(path) => message!("over-itself", path = shown_path(path)),
            Self::NoViewer => message!("no-viewer"),
            Self::Viewer(error) => message!("viewer-not-started", reason = system_says(error)),
            Self::Output(error) => message!("output-unwritten", reason = system_says(error)),
            // Every other one is another part's, and said above.
            _ => Message::default(),
        }
    }
}
