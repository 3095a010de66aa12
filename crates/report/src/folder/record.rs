//! What is kept of a case of a batch, beside its results: what was checked, and
//! the rows that came of it.

use super::rows::{FindingRow, ImpressionRow, first_step, of_findings, of_impressions, outlines};
use super::thumbnail::Thumbnail;
use crate::result::{CaseResult, FileKind};
use crate::{REPORT_FILE, RESULT_FILE};
use messages::{Language, Message};
use serde::{Deserialize, Serialize};
use std::io;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Name and version of a record.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
enum Contract {
    #[serde(rename = "archproof-record/1")]
    V1,
}

/// What a case was checked from, by which a later run knows whether it would
/// come out the same.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Provenance {
    /// SHA-256 over everything that was given of the case.
    pub inputs_sha256: String,
    /// SHA-256 over the protocol and what else was said on how to check.
    pub settings_sha256: String,
    /// Version of the program.
    pub program: String,
}

/// The record of a case.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CaseRecord {
    schema: Contract,
    /// What was checked.
    pub provenance: Provenance,
    /// A row for each impression; one that says why for a case that could not
    /// be checked.
    pub impressions: Vec<ImpressionRow>,
    /// Whether the case could not be checked for a reason that may pass, as a disk that
    /// cannot be read: it is tried again.
    #[serde(default)]
    pub may_pass: bool,
    /// The first thing to do, or why the case could not be checked; empty in records of
    /// earlier versions, whose rows say it in English.
    #[serde(default)]
    first: Message,
    /// A row for each finding.
    pub findings: Vec<FindingRow>,
    /// Whether there is a report of it.
    pub has_report: bool,
    /// The border of each impression in its frame, mm to the right and to the
    /// front; for drawings.
    pub outlines: Vec<Vec<[f64; 2]>>,
    /// A small picture of each impression on which something fails.
    pub thumbnails: Vec<Option<Thumbnail>>,
}

/// Why a record cannot be used.
#[derive(Debug, Error)]
#[error("{}: {reason}", mesh::read::shown_path(.path))]
pub struct RecordError {
    path: PathBuf,
    reason: io::Error,
}

impl CaseRecord {
    /// Name of the file in the folder of a case; put there last.
    pub const FILE: &str = "record.json";

    /// The record of a case that was checked; `changed` is when each
    /// impression's scan file was last changed, UTC.
    #[must_use]
    pub fn checked(
        result: &CaseResult,
        folder: &str,
        changed: &[Option<String>],
        thumbnails: Vec<Option<Thumbnail>>,
        provenance: Provenance,
    ) -> Self {
        Self {
            schema: Contract::V1,
            provenance,
            impressions: of_impressions(result, folder, changed),
            may_pass: false,
            first: first_step(result),
            findings: of_findings(result, folder),
            has_report: result
                .files
                .iter()
                .any(|file| file.kind == FileKind::Report),
            outlines: outlines(result),
            thumbnails,
        }
    }

    /// The record of a case that could not be checked, why, and whether that may pass.
    #[must_use]
    pub fn unreadable(
        case: Option<String>,
        folder: &str,
        (problem, may_pass): (Message, bool),
        provenance: Provenance,
    ) -> Self {
        Self {
            schema: Contract::V1,
            provenance,
            impressions: vec![ImpressionRow {
                folder: folder.to_owned(),
                case,
                problem: Some(problem.to_string()),
                ..ImpressionRow::default()
            }],
            may_pass,
            first: problem,
            findings: Vec::new(),
            has_report: false,
            outlines: Vec::new(),
            thumbnails: Vec::new(),
        }
    }

    /// Whether the case could not be checked.
    #[must_use]
    pub fn is_unreadable(&self) -> bool {
        self.impressions.iter().any(|row| row.problem.is_some())
    }

    /// The first thing to do about the case, or why it could not be checked.
    #[must_use]
    pub fn said(&self, language: Language) -> String {
        if !self.first.sentences().is_empty() {
            return self.first.text(language);
        }
        let row = self.impressions.first();
        let said = row.and_then(|row| row.problem.as_ref().or(row.first_step.as_ref()));
        said.cloned().unwrap_or_default()
    }

