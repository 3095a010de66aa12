//! `ridge-angle`: the ridges are far from parallel.

use super::Check;
use super::on_case::CaseSubject;
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::figure;
use crate::protocol::LimitKey;

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let Some(Ok(relation)) = subject.relation else {
        return Vec::new();
    };
    let limit = subject.protocol.limit(LimitKey::RidgeAngle);
    let (angle, doubt) = (
        relation.ridge_angle_deg,
        relation.ridge_angle_uncertainty_deg,
    );
    let conformity = decide(angle, doubt, Bound::AtMost(limit.value));
    Severity::of(conformity, limit.level)
        .map(|severity| Finding {
            figure: Some(figure(angle, Some(doubt), limit)),
            ..subject.finding(
                Check::RidgeAngle,
                severity,
                "The ridges are far from parallel: dentures will tend to slide on them. Check that \
                 the record was taken without tilting a tray, and tell the laboratory.",
            )
        })
        .into_iter()
        .collect()
}
