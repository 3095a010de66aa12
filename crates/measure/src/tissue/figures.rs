//! What is found on the tissue surface: plain data.

use crate::words::{Side, Zone};
use messages::{Message, Value, message, said_by_the_catalogue};
use nalgebra::Point3;

/// Coarser scans (median edge, mm) show voids of 3 mm and more only, and no fold.
pub(super) const COARSEST_EDGE_FOR_DEFECTS_MM: f64 = 0.75;

/// Why the tissue surface was not looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoTissue {
    TooCoarse { median_edge_mm: f64 },
}

impl NoTissue {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::TooCoarse { median_edge_mm } => message!(
                "no-tissue-too-coarse",
                edge = Value::number(*median_edge_mm, 2),
                most = Value::figure(COARSEST_EDGE_FOR_DEFECTS_MM.to_string())
            ),
        }
    }
}

said_by_the_catalogue!(NoTissue);

/// What a surface defect is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum DefectKind {
    /// A pit that trapped air left.
    Void,
    /// A bump.
    Nodule,
    /// A narrow groove where material met without joining.
    Fold,
    /// No scanned surface.
    Hole,
}

/// A defect of the tissue surface.
#[derive(Debug, Clone, PartialEq)]
pub struct Defect {
    /// What it is.
    pub kind: DefectKind,
    /// Its middle, where the surface would be without it; scan coordinates, mm.
    pub centre: Point3<f64>,
    /// Area of its opening, mm².
    pub area_mm2: f64,
    /// Depth (of a nodule, height), mm; a hole has none.
    pub depth_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the depth, mm.
    pub depth_uncertainty_mm: Option<f64>,
    /// Width at the surface, mm: the diameter of the circle of the same area,
    /// or the width of a fold.
    pub across_mm: f64,
    /// Expanded uncertainty (k = 2) of the width, mm.
    pub across_uncertainty_mm: f64,
    /// Length of a fold, mm.
    pub length_mm: Option<f64>,
    /// Its outline, scan coordinates, mm: of a void or nodule the circle of the
    /// same area, of a hole its rim (both closed), of a fold the line along it.
    pub outline: Vec<Point3<f64>>,
    /// Distance from its middle to the edge of the tissue surface, which is
    /// the border or where the scan ends, mm.
    pub from_edge_mm: f64,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
}

/// The tissue surface: its defects, and how well it was scanned.
#[derive(Debug, Clone, PartialEq)]
pub struct TissueSurface {
    /// Defects, by kind; of each kind the widest first.
    pub defects: Vec<Defect>,
    /// Each part of the arch that was scanned.
    pub zones: Vec<ZoneScan>,
    /// Loose pieces of scan, apart from the main one.
    pub loose_pieces: usize,
}

/// How one part of the arch was scanned.
#[derive(Debug, Clone, PartialEq)]
pub struct ZoneScan {
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Scanned area, mm².
    pub area_mm2: f64,
    /// Area of the holes in it, mm².
    pub missing_mm2: f64,
    /// Area that was scanned twice and stitched badly, mm²; both layers count.
    pub doubled_mm2: f64,
    /// Median edge, mm.
    pub median_edge_mm: f64,
    /// Standard deviation of the noise along the normal, mm.
    pub noise_mm: f64,
    /// Width of the smallest void that can be found here, mm.
    pub least_across_mm: f64,
    /// Depth of the shallowest void that can be found here, mm.
    pub least_depth_mm: f64,
}

impl ZoneScan {
    /// Scanned share of the part, 0 to 1, as far as holes tell; what was cut
    /// off at its edge is not known.
    #[must_use]
    pub fn coverage(&self) -> f64 {
        self.area_mm2 / (self.area_mm2 + self.missing_mm2).max(f64::MIN_POSITIVE)
    }
}
