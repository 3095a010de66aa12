//! What a scan's colours tell, in a result.

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
