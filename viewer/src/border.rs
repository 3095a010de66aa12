//! Figures along the border, by which its line can be coloured.

use report::result::Station;

/// A figure that every station has or lacks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum BorderFigure {
    /// Crest to border along the seating axis.
    Height,
    /// Tissue face to outer face.
    Thickness,
    /// Of the border's roll.
    Radius,
    /// Past the tray's edge.
    Overlap,
}

use BorderFigure::{Height, Overlap, Radius, Thickness};

impl BorderFigure {
    /// What is shown after this: each figure, then none.
    #[must_use]
    pub fn after(shown: Option<Self>) -> Option<Self> {
        match shown {
            None => Some(Height),
            Some(Height) => Some(Thickness),
            Some(Thickness) => Some(Radius),
            Some(Radius) => Some(Overlap),
            Some(Overlap) => None,
        }
    }

    /// Its name without its unit, mm.
    #[must_use]
    pub fn title(self) -> &'static str {
        match self {
            Height => "flange height",
            Thickness => "flange thickness",
            Radius => "border radius",
            Overlap => "overlap past the tray",
        }
    }

    /// Its limits: name in the protocol, and on the scale.
    #[must_use]
    pub fn limits(self) -> &'static [(&'static str, &'static str)] {
        match self {
            Height => &[("flange_height_mm", "least")],
            Thickness => &[
                ("least_flange_thickness_mm", "least"),
                ("most_flange_thickness_mm", "most"),
            ],
            Radius => &[("border_radius_mm", "least")],
            Overlap => &[
                ("least_border_overlap_mm", "least"),
                ("most_border_overlap_mm", "most"),
            ],
        }
    }
}

/// The figure of a station, mm; `None` where it is missing.
#[must_use]
pub fn station_value(station: &Station, figure: BorderFigure) -> Option<f64> {
    match figure {
        Height => station.flange_height_mm,
        Thickness => station.flange_thickness_mm,
        Radius => station.border_radius_mm,
        Overlap => station.overlap_mm,
    }
}