    /// The file of the case's results that a person reads.
    pub(super) fn opens(&self) -> &'static str {
        if self.has_report {
            REPORT_FILE
        } else {
            RESULT_FILE
        }
    }

    /// The bytes of its file.
    #[must_use]
    pub fn encoded(&self) -> Vec<u8> {
        let mut bytes = serde_json::to_vec(self)
            .expect("a record is plain data with text keys, which always has a JSON form");
        bytes.push(b'\n');
        bytes
    }

    /// Reads the record in the folder of a case.
    ///
    /// # Errors
    /// When there is none, or it was not written by this version's kind of program.
    pub fn read(folder: &Path) -> Result<Self, RecordError> {
        let path = folder.join(Self::FILE);
        let read = mesh::read::bounded(&path, mesh::read::MAX_TABLE_BYTES)
            .and_then(|bytes| serde_json::from_slice(&bytes).map_err(io::Error::from));
        read.map_err(|reason| RecordError { path, reason })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::result::CaseResult;
    use crate::testing::{checked_with_border, checked_with_spots, checked_without_cover};

    fn provenance() -> Provenance {
        Provenance {
            inputs_sha256: "00".to_owned(),
            settings_sha256: "11".to_owned(),
            program: "0".to_owned(),
        }
    }

    #[test]
    fn rows_hold_the_figures_of_the_result() {
        let result = CaseResult::of(&checked_with_spots());
        let scanned = [Some("2026-01-02T03:04:05Z".to_owned())];
        let record = CaseRecord::checked(&result, "D-1042-00", &scanned, vec![None], provenance());
        let row = &record.impressions[0];
        let cover = result.impressions[0].cover.as_ref().unwrap();
        assert_eq!(row.case.as_deref(), Some("D-1042"));
        assert_eq!(row.arch.as_deref(), Some("maxillary"));
        assert_eq!(row.stage.as_deref(), Some("first_pass"));
        assert_eq!(row.case_verdict.as_deref(), Some("rework"));
        assert_eq!(row.scanned, scanned[0]);
        assert_eq!(row.scanned_by.as_deref(), Some("scan_file"));
        assert_eq!(row.cover_median_mm, cover.median_mm);
        assert_eq!(row.problem, None);
        assert_eq!(record.findings.len(), result.findings.len());
        for (row, finding) in record.findings.iter().zip(&result.findings) {
            assert_eq!(row.check, finding.check);
            assert_eq!(row.measured, finding.measured);
        }
        let back: CaseRecord = serde_json::from_slice(&record.encoded()).unwrap();
        assert_eq!(back, record);
    }

    #[test]
    fn the_time_that_the_case_file_states_comes_before_that_of_the_file() {
        let mut result = CaseResult::of(&checked_with_spots());
        let changed = [Some("2026-01-02T03:04:05Z".to_owned())];
        let of = |result: &CaseResult, changed: &[Option<String>]| {
            let record = CaseRecord::checked(result, "f", changed, Vec::new(), provenance());
            let row = &record.impressions[0];
            (row.scanned.clone(), row.scanned_by.clone())
        };
        assert_eq!(of(&result, &[]), (None, None));
        result.scanned_at = Some("2025-11-30".to_owned());
        let wanted = ["2025-11-30", "case_file"].map(|text| Some(text.to_owned()));
        assert_eq!(of(&result, &changed), wanted.into());
    }

    #[test]
    fn figures_of_the_border_are_those_of_its_stations() {
        let result = CaseResult::of(&checked_with_border());
        let record = CaseRecord::checked(&result, "f", &[], Vec::new(), provenance());
        let stations = &result.impressions[0].border.as_ref().unwrap().stations;
        let least = stations.iter().filter_map(|s| s.flange_height_mm);
        let least = least.fold(f64::INFINITY, f64::min);
        assert_eq!(record.impressions[0].flange_height_min_mm, Some(least));
        let without = CaseResult::of(&checked_without_cover());
        let record = CaseRecord::checked(&without, "f", &[], Vec::new(), provenance());
        assert_eq!(record.impressions[0].cover_median_mm, None);
        assert_eq!(record.impressions[0].scanned, None);
    }

    /// The place is told in the impression frame, whatever the file's unit.
    #[test]
    fn findings_are_placed_in_the_impression_frame() {
        let mut checked = checked_with_spots();
        let in_mm = of_findings(&CaseResult::of(&checked), "f");
        let frame = CaseResult::of(&checked).impressions[0]
            .frame
            .clone()
            .unwrap();
        let at = CaseResult::of(&checked).findings[0].at.unwrap();
        let right: f64 = (0..3)
            .map(|i| (at[i] - frame.origin[i]) * frame.right[i])
            .sum();
        assert!((in_mm[0].right_mm.unwrap() - right).abs() < 1e-3);
        let scan = std::sync::Arc::make_mut(&mut checked.impressions[0].scan);
        scan.unit = judge::UnitReading::Given(mesh::Unit::Centimetre);
        assert_eq!(
            of_findings(&CaseResult::of(&checked), "f")[0].right_mm,
            in_mm[0].right_mm
        );
    }
}
