//! Dips of the border: notches that frena left, and stretches that are short.

use super::stations::{step_mm, was_not_seen};
use crate::decision::{Bound, Conformity, decide};
use crate::protocol::LimitKey;
use crate::severity::{Level, Severity};
use crate::stretch::within;
use crate::subject::Subject;
use measure::{Border, Dip, DipKind};

/// Whether a station lies in a notch that a frenum left.
pub(crate) fn in_notch(border: &Border, number: usize) -> bool {
    in_dip(border, number, |dip| dip.kind != DipKind::Short)
}

/// Whether a station lies in a dip that `under-extension` speaks of.
pub(crate) fn in_short_stretch(subject: &Subject<'_>, border: &Border, number: usize) -> bool {
    in_dip(border, number, |dip| {
        severity_of(subject, border, dip).is_some()
    })
}

fn in_dip(border: &Border, number: usize, kind: impl Fn(&Dip) -> bool) -> bool {
    border
        .dips
        .iter()
        .any(|dip| within(dip.from, dip.to, number) && kind(dip))
}

/// How a dip comes out as a short stretch; `None` where it is no fault.
pub(crate) fn severity_of(subject: &Subject<'_>, border: &Border, dip: &Dip) -> Option<Severity> {
    let limit = subject.limit(LimitKey::UnderExtension);
    let least_mm = subject.limit(LimitKey::LeastStretch).value;
    if dip.kind == DipKind::Notch || dip.width_mm < least_mm {
        return None;
    }
    let bottom = &border.stations[dip.bottom];
    let unseen = (0..border.stations.len())
        .filter(|&number| within(dip.from, dip.to, number))
        .filter(|&number| was_not_seen(&border.stations[number]))
        .count();
    if was_not_seen(bottom) || unseen as f64 * step_mm(border) >= least_mm {
        // `scan-ends` speaks: a border that was not scanned is not a short one.
        return None;
    }
    let most = Bound::AtMost(limit.in_zone(bottom.zone));
    let conformity = decide(dip.depth.mm, dip.depth.uncertainty_mm, most);
    let conformity = match (dip.kind, conformity) {
        // It may be a frenum's.
        (DipKind::BroadNotch, Conformity::NotConforming) => Conformity::Borderline,
        (_, conformity) => conformity,
    };
    let unsure_note = limit.level == Level::Note && conformity == Conformity::Borderline;
    Severity::of(conformity, limit.level).filter(|_| !unsure_note)
}
