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
use messages::{Message, message};

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
            instruction(dip, severity, StretchWords::of(subject, border, stretch)),
        )
    })
}

fn instruction(dip: &Dip, severity: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, then } = words;
    match (dip.kind, severity) {
        (DipKind::Wave, _) => message!("border-low", range = range, mould = mould, then = then),
        (DipKind::BroadNotch, _) => {
            message!("border-dips", range = range, mould = mould, then = then)
        }
        (_, Severity::Fail) => message!("border-short", range = range, mould = mould, then = then),
        (_, Severity::Borderline | Severity::Note) => {
            message!(
                "border-may-be-short",
                range = range,
                mould = mould,
                then = then
            )
        }
    }
}
