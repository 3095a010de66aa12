//! `hole`: nothing was scanned here.

use super::Check;
use super::defects::{Rule, width};
use crate::finding::Finding;
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::{Defect, DefectKind};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    Rule {
        check: Check::Hole,
        kind: DefectKind::Hole,
        size: width,
        usual: LimitKey::Hole,
        critical: LimitKey::CriticalHole,
        instruction,
    }
    .judge(subject)
}

fn instruction(_: &Subject<'_>, _: &Defect) -> String {
    "Nothing was scanned here: scan this place again. If the hole is in the impression itself, \
     add wash."
        .into()
}
