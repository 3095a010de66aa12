//! `fold`: material met here without joining.

use super::Check;
use super::defects::Rule;
use crate::finding::Finding;
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::{Defect, DefectKind};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    Rule {
        check: Check::Fold,
        kind: DefectKind::Fold,
        size: |defect| {
            // Each end is known as well as the width between two rims is.
            let length = defect.length_mm.unwrap_or(f64::NAN);
            [length, defect.across_uncertainty_mm]
        },
        usual: LimitKey::Fold,
        critical: LimitKey::CriticalFold,
        instruction,
    }
    .judge(subject)
}

fn instruction(_: &Subject<'_>, _: &Defect) -> String {
    "A groove as of material that met without joining: look at it. If the material has folded or \
     dragged, take a wash over it; if the mucosa is furrowed so, leave it."
        .into()
}
