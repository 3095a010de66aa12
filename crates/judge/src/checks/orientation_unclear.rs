//! `orientation-unclear`: which jaw, or which side is which, was not told surely.

use super::Check;
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;
use measure::NotMeasured;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let frame = match &subject.measurement().frame {
        Ok(frame) => frame,
        Err(NotMeasured::NotAnImpression(_)) => return Vec::new(),
        Err(why) => {
            let instruction = format!(
                "The impression could not be laid straight: {why}. Scan it again from all sides."
            );
            return vec![subject.finding(
                Check::OrientationUnclear,
                Severity::Borderline,
                instruction,
            )];
        }
    };
    let jaw_unsure = (
        frame.arch_confidence,
        "Say which jaw it is with --arch maxillary or --arch mandibular: the shape alone does not \
         tell surely, and the sides depend on it.",
    );
    let axes_unsure = (
        frame.confidence,
        "Which way the impression lies was not told surely: do not rely on sides and zones. Scan \
         the whole arch again.",
    );
    // A jaw that was declared and found needs no confidence of its own.
    let asked = subject.input.declared.is_none().then_some(jaw_unsure);
    let limit = subject.limit(LimitKey::Orientation);
    asked
        .into_iter()
        .chain([axes_unsure])
        .filter_map(|(confidence, instruction)| {
            let conformity = decide(confidence, 0.0, Bound::AtLeast(limit.value));
            let severity = Severity::of(conformity, limit.level)?;
            Some(Finding {
                figure: Some(figure(confidence, None, limit)),
                ..subject.finding(Check::OrientationUnclear, severity, instruction)
            })
        })
        .collect()
}
