//! Where the time of a scan is taken from, and for how many.

use super::case::CaseResult;
use messages::{Language, Message, message, text};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Where the time of a scan is taken from; the first of these that is known. No reader of
/// scans gives a time that a file states in its header.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum TimeSource {
    /// The case file (`scanned_at`).
    CaseFile,
    /// The last change of the scan file, which copying may have set anew.
    ScanFile,
    /// The check, where nothing else is known.
    Check,
}

impl TimeSource {
    /// The word for it in tables.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::CaseFile => "case_file",
            Self::ScanFile => "scan_file",
            Self::Check => "check",
        }
    }

    /// It in words, as a message of the catalogue.
    pub(crate) fn message(self) -> Message {
        match self {
            Self::CaseFile => message!("time-by-case-file"),
            Self::ScanFile => message!("time-by-scan-file"),
            Self::Check => message!("time-by-check"),
        }
    }
}

/// For how many each source of the time of scanning was used.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TimeSources {
    /// The case file states it.
    pub case_file: u64,
    /// The last change of the scan file.
    pub scan_file: u64,
    /// The time of the check; of a check standard alone.
    #[serde(default)]
    pub check: u64,
    /// No time is known.
    #[serde(default)]
    pub unknown: u64,
}

impl TimeSources {
    /// Counts one more.
    pub(crate) fn add(&mut self, source: Option<TimeSource>) {
        *match source {
            Some(TimeSource::CaseFile) => &mut self.case_file,
            Some(TimeSource::ScanFile) => &mut self.scan_file,
            Some(TimeSource::Check) => &mut self.check,
            None => &mut self.unknown,
        } += 1;
    }

    /// `the case file for 12 cases, the last change of the scan file for 3`.
    #[must_use]
    pub fn in_words(&self, of: Timed, language: Language) -> String {
        let each = [
            (TimeSource::CaseFile.message(), self.case_file),
            (TimeSource::ScanFile.message(), self.scan_file),
            (TimeSource::Check.message(), self.check),
            (message!("time-not-known"), self.unknown),
        ];
        let used = each.into_iter().filter(|(_, count)| *count > 0);
        let said: Vec<String> = used
            .enumerate()
            .map(|(number, (source, count))| {
                let counted = if number == 0 {
                    of.counted(count)
                } else {
                    Message::verbatim(count.to_string())
                };
                text!(language, "time-for", source = source, counted = counted)
            })
            .collect();
        if said.is_empty() {
            return of.none().text(language);
        }
        said.join(", ")
    }
}

/// What has a time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Timed {
    /// Cases.
    Cases,
    /// Measurements of a check standard.
    Measurements,
}

impl Timed {
    fn counted(self, count: u64) -> Message {
        match self {
            Self::Cases => message!("timed-cases", count = count),
            Self::Measurements => message!("timed-measurements", count = count),
        }
    }

    fn none(self) -> Message {
        match self {
            Self::Cases => message!("timed-no-cases"),
            Self::Measurements => message!("timed-no-measurements"),
        }
    }
}

impl CaseResult {
    /// When an impression was scanned, and where that is taken from: from the case file or
    /// else, by `changed`, from the last change of the scan file.
    pub(crate) fn scanned(&self, changed: Option<&String>) -> Option<(String, TimeSource)> {
        let stated = self.scanned_at.as_ref();
        let stated = stated.map(|at| (at.clone(), TimeSource::CaseFile));
        stated.or_else(|| changed.map(|at| (at.clone(), TimeSource::ScanFile)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sources_that_were_used_are_stated_with_their_counts() {
        let words = |times: &TimeSources| times.in_words(Timed::Cases, Language::English);
        let mut times = TimeSources::default();
        assert_eq!(words(&times), "no cases");
        times.add(Some(TimeSource::ScanFile));
        assert_eq!(words(&times), "the last change of the scan file for 1 case");
        times.add(Some(TimeSource::CaseFile));
        times.add(Some(TimeSource::CaseFile));
        times.add(None);
        assert_eq!(
            words(&times),
            "the case file for 2 cases, the last change of the scan file for 1, not known for 1"
        );
    }
}
