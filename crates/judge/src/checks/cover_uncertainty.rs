//! `cover-uncertainty`: material thickness was measured with too large an uncertainty.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::{Cover, CoverMethod};

const BY_SCAN: FigureCheck = FigureCheck {
    check: Check::CoverUncertainty,
    key: LimitKey::CoverUncertainty,
    bound: Bound::AtMost,
    instruction: "The material thickness is too uncertain to judge by. Scan more of the back of the \
                  tray, with less noise, and check again.",
};

/// A scan of more tray cannot make a stated thickness surer.
const BY_STATED_THICKNESS: FigureCheck = FigureCheck {
    instruction: "The material thickness is too uncertain to judge by. Measure the tray with a caliper \
                  at several places and give its thickness with that uncertainty \
                  (--tray-thickness-uncertainty), or scan the empty tray.",
    ..BY_SCAN
};

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover) -> Vec<Finding> {
    let check = match cover.method {
        CoverMethod::TwoSided { .. } => BY_STATED_THICKNESS,
        _ => BY_SCAN,
    };
    check.findings(subject, cover.uncertainty_mm, None)
}
