//! The figures of a border station: their names and their limits.

use judge::LimitKey;
pub use measure::StationFigure;

/// What a figure of the stations is called and what limits it.
pub struct FigureWords {
    /// Its name in words.
    pub name: &'static str,
    /// Its name in tables, without its unit.
    pub column: &'static str,
    /// Its limit from below.
    pub least: Option<LimitKey>,
    /// Its limit from above.
    pub most: Option<LimitKey>,
}

/// The words for a figure of the stations.
#[must_use]
pub fn station_figure(figure: StationFigure) -> FigureWords {
    match figure {
        StationFigure::Height => FigureWords {
            name: "flange height",
            column: "flange_height",
            least: Some(LimitKey::FlangeHeight),
            most: None,
        },
        StationFigure::Thickness => FigureWords {
            name: "flange thickness",
            column: "flange_thickness",
            least: Some(LimitKey::FlangeThin),
            most: Some(LimitKey::FlangeThick),
        },
        StationFigure::Radius => FigureWords {
            name: "border radius",
            column: "border_radius",
            least: Some(LimitKey::BorderRadius),
            most: None,
        },
        StationFigure::Overlap => FigureWords {
            name: "overlap past the tray",
            column: "overlap",
            least: Some(LimitKey::OverlapLeast),
            most: Some(LimitKey::OverlapMost),
        },
    }
}
