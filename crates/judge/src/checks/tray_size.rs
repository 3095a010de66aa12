//! `tray-size`: the tray is too small or too large for the mouth.

use super::shared::tray::surely_exceeds;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::tray_fit::Seating;
use messages::message;

pub(super) fn judge(subject: &Subject<'_>, seating: &Seating) -> Vec<Finding> {
    let wider = seating.wider_mm;
    let instruction = if wider.value > 0.0 {
        message!("tray-wide")
    } else {
        message!("tray-narrow")
    };
    surely_exceeds(subject.limit(LimitKey::TrayWidth), wider)
        .map(|(severity, figure)| {
            subject
                .finding(Check::TraySize, severity, instruction)
                .with(figure)
        })
        .into_iter()
        .collect()
}
