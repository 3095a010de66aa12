//! The section at the worst station of a finding, with its dimensions.

use super::canvas::{Anchor, GREY, INK, LIMIT, Sheet, SheetPoint, Stroke, TRAY, text_width};
use super::locator::Locator;
use super::section_table::{StationTable, draw_table, of_station, wrapped};
use super::words::{heading, numbered, patient_side};
use crate::text::names;
use crate::text::words::zone_name;
use check::CheckedCase;
use judge::words;
use measure::{BorderPart, SectionPoint, Station};
use messages::{Language, Value, text};

const WIDTH: f64 = 1300.0;
const HEIGHT: f64 = 640.0;
/// The part of the sheet that the section fills: from, to.
pub(super) const FIELD: [SheetPoint; 2] = [[40.0, 104.0], [700.0, 580.0]];
pub(super) const TABLE_LEFT: f64 = 760.0;
pub(super) const TABLE_RIGHT: f64 = 1060.0;
/// Upper left corner and size of the small arch.
const ARCH_AT: SheetPoint = [1080.0, 96.0];
const ARCH_SIZE: [f64; 2] = [200.0, 230.0];
pub(super) const SMALL: f64 = 13.0;

pub(super) const TISSUE: Stroke = Stroke::whole(INK, 2.8);
pub(super) const OUTER: Stroke = Stroke::dashed(INK, 1.8, "9 3");
pub(super) const TRAY_LINE: Stroke = Stroke::dashed(TRAY, 3.2, "2 2");
const HELP: Stroke = Stroke::whole(GREY, 0.8);
pub(super) const CIRCLE: Stroke = Stroke::dashed(LIMIT, 1.4, "5 3");

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
