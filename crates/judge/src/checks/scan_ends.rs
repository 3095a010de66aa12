//! `scan-ends`: the scan ends before the border turns over.

use super::Check;
use super::along_border::{Told, on_flange, place};
use crate::decision::Conformity;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;
use crate::stretch::{Doubt, doubtful};
use measure::{Missing, Station};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(border) = &subject.measurement().border else {
        return Vec::new();
    };
    let least_mm = subject.limit(LimitKey::LeastStretch).value;
    let doubt = |number: usize| {
        was_not_seen(&border.stations[number]).then_some(Doubt {
            conformity: Conformity::NotConforming,
            margin: 0.0,
        })
    };
    doubtful(border, least_mm, doubt)
        .into_iter()
        .map(|mut found| {
            found.stretch.worst = middle(border.stations.len(), found.stretch);
            let Told { range, .. } = Told::of(subject, border, found.stretch);
            let instruction = format!(
                "No border that turns over was scanned {range}. Scan this stretch again, from the \
                 outer side too: whether the border itself is short there was not judged."
            );
            Finding {
                place: Some(place(&border.stations[found.stretch.worst])),
                stretch: Some(found.stretch),
                ..subject.finding(Check::ScanEnds, Severity::Borderline, instruction)
            }
        })
        .collect()
}

/// Whether no border that turns over was seen at a station.
pub(super) fn was_not_seen(station: &Station) -> bool {
    let height_missing =
        [Missing::ScanEnds, Missing::NoSurface].map(|why| station.flange_height == Err(why));
    let one_face_alone = on_flange(station) && station.border_radius == Err(Missing::ScanEnds);
    station.scan_ends || height_missing.contains(&true) || one_face_alone
}

/// No station is worse than another: the middle one stands for all.
fn middle(count: usize, stretch: crate::stretch::Stretch) -> usize {
    let last = if stretch.to < stretch.from {
        stretch.to + count
    } else {
        stretch.to
    };
    (stretch.from + last) / 2 % count.max(1)
}
