//! Why a gauge study could not be worked out.

use statistics::gauge::StudyError;
use std::path::PathBuf;
use thiserror::Error;

/// Why the figures of a repeat cannot be obtained; its text is one line for people.
pub type FiguresError = Box<dyn std::error::Error + Send + Sync>;

/// Why a study could not be worked out; its text is one line for people.
#[derive(Debug, Error)]
pub enum GaugeError {
    /// The system refused.
    #[error("{}: cannot be read ({source}); give a CSV file with the columns operator, part, repeat, value, or a folder of operator folders", mesh::read::shown_path(.path))]
    Unreadable {
        /// The file or folder.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// A line of the table makes no sense.
    #[error("{}, line {line}: {fault}", mesh::read::shown_path(.path))]
    Table {
        /// The file.
        path: PathBuf,
        /// Line, counted from 1.
        line: u64,
        /// What is wrong, and what to do.
        fault: String,
    },
    /// The readings make no study.
    #[error("{}: {source}", mesh::read::shown_path(.path))]
    Study {
        /// The file or folder.
        path: PathBuf,
        /// What is wrong.
        source: StudyError,
    },
    /// Something that does not belong into the folders of a study.
    #[error("{}: {wanted}; a study is kept as OPERATOR/PART/REPEAT, where each REPEAT is a scan (STL, PLY, OBJ) or a result folder", mesh::read::shown_path(.path))]
    Layout {
        /// The file or folder.
        path: PathBuf,
        /// What is the matter.
        wanted: &'static str,
    },
    /// The figures of a repeat cannot be obtained.
    #[error(transparent)]
    Repeat(FiguresError),
}
