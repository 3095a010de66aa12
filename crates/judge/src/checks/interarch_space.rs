//! `interarch-space`: little room between the ridges.

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
    let limit = subject.protocol.limit(LimitKey::InterarchLeast);
    let least = relation
        .stations
        .iter()
        .filter_map(|s| s.mm)
        .reduce(f64::min);
    let Some(mm) = least else {
        return Vec::new();
    };
    let conformity = decide(mm, relation.uncertainty_mm, Bound::AtLeast(limit.value));
    Severity::of(conformity, limit.level)
        .map(|severity| Finding {
            figure: Some(figure(mm, Some(relation.uncertainty_mm), limit)),
            ..subject.finding(
                Check::InterarchSpace,
                severity,
                "There is little room between the ridges for teeth and base: check the vertical \
                 dimension, and tell the laboratory if it is right.",
            )
        })
        .into_iter()
        .collect()
}
