//! `hole`: nothing was scanned here.

use super::shared::defects::{DefectCheck, width};
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{DefectKind, TissueSurface};
use messages::message;

const HOLE: DefectCheck = DefectCheck {
    check: Check::Hole,
    kind: DefectKind::Hole,
    size: width,
    usual: LimitKey::Hole,
    critical: LimitKey::CriticalHole,
    redo: Some(LimitKey::Hole),
    instruction: |_, _| message!("hole"),
};

pub(super) fn judge(subject: &Subject<'_>, tissue: &TissueSurface) -> Vec<Finding> {
    let findings = HOLE.findings(subject, tissue).into_iter();
    findings.map(too_small_to_hide_a_fault).collect()
}

/// What is only noted asks for no new scan.
fn too_small_to_hide_a_fault(finding: Finding) -> Finding {
    match finding.severity {
        Severity::Note => Finding {
            instruction: message!("hole-small"),
            ..finding
        },
        _ => finding,
    }
}
