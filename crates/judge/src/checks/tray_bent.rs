//! `tray-bent`: the tray in the impression is bent beside its scan.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Place};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words;
use measure::{LimbBend, TrayRegistration};
use messages::message;

/// Bends that are clearly larger than this, mm, are worth a note: scans of one tray
/// differ by less. Common practice, no source.
const NOTED_MM: f64 = 0.1;

pub(super) fn judge(subject: &Subject<'_>, placed: &TrayRegistration) -> Vec<Finding> {
    let bends = placed.limbs.iter();
    bends.filter_map(|limb| of_limb(subject, limb)).collect()
}

fn of_limb(subject: &Subject<'_>, limb: &LimbBend) -> Option<Finding> {
    let moved = limb.end_moved();
    let limit = subject.limit(LimitKey::TrayBend);
    let conformity = decide(moved.value, moved.uncertainty, Bound::AtMost(limit.value));
    let is_noted = moved.value - moved.uncertainty > NOTED_MM;
    let severity = match conformity {
        // What does not show of the tray leaves its place open; that is in the
        // uncertainty of the material thickness.
        Conformity::Borderline if !is_noted => return None,
        _ => {
            Severity::of(conformity, limit.level).or_else(|| is_noted.then_some(Severity::Note))?
        }
    };
    let side = words::side(limb.side);
    let moved_to = words::moved(limb.end_toward_tissue_mm.value, limb.end_outward_mm.value);
    let instruction = if severity == Severity::Note {
        message!("tray-bent-slightly", side = side, moved = moved_to)
    } else {
        message!("tray-bent", side = side, moved = moved_to)
    };
    Some(Finding {
        place: Some(Place {
            at: limb.end,
            zone: limb.zone,
            side: Some(limb.side),
        }),
        ..subject.finding(Check::TrayBent, severity, instruction)
    })
    .map(|finding| {
        finding.with(Figure::beside(
            limit,
            Bound::AtMost,
            moved.value,
            Some(moved.uncertainty),
        ))
    })
}
