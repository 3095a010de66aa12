//! `tray-joint`: the pieces of the tray were not fully joined.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::TrayJoint;
use messages::message;

pub(super) fn judge(subject: &Subject<'_>, joints: &[TrayJoint]) -> Vec<Finding> {
    let found = joints.iter().filter_map(|joint| of_joint(subject, joint));
    found.collect()
}

fn of_joint(subject: &Subject<'_>, joint: &TrayJoint) -> Option<Finding> {
    let limit = subject.limit(LimitKey::TrayJoint);
    let gap_mm = joint.gap_mm.abs();
    let (mm, what) = if gap_mm >= joint.step_mm {
        (gap_mm, "gap")
    } else {
        (joint.step_mm, "step")
    };
    let conformity = decide(mm, joint.uncertainty_mm, Bound::AtMost(limit.value));
    if conformity == Conformity::Borderline && mm <= limit.value {
        return None;
    }
    let severity = Severity::of(conformity, limit.level)?;
    let [one, other] = joint.pieces;
    let instruction = message!("tray-joint", what = what, one = one, other = other);
    let finding = subject.finding(Check::TrayJoint, severity, instruction);
    let figure = Figure::beside(limit, Bound::AtMost, mm, Some(joint.uncertainty_mm));
    Some(finding.with(figure))
}
