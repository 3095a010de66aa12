//! `border-not-judged`: the border could not be measured.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::NoBorder;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Err(why) = &subject.measurement().border else {
        return Vec::new();
    };
    let what_to_do = match why {
        NoBorder::NotRound => {
            "Scan the whole arch, both sides of every flange, and check again; or look at the \
             border yourself."
        }
        NoBorder::NoLine => "Scan the border all the way round, from the outer side too.",
    };
    let instruction = format!("The border was not judged: {why}. {what_to_do}");
    vec![subject.finding(Check::BorderNotJudged, Severity::Borderline, instruction)]
}
