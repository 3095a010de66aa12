//! How much of the tray to relieve at a place of little cover.

use crate::protocol::{LimitKey, Protocol};
use measure::tray_fit::Amount;
use measure::{PlaceOnTray, Spot};

/// Less than this nobody takes off with a handpiece, mm (common practice, no source).
const LEAST_MM: f64 = 0.1;

/// What to take off the tray at a place, and what that leaves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Relief {
    /// Depth to take off, so that the wanted room is there at the least cover, mm.
    pub depth_mm: Amount,
    /// What then is left of the tray's wall, mm; `None` where its thickness is not known.
    pub left_mm: Option<Amount>,
    /// Whether less is left than the protocol asks for.
    pub is_too_deep: bool,
}

impl Relief {
    /// Of a patch, with its place on the tray where the tray was scanned; `None` where the
    /// patch has no cover in figures.
    #[must_use]
    pub fn of(spot: &Spot, on_tray: Option<&PlaceOnTray>, protocol: &Protocol) -> Option<Self> {
        let room_mm = protocol.value(LimitKey::ReliefRoom);
        let depth_mm = Amount {
            value: (room_mm - spot.min_mm?).max(LEAST_MM),
            uncertainty: spot.min_uncertainty_mm.unwrap_or(0.0),
        };
        let wall = on_tray.and_then(|on_tray| on_tray.wall_mm);
        let left_mm = wall.map(|wall| Amount {
            value: wall.value - depth_mm.value,
            uncertainty: wall.uncertainty.hypot(depth_mm.uncertainty),
        });
        let least_mm = protocol.value(LimitKey::TrayWallLeft);
        Some(Self {
            depth_mm,
            left_mm,
            is_too_deep: left_mm.is_some_and(|left| left.value < least_mm),
        })
    }
}
