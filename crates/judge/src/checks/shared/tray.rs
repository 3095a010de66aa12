//! What the checks on how a tray stood share.

use crate::decision::{Bound, Conformity, decide};
use crate::finding::Figure;
use crate::protocol::Limit;
use crate::severity::Severity;
use measure::tray_fit::Amount;

/// How severe it is that an amount, in either direction, clearly exceeds its
/// limit, with its size beside the limit; `None` where it does not.
pub(crate) fn surely_exceeds(limit: &Limit, amount: Amount) -> Option<(Severity, Figure)> {
    let size = amount.value.abs();
    let conformity = decide(size, amount.uncertainty, Bound::AtMost(limit.value));
    let severity = Severity::of(conformity, limit.level)?;
    (conformity == Conformity::NotConforming).then(|| {
        (
            severity,
            Figure::beside(limit, Bound::AtMost, size, Some(amount.uncertainty)),
        )
    })
}
