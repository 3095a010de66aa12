//! `border-overlap`: the tray ends too near to the border or too far from it.

use super::shared::overlap::{is_clear, overlap};
use super::shared::stations::{StationCheck, StretchWords};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words::safety;
use measure::Border;
use messages::{Message, message};

const NEAR: StationCheck = StationCheck {
    check: Check::BorderOverlap,
    key: LimitKey::OverlapLeast,
    bound: Bound::AtLeast,
    // Where tray may show at the border itself, `tray-at-border` speaks.
    figure: |subject, border, number| overlap(border, number).filter(|&o| is_clear(subject, o)),
    instruction: when_near,
};

const FAR: StationCheck = StationCheck {
    check: Check::BorderOverlap,
    key: LimitKey::OverlapMost,
    bound: Bound::AtMost,
    figure: |_, border, number| overlap(border, number),
    instruction: when_far,
};

pub(super) fn judge(subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
    [NEAR, FAR]
        .iter()
        .flat_map(|check| check.findings(subject, border))
        .collect()
}

fn when_near(_: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, .. } = words;
    message!("border-near-tray", range = range, mould = mould).then(safety())
}

fn when_far(_: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, then } = words;
    message!(
        "border-far-from-tray",
        range = range,
        mould = mould,
        then = then
    )
}
