//! `cover-uncertainty`: material thickness was measured with too large an uncertainty.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::{Cover, CoverMethod};
use messages::message;

const BY_SCAN: FigureCheck = FigureCheck {
    check: Check::CoverUncertainty,
    key: LimitKey::CoverUncertainty,
    bound: Bound::AtMost,
    instruction: || message!("cover-uncertain"),
};

/// A scan of more tray cannot make a stated thickness surer.
const BY_STATED_THICKNESS: FigureCheck = FigureCheck {
    instruction: || message!("cover-uncertain-by-thickness"),
    ..BY_SCAN
};

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover) -> Vec<Finding> {
    let check = match cover.method {
        CoverMethod::TwoSided { .. } => BY_STATED_THICKNESS,
        _ => BY_SCAN,
    };
    check.findings(subject, cover.uncertainty_mm, None)
}
