//! What the colours of a scan show of the tray: plain data.

use messages::{Message, Value, message, said_by_the_catalogue};

/// Colours nearer to each other than this in CIELAB (CIE 1976 difference) are
/// not told apart. Common practice, no source.
pub(super) const LEAST_DIFFERENCE: f64 = 10.0;
/// Tray and material must be this many standard deviations of the scan's
/// smoothed colours apart: halfway between them then lies three from either.
pub(super) const LEAST_SEPARATION: f64 = 6.0;
/// Why tray could not be told from material by colour.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoColour {
    TrayColourUnknown,
    Alike { difference: f64 },
    TooUneven { separation: f64 },
}

impl NoColour {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::TrayColourUnknown => message!("no-colour-unknown"),
            Self::Alike { difference } => message!(
                "no-colour-alike",
                difference = Value::number(*difference, 0),
                least = Value::figure(LEAST_DIFFERENCE.to_string())
            ),
            Self::TooUneven { separation } => message!(
                "no-colour-uneven",
                separation = Value::number(*separation, 1),
                least = Value::figure(LEAST_SEPARATION.to_string())
            ),
        }
    }
}

said_by_the_catalogue!(NoColour);

/// What the colours of a scan tell of the tray.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayColour {
    /// Colour of the material in the scan's middling light, sRGB.
    pub material: [u8; 3],
    /// Colour of the tray, sRGB.
    pub tray: [u8; 3],
    /// Whether the tray's colour was told from the outer surface; else it was given.
    pub inferred: bool,
    /// How far the two lie apart in CIELAB (CIE 1976 difference).
    pub difference: f64,
    /// How far they lie apart in standard deviations of the material's colour.
    pub separation: f64,
    /// Share of the way from the material's colour to the tray's at each
    /// vertex; `None` off the tissue surface and within 1 mm of its edge, where
    /// the tray's own rim may show.
    pub at_vertex: Vec<Option<f64>>,
    /// Tissue surface whose colour was judged, mm².
    pub area_judged_mm2: f64,
    /// Tissue surface of the tray's colour, mm².
    pub tray_seen_mm2: f64,
    /// Tissue surface of a colour that is neither the tray's nor the
    /// material's, mm²: blood, a marking, another material.
    pub other_mm2: f64,
    /// Beside the cover map, where there is one. Patches of the tray's colour in
    /// which it shows no tray are spots too.
    pub beside_cover: Option<BesideCover>,
}

/// Where the cover map and the colours agree that tray shows, and where not; mm².
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct BesideCover {
    /// Tray by both.
    pub both_mm2: f64,
    /// Tray by its colour, surely covered by the cover map.
    pub colour_only_mm2: f64,
    /// Surely bare by the cover map, not by colour.
    pub cover_only_mm2: f64,
}
