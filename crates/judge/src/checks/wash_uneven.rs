//! `wash-uneven`: the wash is much thicker in some places than in others.

use super::Check;
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;

const INSTRUCTION: &str = "The wash is much thicker in some places than in others: the tray was tilted or shifted when it \
     was seated. Look at the wash map and see whether the border still fits.";

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(Ok(wash)) = &subject.measurement().wash else {
        return Vec::new();
    };
    let limit = subject.limit(LimitKey::WashSpread);
    let (mm, uncertainty) = (wash.p95_mm - wash.p05_mm, 2f64.sqrt() * wash.uncertainty_mm);
    let conformity = decide(mm, uncertainty, Bound::AtMost(limit.value));
    let severity = Severity::of(conformity, limit.level);
    severity
        .map(|severity| Finding {
            figure: Some(figure(mm, Some(uncertainty), limit)),
            ..subject.finding(Check::WashUneven, severity, INSTRUCTION)
        })
        .into_iter()
        .collect()
}
