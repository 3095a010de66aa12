//! `wash-thickness`: the wash is thick.

use super::Check;
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;

const INSTRUCTION: &str = "The wash is thick: over a twentieth of the surface more than this. Look whether the tray was \
     fully seated in the first pass, and whether the bite will be raised by it.";

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(Ok(wash)) = &subject.measurement().wash else {
        return Vec::new();
    };
    let limit = subject.limit(LimitKey::WashMost);
    let (mm, uncertainty) = (wash.p95_mm, wash.uncertainty_mm);
    let conformity = decide(mm, uncertainty, Bound::AtMost(limit.value));
    let severity = Severity::of(conformity, limit.level);
    severity
        .map(|severity| Finding {
            figure: Some(figure(mm, Some(uncertainty), limit)),
            ..subject.finding(Check::WashThickness, severity, INSTRUCTION)
        })
        .into_iter()
        .collect()
}
