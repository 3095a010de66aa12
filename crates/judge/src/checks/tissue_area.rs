//! `tissue-area`: too little tissue surface was scanned.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::Arch;

const MAXILLARY: FigureCheck = FigureCheck {
    check: Check::TissueArea,
    key: LimitKey::MaxillaryTissueArea,
    bound: Bound::AtLeast,
    instruction: "Less tissue surface was scanned than an impression of this jaw has (scanned \
                  area, flange slopes included). If the impression is whole, scan all of it.",
};

const MANDIBULAR: FigureCheck = FigureCheck {
    key: LimitKey::MandibularTissueArea,
    ..MAXILLARY
};

pub(super) fn judge(subject: &Subject<'_>, scanned_mm2: &f64) -> Vec<Finding> {
    let of_jaw = match subject.arch() {
        Some(Arch::Maxillary) => MAXILLARY,
        Some(Arch::Mandibular) => MANDIBULAR,
        None => return Vec::new(),
    };
    of_jaw.findings(subject, *scanned_mm2, None)
}
