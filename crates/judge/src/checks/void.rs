//! `void`: air left a pit in the tissue surface.

use super::shared::defects::{DefectCheck, is_at_seal, width};
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

fn instruction(subject: &Subject<'_>, defect: &Defect) -> String {
    match subject.input().stage {
        Stage::FirstPass => "Air was trapped here. Dry the place, so that the wash fills it.",
        Stage::Wash | Stage::Single if is_at_seal(subject, defect) => {
            "Air was trapped here, where the denture must seal. The cast will have a stone bead here: \
             trim it if the surface around it shows the true shape. Otherwise dry the place, fill the \
             void with wash and seat the impression again."
        }
        // A second wash over a set impression lifts the whole tray: the bench comes first.
        Stage::Wash | Stage::Single => {
            "Air was trapped here. The cast will have a stone bead here that must be trimmed. If the \
             bead is too large for the true surface to be seen around it, repeat the wash."
        }
    }
    .into()
}
