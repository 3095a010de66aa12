//! `fold`: material met here without joining.

use super::shared::defects::DefectCheck;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::{Defect, DefectKind, TissueSurface};
use messages::{Message, message};

const FOLD: DefectCheck = DefectCheck {
    check: Check::Fold,
    kind: DefectKind::Fold,
    size: |defect| {
        // Each end is known as well as the width between two rims is.
        let length = defect.length_mm.unwrap_or(f64::NAN);
        [length, defect.across_uncertainty_mm]
    },
    usual: LimitKey::Fold,
    critical: LimitKey::CriticalFold,
    redo: None,
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, tissue: &TissueSurface) -> Vec<Finding> {
    FOLD.findings(subject, tissue)
}

fn instruction(_: &Subject<'_>, _: &Defect) -> Message {
    message!("fold")
}
