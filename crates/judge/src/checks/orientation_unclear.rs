//! `orientation-unclear`: which jaw it is, or which side is which, is not certain.

use crate::check::Check;
use crate::decision::Bound;
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::Frame;
use messages::message;

pub(super) fn judge(subject: &Subject<'_>, frame: &Frame) -> Vec<Finding> {
    let jaw_unsure = (frame.arch_confidence, message!("which-jaw"));
    let axes_unsure = (frame.confidence, message!("which-way"));
    // A jaw that was declared and found needs no confidence of its own.
    let asked = subject.input().declared.is_none().then_some(jaw_unsure);
    let limit = subject.limit(LimitKey::Orientation);
    asked
        .into_iter()
        .chain([axes_unsure])
        .filter_map(|(confidence, instruction)| {
            let (severity, figure) = Figure::against(limit, Bound::AtLeast, confidence, None)?;
            Some(
                subject
                    .finding(Check::OrientationUnclear, severity, instruction)
                    .with(figure),
            )
        })
        .collect()
}
