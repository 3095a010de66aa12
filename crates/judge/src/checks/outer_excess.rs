//! `outer-excess`: material lies on the outer faces of the tray.

use super::shared::tray::surely_exceeds;
use crate::check::Check;
use crate::finding::{Finding, Place};
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::{OuterExcess, TrayRegistration};

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
    let instruction = format!(
        "Material up to {:.1} ± {:.1} mm thick lies on the outer faces of the tray. Trim it off with a sharp \
         blade, cutting away from the border and without lifting material off the tray, so that the \
         jaw-relation material bonds to the tray and the parts separate cleanly.",
        excess.thickest_mm.value,
        (excess.thickest_mm.uncertainty).max(0.1),
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
