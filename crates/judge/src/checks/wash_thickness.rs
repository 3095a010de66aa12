//! `wash-thickness`: the wash is thick.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::wash::Wash;

const THICK: FigureCheck = FigureCheck {
    check: Check::WashThickness,
    key: LimitKey::WashMost,
    bound: Bound::AtMost,
    instruction: "The wash is thick: over a twentieth of the surface more than this. Look whether the \
                  tray was fully seated in the first pass, and whether the bite will be raised by \
                  it.",
};

pub(super) fn judge(subject: &Subject<'_>, wash: &Wash) -> Vec<Finding> {
    THICK.findings(subject, wash.p95_mm, Some(wash.uncertainty_mm))
}
