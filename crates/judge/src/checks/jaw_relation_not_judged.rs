//! `jaw-relation-not-judged`: the record was given but could not be measured.

use super::Check;
use super::on_case::CaseSubject;
use crate::finding::{Finding, NotJudged, Severity};

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let Some(Err(why)) = subject.relation else {
        return Vec::new();
    };
    let instruction = format!(
        "The jaw relation was not measured: {why}. Check the scan of the record, or the record by hand."
    );
    vec![subject.finding(
        Check::JawRelationNotJudged,
        Severity::Borderline,
        instruction,
    )]
}

/// What was not judged on the case as a whole.
pub(crate) fn not_judged_on_case(subject: &CaseSubject<'_>) -> Vec<NotJudged> {
    let case = subject.case;
    let has_two_passes =
        (0..case.impressions.len()).any(|number| case.first_pass_of(number).is_some());
    let relation = match subject.relation {
        None => Some("the case names no scan of the jaw-relation record".to_owned()),
        Some(Err(why)) => Some(why.to_string()),
        Some(Ok(_)) => None,
    };
    let missing = |is_there: bool, why: &str| (!is_there).then(|| why.to_owned());
    [
        (
            "wash",
            missing(
                has_two_passes,
                "the case names no first pass beside a wash of the same jaw",
            ),
        ),
        ("jaw_relation", relation),
        (
            "interocclusal-distance",
            missing(
                case.interocclusal_distance_mm().is_some(),
                "the case does not give both vertical dimensions",
            ),
        ),
        (
            "consignment",
            missing(
                case.consignment.is_some(),
                "the case says nothing of the parcel",
            ),
        ),
    ]
    .into_iter()
    .filter_map(|(part, why)| {
        Some(NotJudged {
            check: part.to_owned(),
            why: why?,
        })
    })
    .collect()
}
