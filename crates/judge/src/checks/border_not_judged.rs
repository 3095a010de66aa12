//! `border-not-judged`: the border could not be measured.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::NoBorder;
use messages::message;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Err(why) = &subject.measurement().border else {
        return Vec::new();
    };
    let what_to_do = match why {
        NoBorder::NotRound => message!("border-scan-arch"),
        NoBorder::NoLine => message!("border-scan-round"),
    };
    let instruction = message!("border-not-judged", why = why).then(what_to_do);
    vec![subject.finding(Check::BorderNotJudged, Severity::Borderline, instruction)]
}
