//! `tray-at-border`: tray shows at the border itself.

use super::shared::overlap::overlap;
use super::shared::relief::SAFELY;
use super::shared::stations::{StationCheck, StretchWords};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::Border;

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

fn instruction(severity: Severity, words: &StretchWords) -> String {
    let StretchWords {
        range,
        movement,
        then,
    } = words;
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
