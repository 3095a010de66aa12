//! Judges a case: every check on every impression, then the verdicts.

use crate::case::Case;
use crate::cause::Cause;
use crate::check::{Check, Remedy};
use crate::checks;
use crate::finding::Finding;
use crate::landmarks::{self, JudgedLandmark};
use crate::not_judged::{NotJudged, Part};
use crate::protocol::Protocol;
use crate::severity::Severity;
use crate::subject::{CaseSubject, Evidence, ScanSubject, Subject};
use crate::verdict::Verdict;
use crate::wash::{self, PlaceState};
use measure::record::{JawRelation, NoRelation};
use messages::{Value, message};

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
    /// The checks that were made on it, as far as what they need was there.
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
    relation: Option<&Result<JawRelation, NoRelation>>,
    protocol: &Protocol,
) -> JudgedCase {
    let subjects: Vec<ScanSubject<'_>> = case
        .impressions
        .iter()
        .zip(evidence)
        .enumerate()
        .map(|(number, (input, evidence))| ScanSubject {
            number,
            input,
            evidence,
            protocol,
        })
        .collect();
    let mut findings = checks::same_files(&subjects);
    let mut impressions = Vec::new();
    for &subject in &subjects {
        let same_file: Vec<Finding> = findings
            .iter()
            .filter(|f| f.impression == Some(subject.number))
            .cloned()
            .collect();
        let mut own = checks::on_impression(subject);
        hold_back(&mut own.findings, &same_file);
        impressions.push(JudgedImpression {
            verdict: Verdict::from_findings(own.findings.iter().chain(&same_file)),
            made: own.made,
            not_judged: own.not_judged.into_iter().chain(cut(subject)).collect(),
            landmarks: (subject.impression()).map_or_else(Vec::new, |s| landmarks::judged(&s)),
            wash_places: (subject.impression()).map_or_else(Vec::new, |s| wash_places(&s)),
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

/// What lies at the cut between the parts of an impression is not judged.
fn cut(subject: ScanSubject<'_>) -> Option<NotJudged> {
    let width_mm = subject.impression()?.measurement().scan.cut_width_mm?;
    Some(NotJudged {
        what: Part::Cut.into(),
        why: message!(
            "cut-between-parts",
            width = Value::figure(format!("{width_mm:.1} mm"))
        ),
        is_asked: true,
    })
}

/// The checks of a wash are made on impressions. Where the case holds no wash
/// over a first pass, one entry of the case says so.
fn no_wash(case: &Case) -> Option<NotJudged> {
    let is_wash = |number| case.first_pass_of(number).is_some();
    (!(0..case.impressions.len()).any(is_wash)).then(|| NotJudged {
        what: Part::Wash.into(),
        why: message!("no-wash-pair"),
        is_asked: false,
    })
}

fn wash_places(subject: &Subject<'_>) -> Vec<PlaceState> {
    let pair = subject.pair().and_then(|pair| pair.as_ref().ok());
    pair.and_then(|pair| pair.wash.as_ref().ok())
        .iter()
        .flat_map(|wash| &wash.places)
        .map(|place| wash::state(place, subject.protocol()).0)
        .collect()
}

/// The most pressing of what is to become of the impressions and of the case
/// itself: a question about one impression does not hide that another must
/// clearly be mended.
fn on_the_whole(case: &Case, subjects: &[ScanSubject<'_>], findings: &[Finding]) -> Verdict {
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

/// A finding on an impression that a wash has followed: it is looked after on the wash, and
/// decides nothing by itself any more. But whether the tray was seated on its stops shows
/// here alone.
fn as_history(finding: Finding) -> Finding {
    let stands = finding.check.remedy() == Remedy::Answer || finding.check == Check::TissueStop;
    if finding.severity == Severity::Note || stands {
        return finding;
    }
    Finding {
        severity: Severity::Note,
        instruction: message!("before-the-wash").then(finding.instruction),
        ..finding
    }
}

/// While a question on an impression stands (which jaw, which way, which unit), nothing
/// else that was found on it is certain.
fn hold_back(findings: &mut [Finding], same_file: &[Finding]) {
    let is_question = |finding: &Finding| finding.cause() == Cause::Question;
    if findings.iter().chain(same_file).any(is_question) {
        for finding in findings.iter_mut().filter(|finding| !is_question(finding)) {
            *finding = finding.clone().held_back();
        }
    }
}

/// Order of urgency, questions first; equal findings stay in the order they were found.
fn urgency(finding: &Finding) -> (bool, Severity, Remedy, Check, Option<usize>) {
    (
        finding.cause() != Cause::Question,
        finding.severity,
        finding.check.remedy(),
        finding.check,
        finding.impression,
    )
}
