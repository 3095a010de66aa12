//! `ridge-angle`: the ridges are far from parallel.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::CaseSubject;
use measure::jaw_relation::JawRelation;

const TILTED: FigureCheck = FigureCheck {
    check: Check::RidgeAngle,
    key: LimitKey::RidgeAngle,
    bound: Bound::AtMost,
    instruction: "The ridges are far from parallel: dentures will tend to slide on them. Check that \
                  the record was taken without tilting a tray, and tell the laboratory.",
};

pub(super) fn judge(subject: &CaseSubject<'_>, relation: &JawRelation) -> Vec<Finding> {
    TILTED.findings_on_case(
        subject,
        relation.ridge_angle_deg,
        Some(relation.ridge_angle_uncertainty_deg),
    )
}
