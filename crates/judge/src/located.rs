//! TOML files, and the faults in them, each with its line.

use crate::nearest::nearest;
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
        problem,
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
    fault: impl FnOnce(String) -> F,
) -> Result<T, Located<F>> {
    toml::from_str(text).map_err(|error| {
        let start = error.span().map_or(0, |span| span.start);
        let message = fault(on_one_line(&in_plain_words(
            error.message(),
            line_at(text, start),
        )));
        match error.span() {
            Some(span) => at(text, span.start, message),
            None => Located {
                line: None,
                fault: message,
            },
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

/// The reader's message as one that says what to do: the nearest of the known keys, or how
/// a path is written.
fn in_plain_words(message: &str, line: &str) -> String {
    if line.contains('\\')
        && ["escape", "unicode"]
            .iter()
            .any(|word| message.contains(word))
    {
        return "a backslash in a path: write C:/scans/upper.ply, or put the path in single quotes \
                ('C:\\scans\\upper.ply')"
            .to_owned();
    }
    let mut quoted = message.split('`').skip(1).step_by(2);
    let named = match (message.split_once(" `"), quoted.next()) {
        (Some(("unknown field", _)), Some(name)) => Some(("key", name)),
        (Some(("unknown variant", _)), Some(name)) => Some(("value", name)),
        _ => None,
    };
    let Some((what, name)) = named else {
        return message.to_owned();
    };
    let known: Vec<&str> = quoted.collect();
    let meant = nearest(name, known.iter().copied())
        .map_or_else(String::new, |nearest| format!("; did you mean {nearest}?"));
    format!(
        "unknown {what} `{name}`{meant} Known here: {}",
        known.join(", ")
    )
    .replace("` Known", "`. Known")
}

/// A file can hold anything: none of it may disturb a terminal.
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

    #[test]
    fn a_fault_names_line_key_and_nearest_key() {
        let refused = |text| from_toml::<Sections, String>(text, |text| text).unwrap_err();
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
        let problem = from_toml::<Sections, String>(text, |text| text).unwrap_err();
        assert_eq!(problem.line, Some(2));
        assert!(
            problem
                .fault
                .starts_with("a backslash in a path: write C:/"),
            "{problem}"
        );
    }
}
