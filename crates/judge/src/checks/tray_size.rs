//! `tray-size`: the tray is too small or too large for the mouth.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::tray_fit::Seating;

pub(super) fn judge(subject: &Subject<'_>, seating: &Seating) -> Vec<Finding> {
    let limit = subject.limit(LimitKey::TrayWidth);
    let wider = seating.wider_mm;
    let conformity = decide(
        wider.value.abs(),
        wider.uncertainty,
        Bound::AtMost(limit.value),
    );
    let size = if wider.value > 0.0 {
        "wider than suits this arch: its outer walls stand off and its inner parts come near"
    } else {
        "narrower than suits this arch: its outer walls come near to the flanges"
    };
    Severity::of(conformity, limit.level)
        .filter(|_| conformity == Conformity::NotConforming)
        .map(|severity| Finding {
            figure: Some(Figure::beside(
                limit,
                wider.value.abs(),
                Some(wider.uncertainty),
            )),
            ..subject.finding(
                Check::TraySize,
                severity,
                format!(
                    "The tray is {size}. If the impression is taken again, choose the next size or \
                     adapt the tray."
                ),
            )
        })
        .into_iter()
        .collect()
}
