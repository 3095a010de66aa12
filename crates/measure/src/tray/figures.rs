//! Where a tray scan lies: plain data.

use crate::amount::Amount;
use crate::not_an_impression::NotAnImpression;
use crate::words::{Side, Zone};
use nalgebra::{Isometry3, Point3};
use thiserror::Error;

/// Scans coarser than this (median edge, mm) give no cover: a thin place is
/// then easily narrower than a triangle.
pub const COARSEST_EDGE_FOR_COVER_MM: f64 = 1.0;

/// Why a tray scan could not be placed in the impression.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum TrayNotPlaced {
    #[error("no tray scan was given")]
    NoTray,
    #[error(
        "the scan shows the tissue side only, so no tray surface is seen to register the tray scan on"
    )]
    NoOuterSurface,
    #[error(
        "the scan shows {outer_cm2:.0} cm² of outer surface beside {tissue_cm2:.0} cm² of tissue surface, too little to register the tray scan on"
    )]
    LittleOuterSurface { outer_cm2: f64, tissue_cm2: f64 },
    #[error(
        "the tray scan does not fit the outer surface of the impression: only {fitting_percent:.0} % of it lies on the tray"
    )]
    DoesNotFit { fitting_percent: f64 },
    #[error(
        "the tray scan is of another size: {tray_mm:.0} mm across, the impression with its tray {impression_mm:.0} mm"
    )]
    OtherSize { tray_mm: f64, impression_mm: f64 },
    #[error(
        "the tray scan fits the impression only as in a mirror: one of the two scans is mirrored, and right and left are not certain"
    )]
    Mirrored,
    #[error(
        "the tray scan could be placed in more than one way; the placings differ by {spread_mm:.2} mm"
    )]
    Ambiguous { spread_mm: f64 },
    #[error(
        "the median edge is {median_edge_mm:.2} mm, too coarse to measure the material thickness ({COARSEST_EDGE_FOR_COVER_MM} mm at most)"
    )]
    TooCoarse { median_edge_mm: f64 },
    #[error("not an impression: {0}")]
    NotAnImpression(NotAnImpression),
    #[error(transparent)]
    Pieces(PiecesNotPlaced),
    #[error(
        "none of the {trays} trays on the shelf fits the outer surface of the impression{}",
        nearest.as_ref().map_or_else(String::new, |name| format!(" (the nearest is '{name}')"))
    )]
    NoneOfShelf {
        trays: usize,
        nearest: Option<String>,
    },
    #[error("two trays on the shelf fit the impression alike: '{one}' and '{other}'")]
    AlikeOnShelf { one: String, other: String },
}

/// Why the pieces of a tray could not be placed.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum PiecesNotPlaced {
    #[error("the scan shows no impression on which the pieces of the tray could be placed")]
    NoImpression,
    #[error("the scan shows too little of the outside to place the pieces of the tray")]
    NoOuterSurface,
    #[error("piece {piece} of the tray is not found on the outside of the impression")]
    NotFound { piece: usize },
    #[error(
        "piece {piece} of the tray fits the outside of the impression in more than one way, {spread_mm:.1} mm apart: too little of it shows"
    )]
    Ambiguous { piece: usize, spread_mm: f64 },
}

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
