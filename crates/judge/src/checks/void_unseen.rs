//! `void-unseen`: the scan is too coarse to show a void that would fail.

use super::shared::defects::is_critical_zone;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{NoTissue, ZoneScan};
use messages::message;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let limit = subject.limit(LimitKey::CriticalVoidRedo);
    let finding = subject.finding(
        Check::VoidUnseen,
        Severity::Borderline,
        message!("void-unseen"),
    );
    match &subject.measurement().tissue {
        Err(NoTissue::TooCoarse { .. }) => vec![finding],
        Ok(tissue) => {
            let critical = |zone: &&ZoneScan| is_critical_zone(zone.zone);
            let least_mm = tissue
                .zones
                .iter()
                .filter(critical)
                .map(|zone| zone.least_across_mm);
            least_mm
                .max_by(f64::total_cmp)
                .and_then(|least_mm| Figure::against(limit, Bound::AtMost, least_mm, None))
                .map(|(_, figure)| finding.with(figure))
                .into_iter()
                .collect()
        }
    }
}
