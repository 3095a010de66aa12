//! The rows of the tables: one for each impression, one for each finding.
//!
//! A row is the same in every format. What could not be had is empty.

use crate::result::{
    CaseResult, Finding, ImpressionResult, NotJudged, Point, Severity, TimeSource,
};
use crate::text::headline::asked_for;
use crate::text::rounding::figure;
use crate::text::steps::pressing;
use measure::StationFigure;
use mesh::Unit;
use messages::Message;
use nalgebra::Vector3;
use parquet_derive::ParquetRecordWriter;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// One impression of a case, or a case that could not be read.
#[derive(
    Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, ParquetRecordWriter,
)]
pub struct ImpressionRow {
    /// Folder of the case's results, below `cases`; no two cases share one.
    pub folder: String,
    /// Pseudonym of the case; empty where the case file could not be read.
    pub case: Option<String>,
    /// Why the case could not be checked; empty where it was.
    pub problem: Option<String>,
    /// Verdict on the case: `accept`, `rework`, `retake` or `undecided`.
    pub case_verdict: Option<String>,
    /// Number of the impression in the case, from 0.
    pub impression: Option<u64>,
    /// The jaw: `maxillary` or `mandibular`; as declared, else as found.
    pub arch: Option<String>,
    /// How far the impression has come: `first_pass`, `wash` or `single`.
    pub stage: Option<String>,
    /// Verdict on the impression.
    pub verdict: Option<String>,
    /// Whether a wash of the same jaw is in the case, so that this is no longer the
    /// impression to be worked from.
    pub superseded: Option<bool>,
    /// When the impression was scanned, UTC (RFC 3339), or the date where no more is stated:
    /// by the case file or else by the last change of the scan file.
    pub scanned: Option<String>,
    /// Where that time is taken from: `case_file` or `scan_file`; empty where none is known.
    #[serde(default)]
    pub scanned_by: Option<String>,
    /// SHA-256 of the impression's scan file.
    pub scan_sha256: Option<String>,
    /// SHA-256 of the tray's scan file.
    pub tray_sha256: Option<String>,
    /// Triangles of the impression's scan.
    pub triangles: Option<u64>,
    /// Median edge length of the impression's scan, mm.
    pub median_edge_mm: Option<f64>,
    /// Standard deviation of the scan's noise along the normal, mm.
    pub noise_mm: Option<f64>,
    /// Root mean square distance of impression and tray where they fit, mm.
    pub registration_rms_mm: Option<f64>,
    /// Least cover, mm.
    pub cover_min_mm: Option<f64>,
    /// 5th percentile of cover, mm.
    pub cover_p05_mm: Option<f64>,
    /// Median cover, mm.
    pub cover_median_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of a figure of cover, mm.
    pub cover_uncertainty_mm: Option<f64>,
    /// Length of the border, mm.
    pub border_length_mm: Option<f64>,
    /// Least flange height of all stations, mm.
    pub flange_height_min_mm: Option<f64>,
    /// Median flange height of all stations, mm.
    pub flange_height_median_mm: Option<f64>,
    /// Least flange thickness of all stations, mm.
    pub flange_thickness_min_mm: Option<f64>,
    /// Median flange thickness of all stations, mm.
    pub flange_thickness_median_mm: Option<f64>,
    /// Median border radius of all stations, mm.
    pub border_radius_median_mm: Option<f64>,
    /// Findings that fail.
    pub fails: Option<u64>,
    /// Findings that cannot be decided.
    pub borderlines: Option<u64>,
    /// Findings that are notes.
    pub notes: Option<u64>,
    /// Codes of the checks that fail, in order, with blanks between; empty for none.
    pub failed_checks: Option<String>,
    /// Codes of what was not judged on it, or not everywhere, in order, with blanks between;
    /// empty for none.
    pub not_judged: Option<String>,
    /// The first thing to do about the case.
    pub first_step: Option<String>,
    /// Labels of the case as `key=value`, in order, with blanks between; empty for none.
    pub labels: Option<String>,
}

impl ImpressionRow {
    /// Where the time of scanning is taken from; rows of earlier versions know the scan
    /// file's alone.
    pub(super) fn time_source(&self) -> Option<TimeSource> {
        self.scanned.as_ref()?;
        let stated = TimeSource::CaseFile;
        let is_stated = self.scanned_by.as_deref() == Some(stated.name());
        Some(if is_stated {
            stated
        } else {
            TimeSource::ScanFile
        })
    }
}

