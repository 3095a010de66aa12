//! Which tray of the shelf an impression was taken in, in a result.

use crate::text::rounding::{figure, share};
use check::{CheckedShelf, NamedTrial};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The tray of the shelf that an impression was taken in, and how certain that is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrayChosen {
    /// How many trays are on the shelf.
    pub trays: u64,
    /// The tray that was found.
    pub best: TrayTrial,
    /// The one that comes next; `null` where no other lies anywhere on the impression.
    pub next: Option<TrayTrial>,
}

/// How a tray of the shelf lies on the outer surface of an impression.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrayTrial {
    /// The name of its file on the shelf, without the ending.
    pub name: String,
    /// Share of the outer surface that lies on it, 0 to 1.
    pub fitting_share: f64,
    /// Root mean square distance of that share from it, mm.
    pub rms_mm: f64,
    /// Share of the outer surface that would lie inside its wall, 0 to 1.
    pub behind_share: f64,
}

impl TrayChosen {
    /// `None` where no tray was found.
    pub(super) fn of(shelf: &CheckedShelf) -> Option<Self> {
        let (best, next) = shelf.chosen.as_ref()?;
        Some(Self {
            trays: shelf.trays as u64,
            best: TrayTrial::of(best),
            next: next.as_ref().map(TrayTrial::of),
        })
    }
}

impl TrayTrial {
    fn of(named: &NamedTrial) -> Self {
        Self {
            name: named.name.clone(),
            fitting_share: share(named.trial.fitting_share),
            rms_mm: figure(named.trial.rms_mm),
            behind_share: share(named.trial.behind_share),
        }
    }
}
