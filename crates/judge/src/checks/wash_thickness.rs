//! `wash-thickness`: the wash is thick.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::pair::Wash;
use messages::message;

const THICK: FigureCheck = FigureCheck {
    check: Check::WashThickness,
    key: LimitKey::WashMost,
    bound: Bound::AtMost,
    instruction: || message!("wash-thick"),
};

pub(super) fn judge(subject: &Subject<'_>, wash: &Wash) -> Vec<Finding> {
    THICK.findings(subject, wash.p95_mm, Some(wash.uncertainty_mm))
}
