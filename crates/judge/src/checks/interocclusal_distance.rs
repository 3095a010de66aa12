//! `interocclusal-distance`: rest vertical dimension less that of occlusion.

use super::Check;
use super::on_case::CaseSubject;
use crate::decision::Bound;
use crate::finding::{Finding, Severity};
use crate::judging::figure;
use crate::protocol::LimitKey;

const IMPOSSIBLE: &str = "At rest the jaws stand farther apart than in occlusion, always: one of the two \
    vertical dimensions is wrong, or they were exchanged. Measure both again.";
const QUESTIONED: &str = "The interocclusal distance is outside of all that is usually seen: measure both \
    vertical dimensions again, several times, and check the registration against speech and lips.";
const UNUSUAL: &str =
    "The interocclusal distance is outside the usual: check both vertical dimensions.";

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let Some(mm) = subject.case.interocclusal_distance_mm() else {
        return Vec::new();
    };
    if mm <= 0.0 {
        let limit = subject.protocol.limit(LimitKey::InterocclusalLeast);
        return vec![Finding {
            figure: Some(figure(mm, None, limit)),
            ..subject.finding(Check::InterocclusalDistance, Severity::Fail, IMPOSSIBLE)
        }];
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
        let severity = (!met).then(|| limit.level.severity())?;
        Some(Finding {
            figure: Some(figure(mm, None, limit)),
            ..subject.finding(Check::InterocclusalDistance, severity, instruction)
        })
    })
    .into_iter()
    .collect()
}
