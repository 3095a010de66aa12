//! Judges a case: every check on every impression, then the verdicts.

use crate::case::Case;
use crate::check::{Check, Remedy};
use crate::checks;
use crate::finding::Finding;
use crate::landmarks::{self, JudgedLandmark};
use crate::not_judged::{NotJudged, Part};
use crate::protocol::Protocol;
use crate::severity::Severity;
use crate::subject::{CaseSubject, Evidence, Subject};
use crate::verdict::Verdict;
use crate::wash::{self, PlaceState};
use measure::NotMeasured;
use measure::jaw_relation::JawRelation;

/// A case with its findings and verdict.
#[derive(Debug, Clone, PartialEq)]
pub struct JudgedCase {
    /// The verdict on the whole.
    pub verdict: Verdict,
    /// Each impression of the case, in its order.
    pub impressions: Vec<JudgedImpression>,
    /// All findings, most urgent first.
    pub findings: Vec<Finding>,
    /// The checks that were made on the case as a whole.
    pub made: Vec<Check>,
    /// What was not judged on the case as a whole.
    pub not_judged: Vec<NotJudged>,
}

/// One impression of a judged case.
#[derive(Debug, Clone, PartialEq)]
pub struct JudgedImpression {
    /// The verdict on it alone.
    pub verdict: Verdict,
    /// The checks that were made on it, all over it or in part.
    pub made: Vec<Check>,
    /// What was not judged on it. A check that is neither here nor among those
    /// made has nothing to judge on this impression.
    pub not_judged: Vec<NotJudged>,
    /// Its landmarks, in the order in which they were measured.
    pub landmarks: Vec<JudgedLandmark>,
    /// Where it is a wash over a first pass: what became of each place that was
    /// measured again, in that order.
    pub wash_places: Vec<PlaceState>,
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
    let measurement_of = |number: usize| evidence.get(number).map(|evidence| evidence.measurement);
    let subjects: Vec<Subject<'_>> = case
        .impressions
        .iter()
        .zip(evidence)
        .enumerate()
        .map(|(number, (input, evidence))| Subject {
            number,
            input,
            evidence,
            first_pass: case.first_pass_of(number).and_then(measurement_of),
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
            verdict: Verdict::from_findings(own.findings.iter().chain(&same_file)),
            made: own.made,
            not_judged: own.not_judged,
            landmarks: landmarks::judged(subject),
            wash_places: wash_places(subject),
        });
        findings.extend(if case.is_superseded(subject.number) {
            own.findings.into_iter().map(as_history).collect()
        } else {
            own.findings
        });
    }
    let whole = checks::on_case(&CaseSubject {
        case,
        relation,
        protocol,
    });
    findings.extend(whole.findings);
    findings.sort_by_key(urgency);
    JudgedCase {
        verdict: on_the_whole(case, &subjects, &findings),
        impressions,
        findings,
        made: whole.made,
        not_judged: no_wash(case).into_iter().chain(whole.not_judged).collect(),
    }
}

/// The checks of a wash are made on impressions; that the case holds none is
/// said once, of the case.
fn no_wash(case: &Case) -> Option<NotJudged> {
    let is_wash = |number| case.first_pass_of(number).is_some();
    (!(0..case.impressions.len()).any(is_wash)).then(|| NotJudged {
        what: Part::Wash.into(),
        why: "the case names no first pass beside a wash of the same jaw".to_owned(),
    })
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
    if finding.severity == Severity::Note || finding.check.remedy() == Remedy::Answer {
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
fn urgency(finding: &Finding) -> (Severity, Remedy, Check, Option<usize>) {
    (
        finding.severity,
        finding.check.remedy(),
        finding.check,
        finding.impression,
    )
}
