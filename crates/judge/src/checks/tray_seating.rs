//! `tray-seating`: the tray did not stand where its cover would have been even.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::tray_fit::{Amount, Seating};

pub(super) fn judge(subject: &Subject<'_>, seating: &Seating) -> Vec<Finding> {
    let shifts = [
        (seating.right_mm, LimitKey::TrayShift),
        (seating.anterior_mm, LimitKey::TrayShift),
    ];
    let tilts = [
        (seating.front_up_deg, LimitKey::TrayTilt),
        (seating.right_up_deg, LimitKey::TrayTilt),
        (seating.turned_right_deg, LimitKey::TrayTilt),
    ];
    [&shifts[..], &tilts[..]]
        .into_iter()
        .filter_map(|amounts| finding(subject, seating, amounts))
        .collect()
}

/// One finding of the largest of several amounts, where it is surely too much.
fn finding(
    subject: &Subject<'_>,
    seating: &Seating,
    amounts: &[(Amount, LimitKey)],
) -> Option<Finding> {
    let size = |amount: &Amount| amount.value.abs();
    let (most, key) = amounts
        .iter()
        .max_by(|a, b| size(&a.0).total_cmp(&size(&b.0)))?;
    let limit = subject.limit(*key);
    let conformity = decide(size(most), most.uncertainty, Bound::AtMost(limit.value));
    let severity = Severity::of(conformity, limit.level)
        .filter(|_| conformity == Conformity::NotConforming)?;
    let how = askew_in_words(subject, seating);
    Some(Finding {
        figure: Some(Figure::beside(limit, size(most), Some(most.uncertainty))),
        ..subject.finding(
            Check::TraySeating,
            severity,
            format!(
                "Compared with the place where its cover would be even, the tray stood {how}. If the \
                 impression is taken again, set the tray over the ridge by trying it in dry first, and \
                 seat it evenly with tissue stops."
            ),
        )
    })
}

/// Everything that surely is too much, in words.
fn askew_in_words(subject: &Subject<'_>, seating: &Seating) -> String {
    let words = [
        (
            seating.right_mm,
            LimitKey::TrayShift,
            [
                "too far to the patient's right",
                "too far to the patient's left",
            ],
        ),
        (
            seating.anterior_mm,
            LimitKey::TrayShift,
            ["too far to the front", "too far to the back"],
        ),
        (
            seating.front_up_deg,
            LimitKey::TrayTilt,
            [
                "tilted, nearer to the tissue in front",
                "tilted, nearer to the tissue at the back",
            ],
        ),
        (
            seating.right_up_deg,
            LimitKey::TrayTilt,
            [
                "tilted, nearer to the tissue on the patient's right",
                "tilted, nearer to the tissue on the patient's left",
            ],
        ),
        (
            seating.turned_right_deg,
            LimitKey::TrayTilt,
            [
                "turned, with its front toward the patient's right",
                "turned, with its front toward the patient's left",
            ],
        ),
    ];
    let parts: Vec<&str> = words
        .iter()
        .filter(|(amount, key, _)| {
            let most = Bound::AtMost(subject.limit(*key).value);
            decide(amount.value.abs(), amount.uncertainty, most) == Conformity::NotConforming
        })
        .map(|(amount, _, [more, less])| if amount.value > 0.0 { *more } else { *less })
        .collect();
    parts.join(" and ")
}
