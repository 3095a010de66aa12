//! `not-an-impression`: the scan shows something else.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::ScanSubject;
use measure::NotAnImpression;

pub(super) fn judge(subject: &ScanSubject<'_>) -> Vec<Finding> {
    subject
        .something_else()
        .map(|kind| {
            let what_to_do = match kind {
                NotAnImpression::WrongSize { .. } => {
                    "Check that the right file was given, and its unit (--unit)."
                }
                NotAnImpression::Positive | NotAnImpression::Cast => {
                    "Give the scan of the impression itself, not of a cast, a denture or the mouth."
                }
                NotAnImpression::Teeth { .. } | NotAnImpression::Sockets { .. } => {
                    "This check is made for edentulous arches; look at this one by eye."
                }
                NotAnImpression::Half => {
                    "Give the scan of the whole arch; where only a half was scanned, scan the rest."
                }
                NotAnImpression::Shell { .. } => {
                    "Give the scan of the impression in its tray; the empty tray is given with \
                     --tray. If this is an impression without its tray, look at it by eye."
                }
                NotAnImpression::Parts(_) => {
                    "Give every part of this impression, each scanned from all sides, and the scan \
                     of its whole tray."
                }
                NotAnImpression::TwoScans { .. } => "Export each scan into a file of its own.",
                _ => "Give the scan of an edentulous impression in its tray.",
            };
            let instruction = format!("Not an impression: {kind}. {what_to_do}");
            subject.finding(Check::NotAnImpression, Severity::Borderline, instruction)
        })
        .into_iter()
        .collect()
}
