//! `under-extension`: a stretch of border falls below its own neighbourhood.

use super::Check;
use super::along_border::{Told, place};
use super::scan_ends::was_not_seen;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Severity};
use crate::judging::Subject;
use crate::protocol::{Level, LimitKey};
use crate::stretch::{Stretch, within};
use measure::{Border, Dip, DipKind};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(border) = &subject.measurement().border else {
        return Vec::new();
    };
    border
        .dips
        .iter()
        .filter_map(|dip| about(subject, border, dip))
        .collect()
}

/// How a dip comes out; `None` where it is no fault.
pub(super) fn severity(subject: &Subject<'_>, border: &Border, dip: &Dip) -> Option<Severity> {
    let limit = subject.limit(LimitKey::UnderExtension);
    let least_mm = subject.limit(LimitKey::LeastStretch).value;
    if dip.kind == DipKind::Notch || dip.width_mm < least_mm {
        return None;
    }
    let bottom = &border.stations[dip.bottom];
    let unseen = (0..border.stations.len())
        .filter(|&number| within(dip.from, dip.to, number))
        .filter(|&number| was_not_seen(&border.stations[number]))
        .count();
    let step_mm = border.length_mm / border.stations.len().max(1) as f64;
    if was_not_seen(bottom) || unseen as f64 * step_mm >= least_mm {
        // `scan-ends` speaks: a border that was not scanned is not a short one.
        return None;
    }
    let most = Bound::AtMost(limit.in_zone(bottom.zone));
    let conformity = decide(dip.depth.mm, dip.depth.uncertainty_mm, most);
    let conformity = match (dip.kind, conformity) {
        // It may be a frenum's.
        (DipKind::BroadNotch, Conformity::NotConforming) => Conformity::Borderline,
        (_, conformity) => conformity,
    };
    let unsure_note = limit.level == Level::Note && conformity == Conformity::Borderline;
    Severity::of(conformity, limit.level).filter(|_| !unsure_note)
}

fn about(subject: &Subject<'_>, border: &Border, dip: &Dip) -> Option<Finding> {
    let severity = severity(subject, border, dip)?;
    let limit = subject.limit(LimitKey::UnderExtension);
    let stretch = Stretch {
        from: dip.from,
        to: dip.to,
        worst: dip.bottom,
    };
    let bottom = &border.stations[dip.bottom];
    Some(Finding {
        place: Some(place(bottom)),
        figure: Some(Figure {
            measured: dip.depth.mm,
            uncertainty: Some(dip.depth.uncertainty_mm),
            limit: limit.in_zone(bottom.zone),
            unit: limit.unit.clone(),
        }),
        stretch: Some(stretch),
        ..subject.finding(
            Check::UnderExtension,
            severity,
            instruction(severity, &Told::of(subject, border, stretch)),
        )
    })
}

fn instruction(severity: Severity, told: &Told) -> String {
    let Told {
        range,
        movement,
        then,
        ..
    } = told;
    match severity {
        Severity::Fail => format!(
            "The border is short {range}. Add border material there and repeat the {movement}, \
             {then}."
        ),
        Severity::Borderline | Severity::Note => format!(
            "The border may be short {range}: look at the impression there. If the border goes on \
             past the scan, scan this stretch again; if it is short and the vestibule is deeper, \
             add border material and repeat the {movement}, {then}."
        ),
    }
}
