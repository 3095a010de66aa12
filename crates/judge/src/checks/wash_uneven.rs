//! `wash-uneven`: the wash is much thicker in some places than in others.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::pair::Wash;
use messages::message;

const UNEVEN: FigureCheck = FigureCheck {
    check: Check::WashUneven,
    key: LimitKey::WashSpread,
    bound: Bound::AtMost,
    instruction: || message!("wash-uneven"),
};

pub(super) fn judge(subject: &Subject<'_>, wash: &Wash) -> Vec<Finding> {
    let spread_mm = wash.p95_mm - wash.p05_mm;
    // A tilt of one pass against the other errs both ways at once.
    let uncertainty_mm = 2.0 * wash.uncertainty_mm;
    UNEVEN.findings(subject, spread_mm, Some(uncertainty_mm))
}
