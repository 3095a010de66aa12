//! `wash-thickness`: the wash is thick.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::pair::Wash;

const THICK: FigureCheck = FigureCheck {
    check: Check::WashThickness,
    key: LimitKey::WashMost,
    bound: Bound::AtMost,
    instruction: "The wash is thicker than the limit over a twentieth of the surface. Check that the tray \
                  was fully seated when the wash was taken. If the jaw relation was recorded before \
                  the wash, record it again.",
};

pub(super) fn judge(subject: &Subject<'_>, wash: &Wash) -> Vec<Finding> {
    THICK.findings(subject, wash.p95_mm, Some(wash.uncertainty_mm))
}
