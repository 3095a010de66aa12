//! `arch-mismatch`: the jaw found is not the jaw declared.

use super::Check;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::words;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let (Some(declared), Ok(frame)) = (subject.input.declared, &subject.measurement().frame) else {
        return Vec::new();
    };
    if declared == frame.arch {
        return Vec::new();
    }
    let instruction = format!(
        "Declared as {}, but the scan has the shape of a {} impression (confidence {:.2}). Give \
         the right scan or the right jaw; until then no side and no zone can be relied on.",
        words::arch(declared),
        words::arch(frame.arch),
        frame.arch_confidence
    );
    vec![subject.finding(Check::ArchMismatch, Severity::Fail, instruction)]
}
