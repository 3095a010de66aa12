//! `lip-length`: a length at the upper lip that is outside the plausible range. Two
//! lengths are taken there, from different points; each has its own limits.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::subject::CaseSubject;
use messages::{Message, message};

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let Some(record) = subject.case.jaw_relation.as_ref() else {
        return Vec::new();
    };
    let of_lip = record.upper_lip_length_mm.and_then(|mm| {
        let least = outside(subject, mm, LimitKey::LipLeast, Bound::AtLeast, || {
            message!("lip-too-short")
        });
        least.or_else(|| {
            outside(subject, mm, LimitKey::LipMost, Bound::AtMost, || {
                message!("lip-implausible")
            })
        })
    });
    let from_papilla = record.papilla_to_lip_mm.and_then(|mm| {
        let least = outside(subject, mm, LimitKey::PapillaLeast, Bound::AtLeast, || {
            message!("papilla-implausible")
        });
        least.or_else(|| {
            outside(subject, mm, LimitKey::PapillaMost, Bound::AtMost, || {
                message!("papilla-too-long")
            })
        })
    });
    of_lip.into_iter().chain(from_papilla).collect()
}

/// A finding where a length is surely outside a limit.
fn outside(
    subject: &CaseSubject<'_>,
    mm: f64,
    key: LimitKey,
    bound: fn(f64) -> Bound,
    instruction: fn() -> Message,
) -> Option<Finding> {
    let limit = subject.protocol.limit(key);
    let uncertainty_mm = subject.protocol.value(LimitKey::ReadingUncertainty);
    let is_sure = decide(mm, uncertainty_mm, bound(limit.value)) == Conformity::NotConforming;
    is_sure.then(|| {
        Finding::on_case(Check::LipLength, limit.level.severity(), instruction())
            .with(Figure::beside(limit, bound, mm, Some(uncertainty_mm)))
    })
}
