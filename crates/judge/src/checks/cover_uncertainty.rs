//! `cover-uncertainty`: cover was measured with too large an uncertainty.

use super::Check;
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(cover) = &subject.measurement().cover else {
        return Vec::new();
    };
    let limit = subject.limit(LimitKey::CoverUncertainty);
    let conformity = decide(cover.uncertainty_mm, 0.0, Bound::AtMost(limit.value));
    Severity::of(conformity, limit.level)
        .map(|severity| Finding {
            figure: Some(figure(cover.uncertainty_mm, None, limit)),
            ..subject.finding(
                Check::CoverUncertainty,
                severity,
                "Cover is too uncertain to judge by. Scan more of the back of the tray, with less \
                 noise, and check again.",
            )
        })
        .into_iter()
        .collect()
}
