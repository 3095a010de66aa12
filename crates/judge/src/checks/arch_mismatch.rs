//! `arch-mismatch`: the jaw found is not the jaw declared.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words;
use measure::Frame;
use messages::{Value, message};

pub(super) fn judge(subject: &Subject<'_>, frame: &Frame) -> Vec<Finding> {
    let other_than_found = subject.input().declared.filter(|jaw| *jaw != frame.arch);
    let Some(declared) = other_than_found else {
        return Vec::new();
    };
    let instruction = message!(
        "arch-mismatch",
        declared = words::arch(declared),
        found = words::arch(frame.arch),
        confidence = Value::figure(format!("{:.2}", frame.arch_confidence))
    );
    vec![subject.finding(Check::ArchMismatch, Severity::Borderline, instruction)]
}
