//! TOML files, and the faults in them, each with the line that it stands in.

use serde::de::DeserializeOwned;
use std::fmt;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// A fault and the line of the text that it stands in.
#[derive(Debug, Clone, PartialEq)]
pub struct Located<F> {
    /// Line, counted from 1; `None` where the fault has no one place.
    pub line: Option<usize>,
    /// What is wrong.
    pub fault: F,
}

impl<F: fmt::Display> fmt::Display for Located<F> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.line {
            Some(line) => write!(f, "line {line}: {}", self.fault),
            None => self.fault.fmt(f),
        }
    }
}

impl<F: fmt::Debug + fmt::Display> std::error::Error for Located<F> {}

/// What can be wrong in one kind of TOML file.
pub trait TomlFault: fmt::Debug + fmt::Display {
    /// What to give instead of a file that cannot be read.
    const WANTED: &'static str;
}

/// Why a TOML file cannot be used.
#[derive(Debug, Error)]
pub enum TomlFileError<F: TomlFault> {
    /// The file cannot be read.
    #[error("{}: cannot be read ({source}); give {}", mesh::read::shown_path(.path), F::WANTED)]
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// The file says something that makes no sense.
    #[error("{}: {problem}", mesh::read::shown_path(.path))]
    Faulty {
        /// The file.
        path: PathBuf,
        /// What is wrong, and where.
        problem: Located<F>,
    },
}

/// Reads a TOML file by a function that reads its text.
pub(crate) fn read<T, F: TomlFault>(
    path: &Path,
    parse: impl FnOnce(&str) -> Result<T, Located<F>>,
) -> Result<T, TomlFileError<F>> {
    let text = std::fs::read_to_string(path).map_err(|source| TomlFileError::Unreadable {
        path: path.to_owned(),
        source,
    })?;
    parse(&text).map_err(|problem| TomlFileError::Faulty {
        path: path.to_owned(),
        problem,
    })
}

/// A fault at a byte of the text.
pub(crate) fn at<F>(text: &str, byte: usize, fault: F) -> Located<F> {
    let before = &text.as_bytes()[..byte.min(text.len())];
    Located {
        line: Some(1 + before.iter().filter(|&&b| b == b'\n').count()),
        fault,
    }
}

/// Reads a TOML text, turning the reader's many-line message into one line.
pub(crate) fn from_toml<T: DeserializeOwned, F>(
    text: &str,
    fault: impl FnOnce(String) -> F,
) -> Result<T, Located<F>> {
    toml::from_str(text).map_err(|error| {
        let message = fault(on_one_line(error.message()));
        match error.span() {
            Some(span) => at(text, span.start, message),
            None => Located {
                line: None,
                fault: message,
            },
        }
    })
}

/// What stands in a file can be anything: nothing of it may disturb a terminal.
fn on_one_line(message: &str) -> String {
    let mut line = String::new();
    for c in message.replace('\n', ", ").chars() {
        if c.is_control() {
            line.extend(c.escape_default());
        } else {
            line.push(c);
        }
    }
    line
}
