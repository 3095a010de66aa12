//! `scan-resolution`: the triangles of the scan are too coarse.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use messages::message;

const COARSE: FigureCheck = FigureCheck {
    check: Check::ScanResolution,
    key: LimitKey::MedianEdge,
    bound: Bound::AtMost,
    instruction: || message!("scan-coarse"),
};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let edge_mm = subject.measurement().scan.integrity.median_edge;
    COARSE.findings(subject, edge_mm, None)
}
