//! `interocclusal-distance`: rest vertical dimension less that of occlusion.

use crate::check::Check;
use crate::decision::Bound;
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::CaseSubject;

const IMPOSSIBLE: &str = "At rest the jaws stand farther apart than in occlusion, always: one of the two \
    vertical dimensions is wrong, or they were exchanged. Measure both again.";
const QUESTIONED: &str = "The interocclusal distance is outside of all that is usually seen: measure both \
    vertical dimensions again, several times, and check the registration against speech and lips.";
const UNUSUAL: &str =
    "The interocclusal distance is outside the usual: check both vertical dimensions.";

pub(super) fn judge(subject: &CaseSubject<'_>, &mm: &f64) -> Vec<Finding> {
    let finding = |severity, key, instruction: &str| {
        let figure = Figure::beside(subject.protocol.limit(key), mm, None);
        Finding::on_case(Check::InterocclusalDistance, severity, instruction).with(figure)
    };
    if mm <= 0.0 {
        return vec![finding(
            Severity::Fail,
            LimitKey::InterocclusalLeast,
            IMPOSSIBLE,
        )];
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
        let met = match bound(limit.value) {
            Bound::AtLeast(least) => mm >= least,
            Bound::AtMost(most) => mm <= most,
        };
        (!met).then(|| finding(limit.level.severity(), key, instruction))
    })
    .into_iter()
    .collect()
}
