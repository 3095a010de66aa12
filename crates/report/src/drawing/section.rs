//! The section at the worst station of a finding, with its dimensions.

use super::canvas::{Anchor, GREY, INK, LIMIT, Sheet, SheetPoint, Stroke, TRAY, text_width};
use super::locator::Locator;
use super::words::{at_least, at_most, heading, numbered, patient_side};
use crate::text::figures::{figure_name, station_figure};
use crate::text::format::capital;
use crate::text::words::zone_name;
use crate::text::{format, names};
use check::CheckedCase;
use judge::{Bound, Finding, LimitKey, words};
use measure::{Border, BorderPart, Measured, SectionPoint, Station, StationFigure};
use messages::{Language, Value, text};

const WIDTH: f64 = 1300.0;
const HEIGHT: f64 = 640.0;
/// The part of the sheet that the section fills: from, to.
const FIELD: [SheetPoint; 2] = [[40.0, 104.0], [700.0, 580.0]];
const TABLE_LEFT: f64 = 760.0;
const TABLE_RIGHT: f64 = 1060.0;
/// Baseline of the table's first line.
const TABLE_TOP: f64 = FIELD[0][1] + 6.0;
const LINE: f64 = 18.0;
const ABOVE_HEADING: f64 = 8.0;
/// Height of the legend under the table, to the edge of the sheet.
const LEGEND_HEIGHT: f64 = 135.0;
/// Upper left corner and size of the small arch.
const ARCH_AT: SheetPoint = [1080.0, 96.0];
const ARCH_SIZE: [f64; 2] = [200.0, 230.0];
const SMALL: f64 = 13.0;

const TISSUE: Stroke = Stroke::whole(INK, 2.8);
const OUTER: Stroke = Stroke::dashed(INK, 1.8, "9 3");
const TRAY_LINE: Stroke = Stroke::dashed(TRAY, 3.2, "2 2");
const HELP: Stroke = Stroke::whole(GREY, 0.8);
const CIRCLE: Stroke = Stroke::dashed(LIMIT, 1.4, "5 3");

/// The drawing of a finding's section as the bytes of an SVG file; `None` for a
/// finding that is not on a border.
pub(crate) fn finding_section(
    checked: &CheckedCase,
    number: usize,
    language: Language,
) -> Option<Vec<u8>> {
    let finding = checked.judged.findings.get(number)?;
    let impression = finding.impression?;
    let measured = checked.impressions[impression].measured()?;
    let border = measured.border.as_ref().ok()?;
    let worst = finding.stretch?.worst;
    let station = border.stations.get(worst)?;
    let title = format!(
        "{}: {}, {}",
        numbered(&names::finding(number), finding.check, language),
        zone_name(words::zone(station.zone), language),
        patient_side(station.side, language)
    );
    let table = StationTable {
        language,
        checked,
        finding,
        border,
        station,
    };
    let height = table.height().max(HEIGHT);
    let mut sheet = Sheet::new(WIDTH, height, &title);
    sheet.bold([40.0, 32.0], Anchor::Start, 18.0, &title);
    let at = text!(
        language,
        "section-place",
        heading = heading(checked, impression, language),
        at = Value::number(station.s * border.length_mm, 1),
        length = Value::number(border.length_mm, 1),
        s = Value::number(station.s, 3)
    );
    sheet.text([40.0, 54.0], Anchor::Start, SMALL, &at);
    let view = View::of(station);
    draw_outlines(&mut sheet, &view, station);
    draw_sides(&mut sheet, station, language);
    draw_dimensions(&mut sheet, &view, station, language);
    draw_scale_bar(&mut sheet, &view);
    let frame = &measured.frame;
    let arch = Locator::draw(&mut sheet, border, frame, language, ARCH_AT, ARCH_SIZE);
    arch.mark_section(&mut sheet, worst, &names::finding(number));
    draw_arch_caption(&mut sheet, language);
    draw_table(&mut sheet, &table);
    Some(sheet.encoded())
}

/// From section coordinates to the sheet.
struct View {
    low: SectionPoint,
    high: SectionPoint,
    px_per_mm: f64,
}

impl View {
    /// Everything from beyond the crest to outside the border.
    fn of(station: &Station) -> Self {
        let crest = station.section.crest.unwrap_or([-8.0, -6.0]);
        let low = [(crest[0] - 4.0).min(-9.0), (crest[1] - 6.0).min(-9.0)];
        let high = [7.0, 3.0];
        let [wide, tall] = [0, 1].map(|k| FIELD[1][k] - FIELD[0][k]);
        Self {
            low,
            high,
            px_per_mm: (wide / (high[0] - low[0])).min(tall / (high[1] - low[1])),
        }
    }

