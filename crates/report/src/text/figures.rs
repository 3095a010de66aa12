//! The figures of a border station: their names and their limits.

use judge::LimitKey;
pub use measure::StationFigure;
use messages::{Language, text};

/// What a figure of the stations is called and what limits it.
pub struct FigureWords {
    /// Its name in English words.
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

/// The name of a figure of the stations in a language.
#[must_use]
pub fn figure_name(figure: StationFigure, language: Language) -> String {
    match figure {
        StationFigure::Height => text!(language, "station-height"),
        StationFigure::Thickness => text!(language, "station-thickness"),
        StationFigure::Radius => text!(language, "station-radius"),
        StationFigure::Overlap => text!(language, "station-overlap"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_figure_has_one_english_name() {
        for figure in StationFigure::ALL {
            let name = figure_name(figure, Language::English);
            assert_eq!(name, station_figure(figure).name);
        }
    }
}
