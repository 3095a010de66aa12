//! `part-not-judged`: a part of the case was given that is not judged yet.

use super::{Check, NOT_YET};
use crate::case::{Case, Stage};
use crate::finding::{Finding, NotJudged, Severity};

pub(crate) fn on_case(case: &Case) -> Vec<Finding> {
    let both_passes = case
        .impressions
        .iter()
        .enumerate()
        .any(|(number, input)| input.stage == Stage::FirstPass && case.is_superseded(number));
    let given = [
        case.jaw_relation.is_some().then_some((
            "The jaw relation",
            "check the record and the vertical dimensions by hand",
        )),
        case.consignment
            .is_some()
            .then_some(("The parcel", "check its list by hand")),
    ];
    let mut findings: Vec<Finding> = given
        .into_iter()
        .flatten()
        .map(|(part, by_hand)| {
            let instruction =
                format!("{part} is given but not part of this version's checks: {by_hand}.");
            about_case(Severity::Borderline, instruction)
        })
        .collect();
    if both_passes {
        // Each pass is judged by itself, so nothing is left undecided by this.
        findings.push(about_case(
            Severity::Note,
            "First pass and wash were each judged alone; comparing them is not part of this \
             version's checks."
                .into(),
        ));
    }
    findings
}

/// What is judged on no case in this version, given or not.
pub(crate) fn not_judged_on_case() -> Vec<NotJudged> {
    ["wash", "jaw_relation", "consignment"]
        .into_iter()
        .map(|part| NotJudged {
            check: part.to_owned(),
            why: NOT_YET.to_owned(),
        })
        .collect()
}

fn about_case(severity: Severity, instruction: String) -> Finding {
    Finding {
        severity,
        check: Check::PartNotJudged,
        impression: None,
        arch: None,
        place: None,
        figure: None,
        spot: None,
        stretch: None,
        defect: None,
        landmark: None,
        instruction,
    }
}
