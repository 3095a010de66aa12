//! `ridge-angle`: the ridges are far from parallel.

use super::shared::figures::FigureCheck;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::CaseSubject;
use measure::record::JawRelation;
use messages::message;

const TILTED: FigureCheck = FigureCheck {
    check: Check::RidgeAngle,
    key: LimitKey::RidgeAngle,
    bound: Bound::AtMost,
    instruction: || message!("ridge-angle"),
};

pub(super) fn judge(subject: &CaseSubject<'_>, relation: &JawRelation) -> Vec<Finding> {
    TILTED.findings_on_case(
        subject,
        relation.ridge_angle_deg,
        Some(relation.ridge_angle_uncertainty_deg),
    )
}
