//! Where the time of a scan is taken from, and for how many.

use super::case::CaseResult;
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

    /// It in words.
    pub(crate) fn in_words(self) -> &'static str {
        match self {
            Self::CaseFile => "the case file",
            Self::ScanFile => "the last change of the scan file",
            Self::Check => "the time of the check",
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

    /// `the case file for 12 cases, the last change of the scan file for 3`; `one` and
    /// `many` name what is counted.
    #[must_use]
    pub fn in_words(&self, [one, many]: [&str; 2]) -> String {
        let each = [
            (TimeSource::CaseFile.in_words(), self.case_file),
            (TimeSource::ScanFile.in_words(), self.scan_file),
            (TimeSource::Check.in_words(), self.check),
            ("not known", self.unknown),
        ];
        let used = each.into_iter().filter(|(_, count)| *count > 0);
        let said: Vec<String> = used
            .enumerate()
            .map(|(number, (source, count))| match (number, count) {
                (0, 1) => format!("{source} for 1 {one}"),
                (0, count) => format!("{source} for {count} {many}"),
                (_, count) => format!("{source} for {count}"),
            })
            .collect();
        if said.is_empty() {
            return format!("no {many}");
        }
        said.join(", ")
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
        let cases = ["case", "cases"];
        let mut times = TimeSources::default();
        assert_eq!(times.in_words(cases), "no cases");
        times.add(Some(TimeSource::ScanFile));
        assert_eq!(
            times.in_words(cases),
            "the last change of the scan file for 1 case"
        );
        times.add(Some(TimeSource::CaseFile));
        times.add(Some(TimeSource::CaseFile));
        times.add(None);
        assert_eq!(
            times.in_words(cases),
            "the case file for 2 cases, the last change of the scan file for 1, not known for 1"
        );
    }
}
