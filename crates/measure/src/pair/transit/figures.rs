//! What two scans of one impression show of its way from one to the other: plain data.

use crate::amount::Amount;
use crate::border::{Measured, NoBorder};
use crate::cover::SpotKind;
use crate::not_an_impression::NotAnImpression;
use crate::tissue::DefectKind;
use crate::tray::LimbBend;
use crate::words::{Arch, Side, Zone};
use messages::{Message, Value, message, said_by_the_catalogue};
use nalgebra::Point3;

/// Why a scan of an impression as it was sent could not be compared with the scan of it as
/// it arrived.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoTransit {
    SameFile,
    ArrivedNotAnImpression(NotAnImpression),
    SentNotAnImpression(NotAnImpression),
    OtherJaw { sent: Arch },
    NotThisImpression { fitting_percent: f64 },
    NoCrestLine(NoBorder),
}

impl NoTransit {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::SameFile => message!("transit-same-file"),
            Self::ArrivedNotAnImpression(what) => message!("transit-arrived-none", what = what),
            Self::SentNotAnImpression(what) => message!("transit-sent-none", what = what),
            Self::OtherJaw { sent } => message!("transit-other-jaw", arch = sent.name()),
            Self::NotThisImpression { fitting_percent } => message!(
                "transit-not-this",
                share = Value::number(*fitting_percent, 0)
            ),
            Self::NoCrestLine(why) => message!("transit-no-crest-line", why = why),
        }
    }
}

said_by_the_catalogue!(NoTransit);

/// How an impression changed from the scan in which it was sent to the scan in which it
/// arrived.
#[derive(Debug, Clone, PartialEq)]
pub struct Transit {
    /// How much larger all of it is, percent; negative where it is smaller.
    pub larger_percent: Amount,
    /// How much farther apart its heels lie, bend and size together, mm; negative where they
    /// are nearer.
    pub heels_apart_mm: Amount,
    /// Length over which that is, mm.
    pub between_heels_mm: f64,
    /// How far each half bent beside the front, but for the even change of size: the
    /// patient's right, then the left.
    pub bends: [LimbBend; 2],
    /// Share of the tissue surface that lies on the scan as sent once bend and size are taken
    /// off, 0 to 1.
    pub unchanged_share: f64,
    /// Expanded uncertainty (k = 2) of a depth, mm: median over the tissue surface. A change
    /// that is smaller is not seen.
    pub uncertainty_mm: f64,
    /// Places that changed by themselves, deepest first.
    pub damage: Vec<Damage>,
    /// What became of each place that the scan as sent shows.
    pub places: Vec<PlaceThen>,
}

/// What happened to a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum DamageKind {
    /// Material is missing at the border.
    Torn,
    /// The surface was pressed in, or material is missing away from the border.
    PressedIn,
    /// Something sticks to the surface, or material was pushed up.
    StuckOn,
}

/// A place that changed by itself.
#[derive(Debug, Clone, PartialEq)]
pub struct Damage {
    /// What happened.
    pub kind: DamageKind,
    /// Where it is most, coordinates of the scan as it arrived, mm.
    pub at: Point3<f64>,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// How far the surface moved there, mm: negative where material is missing or was
    /// pressed in.
    pub depth: Measured,
    /// Area over which it surely moved, mm².
    pub area_mm2: f64,
}

/// What a scan shows at a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlaceKind {
    /// Tray that shows through, or thin material.
    Spot(SpotKind),
    /// A defect of the tissue surface.
    Defect(DefectKind),
    /// A stretch where the border falls below its neighbourhood.
    ShortBorder,
}

/// A place that the scan as sent shows, looked for in the scan as it arrived.
#[derive(Debug, Clone, PartialEq)]
pub struct PlaceThen {
    /// What it was.
    pub kind: PlaceKind,
    /// Where it would lie now, coordinates of the scan as it arrived, mm.
    pub at: Point3<f64>,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Whether the scan as it arrived shows it again; `None` where that was not measured or
    /// not scanned.
    pub is_there: Option<bool>,
}