    fn px(&self, p: SectionPoint) -> SheetPoint {
        let middle = f64::midpoint(FIELD[0][0], FIELD[1][0]);
        let aside = p[0] - f64::midpoint(self.low[0], self.high[0]);
        [
            middle + aside * self.px_per_mm,
            FIELD[0][1] + (self.high[1] - p[1]) * self.px_per_mm,
        ]
    }

    /// The pieces of a polyline within the view.
    fn pieces(&self, line: &[SectionPoint]) -> Vec<Vec<SheetPoint>> {
        let inside = |p: &SectionPoint| (0..2).all(|k| p[k] >= self.low[k] && p[k] <= self.high[k]);
        line.chunk_by(|a, b| inside(a) == inside(b))
            .filter(|run| run.len() > 1 && inside(&run[0]))
            .map(|run| run.iter().map(|&p| self.px(p)).collect())
            .collect()
    }
}

fn draw_outlines(sheet: &mut Sheet, view: &View, station: &Station) {
    let section = &station.section;
    for (lines, stroke) in [
        (&section.tray, TRAY_LINE),
        (&section.outer, OUTER),
        (&section.tissue, TISSUE),
    ] {
        for piece in lines.iter().flat_map(|line| view.pieces(line)) {
            sheet.polyline(&piece, stroke);
        }
    }
}

/// Which way the section is looked at.
fn draw_sides(sheet: &mut Sheet, station: &Station, language: Language) {
    let ridge = || text!(language, "section-toward-ridge");
    let [inward, outward] = match station.part {
        BorderPart::Outer => [ridge(), text!(language, "section-toward-lip")],
        BorderPart::Lingual => [ridge(), text!(language, "section-toward-tongue")],
        BorderPart::Posterior => [
            text!(language, "section-toward-front"),
            text!(language, "section-toward-back"),
        ],
    };
    let y = FIELD[0][1] - 16.0;
    let (inward, outward) = (format!("◄ {inward}"), format!("{outward} ►"));
    sheet.bold([FIELD[0][0], y], Anchor::Start, SMALL, &inward);
    sheet.bold([FIELD[1][0], y], Anchor::End, SMALL, &outward);
    let middle = f64::midpoint(FIELD[0][0], FIELD[1][0]);
    let axis = format!("▲ {}", text!(language, "section-axis"));
    sheet.text([middle, y], Anchor::Middle, SMALL, &axis);
}

fn draw_dimensions(sheet: &mut Sheet, view: &View, station: &Station, language: Language) {
    let border = view.px([0.0, 0.0]);
    draw_height(sheet, view, station, border, language);
    draw_thickness(sheet, view, station, language);
    draw_overlap(sheet, view, station, border);
    draw_roll(sheet, view, station, language);
    sheet.dot(border, 4.5, INK);
    sheet.label(
        [border[0] + 8.0, border[1] - 10.0],
        Anchor::Start,
        SMALL,
        &text!(language, "section-border"),
    );
}

fn draw_height(
    sheet: &mut Sheet,
    view: &View,
    station: &Station,
    border: SheetPoint,
    language: Language,
) {
    let Some(crest) = station.section.crest else {
        return;
    };
    let at = view.px(crest);
    // Saltire: told from the border's dot by its shape.
    for sense in [-1.0, 1.0] {
        let arm = |size: f64| [at[0] + size, at[1] + size * sense];
        sheet.line(arm(-5.0), arm(5.0), Stroke::whole(INK, 2.0));
    }
    let crest = text!(language, "section-crest");
    sheet.label([at[0], at[1] + 20.0], Anchor::Middle, SMALL, &crest);
    let Ok(height) = station.flange_height else {
        return;
    };
    let x = at[0] - 26.0;
    sheet.line([x - 6.0, border[1]], [border[0] - 6.0, border[1]], HELP);
    sheet.line([x - 6.0, at[1]], [at[0] - 6.0, at[1]], HELP);
    sheet.dimension([x, at[1]], [x, border[1]]);
    let words = text!(language, "section-height", figure = of_station(height));
    // A name longer than its line goes on above the border, clear of the crest.
    let centred = f64::midpoint(at[1], border[1]) + text_width(&words, SMALL) / 2.0;
    sheet.upright([x - 6.0, centred.min(at[1] - 8.0)], SMALL, &words);
}

/// A figure of a station as it is printed.
fn of_station(figure: Measured) -> Value {
    Value::figure(format::measured(figure))
}

