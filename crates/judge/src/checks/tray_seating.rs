//! `tray-seating`: the tray was not seated where its cover would be even.

use super::shared::tray::surely_exceeds;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use crate::words;
use measure::tray_fit::{Amount, Seating};
use messages::{Message, Value, message};

/// One way in which a tray can be out of place.
struct Way {
    amount: fn(&Seating) -> Amount,
    key: LimitKey,
    /// What an amount above 0 means, and what one below 0 means: names of the kind `seating`.
    names: [&'static str; 2],
}

const WAYS: [Way; 5] = [
    Way {
        amount: |seating| seating.right_mm,
        key: LimitKey::TrayShift,
        names: ["right", "left"],
    },
    Way {
        amount: |seating| seating.anterior_mm,
        key: LimitKey::TrayShift,
        names: ["front", "back"],
    },
    Way {
        amount: |seating| seating.front_up_deg,
        key: LimitKey::TrayTilt,
        names: ["tilted-front", "tilted-back"],
    },
    Way {
        amount: |seating| seating.right_up_deg,
        key: LimitKey::TrayTilt,
        names: ["tilted-right", "tilted-left"],
    },
    Way {
        amount: |seating| seating.turned_right_deg,
        key: LimitKey::TrayTilt,
        names: ["turned-right", "turned-left"],
    },
];

pub(super) fn judge(subject: &Subject<'_>, seating: &Seating) -> Vec<Finding> {
    [LimitKey::TrayShift, LimitKey::TrayTilt]
        .into_iter()
        .filter_map(|key| finding(subject, seating, key))
        .collect()
}

/// One finding of the largest of the amounts under one limit, where it clearly
/// exceeds it.
fn finding(subject: &Subject<'_>, seating: &Seating, key: LimitKey) -> Option<Finding> {
    let amounts = WAYS.iter().filter(|way| way.key == key);
    let largest = amounts
        .map(|way| (way.amount)(seating))
        .max_by(|a, b| a.value.abs().total_cmp(&b.value.abs()))?;
    let (severity, figure) = surely_exceeds(subject.limit(key), largest)?;
    let how = displacement_in_words(subject, seating);
    let instruction = message!("tray-seating", how = how);
    Some(
        subject
            .finding(Check::TraySeating, severity, instruction)
            .with(figure),
    )
}

/// Every way in which the tray was clearly too far out of place.
fn displacement_in_words(subject: &Subject<'_>, seating: &Seating) -> Value {
    let parts = WAYS.iter().filter_map(|way| {
        let amount = (way.amount)(seating);
        let [more, less] = way.names;
        surely_exceeds(subject.limit(way.key), amount)
            .map(|_| if amount.value > 0.0 { more } else { less })
    });
    words::both(parts.map(|name| Message::name("seating", name)))
}
