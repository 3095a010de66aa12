//! `outer-excess`: material lies on the outer faces of the tray.

use super::shared::tray::surely_exceeds;
use crate::check::Check;
use crate::finding::{Finding, Place};
use crate::protocol::LimitKey;
use crate::subject::Subject;
use crate::words::tenths_mm;
use measure::{OuterExcess, TrayRegistration};
use messages::message;

pub(super) fn judge(subject: &Subject<'_>, _placed: &TrayRegistration) -> Vec<Finding> {
    let excess = subject.measurement().outer_excess.as_ref();
    excess
        .and_then(|excess| of_excess(subject, excess))
        .into_iter()
        .collect()
}

fn of_excess(subject: &Subject<'_>, excess: &OuterExcess) -> Option<Finding> {
    let limit = subject.limit(LimitKey::OuterExcess);
    let (severity, figure) = surely_exceeds(limit, excess.area_mm2)?;
    let thickest = excess.thickest_mm;
    let instruction = message!(
        "outer-excess",
        thickness = tenths_mm(thickest.value, thickest.uncertainty.max(0.1))
    );
    let finding = subject.finding(Check::OuterExcess, severity, instruction);
    Some(Finding {
        place: Some(Place {
            at: excess.at,
            zone: excess.zone,
            side: excess.side,
        }),
        ..finding.with(figure)
    })
}
