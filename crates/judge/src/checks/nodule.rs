//! `nodule`: a bump stands on the tissue surface.

use super::shared::defects::{DefectCheck, width};
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
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
    NODULE.findings(subject, tissue)
}

fn instruction(_: &Subject<'_>, _: &Defect) -> Message {
    message!("nodule")
}
