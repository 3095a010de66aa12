//! `interocclusal-distance`: rest vertical dimension less that of occlusion.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::{Level, Severity};
use crate::subject::CaseSubject;
use measure::Measured;

const IMPOSSIBLE: &str = "At rest the jaws always stand farther apart than in occlusion: one of the two \
    vertical dimensions is wrong, or they were exchanged. Measure both again.";
const QUESTIONED: &str = "The interocclusal distance is outside the range that was observed. Measure both \
    vertical dimensions again, three times each, and check the registration against speech and lips.";
const UNUSUAL: &str =
    "The interocclusal distance is outside the usual range: check both vertical dimensions.";
const CLOSE: &str = "Too close to the limit to tell. Measure both vertical dimensions three times and give \
    the readings (vertical_dimension_readings_mm, rest_vertical_dimension_readings_mm).";

pub(super) fn judge(subject: &CaseSubject<'_>, distance: Measured) -> Vec<Finding> {
    let Measured { mm, uncertainty_mm } = distance;
    if decide(mm, uncertainty_mm, Bound::AtLeast(0.0)) == Conformity::NotConforming {
        let limit = subject.protocol.limit(LimitKey::InterocclusalLeast);
        let figure = Figure {
            bound: Bound::AtLeast(0.0),
            ..Figure::beside(limit, Bound::AtLeast, mm, Some(uncertainty_mm))
        };
        let finding =
            Finding::on_case(Check::InterocclusalDistance, Severity::Fail, IMPOSSIBLE).with(figure);
        return vec![finding];
    }
    // The widest bounds first, so that one distance is one finding.
    [
        (
            LimitKey::InterocclusalLeast,
            Bound::AtLeast as fn(f64) -> Bound,
            QUESTIONED,
        ),
        (LimitKey::InterocclusalMost, Bound::AtMost, QUESTIONED),
        (LimitKey::UsualInterocclusalLeast, Bound::AtLeast, UNUSUAL),
        (LimitKey::UsualInterocclusalMost, Bound::AtMost, UNUSUAL),
    ]
    .into_iter()
    .find_map(|(key, bound, instruction)| {
        let limit = subject.protocol.limit(key);
        let conformity = decide(mm, uncertainty_mm, bound(limit.value));
        let is_sure = conformity == Conformity::NotConforming;
        let severity = Severity::of(conformity, limit.level)?;
        // A note says what is sure.
        (is_sure || limit.level != Level::Note).then(|| {
            let instruction = if is_sure { instruction } else { CLOSE };
            Finding::on_case(Check::InterocclusalDistance, severity, instruction)
                .with(Figure::beside(limit, bound, mm, Some(uncertainty_mm)))
        })
    })
    .into_iter()
    .collect()
}
