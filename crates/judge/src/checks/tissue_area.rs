//! `tissue-area`: too little tissue surface was scanned.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::Arch;
use messages::message;

const MAXILLARY: FigureCheck = FigureCheck {
    check: Check::TissueArea,
    key: LimitKey::MaxillaryTissueArea,
    bound: Bound::AtLeast,
    instruction: || message!("tissue-area"),
};

const MANDIBULAR: FigureCheck = FigureCheck {
    key: LimitKey::MandibularTissueArea,
    ..MAXILLARY
};

pub(super) fn judge(subject: &Subject<'_>, scanned_mm2: f64) -> Vec<Finding> {
    let of_jaw = match subject.arch() {
        Arch::Maxillary => MAXILLARY,
        Arch::Mandibular => MANDIBULAR,
    };
    of_jaw.findings(subject, scanned_mm2, None)
}
