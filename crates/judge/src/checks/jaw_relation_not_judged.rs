//! `jaw-relation-not-judged`: the record was given but could not be measured.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::CaseSubject;
use messages::message;

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let Some(Err(why)) = subject.relation else {
        return Vec::new();
    };
    let instruction = message!("jaw-relation-not-judged", why = why);
    vec![Finding::on_case(
        Check::JawRelationNotJudged,
        Severity::Borderline,
        instruction,
    )]
}
