//! `nodule`: a bump stands on the tissue surface.

use super::shared::defects::{DefectCheck, width};
use crate::bands;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Defect, DefectKind, TissueSurface};
use messages::{Message, message};

const NODULE: DefectCheck = DefectCheck {
    check: Check::Nodule,
    kind: DefectKind::Nodule,
    size: width,
    usual: LimitKey::Nodule,
    critical: LimitKey::CriticalNodule,
    redo: None,
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, tissue: &TissueSurface) -> Vec<Finding> {
    let findings = NODULE.findings(subject, tissue).into_iter();
    findings
        .map(|finding| between_bands(subject, tissue, finding))
        .collect()
}

/// A bump between two notches of the border is a nodule, or the material between two bands of a
/// frenum: its shape cannot tell, and what is sound must not be trimmed.
fn between_bands(subject: &Subject<'_>, tissue: &TissueSurface, finding: Finding) -> Finding {
    let defect = finding.defect.map(|number| &tissue.defects[number]);
    if defect.is_some_and(|defect| bands::may_lie_between(subject.measurement(), defect)) {
        Finding {
            severity: Severity::Note,
            instruction: message!("nodule-or-band").then(finding.instruction),
            ..finding
        }
    } else {
        finding
    }
}

fn instruction(_: &Subject<'_>, _: &Defect) -> Message {
    message!("nodule")
}
