//! What a scanner itself adds to the lengths in its scans.

use crate::located::{self, Located, TomlFault, TomlFileError};
use crate::toml_problem::TomlProblem;
use messages::{Message, message};
use serde::Deserialize;
use std::path::{Path, PathBuf};
use thiserror::Error;
use toml::Spanned;

/// What a scanner itself adds to every length in a scan, beside noise and facets.
#[derive(Debug, Clone, PartialEq)]
pub struct Scanner {
    /// Expanded uncertainty (k = 2) of a length, mm.
    pub length_uncertainty_mm: f64,
    /// Where that comes from.
    pub source: String,
    /// The file that it was read from.
    pub file: Option<PathBuf>,
}

/// Why a scanner file cannot be used.
pub type ScannerError = TomlFileError<ScannerFault>;

/// What can be wrong in a scanner file.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{}", self.message())]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum ScannerFault {
    Toml(TomlProblem),
    Impossible(f64),
}

impl ScannerFault {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Toml(problem) => problem.message(),
            Self::Impossible(mm) => message!("scanner-impossible", given = mm.to_string()),
        }
    }
}

impl TomlFault for ScannerFault {
    fn wanted() -> Message {
        message!("wanted-scanner-file")
    }

    fn message(&self) -> Message {
        self.message()
    }
}

/// Why the scanner that another file states or names cannot be used.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{0}")]
pub struct ScannerProblem(Message);

impl ScannerProblem {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        self.0.clone()
    }
}

/// What a scanner file states.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
struct ScannerFile {
    length_uncertainty_mm: Spanned<f64>,
    source: String,
}

/// A scanner as case and protocol files name it.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(
    untagged,
    expecting = "scanner is the path of a scanner file, or a table of length_uncertainty_mm and source"
)]
pub(crate) enum ScannerEntry {
    File(PathBuf),
    Stated {
        length_uncertainty_mm: f64,
        source: String,
    },
}

impl Scanner {
    /// Reads a scanner file.
    ///
    /// # Errors
    /// When the file cannot be read, is not TOML, holds an unknown key or a value that
    /// is not possible; the error names file and line.
    pub fn from_file(path: &Path) -> Result<Self, ScannerError> {
        located::read(path, |text| {
            let file: ScannerFile = located::from_toml(text, ScannerFault::Toml)?;
            let start = file.length_uncertainty_mm.span().start;
            let scanner = Self::checked(*file.length_uncertainty_mm.get_ref(), file.source)
                .map_err(|fault| located::at(text, start, fault))?;
            Ok(Self {
                file: Some(path.to_owned()),
                ..scanner
            })
        })
    }

    fn checked(length_uncertainty_mm: f64, source: String) -> Result<Self, ScannerFault> {
        /// A scanner that errs by more is no use for impressions.
        const GREATEST_MM: f64 = 1.0;
        // What is not a number is outside, too.
        if !(0.0..=GREATEST_MM).contains(&length_uncertainty_mm) {
            return Err(ScannerFault::Impossible(length_uncertainty_mm));
        }
        Ok(Self {
            length_uncertainty_mm,
            source,
            file: None,
        })
    }

    /// The scanner file's text.
    #[must_use]
    pub fn to_toml(&self) -> String {
        format!(
            "length_uncertainty_mm = {:?}\nsource = {}\n",
            self.length_uncertainty_mm,
            toml::Value::from(self.source.as_str())
        )
    }
}

impl ScannerEntry {
    /// The scanner that an entry of a text states or names; the path of its file is
    /// taken from a folder.
    ///
    /// # Errors
    /// When the file cannot be used, or the value is not possible; the fault names the
    /// line of the entry.
    pub(crate) fn scanner<F>(
        entry: &Spanned<Self>,
        text: &str,
        folder: &Path,
        fault: impl FnOnce(ScannerProblem) -> F,
    ) -> Result<Scanner, Located<F>> {
        let scanner = match entry.get_ref() {
            Self::File(path) => Scanner::from_file(&folder.join(path)).map_err(|e| e.message()),
            Self::Stated {
                length_uncertainty_mm,
                source,
            } => Scanner::checked(*length_uncertainty_mm, source.clone()).map_err(|e| e.message()),
        };
        scanner.map_err(|why| located::at(text, entry.span().start, fault(ScannerProblem(why))))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[test]
    fn what_is_written_is_read_again() {
        let folder = tempfile::tempdir().expect("a folder");
        let file = folder.path().join("scanner.toml");
        let scanner = Scanner {
            length_uncertainty_mm: 0.031,
            source: "artefact \"balls\", certificate 7".to_owned(),
            file: Some(file.clone()),
        };
        std::fs::write(&file, scanner.to_toml()).expect("it can be written");
        assert_eq!(Scanner::from_file(&file).expect("it is right"), scanner);
    }

    #[rstest]
    #[case(
        "length_uncertainty_mm = 3.0\nsource = \"x\"",
        "line 1: length_uncertainty_mm = 3"
    )]
    #[case(
        "length_uncertainty_mm = nan\nsource = \"x\"",
        "line 1: length_uncertainty_mm = NaN"
    )]
    #[case("length_uncertainty_mm = 0.03", "missing field `source`")]
    #[case("length_uncertainty_mm = 0.03\nsource = \"x\"\nscale = 1", "scale")]
    fn what_makes_no_sense_is_refused(#[case] text: &str, #[case] says: &str) {
        let folder = tempfile::tempdir().expect("a folder");
        let file = folder.path().join("scanner.toml");
        std::fs::write(&file, text).expect("it can be written");
        let why = Scanner::from_file(&file)
            .expect_err("it makes no sense")
            .to_string();
        assert!(why.contains(says), "{why}");
    }
}
