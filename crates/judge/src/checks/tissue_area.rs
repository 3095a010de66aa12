//! `tissue-area`: too little tissue surface was scanned.

use super::Check;
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;
use measure::{Arch, CoverMethod};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let measurement = subject.measurement();
    let scanned_mm2 = match (&measurement.cover, &measurement.colour) {
        // By a stated thickness cover is known over a part of what was scanned.
        (Ok(cover), _) if cover.method == CoverMethod::TrayScan => Some(cover.area_judged_mm2),
        (_, Some(Ok(colour))) => Some(colour.area_judged_mm2),
        _ => None,
    };
    let (Some(scanned_mm2), Some(arch)) = (scanned_mm2, subject.arch()) else {
        return Vec::new();
    };
    let limit = subject.limit(match arch {
        Arch::Maxillary => LimitKey::MaxillaryTissueArea,
        Arch::Mandibular => LimitKey::MandibularTissueArea,
    });
    let conformity = decide(scanned_mm2, 0.0, Bound::AtLeast(limit.value));
    Severity::of(conformity, limit.level)
        .map(|severity| Finding {
            figure: Some(figure(scanned_mm2, None, limit)),
            ..subject.finding(
                Check::TissueArea,
                severity,
                "Less tissue surface was scanned than an impression of this jaw has (scanned \
                 area, flange slopes included). If the impression is whole, scan all of it.",
            )
        })
        .into_iter()
        .collect()
}
