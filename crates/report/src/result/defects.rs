//! The tissue surface in a result: its defects, and how well it was scanned.

use super::common::{Point, Side};
use super::numbering::defect_id;
use crate::text::rounding::{figure, point};
use judge::words;
use mesh::Unit;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What a surface defect is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
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

/// A surface defect.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Defect {
    /// Name within the case: D1, D2, …
    pub id: String,
    /// What it is.
    pub kind: DefectKind,
    /// Its centre, where the surface would be without it.
    pub centre: Point,
    /// Area of its opening, mm².
    pub area_mm2: f64,
    /// Depth or height, mm; `null` for a hole.
    pub depth_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the depth, mm.
    pub depth_uncertainty_mm: Option<f64>,
    /// Width at the surface, mm.
    pub across_mm: f64,
    /// Expanded uncertainty (k = 2) of the width, mm.
    pub across_uncertainty_mm: f64,
    /// Length of a fold, mm; `null` for anything else.
    pub length_mm: Option<f64>,
    /// Its outline: of a void or nodule the circle of the same area, of a hole
    /// its rim (both closed), of a fold the line along it.
    #[serde(default)]
    pub outline: Vec<Point>,
    /// Distance to the edge of the tissue surface, mm; `null` where there is none.
    pub from_edge_mm: Option<f64>,
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
}

/// How one part of the arch was scanned.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ZoneScan {
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Scanned area, mm².
    pub area_mm2: f64,
    /// Scanned share, 0 to 1, as far as holes tell.
    pub coverage: f64,
    /// Area that was scanned twice and stitched badly, mm²; both layers count.
    pub doubled_mm2: f64,
    /// Median edge, mm.
    pub median_edge_mm: f64,
    /// Standard deviation of the noise along the normal, mm.
    pub noise_mm: f64,
    /// Width of the smallest void that can be found here, mm.
    pub least_void_across_mm: f64,
    /// Depth of the shallowest void that can be found here, mm.
    pub least_void_depth_mm: f64,
}

impl From<measure::DefectKind> for DefectKind {
    fn from(kind: measure::DefectKind) -> Self {
        match kind {
            measure::DefectKind::Void => Self::Void,
            measure::DefectKind::Nodule => Self::Nodule,
            measure::DefectKind::Fold => Self::Fold,
            measure::DefectKind::Hole => Self::Hole,
        }
    }
}

impl Defect {
    /// A defect with this number in the case, from 0.
    pub(super) fn of(found: &measure::Defect, number: usize, unit: Unit) -> Self {
        Self {
            id: defect_id(number),
            kind: found.kind.into(),
            centre: point(&found.centre, unit),
            area_mm2: figure(found.area_mm2),
            depth_mm: found.depth_mm.map(figure),
            depth_uncertainty_mm: found.depth_uncertainty_mm.map(figure),
            across_mm: figure(found.across_mm),
            across_uncertainty_mm: figure(found.across_uncertainty_mm),
            length_mm: found.length_mm.map(figure),
            outline: found.outline.iter().map(|p| point(p, unit)).collect(),
            from_edge_mm: Some(found.from_edge_mm)
                .filter(|mm| mm.is_finite())
                .map(figure),
            zone: words::zone(found.zone).to_owned(),
            side: found.side.map(Into::into),
        }
    }
}

impl ZoneScan {
    /// How a part of the arch was scanned.
    pub(super) fn of(zone: &measure::ZoneScan) -> Self {
        Self {
            zone: words::zone(zone.zone).to_owned(),
            side: zone.side.map(Into::into),
            area_mm2: figure(zone.area_mm2),
            coverage: figure(zone.coverage()),
            doubled_mm2: figure(zone.doubled_mm2),
            median_edge_mm: figure(zone.median_edge_mm),
            noise_mm: figure(zone.noise_mm),
            least_void_across_mm: figure(zone.least_across_mm),
            least_void_depth_mm: figure(zone.least_depth_mm),
        }
    }
}
