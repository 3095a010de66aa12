//! `other-colour`: a patch of the tissue surface has another colour than the
//! material, and nobody said which colour the tray has.

use super::shared::relief::relieve;
use super::shared::stations::then_wash;
use crate::check::Check;
use crate::finding::{Finding, Place};
use crate::severity::Severity;
use crate::subject::Subject;
use messages::message;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let relieve = relieve(then_wash(subject.input().stage));
    let instruction = message!("other-colour").then(relieve);
    let contrasts = subject.measurement().contrasts.iter();
    contrasts
        .map(|contrast| Finding {
            place: Some(Place {
                at: contrast.centre,
                zone: contrast.zone,
                side: contrast.side,
            }),
            ..subject.finding(
                Check::OtherColour,
                Severity::Borderline,
                instruction.clone(),
            )
        })
        .collect()
}