/// One finding of a case.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, ParquetRecordWriter)]
pub struct FindingRow {
    /// Folder of the case's results, below `cases`.
    pub folder: String,
    /// Pseudonym of the case.
    pub case: String,
    /// Name of the finding within the case.
    pub finding: String,
    /// `fail`, `borderline` or `note`.
    pub severity: String,
    /// Code of the check.
    pub check: String,
    /// Number of the impression in the case, from 0.
    pub impression: Option<u64>,
    /// The jaw.
    pub arch: Option<String>,
    /// Part of the arch.
    pub zone: Option<String>,
    /// The patient's side: `right` or `left`.
    pub side: Option<String>,
    /// The figure, in `unit`.
    pub measured: Option<f64>,
    /// The limit, in `unit`.
    pub limit: Option<f64>,
    /// Whether the figure must be at least the limit or at most: `at_least` or `at_most`.
    pub bound: Option<String>,
    /// Why it bears on the verdict: `question`, `fault`, `missing`, `look`, `parcel`, `note` or
    /// `held_back`.
    pub cause: String,
    /// Expanded uncertainty (k = 2) of the figure, in `unit`.
    pub uncertainty: Option<f64>,
    /// Unit of the three; `1` for a plain number.
    pub unit: Option<String>,
    /// Where it is: toward the patient's right from the centre of the crest line, mm.
    pub right_mm: Option<f64>,
    /// Where it is: toward the patient's front from there, mm.
    pub anterior_mm: Option<f64>,
    /// What to do about it, in English.
    pub instruction: String,
    /// Key of the instruction in the catalogue of messages; none in rows of earlier versions.
    pub instruction_key: Option<String>,
    /// The messages that make the instruction, with their parameters, as JSON.
    pub instruction_messages: Option<String>,
    /// Labels of the case as `key=value`, in order, with blanks between; empty for none.
    pub labels: Option<String>,
}

/// The rows of a checked case; `changed` is when each impression's scan file
/// was last changed.
pub(super) fn of_impressions(
    result: &CaseResult,
    folder: &str,
    changed: &[Option<String>],
) -> Vec<ImpressionRow> {
    let step = first_step(result).to_string();
    let labels = labels(result);
    (result.impressions.iter().enumerate())
        .map(|(number, impression)| {
            let changed = changed.get(number).and_then(Option::as_ref);
            let (scanned, scanned_by) = result.scanned(changed).unzip();
            ImpressionRow {
                folder: folder.to_owned(),
                first_step: Some(step.clone()),
                labels: labels.clone(),
                case: Some(result.case.clone()),
                case_verdict: Some(word(&result.verdict)),
                scanned,
                scanned_by: scanned_by.map(|source| source.name().to_owned()),
                ..of_impression(result, number as u64, impression)
            }
        })
        .collect()
}

fn labels(result: &CaseResult) -> Option<String> {
    let each = result.labels.iter();
    let each: Vec<String> = each.map(|(key, value)| format!("{key}={value}")).collect();
    (!each.is_empty()).then(|| each.join(" "))
}

/// What the most urgent finding asks for or, where none is pressing, what the case is ready for.
pub(super) fn first_step(result: &CaseResult) -> Message {
    let pressing = pressing(result).next();
    pressing.map_or_else(|| asked_for(result), Finding::instruction_message)
}

fn of_impression(result: &CaseResult, number: u64, one: &ImpressionResult) -> ImpressionRow {
    let findings: Vec<&Finding> = (result.findings.iter())
        .filter(|f| f.impression == Some(number))
        .collect();
    let count = |severity| findings.iter().filter(|f| f.severity == severity).count() as u64;
    let failed = findings.iter().filter(|f| f.severity == Severity::Fail);
    let cover = one.cover.as_ref();
    let stations = |figure: StationFigure| -> Vec<f64> {
        let all = one.border.iter().flat_map(|border| &border.stations);
        all.filter_map(|station| station.figure(figure).mm)
            .collect()
    };
    let height = stations(StationFigure::Height);
    let thickness = stations(StationFigure::Thickness);
    let radius = stations(StationFigure::Radius);
    let part = |values: &[f64], part| statistics::quantile(values, part).map(figure);
    ImpressionRow {
        impression: Some(number),
        arch: one
            .arch
            .declared
            .or(one.arch.detected)
            .map(|arch| word(&arch)),
        stage: Some(word(&one.stage)),
        verdict: Some(word(&one.verdict)),
        superseded: Some(one.superseded),
        scan_sha256: Some(one.scan.sha256.clone()),
        tray_sha256: one.tray.as_ref().map(|tray| tray.sha256.clone()),
        triangles: Some(one.scan.triangles),
        median_edge_mm: Some(one.scan.median_edge_mm),
        noise_mm: one.scan.noise_mm,
        registration_rms_mm: cover.and_then(|c| c.registration_rms_mm),
        cover_min_mm: cover.and_then(|c| c.min_mm),
        cover_p05_mm: cover.and_then(|c| c.p05_mm),
        cover_median_mm: cover.and_then(|c| c.median_mm),
        cover_uncertainty_mm: cover.and_then(|c| c.uncertainty_mm),
        border_length_mm: one.border.as_ref().map(|b| b.length_mm),
        flange_height_min_mm: part(&height, 0.0),
        flange_height_median_mm: part(&height, 0.5),
        flange_thickness_min_mm: part(&thickness, 0.0),
        flange_thickness_median_mm: part(&thickness, 0.5),
        border_radius_median_mm: part(&radius, 0.5),
        fails: Some(count(Severity::Fail)),
        borderlines: Some(count(Severity::Borderline)),
        notes: Some(count(Severity::Note)),
        failed_checks: listed(failed.map(|f| f.check.as_str())),
        not_judged: listed(codes(&one.not_judged)),
        ..ImpressionRow::default()
    }
}

