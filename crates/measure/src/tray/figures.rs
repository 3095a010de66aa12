//! Where a tray scan lies: plain data.

use crate::amount::Amount;
use crate::not_an_impression::NotAnImpression;
use crate::words::{Side, Zone};
use messages::{Message, Value, message, said_by_the_catalogue};
use nalgebra::{Isometry3, Point3};

/// Scans coarser than this (median edge, mm) give no cover: a thin place is
/// then easily narrower than a triangle.
pub const COARSEST_EDGE_FOR_COVER_MM: f64 = 1.0;

/// Why a tray scan could not be placed in the impression.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum TrayNotPlaced {
    NoTray,
    NoOuterSurface,
    LittleOuterSurface {
        outer_cm2: f64,
        tissue_cm2: f64,
    },
    DoesNotFit {
        fitting_percent: f64,
    },
    OtherSize {
        tray_mm: f64,
        impression_mm: f64,
    },
    Mirrored,
    Ambiguous {
        spread_mm: f64,
    },
    TooCoarse {
        median_edge_mm: f64,
    },
    NotAnImpression(NotAnImpression),
    Pieces(PiecesNotPlaced),
    NoneOfShelf {
        trays: usize,
        nearest: Option<String>,
    },
    AlikeOnShelf {
        one: String,
        other: String,
    },
}

impl TrayNotPlaced {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NoTray => message!("no-tray-scan"),
            Self::NoOuterSurface => message!("no-tray-outer-surface"),
            Self::LittleOuterSurface {
                outer_cm2,
                tissue_cm2,
            } => message!(
                "no-tray-little-outer-surface",
                outer = Value::number(*outer_cm2, 0),
                tissue = Value::number(*tissue_cm2, 0)
            ),
            Self::DoesNotFit { fitting_percent } => message!(
                "no-tray-does-not-fit",
                share = Value::number(*fitting_percent, 0)
            ),
            Self::OtherSize {
                tray_mm,
                impression_mm,
            } => message!(
                "no-tray-other-size",
                tray = Value::number(*tray_mm, 0),
                impression = Value::number(*impression_mm, 0)
            ),
            Self::Mirrored => message!("no-tray-mirrored"),
            Self::Ambiguous { spread_mm } => {
                message!("no-tray-ambiguous", spread = Value::number(*spread_mm, 2))
            }
            Self::TooCoarse { median_edge_mm } => message!(
                "no-tray-too-coarse",
                edge = Value::number(*median_edge_mm, 2),
                most = Value::figure(COARSEST_EDGE_FOR_COVER_MM.to_string())
            ),
            Self::NotAnImpression(what) => message!("reason-not-an-impression", what = what),
            Self::Pieces(why) => why.message(),
            Self::NoneOfShelf { trays, nearest } => match nearest {
                Some(nearest) => message!(
                    "no-tray-of-shelf-nearest",
                    trays = *trays,
                    nearest = nearest.as_str()
                ),
                None => message!("no-tray-of-shelf", trays = *trays),
            },
            Self::AlikeOnShelf { one, other } => {
                message!("no-tray-alike", one = one.as_str(), other = other.as_str())
            }
        }
    }
}

said_by_the_catalogue!(TrayNotPlaced);

/// Why the pieces of a tray could not be placed.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum PiecesNotPlaced {
    NoImpression,
    NoOuterSurface,
    NotFound { piece: usize },
    Ambiguous { piece: usize, spread_mm: f64 },
}

impl PiecesNotPlaced {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NoImpression => message!("pieces-no-impression"),
            Self::NoOuterSurface => message!("pieces-no-outer-surface"),
            Self::NotFound { piece } => message!("pieces-not-found", piece = *piece),
            Self::Ambiguous { piece, spread_mm } => message!(
                "pieces-ambiguous",
                piece = *piece,
                spread = Value::number(*spread_mm, 1)
            ),
        }
    }
}

said_by_the_catalogue!(PiecesNotPlaced);

/// Where the tray scan lies in the impression scan.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayRegistration {
    /// `impression_from_tray * point_in_tray_scan` lies in impression scan coordinates (mm),
    /// by the rigid motion that fits most of the tray.
    pub impression_from_tray: Isometry3<f64>,
    /// Root mean square distance of the outer surface points that lie on the tray, mm.
    pub rms_mm: f64,
    /// Expanded uncertainty (k = 2) of the place to which that motion takes the tray,
    /// but for a bend, mm.
    pub uncertainty_mm: f64,
    /// Area of the impression's outer surface that lies on the tray, mm².
    pub tray_seen_mm2: f64,
    /// Share of the outer surface that lies on the tray, 0 to 1.
    pub fitting_share: f64,
    /// Share of the outer surface that lies inside the tray's wall, 0 to 1:
    /// next to nothing for the right tray, rigid and unaltered.
    pub behind_share: f64,
    /// How far each limb bent between its scan and the impression: the patient's
    /// right, then the left.
    pub limbs: [LimbBend; 2],
}

/// How far one limb moved beside the front: of a tray, from where it was scanned to where it
/// lay in the impression; of an impression, from where it was sent to where it arrived.
#[derive(Debug, Clone, PartialEq)]
pub struct LimbBend {
    /// The patient's side.
    pub side: Side,
    /// Where the limb ends at the back, scan coordinates, mm.
    pub end: Point3<f64>,
    /// Part of the arch there.
    pub zone: Zone,
    /// Of its end, toward the tissue, mm.
    pub end_toward_tissue_mm: Amount,
    /// Of its end, away from the midline, mm.
    pub end_outward_mm: Amount,
    /// Of its middle, toward the tissue, mm.
    pub middle_toward_tissue_mm: Amount,
    /// Of its middle, away from the midline, mm.
    pub middle_outward_mm: Amount,
}

impl LimbBend {
    /// How far its end moved in all, by the law of propagation.
    #[must_use]
    pub fn end_moved(&self) -> Amount {
        let (up, out) = (self.end_toward_tissue_mm, self.end_outward_mm);
        let value = up.value.hypot(out.value);
        let uncertainty = if value > 0.0 {
            (up.value * up.uncertainty).hypot(out.value * out.uncertainty) / value
        } else {
            up.uncertainty.max(out.uncertainty)
        };
        Amount { value, uncertainty }
    }
}
