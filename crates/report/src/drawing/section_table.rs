//! The table beside a section: the figures of its station with their limits, and the legend.

use super::canvas::{Anchor, INK, Sheet, Stroke, text_width};
use super::section::{CIRCLE, FIELD, OUTER, SMALL, TABLE_LEFT, TABLE_RIGHT, TISSUE, TRAY_LINE};
use super::words::{at_least, at_most};
use crate::text::figures::{figure_name, station_figure};
use crate::text::format;
use crate::text::format::capital;
use check::CheckedCase;
use judge::{Bound, Finding, LimitKey, words};
use measure::{Border, Measured, Station, StationFigure};
use messages::{Language, Value, text};

/// Baseline of the table's first line.
const TABLE_TOP: f64 = FIELD[0][1] + 6.0;
const LINE: f64 = 18.0;
/// The space between words that stay in one line.
const UNBROKEN: &str = "\u{a0}";
const ABOVE_HEADING: f64 = 8.0;
/// Height of the legend under the table, to the edge of the sheet.
const LEGEND_HEIGHT: f64 = 135.0;

/// What the table beside the drawing says.
pub(super) struct StationTable<'a> {
    pub(super) language: Language,
    pub(super) checked: &'a CheckedCase,
    pub(super) finding: &'a Finding,
    pub(super) border: &'a Border,
    pub(super) station: &'a Station,
}

impl StationTable<'_> {
    /// Figures of the station, with their limits in its zone; whether each line is a heading.
    fn lines(&self) -> Vec<(bool, String)> {
        let figures = StationFigure::ALL.into_iter();
        let stretch = self.about_finding().into_iter();
        stretch
            .chain(figures.flat_map(|figure| self.about_figure(figure)))
            .collect()
    }

    fn about_figure(&self, figure: StationFigure) -> Vec<(bool, String)> {
        let (language, of) = (self.language, station_figure(figure));
        let limit = |key: Option<LimitKey>, words: fn(Language, String) -> String| {
            let mm = self.checked.protocol.limit(key?).in_zone(self.station.zone);
            (mm > 0.0).then(|| unbroken(&words(language, format!("{mm} mm"))))
        };
        let name = capital(&figure_name(figure, language));
        let name = if figure == StationFigure::Thickness {
            let depth = self.checked.protocol.value(LimitKey::FlangeDepth);
            let depth = Value::figure(depth.to_string());
            text!(
                language,
                "section-figure-at-depth",
                figure = name,
                depth = depth
            )
        } else {
            name
        };
        let reading = match self.station.figure(figure) {
            Ok(found) => of_station(found).text(language),
            Err(why) => text!(language, "section-none", why = why.message()),
        };
        let limits = [limit(of.least, at_least), limit(of.most, at_most)];
        let limits: Vec<String> = limits.into_iter().flatten().collect();
        let limits = (!limits.is_empty())
            .then(|| text!(language, "section-limit", limits = limits.join(", ")));
        let lines = [(true, name), (false, reading)].into_iter();
        lines.chain(limits.map(|limits| (false, limits))).collect()
    }

    /// The stretch and the figure that the finding is about.
    fn about_finding(&self) -> Vec<(bool, String)> {
        let language = self.language;
        let stretch = self.finding.stretch.map(|stretch| {
            let range = words::stretch(self.border, self.finding.arch, stretch.from, stretch.to);
            (true, text!(language, "section-stretch", range = range))
        });
        let figure = self.finding.figure.as_ref().map(|figure| {
            let (unit, bound) = (&figure.unit, figure.bound);
            let limit = format!("{}{}", figure.limit(), format::unit(unit));
            let limit = match bound {
                Bound::AtLeast(_) => at_least(language, limit),
                Bound::AtMost(_) => at_most(language, limit),
            };
            let measured = format::decided(figure.measured, figure.uncertainty, bound, unit);
            let found = text!(
                language,
                "section-found",
                figure = Value::figure(measured),
                limit = unbroken(&limit)
            );
            (false, found)
        });
        stretch.into_iter().chain(figure).collect()
    }

    /// The lines as they fit the table's width.
    fn wrapped(&self) -> Vec<(bool, Vec<String>)> {
        let lines = self.lines().into_iter();
        lines
            .map(|(is_heading, text)| (is_heading, wrapped(&text, TABLE_RIGHT - TABLE_LEFT)))
            .collect()
    }

    /// Height of the sheet that holds the table, px.
    pub(super) fn height(&self) -> f64 {
        let lines = self.wrapped().into_iter();
        let lines: f64 = lines
            .map(|(is_heading, lines)| {
                lines.len() as f64 * LINE + if is_heading { ABOVE_HEADING } else { 0.0 }
            })
            .sum();
        TABLE_TOP + lines + LEGEND_HEIGHT
    }
}

/// Draws the table and its legend.
pub(super) fn draw_table(sheet: &mut Sheet, table: &StationTable<'_>) {
    let mut y = TABLE_TOP;
    for (is_heading, lines) in table.wrapped() {
        if is_heading {
            y += ABOVE_HEADING;
        }
        for line in lines {
            if is_heading {
                sheet.bold([TABLE_LEFT, y], Anchor::Start, SMALL, &line);
            } else {
                sheet.text([TABLE_LEFT, y], Anchor::Start, SMALL, &line);
            }
            y += LINE;
        }
    }
    draw_legend(sheet, table.language, y + 16.0);
}

fn draw_legend(sheet: &mut Sheet, language: Language, top: f64) {
    let mut y = top;
    for (stroke, words) in [
        (TISSUE, text!(language, "section-tissue-face")),
        (OUTER, text!(language, "section-outer-face")),
        (TRAY_LINE, text!(language, "section-tray")),
        (CIRCLE, text!(language, "section-circle")),
        (
            Stroke::dashed(INK, 1.2, "1 3"),
            text!(language, "section-overlap"),
        ),
    ] {
        sheet.line([TABLE_LEFT, y - 4.0], [TABLE_LEFT + 40.0, y - 4.0], stroke);
        sheet.text([TABLE_LEFT + 50.0, y], Anchor::Start, SMALL, &words);
        y += 19.0;
    }
    let note = text!(language, "section-uncertainties");
    sheet.text([TABLE_LEFT, y + 4.0], Anchor::Start, SMALL, &note);
}

/// A figure of a station as it is printed.
pub(super) fn of_station(figure: Measured) -> Value {
    Value::figure(format::measured(figure))
}

/// Words that stay in one line.
fn unbroken(text: &str) -> String {
    text.replace(' ', UNBROKEN)
}

/// A text in lines that are no wider than `width`, px; a figure keeps its unit beside it.
pub(super) fn wrapped(text: &str, width: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.replace(" mm", "\u{a0}mm").split(' ') {
        let word = word.replace(UNBROKEN, " ");
        match lines.last_mut() {
            Some(line) if text_width(line, SMALL) + text_width(&word, SMALL) + SMALL < width => {
                line.push(' ');
                line.push_str(&word);
            }
            _ => lines.push(word),
        }
    }
    lines
}
