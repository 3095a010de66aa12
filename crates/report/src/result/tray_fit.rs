//! How the tray suits the mouth, in a result.

use super::common::Side;
use crate::text::rounding::figure;
use judge::words;
use measure::ImpressionMeasurement;
use measure::tray_fit::{Amount, Seating, ZoneFit};
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

impl TrayFit {
    /// How the registered tray suits; `None` without one.
    pub(super) fn of(measurement: &ImpressionMeasurement) -> Option<Self> {
        let found = measurement.tray_fit.as_ref()?;
        Some(Self {
            zones: found.zones.iter().map(TrayZone::of).collect(),
            seating: found.seating.as_ref().map(TraySeating::of),
        })
    }
}

impl TrayZone {
    fn of(zone: &ZoneFit) -> Self {
        let value = |amount: Option<Amount>| amount.map(|amount| figure(amount.value));
        let doubt = |amount: Option<Amount>| amount.map(|amount| figure(amount.uncertainty));
        Self {
            zone: words::zone(zone.zone).to_owned(),
            side: zone.side.map(Into::into),
            edge_to_border_mm: value(zone.edge_to_border_mm),
            edge_to_border_uncertainty_mm: doubt(zone.edge_to_border_mm),
            cover_mm: value(zone.cover_mm),
            cover_uncertainty_mm: doubt(zone.cover_mm),
        }
    }
}

impl TraySeating {
    fn of(seating: &Seating) -> Self {
        Self {
            right_mm: figure(seating.right_mm.value),
            right_uncertainty_mm: figure(seating.right_mm.uncertainty),
            anterior_mm: figure(seating.anterior_mm.value),
            anterior_uncertainty_mm: figure(seating.anterior_mm.uncertainty),
            front_up_deg: figure(seating.front_up_deg.value),
            front_up_uncertainty_deg: figure(seating.front_up_deg.uncertainty),
            right_up_deg: figure(seating.right_up_deg.value),
            right_up_uncertainty_deg: figure(seating.right_up_deg.uncertainty),
            turned_right_deg: figure(seating.turned_right_deg.value),
            turned_right_uncertainty_deg: figure(seating.turned_right_deg.uncertainty),
            wider_mm: figure(seating.wider_mm.value),
            wider_uncertainty_mm: figure(seating.wider_mm.uncertainty),
            cover_sd_mm: figure(seating.cover_sd_mm),
            even_sd_mm: figure(seating.even_sd_mm),
        }
    }
}
