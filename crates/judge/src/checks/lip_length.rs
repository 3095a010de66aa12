//! `lip-length`: an upper lip length that hardly anyone has.

use crate::check::Check;
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::subject::CaseSubject;

const INSTRUCTION: &str = "Hardly anyone has such an upper lip: measure it again, from the \
                           incisive papilla to the lip line at rest.";

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let record = subject.case.jaw_relation.as_ref();
    let Some(mm) = record.and_then(|record| record.upper_lip_length_mm) else {
        return Vec::new();
    };
    let [least, most] =
        [LimitKey::LipLeast, LimitKey::LipMost].map(|key| subject.protocol.limit(key));
    let missed = if mm < least.value {
        Some(least)
    } else if mm > most.value {
        Some(most)
    } else {
        None
    };
    missed
        .map(|limit| {
            Finding::on_case(Check::LipLength, limit.level.severity(), INSTRUCTION)
                .with(Figure::beside(limit, mm, None))
        })
        .into_iter()
        .collect()
}
