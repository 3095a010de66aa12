//! `void`: air left a pit in the tissue surface.

use super::shared::defects::{DefectCheck, is_at_seal, width};
use crate::case::Stage;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words::the_landmark;
use measure::landmarks::{Landmark, LandmarkName};
use measure::{Defect, DefectKind, Spot, TissueSurface, Zone};
use messages::{Message, Value, message};

const VOID: DefectCheck = DefectCheck {
    check: Check::Void,
    kind: DefectKind::Void,
    size: width,
    usual: LimitKey::Void,
    critical: LimitKey::CriticalVoid,
    redo: Some(LimitKey::CriticalVoidRedo),
    instruction,
};

pub(super) fn judge(subject: &Subject<'_>, tissue: &TissueSurface) -> Vec<Finding> {
    let findings = VOID.findings(subject, tissue).into_iter();
    findings
        .map(|finding| beside_the_tray(subject, tissue, finding))
        .map(|finding| on_a_hollow_landmark(subject, tissue, finding))
        .collect()
}

/// A hollow where a landmark leaves one is a void, or that landmark: its shape cannot tell, so
/// it fails nothing.
fn on_a_hollow_landmark(
    subject: &Subject<'_>,
    tissue: &TissueSurface,
    finding: Finding,
) -> Finding {
    let defect = finding.defect.map(|number| &tissue.defects[number]);
    let landmark = defect.and_then(|defect| hollow_landmark(subject, defect));
    match (landmark, finding.severity) {
        (Some(landmark), Severity::Fail) => Finding {
            severity: Severity::Borderline,
            instruction: message!("void-or-landmark", landmark = the_landmark(landmark))
                .then(finding.instruction),
            ..finding
        },
        _ => finding,
    }
}

/// The pad or the frenum that a hollow may be.
fn hollow_landmark<'a>(subject: &Subject<'a>, defect: &Defect) -> Option<&'a Landmark> {
    /// Width of a retromolar pad, mm: the mean of 150 patients less two standard deviations
    /// (LM-37: 6.17 and 0.92 mm).
    const NARROWEST_PAD_MM: f64 = 4.3;
    /// Between the bottom of a frenum's notch and the rim of a void beside it, mm. Own
    /// choice, no source.
    const APART_MM: f64 = 1.0;
    let may_be = |landmark: &&Landmark| match landmark.name {
        LandmarkName::RetromolarPad => {
            defect.zone == Zone::RetromolarPad
                && landmark.side == defect.side
                && defect.across_mm >= NARROWEST_PAD_MM
        }
        LandmarkName::LabialFrenum | LandmarkName::BuccalFrenum | LandmarkName::LingualFrenum => {
            let reach_mm = 0.5 * defect.across_mm + APART_MM;
            let seen = landmark.seen.as_ref();
            seen.is_ok_and(|seen| (seen.point - defect.centre).norm() <= reach_mm)
        }
        _ => false,
    };
    subject.measurement().landmarks.iter().find(may_be)
}

/// A wide pit at whose bottom the tray nearly shows is a void, or a dent that the tray pressed:
/// its shape cannot tell, so it fails nothing.
fn beside_the_tray(subject: &Subject<'_>, tissue: &TissueSurface, finding: Finding) -> Finding {
    let defect = finding.defect.map(|number| &tissue.defects[number]);
    let is_in_it = |spot: &&Spot| defect.is_some_and(|defect| is_in(defect, spot));
    let cover_mm = (subject.measurement().spots.iter())
        .filter(|spot| spot.stop.is_none())
        .find(is_in_it)
        .and_then(|spot| spot.min_mm);
    match (cover_mm, finding.severity) {
        (Some(cover_mm), Severity::Fail) => Finding {
            severity: Severity::Borderline,
            instruction: message!(
                "void-or-pressed",
                cover = Value::figure(format!("{:.1} mm", cover_mm.max(0.0)))
            )
            .then(finding.instruction),
            ..finding
        },
        _ => finding,
    }
}

/// Whether a thin place lies within a wide pit: its middle at most as far from that of the opening as
/// the edge of the bottom may be.
fn is_in(defect: &Defect, spot: &Spot) -> bool {
    /// A tray presses no narrower dent into the tissue, mm. Own choice, no source.
    const NARROWEST_DENT_MM: f64 = 4.0;
    let reach_mm = (0.5 * defect.across_mm).hypot(defect.depth_mm.unwrap_or(0.0));
    defect.across_mm >= NARROWEST_DENT_MM && (spot.centre - defect.centre).norm() <= reach_mm
}

fn instruction(subject: &Subject<'_>, defect: &Defect) -> Message {
    match subject.input().stage {
        Stage::FirstPass => message!("void-dry"),
        Stage::Wash | Stage::Single if is_at_seal(subject, defect) => message!("void-at-seal"),
        // A second wash over a set impression lifts the whole tray: the bench comes first.
        Stage::Wash | Stage::Single => message!("void"),
    }
}
