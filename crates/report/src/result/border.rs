//! The border in a result.

use super::Point;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The border line.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Border {
    /// Whether it is one closed line.
    pub closed: bool,
    /// Its length, mm.
    pub length_mm: f64,
    /// Stations along it.
    pub stations: Vec<Station>,
}

/// One station of the border.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Station {
    /// Arc-length fraction, 0 to 1, from the labial midline toward the patient's left.
    pub s: f64,
    /// Part of the arch.
    pub zone: String,
    /// The border point.
    pub point: Point,
    /// Crest to border along the seating axis, mm.
    pub flange_height_mm: Option<f64>,
    /// Tissue face to outer face, mm.
    pub flange_thickness_mm: Option<f64>,
    /// Radius of the border's roll, mm.
    pub border_radius_mm: Option<f64>,
    /// Distance from the border to the tray's edge, mm.
    pub overlap_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the height, mm.
    pub uncertainty_mm: Option<f64>,
}
