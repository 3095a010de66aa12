//! `tray-at-border`: tray shows at the border itself.

use super::shared::overlap::overlap;
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

const BARE: StationCheck = StationCheck {
    check: Check::TrayAtBorder,
    key: LimitKey::ShowThrough,
    bound: Bound::AtLeast,
    figure: |_, border, number| overlap(border, number),
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
    BARE.findings(subject, border)
}

fn instruction(severity: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, then } = words;
    let order = match severity {
        Severity::Fail => message!("tray-at-border", range = range, mould = mould, then = then),
        Severity::Borderline | Severity::Note => {
            message!(
                "tray-may-be-at-border",
                range = range,
                mould = mould,
                then = then
            )
        }
    };
    order.then(safety())
}
