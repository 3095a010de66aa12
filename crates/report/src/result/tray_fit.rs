//! How the tray suits the mouth, in a result.

use super::Side;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How the tray suits the mouth and how it stood.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrayFit {
    /// Each part of the arch.
    pub zones: Vec<TrayZone>,
    /// Beside the place of most even cover; `null` where that was not found.
    pub seating: Option<TraySeating>,
}

/// The tray in one part of the arch.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrayZone {
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Median distance from the tray's edge to the border, mm; `null` where there is no border.
    pub edge_to_border_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub edge_to_border_uncertainty_mm: Option<f64>,
    /// Median cover, mm; `null` where it is not known.
    pub cover_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub cover_uncertainty_mm: Option<f64>,
}

/// Where the tray stood beside the place where its cover would have been most
/// even. Each figure is followed by its expanded uncertainty (k = 2).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs, reason = "an uncertainty is that of the figure above it")]
pub struct TraySeating {
    /// Too far to the patient's right, mm; negative to the left.
    pub right_mm: f64,
    pub right_uncertainty_mm: f64,
    /// Too far to the front, mm.
    pub anterior_mm: f64,
    pub anterior_uncertainty_mm: f64,
    /// Front nearer to the tissue than the back, degrees.
    pub front_up_deg: f64,
    pub front_up_uncertainty_deg: f64,
    /// The patient's right nearer to the tissue than the left, degrees.
    pub right_up_deg: f64,
    pub right_up_uncertainty_deg: f64,
    /// Front turned toward the patient's right, degrees.
    pub turned_right_deg: f64,
    pub turned_right_uncertainty_deg: f64,
    /// Wider than would have been even, mm over the width of the arch.
    pub wider_mm: f64,
    pub wider_uncertainty_mm: f64,
    /// Standard deviation of the cover, mm.
    pub cover_sd_mm: f64,
    /// What would be left of it at the place of most even cover, mm.
    pub even_sd_mm: f64,
}
