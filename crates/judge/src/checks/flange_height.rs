//! `flange-height`: a flange is lower than its zone's least height.

use super::shared::dips::{in_notch, in_short_stretch};
use super::shared::stations::{StationCheck, StretchWords, on_flange, runs_out, was_not_seen};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Border, Measured};
use messages::{Message, message};

const LOW: StationCheck = StationCheck {
    check: Check::FlangeHeight,
    key: LimitKey::FlangeHeight,
    bound: Bound::AtLeast,
    figure: height,
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
    LOW.findings(subject, border)
}

fn height(subject: &Subject<'_>, border: &Border, number: usize) -> Option<Measured> {
    let station = &border.stations[number];
    let height = station.flange_height.ok()?;
    // A frenum's notch is right, and a short stretch is one finding already.
    let judged = on_flange(station)
        && !was_not_seen(station)
        && !in_notch(border, number)
        && !in_short_stretch(subject, border, number)
        && !runs_out(border, number);
    judged.then_some(height)
}

fn instruction(severity: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, then } = words;
    match severity {
        Severity::Fail => message!("flange-low", range = range, mould = mould, then = then),
        Severity::Borderline | Severity::Note => {
            message!(
                "flange-low-or-ridge",
                range = range,
                mould = mould,
                then = then
            )
        }
    }
}
