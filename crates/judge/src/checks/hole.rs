//! `hole`: nothing was scanned here.

use super::shared::defects::{DefectCheck, width};
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::{Defect, DefectKind, TissueSurface};
use messages::{Message, message};

const HOLE: DefectCheck = DefectCheck {
    check: Check::Hole,
    kind: DefectKind::Hole,
    size: width,
    usual: LimitKey::Hole,
    critical: LimitKey::CriticalHole,
    redo: None,
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, tissue: &TissueSurface) -> Vec<Finding> {
    HOLE.findings(subject, tissue)
}

fn instruction(_: &Subject<'_>, _: &Defect) -> Message {
    message!("hole")
}
