//! `cover-not-judged`: cover could not be measured.

use super::Check;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use measure::NotMeasured;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Err(why) = &subject.measurement().cover else {
        return Vec::new();
    };
    let what_to_do = match why {
        NotMeasured::NoTray => {
            "Scan the empty tray and give it with --tray (in a case file: tray = \"...\")."
        }
        NotMeasured::NoOuterSurface => {
            "Scan the impression from all sides, the back of the tray too."
        }
        NotMeasured::TrayMirrored => {
            "Export both scans again without mirroring, and compare right and left with the \
             impression in hand."
        }
        NotMeasured::TrayDoesNotFit { .. } | NotMeasured::TrayOtherSize { .. } => {
            "Check that the tray scan shows this very tray, empty; else scan it."
        }
        NotMeasured::AmbiguousRegistration { .. } => {
            "Scan more of the back of the tray, the handle too."
        }
        NotMeasured::TooCoarse { .. } => "Export the scan at full resolution.",
        _ => "Look at the impression by eye.",
    };
    let instruction = format!("Cover was not judged: {why}. {what_to_do}");
    vec![subject.finding(Check::CoverNotJudged, Severity::Borderline, instruction)]
}
