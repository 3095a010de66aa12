//! `void`: air left a pit in the tissue surface.

use super::shared::defects::{DefectCheck, width};
use crate::case::Stage;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::{Defect, DefectKind, TissueSurface};

const VOID: DefectCheck = DefectCheck {
    check: Check::Void,
    kind: DefectKind::Void,
    size: width,
    usual: LimitKey::Void,
    critical: LimitKey::CriticalVoid,
    redo: Some(LimitKey::CriticalVoidRedo),
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, tissue: &TissueSurface) -> Vec<Finding> {
    VOID.findings(subject, tissue)
}

fn instruction(subject: &Subject<'_>, _: &Defect) -> String {
    match subject.input().stage {
        Stage::FirstPass => "Air was trapped here: dry the place and fill the void with wash.",
        Stage::Wash | Stage::Single => {
            "Air was trapped here: dry the place, fill the void with wash and seat again; else \
             the cast carries a bead of stone here, which must be trimmed off it."
        }
    }
    .into()
}
