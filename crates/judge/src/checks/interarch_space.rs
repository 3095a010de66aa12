//! `interarch-space`: little room between the ridges.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::CaseSubject;
use measure::record::JawRelation;
use messages::message;

const NARROW: FigureCheck = FigureCheck {
    check: Check::InterarchSpace,
    key: LimitKey::InterarchLeast,
    bound: Bound::AtLeast,
    instruction: || message!("interarch-space"),
};

pub(super) fn judge(subject: &CaseSubject<'_>, relation: &JawRelation) -> Vec<Finding> {
    let spaces = relation
        .stations
        .iter()
        .filter_map(|station| station.mm.ok());
    spaces.reduce(f64::min).map_or(Vec::new(), |least_mm| {
        NARROW.findings_on_case(subject, least_mm, Some(relation.uncertainty_mm))
    })
}
