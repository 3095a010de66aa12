//! `void`: air left a pit in the tissue surface.

use super::Check;
use super::defects::{Rule, width};
use crate::case::Stage;
use crate::finding::Finding;
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::{Defect, DefectKind};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    Rule {
        check: Check::Void,
        kind: DefectKind::Void,
        size: width,
        usual: LimitKey::Void,
        critical: LimitKey::CriticalVoid,
        instruction,
    }
    .judge(subject)
}

fn instruction(subject: &Subject<'_>, _: &Defect) -> String {
    match subject.input.stage {
        Stage::FirstPass => "Air was trapped here: dry the place and fill the void with wash.",
        Stage::Wash | Stage::Single => {
            "Air was trapped here: dry the place, fill the void with wash and seat again; else \
             the cast carries a bead of stone here, which must be trimmed off it."
        }
    }
    .into()
}
