//! `arch-mismatch`: the jaw found is not the jaw declared.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words;
use measure::Frame;

pub(super) fn judge(subject: &Subject<'_>, frame: &Frame) -> Vec<Finding> {
    let other_than_found = subject.input().declared.filter(|jaw| *jaw != frame.arch);
    let Some(declared) = other_than_found else {
        return Vec::new();
    };
    let instruction = format!(
        "Which jaw is it? It is declared as {}, but the scan has the shape of a {} impression \
         (confidence {:.2}). Give the right scan or the right jaw.",
        words::arch(declared),
        words::arch(frame.arch),
        frame.arch_confidence
    );
    vec![subject.finding(Check::ArchMismatch, Severity::Borderline, instruction)]
}
