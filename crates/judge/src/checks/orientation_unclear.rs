//! `orientation-unclear`: which jaw it is, or which side is which, is not certain.

use crate::check::Check;
use crate::decision::Bound;
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
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
            let (severity, figure) = Figure::against(limit, Bound::AtLeast, confidence, None)?;
            Some(
                subject
                    .finding(Check::OrientationUnclear, severity, instruction)
                    .with(figure),
            )
        })
        .collect()
}
