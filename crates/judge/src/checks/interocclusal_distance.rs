//! `interocclusal-distance`: rest vertical dimension less that of occlusion.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::{Level, Severity};
use crate::subject::CaseSubject;
use measure::Measured;
use messages::{Message, message};

pub(super) fn judge(subject: &CaseSubject<'_>, distance: Measured) -> Vec<Finding> {
    let Measured { mm, uncertainty_mm } = distance;
    if decide(mm, uncertainty_mm, Bound::AtLeast(0.0)) == Conformity::NotConforming {
        let limit = subject.protocol.limit(LimitKey::InterocclusalLeast);
        let figure = Figure {
            bound: Bound::AtLeast(0.0),
            ..Figure::beside(limit, Bound::AtLeast, mm, Some(uncertainty_mm))
        };
        let finding = Finding::on_case(
            Check::InterocclusalDistance,
            Severity::Fail,
            message!("interocclusal-impossible"),
        )
        .with(figure);
        return vec![finding];
    }
    let questioned = || message!("interocclusal-questioned");
    let unusual = || message!("interocclusal-unusual");
    // The widest bounds first, so that one distance is one finding.
    [
        (
            LimitKey::InterocclusalLeast,
            Bound::AtLeast as fn(f64) -> Bound,
            questioned as fn() -> Message,
        ),
        (LimitKey::InterocclusalMost, Bound::AtMost, questioned),
        (LimitKey::UsualInterocclusalLeast, Bound::AtLeast, unusual),
        (LimitKey::UsualInterocclusalMost, Bound::AtMost, unusual),
    ]
    .into_iter()
    .find_map(|(key, bound, instruction)| {
        let limit = subject.protocol.limit(key);
        let conformity = decide(mm, uncertainty_mm, bound(limit.value));
        let is_sure = conformity == Conformity::NotConforming;
        let severity = Severity::of(conformity, limit.level)?;
        // A note says what is sure.
        (is_sure || limit.level != Level::Note).then(|| {
            let instruction = if is_sure {
                instruction()
            } else {
                message!("interocclusal-unsure")
            };
            Finding::on_case(Check::InterocclusalDistance, severity, instruction)
                .with(Figure::beside(limit, bound, mm, Some(uncertainty_mm)))
        })
    })
    .into_iter()
    .collect()
}
