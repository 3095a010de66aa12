//! `scan-resolution`: the triangles of the scan are too coarse.

use super::Check;
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let edge = subject.measurement().integrity.median_edge;
    let limit = subject.limit(LimitKey::MedianEdge);
    Severity::of(decide(edge, 0.0, Bound::AtMost(limit.value)), limit.level)
        .map(|severity| Finding {
            figure: Some(figure(edge, None, limit)),
            ..subject.finding(
                Check::ScanResolution,
                severity,
                "The scan is too coarse. Export it at full resolution and check again.",
            )
        })
        .into_iter()
        .collect()
}
