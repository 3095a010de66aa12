//! The section at the worst station of a finding, with its dimensions.

use super::canvas::{Anchor, GREY, INK, LIMIT, Sheet, SheetPoint, Stroke, TRAY, text_width};
use super::locator::Locator;
use super::words::{heading, patient_side};
use crate::text::figures::station_figure;
use crate::text::format::capital;
use crate::text::{format, names};
use check::CheckedCase;
use judge::{Finding, LimitKey, words};
use measure::{Border, BorderPart, SectionPoint, Station, StationFigure};
use messages::Language;

const WIDTH: f64 = 1300.0;
const HEIGHT: f64 = 640.0;
/// The part of the sheet that the section fills: from, to.
const FIELD: [SheetPoint; 2] = [[40.0, 104.0], [700.0, 580.0]];
const TABLE_LEFT: f64 = 760.0;
const TABLE_RIGHT: f64 = 1060.0;
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
    let place = format!(
        "{}, {}",
        words::zone(station.zone),
        patient_side(station.side)
    );
    let title = format!("{} {}: {place}", names::finding(number), finding.check);
    let mut sheet = Sheet::new(WIDTH, HEIGHT, &title);
    sheet.bold([40.0, 32.0], Anchor::Start, 18.0, &title);
    let at = format!(
        "{}. Section {:.1} mm of {:.1} mm round the border (s = {:.3}).",
        heading(checked, impression, language),
        station.s * border.length_mm,
        border.length_mm,
        station.s
    );
    sheet.text([40.0, 54.0], Anchor::Start, SMALL, &at);
    let view = View::of(station);
    draw_outlines(&mut sheet, &view, station);
    draw_sides(&mut sheet, station);
    draw_dimensions(&mut sheet, &view, station);
    draw_scale_bar(&mut sheet, &view);
    let arch = Locator::draw(&mut sheet, border, &measured.frame, ARCH_AT, ARCH_SIZE);
    arch.mark_section(&mut sheet, worst, &names::finding(number));
    draw_arch_caption(&mut sheet);
    draw_table(
        &mut sheet,
        &StationTable {
            checked,
            finding,
            border,
            station,
        },
    );
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
fn draw_sides(sheet: &mut Sheet, station: &Station) {
    let [inward, outward] = match station.part {
        BorderPart::Outer => ["◄ toward the ridge", "toward lip or cheek ►"],
        BorderPart::Lingual => ["◄ toward the ridge", "toward the tongue ►"],
        BorderPart::Posterior => ["◄ toward the front", "toward the back ►"],
    };
    let y = FIELD[0][1] - 16.0;
    sheet.bold([FIELD[0][0], y], Anchor::Start, SMALL, inward);
    sheet.bold([FIELD[1][0], y], Anchor::End, SMALL, outward);
    let middle = f64::midpoint(FIELD[0][0], FIELD[1][0]);
    sheet.text(
        [middle, y],
        Anchor::Middle,
        SMALL,
        "▲ seating axis, toward the tissue",
    );
}

fn draw_dimensions(sheet: &mut Sheet, view: &View, station: &Station) {
    let border = view.px([0.0, 0.0]);
    draw_height(sheet, view, station, border);
    draw_thickness(sheet, view, station);
    draw_overlap(sheet, view, station, border);
    draw_roll(sheet, view, station);
    sheet.dot(border, 4.5, INK);
    sheet.label(
        [border[0] + 8.0, border[1] - 10.0],
        Anchor::Start,
        SMALL,
        "border",
    );
}

fn draw_height(sheet: &mut Sheet, view: &View, station: &Station, border: SheetPoint) {
    let Some(crest) = station.section.crest else {
        return;
    };
    let at = view.px(crest);
    // Saltire: told from the border's dot by its shape.
    for sense in [-1.0, 1.0] {
        let arm = |size: f64| [at[0] + size, at[1] + size * sense];
        sheet.line(arm(-5.0), arm(5.0), Stroke::whole(INK, 2.0));
    }
    sheet.label([at[0], at[1] + 20.0], Anchor::Middle, SMALL, "crest");
    let Ok(height) = station.flange_height else {
        return;
    };
    let x = at[0] - 26.0;
    sheet.line([x - 6.0, border[1]], [border[0] - 6.0, border[1]], HELP);
    sheet.line([x - 6.0, at[1]], [at[0] - 6.0, at[1]], HELP);
    sheet.dimension([x, at[1]], [x, border[1]]);
    let words = format!("height {}", format::measured(height));
    // A name longer than its line goes on above the border, clear of the crest.
    let centred = f64::midpoint(at[1], border[1]) + text_width(&words, SMALL) / 2.0;
    sheet.upright([x - 6.0, centred.min(at[1] - 8.0)], SMALL, &words);
}