fn draw_thickness(sheet: &mut Sheet, view: &View, station: &Station, language: Language) {
    let (Some(ends), Ok(thickness)) = (station.section.thickness, station.flange_thickness) else {
        return;
    };
    let [from, to] = ends.map(|p| view.px(p));
    sheet.dimension(from, to);
    let words = text!(
        language,
        "section-thickness",
        figure = of_station(thickness)
    );
    let beside = [to[0] + 10.0, to[1] + 4.0];
    if beside[0] + text_width(&words, SMALL) < TABLE_LEFT - 10.0 {
        sheet.label(beside, Anchor::Start, SMALL, &words);
    } else {
        let below = [f64::midpoint(from[0], to[0]), to[1] + 18.0];
        sheet.label(below, Anchor::Middle, SMALL, &words);
    }
}

fn draw_overlap(sheet: &mut Sheet, view: &View, station: &Station, border: SheetPoint) {
    /// The nearest point of the tray may lie beside the section's plane.
    const IN_PLANE_MM: f64 = 0.4;
    let Ok(overlap) = station.overlap else { return };
    let from_border = |p: &SectionPoint| p[0].hypot(p[1]);
    let points = station.section.tray.iter().flatten();
    let nearest = points.min_by(|a, b| from_border(a).total_cmp(&from_border(b)));
    let Some(nearest) = nearest.filter(|p| from_border(p) - overlap.mm < IN_PLANE_MM) else {
        return;
    };
    let tray = view.px(*nearest);
    sheet.line(border, tray, Stroke::dashed(INK, 1.2, "1 3"));
    sheet.line(
        [tray[0] - 5.0, tray[1]],
        [tray[0] + 5.0, tray[1]],
        Stroke::whole(INK, 1.6),
    );
}

fn draw_roll(sheet: &mut Sheet, view: &View, station: &Station, language: Language) {
    let (Some(centre), Ok(radius)) = (station.section.roll_centre, station.border_radius) else {
        return;
    };
    let middle = view.px(centre);
    let px = radius.mm * view.px_per_mm;
    sheet.circle(middle, px, CIRCLE);
    let rim = [
        middle[0] + px * std::f64::consts::FRAC_1_SQRT_2,
        middle[1] - px * std::f64::consts::FRAC_1_SQRT_2,
    ];
    sheet.line(middle, rim, Stroke::whole(LIMIT, 1.2));
    let clear = [middle[0] + px + 34.0, middle[1] - px * 0.45];
    sheet.line(rim, [clear[0] - 4.0, clear[1] - 4.0], HELP);
    let words = text!(language, "section-radius", figure = of_station(radius));
    sheet.label(clear, Anchor::Start, SMALL, &words);
}

fn draw_scale_bar(sheet: &mut Sheet, view: &View) {
    const BAR_MM: f64 = 5.0;
    let (from, y) = (FIELD[0][0], HEIGHT - 26.0);
    let to = from + BAR_MM * view.px_per_mm;
    sheet.line([from, y], [to, y], Stroke::whole(INK, 3.0));
    for x in [from, to] {
        sheet.line([x, y - 5.0], [x, y + 5.0], Stroke::whole(INK, 1.4));
    }
    let words = format!("{BAR_MM} mm");
    sheet.text(
        [f64::midpoint(from, to), y - 8.0],
        Anchor::Middle,
        SMALL,
        &words,
    );
}

fn draw_arch_caption(sheet: &mut Sheet, language: Language) {
    let middle = ARCH_AT[0] + ARCH_SIZE[0] / 2.0;
    let mut y = ARCH_AT[1] + ARCH_SIZE[1] + 16.0;
    for line in wrapped(&text!(language, "section-arch"), ARCH_SIZE[0]) {
        sheet.text([middle, y], Anchor::Middle, SMALL, &line);
        y += 17.0;
    }
}

/// What the table beside the drawing says.
struct StationTable<'a> {
    language: Language,
    checked: &'a CheckedCase,
    finding: &'a Finding,
    border: &'a Border,
    station: &'a Station,
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
            (mm > 0.0).then(|| words(language, format!("{mm} mm")))
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
                limit = limit
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
    fn height(&self) -> f64 {
        let lines = self.wrapped().into_iter();
        let lines: f64 = lines
            .map(|(is_heading, lines)| {
                lines.len() as f64 * LINE + if is_heading { ABOVE_HEADING } else { 0.0 }
            })
            .sum();
        TABLE_TOP + lines + LEGEND_HEIGHT
    }
}

fn draw_table(sheet: &mut Sheet, table: &StationTable<'_>) {
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

/// A text in lines that are no wider than `width`, px.
fn wrapped(text: &str, width: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ') {
        match lines.last_mut() {
            Some(line) if text_width(line, SMALL) + text_width(word, SMALL) + SMALL < width => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
