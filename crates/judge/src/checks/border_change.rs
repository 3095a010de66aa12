//! `border-change`: the border is lower than on the first pass.

use super::shared::stations::{StationCheck, StretchWords};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Border, Measured};
use messages::{Message, message};

const DROPPED: StationCheck = StationCheck {
    check: Check::BorderChange,
    key: LimitKey::BorderDrop,
    bound: Bound::AtMost,
    figure: lower_by,
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
    DROPPED.findings(subject, border)
}

fn lower_by(subject: &Subject<'_>, _: &Border, number: usize) -> Option<Measured> {
    subject.border_change(number).map(|change| Measured {
        mm: -change.mm,
        ..change
    })
}

fn instruction(_: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, then } = words;
    message!("border-change", range = range, mould = mould, then = then)
}