fn draw_thickness(sheet: &mut Sheet, view: &View, station: &Station) {
    let (Some(ends), Ok(thickness)) = (station.section.thickness, station.flange_thickness) else {
        return;
    };
    let [from, to] = ends.map(|p| view.px(p));
    sheet.dimension(from, to);
    let words = format!("thickness {}", format::measured(thickness));
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

fn draw_roll(sheet: &mut Sheet, view: &View, station: &Station) {
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
    let words = format!("radius {}", format::measured(radius));
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

fn draw_arch_caption(sheet: &mut Sheet) {
    let middle = ARCH_AT[0] + ARCH_SIZE[0] / 2.0;
    let mut y = ARCH_AT[1] + ARCH_SIZE[1] + 16.0;
    for line in ["Where the section lies,", "seen as in the pictures"] {
        sheet.text([middle, y], Anchor::Middle, SMALL, line);
        y += 17.0;
    }
}

/// What the table beside the drawing says.
struct StationTable<'a> {
    checked: &'a CheckedCase,
    finding: &'a Finding,
    border: &'a Border,
    station: &'a Station,
}

impl StationTable<'_> {
    /// Figures of the station, with their limits in its zone.
    fn lines(&self) -> Vec<(bool, String)> {
        let limit = |key: Option<LimitKey>, words: &str| {
            let mm = self.checked.protocol.limit(key?).in_zone(self.station.zone);
            (mm > 0.0).then(|| format!("{words} {mm} mm"))
        };
        let depth = self.checked.protocol.value(LimitKey::FlangeDepth);
        let mut lines = self.about_finding();
        for figure in StationFigure::ALL {
            let of = station_figure(figure);
            let name = capital(of.name);
            let name = if figure == StationFigure::Thickness {
                format!("{name}, {depth} mm down")
            } else {
                name
            };
            let reading = self.station.figure(figure);
            let limits = [limit(of.least, "at least"), limit(of.most, "at most")];
            lines.push((true, name));
            lines.push((
                false,
                reading.map_or_else(|why| format!("none: {why}"), format::measured),
            ));
            let limits: Vec<String> = limits.into_iter().flatten().collect();
            if !limits.is_empty() {
                lines.push((false, format!("limit: {}", limits.join(", "))));
            }
        }
        lines
    }

    /// The stretch and the figure that the finding is about.
    fn about_finding(&self) -> Vec<(bool, String)> {
        let stretch = self.finding.stretch.map(|stretch| {
            let range = words::stretch(self.border, self.finding.arch, stretch.from, stretch.to);
            (true, format!("Stretch {range}"))
        });
        let figure = self.finding.figure.as_ref().map(|figure| {
            let found = format!(
                "found: {}, {} {}{}",
                format::decided(
                    figure.measured,
                    figure.uncertainty,
                    figure.bound,
                    &figure.unit
                ),
                figure.bound.in_words(),
                figure.limit(),
                format::unit(&figure.unit)
            );
            (false, found)
        });
        stretch.into_iter().chain(figure).collect()
    }
}

fn draw_table(sheet: &mut Sheet, table: &StationTable<'_>) {
    let mut y = FIELD[0][1] + 6.0;
    for (is_heading, text) in table.lines() {
        if is_heading {
            y += 8.0;
        }
        for line in wrapped(&text, TABLE_RIGHT - TABLE_LEFT) {
            if is_heading {
                sheet.bold([TABLE_LEFT, y], Anchor::Start, SMALL, &line);
            } else {
                sheet.text([TABLE_LEFT, y], Anchor::Start, SMALL, &line);
            }
            y += 18.0;
        }
    }
    y += 16.0;
    for (stroke, words) in [
        (TISSUE, "tissue face"),
        (OUTER, "outer face"),
        (TRAY_LINE, "tray"),
        (CIRCLE, "circle through the roll"),
        (
            Stroke::dashed(INK, 1.2, "1 3"),
            "overlap, to the nearest tray",
        ),
    ] {
        sheet.line([TABLE_LEFT, y - 4.0], [TABLE_LEFT + 40.0, y - 4.0], stroke);
        sheet.text([TABLE_LEFT + 50.0, y], Anchor::Start, SMALL, words);
        y += 19.0;
    }
    sheet.text(
        [TABLE_LEFT, y + 4.0],
        Anchor::Start,
        SMALL,
        "Uncertainties are expanded (k = 2).",
    );
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
