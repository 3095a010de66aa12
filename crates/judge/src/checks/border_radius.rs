//! `border-radius`: the border is sharp instead of rounded.

use super::shared::dips::in_notch;
use super::shared::stations::{StationCheck, StretchWords, on_flange, runs_out};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Border, Measured};

const SHARP: StationCheck = StationCheck {
    check: Check::BorderRadius,
    key: LimitKey::BorderRadius,
    bound: Bound::AtLeast,
    figure: radius,
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
    SHARP.findings(subject, border)
}

fn radius(_: &Subject<'_>, border: &Border, number: usize) -> Option<Measured> {
    let station = &border.stations[number];
    let radius = station.border_radius.ok()?;
    // In a frenum's notch the border is thin by nature.
    let judged = on_flange(station)
        && !station.scan_ends
        && !in_notch(border, number)
        && !runs_out(border, number);
    judged.then_some(radius)
}

fn instruction(severity: Severity, words: &StretchWords) -> String {
    let StretchWords { range, mould, then } = words;
    match severity {
        Severity::Fail => format!(
            "Knife edge: the border is sharp {range}. Add border material there and {mould} so \
             that it rolls over, {then}."
        ),
        Severity::Borderline | Severity::Note => format!(
            "The border may be sharp {range}: feel it. If it is a knife edge, add border material \
             there and {mould}, {then}."
        ),
    }
}
