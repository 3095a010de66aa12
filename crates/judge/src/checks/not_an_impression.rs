//! `not-an-impression`: the scan shows something else.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::ScanSubject;
use measure::NotAnImpression;
use messages::message;

pub(super) fn judge(subject: &ScanSubject<'_>) -> Vec<Finding> {
    subject
        .something_else()
        .map(|kind| {
            let what_to_do = match kind {
                NotAnImpression::WrongSize { .. } => message!("check-file-and-unit"),
                NotAnImpression::Positive | NotAnImpression::Cast => {
                    message!("give-impression-itself")
                }
                NotAnImpression::Teeth { .. } | NotAnImpression::Sockets { .. } => {
                    message!("for-edentulous-arches")
                }
                NotAnImpression::Half => message!("give-whole-arch"),
                NotAnImpression::Shell { .. } => message!("give-impression-in-tray"),
                NotAnImpression::Parts(_) => message!("give-every-part"),
                NotAnImpression::TwoScans { .. } => message!("export-each-scan"),
                _ => message!("give-edentulous"),
            };
            let what = message!("not-an-impression", what = kind);
            let instruction = what.then(what_to_do);
            subject.finding(Check::NotAnImpression, Severity::Borderline, instruction)
        })
        .into_iter()
        .collect()
}
