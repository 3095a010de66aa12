//! `other-colour`: a patch of the tissue surface has another colour than the
//! material, and nobody said which colour the tray has.

use super::shared::relief::relieve;
use super::shared::stations::then_wash;
use crate::check::Check;
use crate::finding::{Finding, Place};
use crate::severity::Severity;
use crate::subject::Subject;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let instruction = format!(
        "Another colour shows here: look at the impression. To have the scan judged by colour, \
         give the tray's colour with --tray-colour. If this is the tray: {}",
        relieve(then_wash(subject.input().stage))
    );
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
