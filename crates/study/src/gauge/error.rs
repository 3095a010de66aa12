//! Why a gauge study could not be worked out.

use judge::system_says;
use mesh::read::shown_path;
use messages::{Message, message};
use statistics::gauge::StudyError;
use std::path::PathBuf;
use thiserror::Error;

/// Why a study could not be worked out; its text is one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum GaugeError {
    /// The system refused.
    Unreadable {
        /// The file or folder.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// A line of the table makes no sense.
    Table {
        /// The file.
        path: PathBuf,
        /// Line, counted from 1.
        line: u64,
        /// What is wrong, and what to do.
        fault: Message,
    },
    /// The readings make no study.
    Study {
        /// The file or folder.
        path: PathBuf,
        /// What is wrong.
        source: StudyError,
    },
    /// A file where the folders of a study hold folders only.
    FileForFolder(PathBuf),
    /// Something that is no repeat, among the repeats.
    NoRepeat(PathBuf),
    /// The figures of a repeat cannot be obtained.
    Repeat(Message),
}

impl GaugeError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Unreadable { path, source } => message!(
                "gauge-unreadable",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::Table { path, line, fault } => message!(
                "study-line",
                path = shown_path(path),
                line = *line,
                fault = fault.clone()
            ),
            Self::Study { path, source } => message!(
                "of-file",
                path = shown_path(path),
                problem = no_study(source)
            ),
            Self::FileForFolder(path) => {
                message!("gauge-file-for-folder", path = shown_path(path))
            }
            Self::NoRepeat(path) => message!("gauge-no-repeat", path = shown_path(path)),
            Self::Repeat(why) => why.clone(),
        }
    }
}

/// Why readings make no study.
pub(super) fn no_study(error: &StudyError) -> Message {
    match error {
        StudyError::TooSmall => message!("study-too-small"),
        StudyError::Unequal {
            operator,
            part,
            readings,
            wanted,
        } => message!(
            "study-unequal",
            operator = operator.escape_debug().to_string(),
            part = part.escape_debug().to_string(),
            readings = *readings,
            wanted = *wanted
        ),
        StudyError::NoVariation => message!("study-no-variation"),
        StudyError::NotFinite { operator, part } => message!(
            "study-not-finite",
            operator = operator.escape_debug().to_string(),
            part = part.escape_debug().to_string()
        ),
    }
}
