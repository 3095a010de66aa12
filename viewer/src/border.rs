//! Figures along the border, by which its line can be coloured.

use messages::{Language, text};
use report::figures::{StationFigure, station_figure};

/// What is shown after this: each figure, then none.
#[must_use]
pub fn after(shown: Option<StationFigure>) -> Option<StationFigure> {
    let place = |figure| StationFigure::ALL.iter().position(|&one| one == figure);
    let next = shown.map_or(Some(0), |figure| place(figure).map(|at| at + 1));
    next.and_then(|at| StationFigure::ALL.get(at).copied())
}

/// Its limits: name in the protocol, and on the scale.
pub fn limits(
    figure: StationFigure,
    language: Language,
) -> impl Iterator<Item = (&'static str, String)> {
    let of = station_figure(figure);
    let both = [
        (of.least, text!(language, "map-limit-least")),
        (of.most, text!(language, "map-limit-most")),
    ];
    both.into_iter()
        .filter_map(|(key, on_scale)| Some((key?.name(), on_scale)))
}
