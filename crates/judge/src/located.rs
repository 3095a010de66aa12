//! TOML files, and the faults in them, each with its line.

use crate::system::system_says;
use crate::toml_problem::TomlProblem;
use mesh::read::shown_path;
use messages::{Message, message};
use serde::de::DeserializeOwned;
use std::fmt;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// A fault and its line in the text.
#[derive(Debug, Clone, PartialEq)]
pub struct Located<F> {
    /// Line, counted from 1; `None` where the fault has no one place.
    pub line: Option<usize>,
    /// What is wrong.
    pub fault: F,
}

impl<F: TomlFault> Located<F> {
    /// What is wrong and where, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self.line {
            Some(line) => message!("in-line", line = line, fault = self.fault.message()),
            None => self.fault.message(),
        }
    }
}

impl<F: TomlFault> fmt::Display for Located<F> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(f)
    }
}

impl<F: TomlFault> std::error::Error for Located<F> {}

/// What can be wrong in one kind of TOML file.
pub trait TomlFault: fmt::Debug {
    /// What to give instead of a file that cannot be read.
    fn wanted() -> Message;

    /// What is wrong, as a message of the catalogue.
    fn message(&self) -> Message;
}

/// Why a TOML file cannot be used.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum TomlFileError<F: TomlFault> {
    /// The file cannot be read.
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// The file says something that makes no sense.
    Faulty {
        /// The file.
        path: PathBuf,
        /// What is wrong, and where.
        problem: Box<Located<F>>,
    },
}

impl<F: TomlFault> TomlFileError<F> {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Unreadable { path, source } => message!(
                "settings-unreadable",
                path = shown_path(path),
                reason = system_says(source),
                wanted = F::wanted()
            ),
            Self::Faulty { path, problem } => message!(
                "of-file",
                path = shown_path(path),
                problem = problem.message()
            ),
        }
    }
}

/// Reads a TOML file by a function that reads its text.
///
/// # Errors
/// When the file cannot be read, or its text makes no sense.
pub fn read<T, F: TomlFault>(
    path: &Path,
    parse: impl FnOnce(&str) -> Result<T, Located<F>>,
) -> Result<T, TomlFileError<F>> {
    let text = mesh::read::settings_text(path).map_err(|source| TomlFileError::Unreadable {
        path: path.to_owned(),
        source,
    })?;
    parse(&text).map_err(|problem| TomlFileError::Faulty {
        path: path.to_owned(),
        problem: Box::new(problem),
    })
}

/// A fault at a byte of the text.
pub fn at<F>(text: &str, byte: usize, fault: F) -> Located<F> {
    let before = &text.as_bytes()[..byte.min(text.len())];
    Located {
        line: Some(1 + before.iter().filter(|&&b| b == b'\n').count()),
        fault,
    }
}

/// Reads a TOML text, turning the reader's many-line message into one line.
///
/// # Errors
/// When the text is not TOML, or not of this kind.
pub fn from_toml<T: DeserializeOwned, F>(
    text: &str,
    fault: impl FnOnce(TomlProblem) -> F,
) -> Result<T, Located<F>> {
    toml::from_str(text).map_err(|error| {
        let start = error.span().map_or(0, |span| span.start);
        let fault = fault(TomlProblem::of(error.message(), line_at(text, start)));
        match error.span() {
            Some(span) => at(text, span.start, fault),
            None => Located { line: None, fault },
        }
    })
}

/// The line of a text in which a byte lies.
fn line_at(text: &str, byte: usize) -> &str {
    let byte = byte.min(text.len());
    let before = text.as_bytes()[..byte]
        .iter()
        .filter(|&&b| b == b'\n')
        .count();
    text.lines().nth(before).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde::Deserialize;

    #[derive(Debug, Deserialize)]
    #[serde(deny_unknown_fields)]
    #[allow(dead_code, reason = "only its keys matter")]
    struct Sections {
        maxillary: Option<String>,
        mandibular: Option<String>,
    }

    #[derive(Debug, PartialEq)]
    struct Fault(TomlProblem);

    impl TomlFault for Fault {
        fn wanted() -> Message {
            Message::default()
        }

        fn message(&self) -> Message {
            self.0.message()
        }
    }

    #[test]
    fn a_fault_names_line_key_and_nearest_key() {
        let refused = |text| from_toml::<Sections, Fault>(text, Fault).unwrap_err();
        let slip = refused("\nmaxilary = \"a\"");
        assert_eq!(
            slip.to_string(),
            "line 2: unknown key `maxilary`; did you mean maxillary? Known here: maxillary, mandibular"
        );
        let other = refused("upper = \"a\"");
        assert_eq!(
            other.to_string(),
            "line 1: unknown key `upper`. Known here: maxillary, mandibular"
        );
    }

    #[test]
    fn a_backslash_in_a_path_has_a_sentence_of_its_own() {
        let text = "mandibular = \"a\"\nmaxillary = \"C:\\scans\\upper.ply\"";
        let problem = from_toml::<Sections, Fault>(text, Fault).unwrap_err();
        assert_eq!(problem.line, Some(2));
        assert_eq!(problem.fault, Fault(TomlProblem::Backslash));
        let said = problem.to_string();
        assert!(
            said.starts_with("line 2: a backslash in a path: write C:/"),
            "{said}"
        );
    }
}
