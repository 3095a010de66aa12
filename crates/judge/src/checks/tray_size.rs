//! `tray-size`: the tray is too small or too large for the mouth.

use super::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let fit = subject.measurement().tray_fit.as_ref();
    let Some(seating) = fit.and_then(|fit| fit.seating.as_ref()) else {
        return Vec::new();
    };
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
            figure: Some(figure(wider.value.abs(), Some(wider.uncertainty), limit)),
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
