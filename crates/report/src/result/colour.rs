//! What a scan's colours tell, in a result.

use crate::text::rounding::figure;
use measure::ImpressionMeasurement;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Tray and material by the colours of the scan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrayColour {
    /// Colour of the material in the scan's middling light, `#rrggbb` in sRGB.
    pub material: String,
    /// Colour of the tray, `#rrggbb` in sRGB.
    pub tray: String,
    /// Whether the tray's colour was told from the outer surface; else it was given.
    pub inferred: bool,
    /// How far the two lie apart in CIELAB (CIE 1976 difference).
    pub difference: f64,
    /// How far they lie apart in standard deviations of the material's colour.
    pub separation: f64,
    /// Tissue surface whose colour was judged, mm².
    pub area_judged_mm2: f64,
    /// Tissue surface of the tray's colour, mm².
    pub tray_seen_mm2: f64,
    /// Tissue surface of a third colour, mm².
    pub other_mm2: f64,
    /// Beside the cover map; `null` without one.
    pub beside_cover: Option<BesideCover>,
}

/// Where cover map and colours agree that tray shows, and where not.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct BesideCover {
    /// Tray by both, mm².
    pub both_mm2: f64,
    /// Tray by its colour, surely covered by the cover map, mm².
    pub colour_only_mm2: f64,
    /// Surely bare by the cover map, not by colour, mm².
    pub cover_only_mm2: f64,
}

impl TrayColour {
    /// What the colours of a scan tell; `None` where they tell nothing.
    pub(super) fn of(measurement: &ImpressionMeasurement) -> Option<Self> {
        let found = measurement.colour.as_ref()?.as_ref().ok()?;
        let hex = |[red, green, blue]: [u8; 3]| format!("#{red:02x}{green:02x}{blue:02x}");
        Some(Self {
            material: hex(found.material),
            tray: hex(found.tray),
            inferred: found.inferred,
            difference: figure(found.difference),
            separation: figure(found.separation),
            area_judged_mm2: figure(found.area_judged_mm2),
            tray_seen_mm2: figure(found.tray_seen_mm2),
            other_mm2: figure(found.other_mm2),
            beside_cover: found.beside_cover.map(|beside| BesideCover {
                both_mm2: figure(beside.both_mm2),
                colour_only_mm2: figure(beside.colour_only_mm2),
                cover_only_mm2: figure(beside.cover_only_mm2),
            }),
        })
    }
}
