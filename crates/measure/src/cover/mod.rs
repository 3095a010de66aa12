//! Cover: distance from the tissue surface to the tray, and where it is little.

mod bare_edges;
pub(crate) mod by_colour;
pub(crate) mod by_thickness;
pub(crate) mod by_tray_scan;
mod figures;
mod gaps;
pub(crate) mod on_tray;
pub(crate) mod spots;
pub(crate) mod stops;

pub use by_colour::{BesideCover, Contrast, NoColour, TrayColour};
pub use figures::{
    BareEdge, Cover, CoverGap, CoverMethod, EdgeExtent, NoCover, NoCoverHere, PlaceOnTray, Spot,
    SpotKind, StopReading, TrayThickness,
};
