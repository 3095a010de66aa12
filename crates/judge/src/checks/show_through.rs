//! `show-through`: tray shows through the material.

use super::Check;
use crate::case::Stage;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Finding, Place, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;
use measure::{Cover, Spot};

/// How a tray is relieved without harm to the operator or the patient.
pub(super) const SAFELY: &str =
    "out of the mouth, with eye and dust protection, then feel for sharp edges";

/// After relief the old scan of the tray no longer tells the truth there.
pub(super) const IF_RELIEVED: &str = " If the tray was relieved here after it was scanned, this \
     figure is too low: scan the relieved tray and check again.";

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover, number: usize) -> Option<Finding> {
    let spot = &subject.measurement().spots[number];
    let limit = subject.limit(LimitKey::ShowThrough);
    let conformity = decide(
        spot.min_mm,
        cover.uncertainty_mm,
        Bound::AtLeast(limit.value),
    );
    let severity = Severity::of(conformity, limit.level)?;
    let mut instruction = match conformity {
        Conformity::NotConforming => format!("Relieve the tray here ({SAFELY}), then take a wash."),
        Conformity::Borderline | Conformity::Conforming => format!(
            "Too close to tell from the scan: look at the impression here. If tray shows, relieve \
             it ({SAFELY}) and take a wash; if not, scan this place again, finer."
        ),
    };
    if subject.input.stage == Stage::Wash {
        instruction.push_str(IF_RELIEVED);
    }
    Some(Finding {
        place: Some(place(spot)),
        figure: Some(figure(spot.min_mm, Some(cover.uncertainty_mm), limit)),
        spot: Some(number),
        ..subject.finding(Check::ShowThrough, severity, instruction)
    })
}

/// Where a spot is.
pub(super) fn place(spot: &Spot) -> Place {
    Place {
        at: spot.centre,
        zone: spot.zone,
        side: spot.side,
    }
}
