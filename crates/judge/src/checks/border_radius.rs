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
use messages::{Message, message};

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

fn instruction(severity: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, then } = words;
    match severity {
        Severity::Fail => message!("border-sharp", range = range, mould = mould, then = then),
        Severity::Borderline | Severity::Note => {
            message!(
                "border-may-be-sharp",
                range = range,
                mould = mould,
                then = then
            )
        }
    }
}
