//! What measuring needs to know.

use crate::cover::TrayThickness;
use crate::cut::Cut;
use crate::landmarks::LandmarkMark;
use crate::words::Arch;
use nalgebra::Point3;

/// What measuring needs to know, in mm: levels at which patches are outlined,
/// not limits that anything is judged by.
#[derive(Debug, Clone, PartialEq)]
pub struct MeasureSettings {
    /// Cover at or below which a patch is outlined as show-through, mm.
    pub show_through_mm: f64,
    /// Cover below which a patch is outlined as thin, mm.
    pub thin_cover_mm: f64,
    /// Patches smaller than this are noise, mm².
    pub least_area_mm2: f64,
    /// Declared tissue stops, tray scan coordinates, mm.
    pub stops: Vec<Point3<f64>>,
    /// Half side of a tissue stop, mm.
    pub stop_radius_mm: f64,
    /// Depth below the border at which flange thickness is taken, mm.
    pub flange_depth_mm: f64,
    /// Thickness of the tray, where it was said.
    pub tray_thickness: Option<TrayThickness>,
    /// Colour of the tray in the scan, sRGB, where it was said.
    pub tray_colour: Option<[u8; 3]>,
    /// The jaw that the scan was declared as: counts where the shape does not say
    /// which it is.
    pub declared_jaw: Option<Arch>,
    /// What the scanner itself may add to a length in one scan beside noise and
    /// facets, expanded uncertainty (k = 2), mm; 0 where that is left out.
    pub scanner_uncertainty_mm: f64,
    /// Where the impression was cut apart, if it was.
    pub cut: Option<Cut>,
    /// Landmarks that someone has marked.
    pub marks: Vec<LandmarkMark>,
}

impl Default for MeasureSettings {
    /// The usual levels: show-through at 0.2 mm, thin below 1.0 mm,
    /// thickness 3.0 mm below the border, stops of 4 by 4 mm; nothing declared, and
    /// a scanner without any error of its own.
    fn default() -> Self {
        Self {
            show_through_mm: 0.2,
            thin_cover_mm: 1.0,
            least_area_mm2: 1.0,
            stops: Vec::new(),
            stop_radius_mm: 2.0,
            flange_depth_mm: 3.0,
            tray_thickness: None,
            tray_colour: None,
            declared_jaw: None,
            scanner_uncertainty_mm: 0.0,
            cut: None,
            marks: Vec::new(),
        }
    }
}