fn codes(not_judged: &[NotJudged]) -> impl Iterator<Item = &str> {
    not_judged.iter().map(|entry| entry.check.as_str())
}

/// `None` for none: an empty text could not be told from it in CSV.
fn listed<'a>(codes: impl Iterator<Item = &'a str>) -> Option<String> {
    let each: BTreeSet<&str> = codes.collect();
    (!each.is_empty()).then(|| each.into_iter().collect::<Vec<_>>().join(" "))
}

/// The findings of a checked case.
pub(super) fn of_findings(result: &CaseResult, folder: &str) -> Vec<FindingRow> {
    let row = |finding: &Finding| {
        let place = place(result, finding);
        FindingRow {
            folder: folder.to_owned(),
            case: result.case.clone(),
            labels: labels(result),
            finding: finding.id.clone(),
            severity: word(&finding.severity),
            check: finding.check.clone(),
            impression: finding.impression,
            arch: finding.arch.map(|arch| word(&arch)),
            zone: finding.zone.clone(),
            side: finding.side.map(|side| word(&side)),
            measured: finding.measured,
            limit: finding.limit,
            bound: finding.bound.map(|bound| word(&bound)),
            cause: word(&finding.cause),
            uncertainty: finding.uncertainty,
            unit: finding.unit.clone(),
            right_mm: place.map(|p| p[0]),
            anterior_mm: place.map(|p| p[1]),
            instruction: finding.instruction.clone(),
            instruction_key: (!finding.instruction_key.is_empty())
                .then(|| finding.instruction_key.clone()),
            instruction_messages: as_json(&finding.instruction_messages),
        }
    };
    result.findings.iter().map(row).collect()
}

/// Messages as JSON; `None` where a result of an earlier version holds none.
fn as_json(messages: &Message) -> Option<String> {
    let sentences = messages.sentences();
    (!sentences.is_empty()).then(|| serde_json::to_string(sentences).ok())?
}

fn place(result: &CaseResult, finding: &Finding) -> Option<[f64; 2]> {
    let number = usize::try_from(finding.impression?).ok()?;
    in_frame(result.impressions.get(number)?, finding.at?)
}

/// Where a point of a scan is, in the impression frame, mm: to the right and to
/// the front of its origin.
fn in_frame(impression: &ImpressionResult, point: Point) -> Option<[f64; 2]> {
    let frame = impression.frame.as_ref()?;
    let in_mm = impression.scan.unit.parse::<Unit>().ok()?.in_mm();
    let from_origin = Vector3::from(point) - Vector3::from(frame.origin);
    Some([frame.right, frame.anterior].map(|axis| {
        let along = from_origin.dot(&Vector3::from(axis));
        figure(along * in_mm)
    }))
}

/// The border of each impression in its frame, some points of it.
pub(super) fn outlines(result: &CaseResult) -> Vec<Vec<[f64; 2]>> {
    const POINTS: usize = 48;
    let outline = |impression: &ImpressionResult| {
        let stations = impression.border.as_ref().map_or(&[][..], |b| &b.stations);
        let every = stations.len().div_ceil(POINTS).max(1);
        let some = stations.iter().step_by(every);
        some.filter_map(|s| in_frame(impression, s.point)).collect()
    };
    result.impressions.iter().map(outline).collect()
}

/// The word of the contract for one of its kinds.
fn word(kind: &impl Serialize) -> String {
    match serde_json::to_value(kind) {
        Ok(serde_json::Value::String(word)) => word,
        _ => String::new(),
    }
}
