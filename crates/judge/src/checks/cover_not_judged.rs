//! `cover-not-judged`: cover could not be measured, or not everywhere.

use crate::check::Check;
use crate::finding::Finding;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words;
use measure::{CoverGap, CoverMethod, NoCover, NoCoverHere, TrayNotPlaced};
use messages::{Message, Value, message};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let measurement = subject.measurement();
    let by_colour = matches!(measurement.colour, Some(Ok(_)));
    let what = match &measurement.cover {
        Err(why) => message!("cover-not-judged", why = why).then(what_to_do(why)),
        Ok(cover) if cover.method != CoverMethod::TrayScan => message!(
            "cover-by-thickness",
            area = square_centimetres(cover.area_judged_mm2)
        ),
        Ok(cover) => return cover.gaps.iter().map(|gap| of_gap(subject, gap)).collect(),
    };
    // A tray that was given and does not fit is a question of its own.
    let is_expected =
        !matches!(&measurement.cover, Err(why) if *why != TrayNotPlaced::NoTray.into());
    let (severity, instruction) = if by_colour && is_expected {
        (Severity::Note, what.then(message!("cover-by-colour-alone")))
    } else {
        (Severity::Borderline, what)
    };
    vec![subject.finding(Check::CoverNotJudged, severity, instruction)]
}

/// A part of the arch over which the tray's place is not known.
fn of_gap(subject: &Subject<'_>, gap: &CoverGap) -> Finding {
    let what_to_do = match gap.why {
        NoCoverHere::NoTray => message!("cover-scan-whole-tray"),
        NoCoverHere::OuterSurfaceDiffers => message!("cover-look-there"),
    };
    let instruction = message!(
        "cover-gap",
        area = square_centimetres(gap.area_mm2),
        part = part_of_the_arch(gap),
        why = &gap.why
    );
    subject.finding(
        Check::CoverNotJudged,
        Severity::Borderline,
        instruction.then(what_to_do),
    )
}

fn square_centimetres(mm2: f64) -> Value {
    Value::figure(format!("{:.1} cm²", mm2 / 100.0))
}

fn part_of_the_arch(gap: &CoverGap) -> Message {
    let zone = words::zone_name(gap.zone);
    match gap.side {
        Some(side) => message!("zone-at-side", side = words::side(side), zone = zone),
        None => zone,
    }
}

fn what_to_do(why: &NoCover) -> Message {
    match why {
        NoCover::Tray(why) => match why {
            TrayNotPlaced::NoTray => message!("cover-scan-tray"),
            TrayNotPlaced::NoOuterSurface => message!("cover-scan-all-sides"),
            TrayNotPlaced::LittleOuterSurface { .. } => message!("cover-scan-all-sides-or-other"),
            TrayNotPlaced::Mirrored => message!("cover-mirrored"),
            TrayNotPlaced::DoesNotFit { .. } | TrayNotPlaced::OtherSize { .. } => {
                message!("cover-other-tray")
            }
            TrayNotPlaced::Ambiguous { .. } => message!("cover-scan-back"),
            TrayNotPlaced::TooCoarse { .. } => message!("cover-full-resolution"),
            TrayNotPlaced::Pieces(_) => message!("cover-scan-pieces"),
            TrayNotPlaced::NoneOfShelf { .. } => message!("cover-scan-this-tray"),
            TrayNotPlaced::AlikeOnShelf { .. } => message!("cover-which-tray"),
            // The check `not-an-impression` says so.
            TrayNotPlaced::NotAnImpression(_) => message!("cover-look"),
        },
        NoCover::TooLittleTraySeen => message!("cover-scan-all-sides"),
        NoCover::TrayInsideMissing { .. } => message!("cover-look"),
    }
}
