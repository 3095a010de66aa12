//! `file-unclear`: a file that could mean two things, one file given as two, or
//! two scans of one jaw of which one is mirrored.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::ScanSubject;
use measure::pair::NoPair;

pub(super) fn judge(subject: &ScanSubject<'_>) -> Vec<Finding> {
    let evidence = subject.evidence;
    let tray_questions = evidence.tray.iter().flat_map(|tray| &tray.questions);
    let asked = evidence
        .scan
        .questions
        .iter()
        .map(|question| ("impression scan", question))
        .chain(tray_questions.map(|question| ("tray scan", question)))
        .map(|(which, question)| {
            format!("The {which} could mean two things: {question}. Export it again and check.")
        });
    let one_for_both = evidence
        .tray
        .as_ref()
        .filter(|tray| tray.sha256 == evidence.scan.sha256)
        .map(|_| {
            "Impression scan and tray scan are the same file. Give the scan of the empty tray \
             as the tray scan."
                .to_owned()
        });
    let is_mirrored = matches!(evidence.pair, Some(Err(NoPair::Mirrored)));
    let mirrored = is_mirrored.then(|| {
        "The impressions of this jaw before and after the wash fit one another only as in a \
             mirror: one of their scans is mirrored, or they are of two mouths. Export both again without mirroring, \
             and compare right and left with the impressions."
            .to_owned()
    });
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
                "The same scan file is given for two impressions of this case. Give each \
                 impression its own scan.",
            ));
        }
    }
    findings
}
