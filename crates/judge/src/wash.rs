//! Whether a wash mended the bare and thin places of its first pass.

use crate::decision::{Bound, Conformity, decide};
use crate::protocol::{Limit, LimitKey, Protocol};
use measure::SpotKind;
use measure::pair::PlaceNow;

/// What became of a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlaceState {
    /// It is covered now.
    Resolved,
    /// It is as bare or thin as before, or nearly so.
    StillOpen,
    /// Its cover is too near the limit to tell.
    Unclear,
    /// The wash was not scanned there.
    NotSeen,
}

/// The limit that a place must meet to be resolved.
pub(crate) fn limit_of(kind: SpotKind, protocol: &Protocol) -> &Limit {
    protocol.limit(match kind {
        SpotKind::ShowThrough => LimitKey::ShowThrough,
        SpotKind::Thin => LimitKey::ThinCover,
    })
}

/// What became of a place, and what its cover says about the limit.
pub(crate) fn state(place: &PlaceNow, protocol: &Protocol) -> (PlaceState, Option<Conformity>) {
    let Some(cover_mm) = place.cover_mm else {
        return (PlaceState::NotSeen, None);
    };
    let limit = limit_of(place.kind, protocol);
    let conformity = decide(cover_mm, place.uncertainty_mm, Bound::AtLeast(limit.value));
    let state = match conformity {
        Conformity::Conforming => PlaceState::Resolved,
        Conformity::NotConforming => PlaceState::StillOpen,
        Conformity::Borderline => PlaceState::Unclear,
    };
    (state, Some(conformity))
}
