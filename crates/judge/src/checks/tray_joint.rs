//! `tray-joint`: the pieces of the tray were not fully joined.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::TrayJoint;

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
    let instruction = format!(
        "There is a {what} between pieces {one} and {other} of the tray: they were not fully joined, or came \
         apart. The material thickness is measured from the pieces as they lay. If they moved while \
         the material set or later, the impression is distorted: join the pieces and take it again.",
    );
    let finding = subject.finding(Check::TrayJoint, severity, instruction);
    let figure = Figure::beside(limit, Bound::AtMost, mm, Some(joint.uncertainty_mm));
    Some(finding.with(figure))
}
