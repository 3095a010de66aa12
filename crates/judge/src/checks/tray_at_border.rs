//! `tray-at-border`: tray shows at the border itself.

use super::Check;
use super::along_border::{StationCheck, Told};
use super::border_overlap::overlap;
use super::show_through::SAFELY;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::Measured;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(border) = &subject.measurement().border else {
        return Vec::new();
    };
    let check = StationCheck {
        check: Check::TrayAtBorder,
        key: LimitKey::ShowThrough,
        bound: Bound::AtLeast,
        reading: &|number| overlap(border, number),
        instruction: &instruction,
    };
    check.findings(subject, border)
}

/// Whether tray surely does not show at a border point.
pub(super) fn is_clear(subject: &Subject<'_>, overlap: Measured) -> bool {
    let least = Bound::AtLeast(subject.limit(LimitKey::ShowThrough).value);
    decide(overlap.mm, overlap.uncertainty_mm, least) == Conformity::Conforming
}

fn instruction(severity: Severity, told: &Told) -> String {
    let Told {
        range,
        movement,
        then,
        ..
    } = told;
    let mend = format!(
        "shorten the tray there to 2 to 3 mm short of the vestibule ({SAFELY}), add border \
         material and repeat the {movement}, {then}"
    );
    match severity {
        Severity::Fail => format!("Tray shows at the border {range}: {mend}."),
        Severity::Borderline | Severity::Note => format!(
            "Too close to tell from the scan: look at the border {range}. If tray shows, {mend}; \
             if not, scan this stretch again, finer."
        ),
    }
}
