//! `tray-size`: the tray is too small or too large for the mouth.

use super::shared::tray::surely_exceeds;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::tray_fit::Seating;

pub(super) fn judge(subject: &Subject<'_>, seating: &Seating) -> Vec<Finding> {
    let wider = seating.wider_mm;
    let size = if wider.value > 0.0 {
        "wider than suits this arch: its outer walls stand off and its inner parts come near"
    } else {
        "narrower than suits this arch: its outer walls come near to the flanges"
    };
    let instruction = format!(
        "The tray is {size}. If the impression is taken again, choose the next size or adapt the \
         tray."
    );
    surely_exceeds(subject.limit(LimitKey::TrayWidth), wider)
        .map(|(severity, figure)| {
            subject
                .finding(Check::TraySize, severity, instruction)
                .with(figure)
        })
        .into_iter()
        .collect()
}
