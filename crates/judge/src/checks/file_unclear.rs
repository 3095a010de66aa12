//! `file-unclear`: a file that could mean two things, one file given as two, or
//! two scans of one jaw of which one is mirrored.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::ScanSubject;
use measure::pair::NoPair;
use messages::message;

pub(super) fn judge(subject: &ScanSubject<'_>) -> Vec<Finding> {
    let evidence = subject.evidence;
    let tray_questions = evidence.tray.iter().flat_map(|tray| &tray.questions);
    let asked = evidence
        .scan
        .questions
        .iter()
        .map(|question| ("impression", question))
        .chain(tray_questions.map(|question| ("tray", question)))
        .map(|(which, question)| {
            message!("file-unclear", which = which, question = question.clone())
        });
    let one_for_both = evidence
        .tray
        .as_ref()
        .filter(|tray| tray.sha256 == evidence.scan.sha256)
        .map(|_| message!("file-is-tray-too"));
    let is_mirrored = matches!(evidence.pair, Some(Err(NoPair::Mirrored)));
    let mirrored = is_mirrored.then(|| message!("file-mirrored"));
    asked
        .chain(one_for_both)
        .chain(mirrored)
        .map(|instruction| subject.finding(Check::FileUnclear, Severity::Borderline, instruction))
        .collect()
}

/// Impressions of a case that are one and the same file.
pub(crate) fn same_files(subjects: &[ScanSubject<'_>]) -> Vec<Finding> {
    let mut findings = Vec::new();
    for (later, subject) in subjects.iter().enumerate() {
        let same = subjects[..later]
            .iter()
            .any(|earlier| earlier.evidence.scan.sha256 == subject.evidence.scan.sha256);
        if same {
            findings.push(subject.finding(
                Check::FileUnclear,
                Severity::Borderline,
                message!("file-given-twice"),
            ));
        }
    }
    findings
}
