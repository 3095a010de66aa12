//! `tray-seating`: the tray was not seated where its cover would be even.

use super::shared::tray::surely_exceeds;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::tray_fit::{Amount, Seating};

/// One way in which a tray can be out of place.
struct Way {
    amount: fn(&Seating) -> Amount,
    key: LimitKey,
    /// What an amount above 0 means, and what one below 0 means.
    in_words: [&'static str; 2],
}

const WAYS: [Way; 5] = [
    Way {
        amount: |seating| seating.right_mm,
        key: LimitKey::TrayShift,
        in_words: [
            "too far to the patient's right",
            "too far to the patient's left",
        ],
    },
    Way {
        amount: |seating| seating.anterior_mm,
        key: LimitKey::TrayShift,
        in_words: ["too far to the front", "too far to the back"],
    },
    Way {
        amount: |seating| seating.front_up_deg,
        key: LimitKey::TrayTilt,
        in_words: [
            "tilted, nearer to the tissue in front",
            "tilted, nearer to the tissue at the back",
        ],
    },
    Way {
        amount: |seating| seating.right_up_deg,
        key: LimitKey::TrayTilt,
        in_words: [
            "tilted, nearer to the tissue on the patient's right",
            "tilted, nearer to the tissue on the patient's left",
        ],
    },
    Way {
        amount: |seating| seating.turned_right_deg,
        key: LimitKey::TrayTilt,
        in_words: [
            "turned, with its front toward the patient's right",
            "turned, with its front toward the patient's left",
        ],
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
    let instruction = format!(
        "Compared with the position of even material thickness, the tray lay {how}. If the \
         impression is taken again, try the tray in dry first so that it lies over the ridge, and \
         seat it evenly with tissue stops."
    );
    Some(
        subject
            .finding(Check::TraySeating, severity, instruction)
            .with(figure),
    )
}

/// Every way in which the tray was clearly too far out of place.
fn displacement_in_words(subject: &Subject<'_>, seating: &Seating) -> String {
    let parts: Vec<&str> = WAYS
        .iter()
        .filter_map(|way| {
            let amount = (way.amount)(seating);
            let [more, less] = way.in_words;
            surely_exceeds(subject.limit(way.key), amount)
                .map(|_| if amount.value > 0.0 { more } else { less })
        })
        .collect();
    parts.join(" and ")
}
