//! `scan-ends`: the scan ends before the border turns over.

use super::shared::stations::{StretchWords, place, was_not_seen};
use crate::check::Check;
use crate::decision::Conformity;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::stretch::{Doubt, Stretch, doubtful};
use crate::subject::Subject;
use measure::Border;
use messages::message;

pub(super) fn judge(subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
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
            let StretchWords { range, .. } = StretchWords::of(subject, border, found.stretch);
            let instruction = message!("scan-ends", range = range);
            Finding {
                place: Some(place(&border.stations[found.stretch.worst])),
                stretch: Some(found.stretch),
                ..subject.finding(Check::ScanEnds, Severity::Borderline, instruction)
            }
        })
        .collect()
}

/// No station is worse than another: the middle one represents them.
fn middle(count: usize, stretch: Stretch) -> usize {
    let last = if stretch.to < stretch.from {
        stretch.to + count
    } else {
        stretch.to
    };
    (stretch.from + last) / 2 % count.max(1)
}
