//! `tray-at-border`: tray shows at the border itself.

use super::shared::overlap::overlap;
use super::shared::stations::{StationCheck, StretchWords};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words::SAFETY;
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
    let StretchWords { range, mould, then } = words;
    let mend = format!(
        "shorten the tray there to 2 to 3 mm short of the vestibule, clean and dry it, put adhesive \
         on the bared tray and let it dry; add border material and {mould}, {then}. {SAFETY}"
    );
    match severity {
        Severity::Fail => format!("Tray shows at the border {range}: {mend}"),
        Severity::Borderline | Severity::Note => format!(
            "Too close to tell from the scan: look at the border {range}. If no tray shows, scan this \
             stretch again at higher resolution. If tray shows, {mend}"
        ),
    }
}
