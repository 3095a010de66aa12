//! `border-asymmetry`: a flange is much lower than the other side's.

use super::shared::dips::{in_notch, in_short_stretch};
use super::shared::stations::{StationCheck, StretchWords, on_flange};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Border, Measured};
use messages::{Message, message};

const LOWER: StationCheck = StationCheck {
    check: Check::BorderAsymmetry,
    key: LimitKey::Asymmetry,
    bound: Bound::AtMost,
    figure: lower_by,
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
    LOWER.findings(subject, border)
}

/// By how much the flange at a station is lower than that opposite; frena need
/// not lie opposite each other, and a short stretch is one finding already.
fn lower_by(subject: &Subject<'_>, border: &Border, number: usize) -> Option<Measured> {
    let here = &border.stations[number];
    let opposite = here.opposite?;
    let there = border.stations.get(opposite)?;
    let judged_elsewhere = here.scan_ends
        || there.scan_ends
        || in_notch(border, number)
        || in_notch(border, opposite)
        || in_short_stretch(subject, border, number);
    let compared = on_flange(here) && on_flange(there) && !judged_elsewhere;
    let (low, high) = (here.flange_height.ok()?, there.flange_height.ok()?);
    compared.then_some(Measured {
        mm: high.mm - low.mm,
        uncertainty_mm: low.uncertainty_mm.hypot(high.uncertainty_mm),
    })
}

fn instruction(_: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, then } = words;
    message!(
        "border-asymmetry",
        range = range,
        mould = mould,
        then = then
    )
}
