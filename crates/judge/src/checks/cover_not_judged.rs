//! `cover-not-judged`: cover could not be measured, or not everywhere.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words;
use measure::{CoverGap, CoverMethod, NoCover, NoCoverHere, TrayNotPlaced};

const ALL_SIDES: &str = "Scan the impression from all sides, the back of the tray too.";
const BY_EYE: &str = "Look at the impression by eye.";

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let measurement = subject.measurement();
    let by_colour = matches!(measurement.colour, Some(Ok(_)));
    let what = match &measurement.cover {
        Err(why) => format!(
            "The material thickness was not judged: {why}. {}",
            what_to_do(why)
        ),
        Ok(cover) if cover.method != CoverMethod::TrayScan => format!(
            "Thickness was calculated from the tray thickness you entered, and only over {:.1} cm² where \
             the tray's outer face is visible; the rest of the tissue surface, flanges above all, was \
             not judged. Scan the empty tray and give it with --tray to judge all of it.",
            cover.area_judged_mm2 / 100.0
        ),
        Ok(cover) => return cover.gaps.iter().map(|gap| of_gap(subject, gap)).collect(),
    };
    // A tray that was given and does not fit is a question of its own.
    let is_expected =
        !matches!(&measurement.cover, Err(why) if *why != TrayNotPlaced::NoTray.into());
    let (severity, instruction) = if by_colour && is_expected {
        let by_colour = "Whether tray shows was judged by the scan's colours; how thick the material is \
                    was not.";
        (Severity::Note, format!("{what} {by_colour}"))
    } else {
        (Severity::Borderline, what)
    };
    vec![subject.finding(Check::CoverNotJudged, severity, instruction)]
}

/// A part of the arch over which the tray's place is not known.
fn of_gap(subject: &Subject<'_>, gap: &CoverGap) -> Finding {
    let what_to_do = match gap.why {
        NoCoverHere::NoTray => "Scan the whole tray.",
        NoCoverHere::OuterSurfaceDiffers => {
            "Look there by eye. If the tray was relieved or shaped after its scan, scan this tray \
             itself once it is empty."
        }
    };
    let instruction = format!(
        "Over {:.1} cm² of the {} the material thickness was not judged: {}. {what_to_do}",
        gap.area_mm2 / 100.0,
        part_of_the_arch(gap),
        gap.why,
    );
    subject.finding(Check::CoverNotJudged, Severity::Borderline, instruction)
}

fn part_of_the_arch(gap: &CoverGap) -> String {
    let zone = words::zone(gap.zone);
    gap.side.map_or_else(
        || zone.to_owned(),
        |side| format!("{} {zone}", words::side(side)),
    )
}

fn what_to_do(why: &NoCover) -> &'static str {
    match why {
        NoCover::Tray(why) => match why {
            TrayNotPlaced::NoTray => {
                "Scan the empty tray and give it with --tray (in a case file: tray = \"...\"). If it \
                 cannot be scanned, give its thickness with --tray-thickness, or scan in colour."
            }
            TrayNotPlaced::NoOuterSurface => ALL_SIDES,
            TrayNotPlaced::LittleOuterSurface { .. } => {
                "Scan the impression from all sides, the back of the tray too. If the tray scan then \
                 does not fit, check that it shows this very tray."
            }
            TrayNotPlaced::Mirrored => {
                "Export both scans again without mirroring, and compare right and left with the \
                 impression in hand."
            }
            TrayNotPlaced::DoesNotFit { .. } | TrayNotPlaced::OtherSize { .. } => {
                "Check that the tray scan shows this very tray, empty; if not, scan it."
            }
            TrayNotPlaced::Ambiguous { .. } => "Scan more of the back of the tray, the handle too.",
            TrayNotPlaced::TooCoarse { .. } => "Export the scan at full resolution.",
            TrayNotPlaced::Pieces(_) => {
                "Scan every piece of the tray from all sides, and the impression from all sides, too."
            }
            TrayNotPlaced::NoneOfShelf { .. } => {
                "Scan this tray itself, empty, and give it with --tray (in a case file: tray = \"...\"). A \
                 tray that was relieved, cut or shaped with heat is no longer the tray on the shelf."
            }
            TrayNotPlaced::AlikeOnShelf { .. } => {
                "Which of them is it? Give that scan with --tray (in a case file: tray = \"...\"). If both \
                 are scans of one tray, take one off the shelf."
            }
            // The check `not-an-impression` says so.
            TrayNotPlaced::NotAnImpression(_) => BY_EYE,
        },
        NoCover::TooLittleTraySeen => ALL_SIDES,
        NoCover::TrayInsideMissing { .. } => BY_EYE,
    }
}
