//! `under-extension`: a stretch of border falls below its own neighbourhood.

use super::shared::dips::severity_of;
use super::shared::stations::{StretchWords, place};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::stretch::Stretch;
use crate::subject::Subject;
use measure::{Border, Dip, DipKind};

pub(super) fn judge(subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
    border
        .dips
        .iter()
        .filter_map(|dip| about(subject, border, dip))
        .collect()
}

fn about(subject: &Subject<'_>, border: &Border, dip: &Dip) -> Option<Finding> {
    let severity = severity_of(subject, border, dip)?;
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
            bound: Bound::AtMost(limit.in_zone(bottom.zone)),
            unit: limit.unit.clone(),
        }),
        stretch: Some(stretch),
        ..subject.finding(
            Check::UnderExtension,
            severity,
            instruction(dip, severity, &StretchWords::of(subject, border, stretch)),
        )
    })
}

fn instruction(dip: &Dip, severity: Severity, words: &StretchWords) -> String {
    let StretchWords { range, mould, then } = words;
    if dip.kind == DipKind::Wave {
        return format!(
            "The border is low {range}: compare it with the mouth. If the vestibule is as shallow \
             there, leave it as it is. If it is deeper, add border material and {mould}, {then}."
        );
    }
    if dip.kind == DipKind::BroadNotch {
        return format!(
            "The border dips {range}, where a frenum may lie: compare it with the mouth. If this is \
             the frenum, leave it as it is. If it is not, the border is short there: add border \
             material and {mould}, {then}."
        );
    }
    match severity {
        Severity::Fail => {
            format!("The border is short {range}. Add border material there and {mould}, {then}.")
        }
        Severity::Borderline | Severity::Note => format!(
            "The border may be short {range}: look at the impression there. If the border goes on \
             past the scan, scan this stretch again; if it is short and the vestibule is deeper, \
             add border material and {mould}, {then}."
        ),
    }
}
