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
    in_dip(border, number, |dip| dip.kind.may_be_frenum())
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

/// A vestibule's own waves are no deeper than the limit times this (common practice,
/// no source).
const WAVE_FACTOR: f64 = 2.0;

/// How a dip comes out as a short stretch; `None` where it is no fault. What its
/// shape alone does not tell is a note, or a question.
pub(crate) fn severity_of(subject: &Subject<'_>, border: &Border, dip: &Dip) -> Option<Severity> {
    let limit = subject.limit(LimitKey::UnderExtension);
    let least_mm = subject.limit(LimitKey::LeastStretch).value;
    if dip.width_mm < least_mm {
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
    let depth_against = |most| decide(dip.depth.mm, dip.depth.uncertainty_mm, Bound::AtMost(most));
    let most = limit.in_zone(bottom.zone);
    let is_deep = depth_against(most) == Conformity::NotConforming;
    match dip.kind {
        DipKind::Notch => None,
        DipKind::BroadNotch => is_deep.then_some(if dip.is_rather_short {
            Severity::Borderline
        } else {
            Severity::Note
        }),
        DipKind::Wave => {
            let is_very_deep = depth_against(most * WAVE_FACTOR) == Conformity::NotConforming;
            is_deep.then_some(if is_very_deep {
                Severity::Borderline
            } else {
                Severity::Note
            })
        }
        DipKind::Short => {
            let conformity = depth_against(most);
            let unsure_note = limit.level == Level::Note && conformity == Conformity::Borderline;
            Severity::of(conformity, limit.level).filter(|_| !unsure_note)
        }
    }
}
