//! `void`: air left a pit in the tissue surface.

use super::shared::defects::{DefectCheck, is_at_seal, width};
use crate::case::Stage;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Defect, DefectKind, Spot, TissueSurface};
use messages::{Value, message};

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
        .collect()
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

fn instruction(subject: &Subject<'_>, defect: &Defect) -> String {
    match subject.input().stage {
        Stage::FirstPass => "Air was trapped here. Dry the place, so that the wash fills it.",
        Stage::Wash | Stage::Single if is_at_seal(subject, defect) => {
            "Air was trapped here, where the denture must seal. The cast will have a stone bead here: \
             trim it if the surface around it shows the true shape. Otherwise dry the place, fill the \
             void with wash and seat the impression again."
        }
        // A second wash over a set impression lifts the whole tray: the bench comes first.
        Stage::Wash | Stage::Single => {
            "Air was trapped here. The cast will have a stone bead here that must be trimmed. If the \
             bead is too large for the true surface to be seen around it, repeat the wash."
        }
    }
    .into()
}
