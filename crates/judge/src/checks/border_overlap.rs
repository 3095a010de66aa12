//! `border-overlap`: the tray ends too near to the border or too far from it.

use super::shared::overlap::{is_clear, overlap};
use super::shared::stations::{StationCheck, StretchWords};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words::SAFETY;
use measure::Border;

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

fn when_near(_: Severity, words: &StretchWords) -> String {
    let StretchWords { range, mould, .. } = words;
    format!(
        "The tray ends close to the border {range}. If the border is to be moulded again, first \
         shorten the tray there to 2 to 3 mm short of the vestibule; then add border material and \
         {mould}. {SAFETY}"
    )
}

fn when_far(_: Severity, words: &StretchWords) -> String {
    let StretchWords { range, mould, then } = words;
    format!(
        "Material extends far past the tray {range}. If it bends under a finger, it needs support: \
         lengthen the tray there (clean and dry it, put adhesive on it and let it dry), add border \
         material and {mould}, {then}; or take the impression in a larger tray."
    )
}
