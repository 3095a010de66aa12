//! `cover-uncertainty`: cover was measured with too large an uncertainty.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::Cover;

const UNCERTAIN: FigureCheck = FigureCheck {
    check: Check::CoverUncertainty,
    key: LimitKey::CoverUncertainty,
    bound: Bound::AtMost,
    instruction: "Cover is too uncertain to judge by. Scan more of the back of the tray, with less \
                  noise, and check again.",
};

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover) -> Vec<Finding> {
    UNCERTAIN.findings(subject, cover.uncertainty_mm, None)
}
