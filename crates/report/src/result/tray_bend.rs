//! How the tray bent, in a result.

use super::common::{Point, Side};
use crate::text::rounding::{figure, point};
use mesh::Unit;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How far one limb of the tray moved beside its front, from where it was scanned
/// to where it lay in the impression; uncertainties are expanded (k = 2).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LimbBend {
    /// The patient's side.
    pub side: Side,
    /// Where the limb ends at the back.
    pub end: Point,
    /// Of its end, toward the tissue, mm.
    pub end_toward_tissue_mm: f64,
    /// Its uncertainty, mm.
    pub end_toward_tissue_uncertainty_mm: f64,
    /// Of its end, away from the midline, mm.
    pub end_outward_mm: f64,
    /// Its uncertainty, mm.
    pub end_outward_uncertainty_mm: f64,
    /// Of its middle, toward the tissue, mm.
    pub middle_toward_tissue_mm: f64,
    /// Its uncertainty, mm.
    pub middle_toward_tissue_uncertainty_mm: f64,
    /// Of its middle, away from the midline, mm.
    pub middle_outward_mm: f64,
    /// Its uncertainty, mm.
    pub middle_outward_uncertainty_mm: f64,
}

impl LimbBend {
    pub(super) fn of(found: &measure::LimbBend, unit: Unit) -> Self {
        let moved = [
            found.end_toward_tissue_mm,
            found.end_outward_mm,
            found.middle_toward_tissue_mm,
            found.middle_outward_mm,
        ];
        let [up, out, middle_up, middle_out] = moved.map(|amount| figure(amount.value));
        let [up_doubt, out_doubt, middle_up_doubt, middle_out_doubt] =
            moved.map(|amount| figure(amount.uncertainty));
        Self {
            side: found.side.into(),
            end: point(&found.end, unit),
            end_toward_tissue_mm: up,
            end_toward_tissue_uncertainty_mm: up_doubt,
            end_outward_mm: out,
            end_outward_uncertainty_mm: out_doubt,
            middle_toward_tissue_mm: middle_up,
            middle_toward_tissue_uncertainty_mm: middle_up_doubt,
            middle_outward_mm: middle_out,
            middle_outward_uncertainty_mm: middle_out_doubt,
        }
    }
}
