//! `nodule`: a bump stands on the tissue surface.

use super::Check;
use super::defects::{Rule, width};
use crate::finding::Finding;
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::{Defect, DefectKind};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    Rule {
        check: Check::Nodule,
        kind: DefectKind::Nodule,
        size: width,
        usual: LimitKey::Nodule,
        critical: LimitKey::CriticalNodule,
        instruction,
    }
    .judge(subject)
}

fn instruction(_: &Subject<'_>, _: &Defect) -> String {
    "A bead stands here that no mucosa has left: look at it, wipe it off or trim it before the \
     impression is poured."
        .into()
}
