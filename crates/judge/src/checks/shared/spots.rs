//! Patches of little cover, or of the tray's colour.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Place};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Cover, Spot};
use messages::Message;

/// A patch as the cover map shows it, and what its least cover says about the
/// limit that it is judged by.
pub(crate) struct LeastCover {
    pub(crate) conformity: Conformity,
    pub(crate) severity: Severity,
    /// The least cover beside its limit.
    pub(crate) figure: Figure,
}

impl LeastCover {
    /// The finding on the patch of a number.
    pub(crate) fn finding(
        self,
        subject: &Subject<'_>,
        check: Check,
        number: usize,
        instruction: Message,
    ) -> Finding {
        let spot = &subject.measurement().spots[number];
        Finding {
            place: Some(place(spot)),
            figure: Some(self.figure),
            spot: Some(number),
            ..subject.finding(check, self.severity, instruction)
        }
    }
}

/// Every patch that is a place of its own. Tray that shows at a declared stop
/// is as it should be, and the thin ring of a show-through is the same place as
/// that.
pub(crate) fn places<'a>(subject: &Subject<'a>) -> impl Iterator<Item = (usize, &'a Spot)> {
    let spots = subject.measurement().spots.iter().enumerate();
    spots.filter(|(_, spot)| spot.stop.is_none() && spot.around.is_none())
}

/// What `key` has to say about the least cover of a patch. Each is judged as
/// show-through and as thin; the limit that is missed more severely speaks of
/// it, so that one place is one finding.
pub(crate) fn judged_by(
    key: LimitKey,
    subject: &Subject<'_>,
    cover: &Cover,
    number: usize,
) -> Option<LeastCover> {
    [LimitKey::ShowThrough, LimitKey::ThinCover]
        .into_iter()
        .filter_map(|key| Some((key, least_cover(key, subject, cover, number)?)))
        .min_by_key(|(_, least)| least.severity)
        .filter(|(speaks, _)| *speaks == key)
        .map(|(_, least)| least)
}

fn least_cover(
    key: LimitKey,
    subject: &Subject<'_>,
    cover: &Cover,
    number: usize,
) -> Option<LeastCover> {
    let spot = &subject.measurement().spots[number];
    let min_mm = spot.min_mm?;
    let limit = subject.limit(key);
    let doubt_mm = spot.min_uncertainty_mm.unwrap_or(cover.uncertainty_mm);
    let conformity = decide(min_mm, doubt_mm, Bound::AtLeast(limit.value));
    Some(LeastCover {
        conformity,
        severity: Severity::of(conformity, limit.level)?,
        figure: Figure::beside(limit, Bound::AtLeast, min_mm, Some(doubt_mm)),
    })
}

/// Whether a patch of the tray's colour is clearly more than a speck.
pub(crate) fn area_conformity(subject: &Subject<'_>, spot: &Spot) -> Conformity {
    let most = Bound::AtMost(subject.limit(LimitKey::LeastSpotArea).value);
    decide(spot.area_mm2, spot.area_uncertainty_mm2, most)
}

/// Where a patch is.
pub(crate) fn place(spot: &Spot) -> Place {
    Place {
        at: spot.centre,
        zone: spot.zone,
        side: spot.side,
    }
}
