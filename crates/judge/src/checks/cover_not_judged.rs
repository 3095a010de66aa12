//! `cover-not-judged`: cover could not be measured, or not everywhere.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{CoverMethod, NotMeasured};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let measurement = subject.measurement();
    let by_colour = matches!(measurement.colour, Some(Ok(_)));
    let what = match &measurement.cover {
        Err(why) => format!("Cover was not judged: {why}. {}", what_to_do(why)),
        Ok(cover) if cover.method != CoverMethod::TrayScan => format!(
            "Cover was had from a stated thickness of the tray, over {:.1} cm² that lie opposite bare \
             tray; the rest of the tissue surface, flanges above all, was not judged by it. Scan the \
             empty tray and give it with --tray to judge all of it.",
            cover.area_judged_mm2 / 100.0
        ),
        Ok(_) => return Vec::new(),
    };
    // A tray that was given and does not fit is a question of its own.
    let is_expected = !matches!(&measurement.cover, Err(why) if *why != NotMeasured::NoTray);
    let (severity, instruction) = if by_colour && is_expected {
        let by_colour = "Whether tray shows was judged by the scan's colours; how thick the material is \
                    was not.";
        (Severity::Note, format!("{what} {by_colour}"))
    } else {
        (Severity::Borderline, what)
    };
    vec![subject.finding(Check::CoverNotJudged, severity, instruction)]
}

fn what_to_do(why: &NotMeasured) -> &'static str {
    match why {
        NotMeasured::NoTray => {
            "Scan the empty tray and give it with --tray (in a case file: tray = \"...\")."
        }
        NotMeasured::NoOuterSurface | NotMeasured::TooLittleTraySeen => {
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
    }
}
