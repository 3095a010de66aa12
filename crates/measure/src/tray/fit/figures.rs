//! How stock trays suit a mouth: plain data.

use crate::amount::Amount;
use crate::words::{Arch, Side, Zone};
use nalgebra::{Isometry3, Point3};

/// Clearance that a stock tray is wanted to leave, mm: the border of the tray 2 mm short of
/// the vestibule (course slides, BORDER-01), a spacer of 2 to 3 mm (MAT-06, MAT-07).
pub const WANTED_CLEARANCE_MM: std::ops::RangeInclusive<f64> = 2.0..=3.0;

/// How the trays of a shelf suit a mouth.
#[derive(Debug, Clone, PartialEq)]
pub struct ShelfFit {
    /// The jaw.
    pub arch: Arch,
    /// Whether the scan shows the mouth or a cast, and no impression.
    pub is_positive: bool,
    /// Each tray, in the order of the shelf.
    pub trays: Vec<TraySuits>,
}

/// How one tray suits.
#[derive(Debug, Clone, PartialEq)]
pub enum TraySuits {
    /// It is a tray of the other jaw.
    OtherJaw,
    /// Its scan shows no tray, or it lies nowhere over the tissue.
    NotPlaced,
    /// What room it leaves.
    Placed(Box<Clearance>),
}

/// The room between a tray and the tissue, in the place of most even clearance.
#[derive(Debug, Clone, PartialEq)]
pub struct Clearance {
    /// `tray_from_scan * point` lies in the tray's scan, mm.
    pub tray_from_scan: Isometry3<f64>,
    /// The least over the tray, but for the nearest 0.2 % of the tissue, mm; below 0 where
    /// the tray reaches into it.
    pub least_mm: Amount,
    /// Median over the tray, mm.
    pub median_mm: Amount,
    /// Half of what the middle 68 % of the clearances over the tray span, mm: how uneven it is.
    pub unevenness_mm: f64,
    /// Share of the tissue over the tray with the wanted clearance, 0 to 1.
    pub wanted_share: f64,
    /// Share of the tissue surface that lies over the tray, 0 to 1.
    pub over_tray_share: f64,
    /// Area of that, mm².
    pub over_tray_mm2: f64,
    /// Where the tray touches the tissue.
    pub touches: Vec<Touch>,
    /// How far the tray's edge ends short of the border in each part of the arch.
    pub edges: Vec<EdgeToBorder>,
}

/// Where a tray touches, in one part of the arch.
#[derive(Debug, Clone, PartialEq)]
pub struct Touch {
    /// Part of the arch.
    pub zone: Zone,
    /// The patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Greatest depth to which the tray reaches into the tissue, mm.
    pub depth_mm: f64,
    /// Area over which it does, mm².
    pub area_mm2: f64,
    /// Where it is deepest, scan coordinates, mm.
    pub at: Point3<f64>,
}

/// From the tray's edge to the border of the impression, in one part of the arch.
#[derive(Debug, Clone, PartialEq)]
pub struct EdgeToBorder {
    /// Part of the arch.
    pub zone: Zone,
    /// The patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Least, mm; below 0 where the edge reaches past the border.
    pub least_mm: f64,
    /// Median, mm.
    pub median_mm: f64,
}
