//! Judges a case: every check on every impression, then the verdicts.

use crate::case::{Case, ImpressionInput};
use crate::checks::{self, Check};
use crate::finding::{Figure, Finding, NotJudged, Severity};
use crate::landmarks::{self, JudgedLandmark};
use crate::protocol::{Limit, LimitKey, Protocol};
use crate::scale::UnitReading;
use crate::verdict::Verdict;
use crate::wash::{self, PlaceState};
use measure::jaw_relation::JawRelation;
use measure::{Arch, ImpressionMeasurement, NotMeasured};

/// What reading a scan showed that bears on judging it.
#[derive(Debug, Clone, PartialEq)]
pub struct ScanFacts {
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// How its unit was settled.
    pub unit: UnitReading,
    /// What in the file could mean two things and needs an answer.
    pub questions: Vec<String>,
}

/// What is known of one impression of a case.
#[derive(Debug, Clone)]
pub struct Evidence<'a> {
    /// What measuring gave.
    pub measurement: &'a ImpressionMeasurement,
    /// The impression scan's file.
    pub scan: ScanFacts,
    /// The tray scan's file, where one was given.
    pub tray: Option<ScanFacts>,
}

/// A case with its findings and verdict.
#[derive(Debug, Clone, PartialEq)]
pub struct JudgedCase {
    /// The verdict on the whole.
    pub verdict: Verdict,
    /// Each impression of the case, in its order.
    pub impressions: Vec<JudgedImpression>,
    /// All findings, most urgent first.
    pub findings: Vec<Finding>,
    /// What was not judged on the case as a whole.
    pub not_judged: Vec<NotJudged>,
}

/// One impression of a judged case.
#[derive(Debug, Clone, PartialEq)]
pub struct JudgedImpression {
    /// The verdict on it alone.
    pub verdict: Verdict,
    /// What was not judged on it.
    pub not_judged: Vec<NotJudged>,
    /// Its landmarks, in the order in which they were measured.
    pub landmarks: Vec<JudgedLandmark>,
    /// Where it is a wash over a first pass: what became of each place that was
    /// measured again, in that order.
    pub wash_places: Vec<PlaceState>,
}

/// One impression as the checks see it.
pub(crate) struct Subject<'a> {
    pub(crate) number: usize,
    pub(crate) input: &'a ImpressionInput,
    pub(crate) evidence: &'a Evidence<'a>,
    pub(crate) protocol: &'a Protocol,
}

impl Subject<'_> {
    /// The jaw: as declared, else as found.
    pub(crate) fn arch(&self) -> Option<Arch> {
        let found = self.measurement().frame.as_ref().ok();
        self.input.declared.or(found.map(|frame| frame.arch))
    }

    pub(crate) fn measurement(&self) -> &ImpressionMeasurement {
        self.evidence.measurement
    }

    pub(crate) fn limit(&self, key: LimitKey) -> &Limit {
        self.protocol.limit(key)
    }

    pub(crate) fn finding(
        &self,
        check: Check,
        severity: Severity,
        instruction: impl Into<String>,
    ) -> Finding {
        Finding {
            impression: Some(self.number),
            arch: self.arch(),
            ..Finding::on_case(check, severity, instruction)
        }
    }
}

/// The figure of a finding beside its limit.
pub(crate) fn figure(measured: f64, uncertainty: Option<f64>, limit: &Limit) -> Figure {
    Figure {
        measured,
        uncertainty,
        limit: limit.value,
        unit: limit.unit.clone(),
    }
}

/// Judges a case by a protocol. `evidence` holds one entry for each impression
/// of the case, in its order; an impression without evidence is not judged.
/// `relation` is what the scan of the jaw-relation record gave, if there is one.
#[must_use]
pub fn judge_case(
    case: &Case,
    evidence: &[Evidence<'_>],
    relation: Option<&Result<JawRelation, NotMeasured>>,
    protocol: &Protocol,
) -> JudgedCase {
    let subjects: Vec<Subject<'_>> = case
        .impressions
        .iter()
        .zip(evidence)
        .enumerate()
        .map(|(number, (input, evidence))| Subject {
            number,
            input,
            evidence,
            protocol,
        })
        .collect();
    let mut findings = checks::same_files(&subjects);
    let mut impressions = Vec::new();
    for subject in &subjects {
        let same_file: Vec<Finding> = findings
            .iter()
            .filter(|f| f.impression == Some(subject.number))
            .cloned()
            .collect();
        let own = checks::on_impression(subject);
        impressions.push(JudgedImpression {
            verdict: Verdict::from_findings(own.iter().chain(&same_file)),
            not_judged: checks::not_judged(subject),
            landmarks: landmarks::judged(subject),
            wash_places: wash_places(subject),
        });
        findings.extend(if case.is_superseded(subject.number) {
            own.into_iter().map(as_history).collect()
        } else {
            own
        });
    }
    let whole = checks::CaseSubject {
        case,
        relation,
        protocol,
    };
    findings.extend(checks::on_whole_case(&whole));
    findings.sort_by_key(urgency);
    JudgedCase {
        verdict: on_the_whole(case, &subjects, &findings),
        impressions,
        findings,
        not_judged: checks::not_judged_on_case(&whole),
    }
}

fn wash_places(subject: &Subject<'_>) -> Vec<PlaceState> {
    let wash = subject.measurement().wash.iter().flatten();
    wash.flat_map(|wash| &wash.places)
        .map(|place| wash::state(place, subject.protocol).0)
        .collect()
}

/// The most pressing of what is to become of the impressions and of the case
/// itself: a question about one impression does not hide that another must
/// surely be mended.
fn on_the_whole(case: &Case, subjects: &[Subject<'_>], findings: &[Finding]) -> Verdict {
    let all_looked_at = !subjects.is_empty() && subjects.len() == case.impressions.len();
    subjects
        .iter()
        .map(|subject| Some(subject.number))
        .chain([None])
        .map(|about| Verdict::from_findings(findings.iter().filter(move |f| f.impression == about)))
        .chain((!all_looked_at).then_some(Verdict::Undecided))
        .min()
        .unwrap_or(Verdict::Undecided)
}

/// A finding on a first pass that a wash has followed: it is to be looked after
/// on the wash, and decides nothing by itself any more.
fn as_history(finding: Finding) -> Finding {
    if finding.severity == Severity::Note || finding.check.remedy() == checks::Remedy::Answer {
        return finding;
    }
    Finding {
        severity: Severity::Note,
        instruction: format!(
            "Found on the first pass; the wash that followed is judged by itself. It called for: {}",
            finding.instruction
        ),
        ..finding
    }
}

/// Order of urgency; equal findings stay in the order they were found.
fn urgency(finding: &Finding) -> (Severity, checks::Remedy, Check, Option<usize>) {
    (
        finding.severity,
        finding.check.remedy(),
        finding.check,
        finding.impression,
    )
}
