//! The drawings of the page. Nothing in them is told by colour alone.

use super::gathered::{CELL_MM, Counts};
use crate::drawing::canvas::{Anchor, GREY, INK, LIMIT, Sheet, Stroke};
use crate::folder::spread::Spread;
use crate::folder::thumbnail::Thumbnail;
use crate::text::format;
use crate::text::words::group_words;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use maud::{Markup, html};
use messages::{Language, Value, text};

const SIZE: f64 = 13.0;
const AXIS: Stroke = Stroke::whole(GREY, 1.0);

fn bar(sheet: &mut Sheet, from: [f64; 2], to: [f64; 2], fill: &str) {
    sheet.area(&[from, [to[0], from[1]], to, [from[0], to[1]]], fill);
}

/// Bars from the most to the least, each with its count and the share that it
/// and those before it make of all.
pub fn pareto(title: &str, counts: &[(String, u64)], language: Language) -> String {
    const ROW: f64 = 24.0;
    const NAMES: f64 = 330.0;
    const BARS: f64 = 480.0;
    let all: u64 = counts.iter().map(|c| c.1).sum();
    let most = counts.iter().map(|c| c.1).max().unwrap_or(1) as f64;
    let mut sheet = Sheet::new(960.0, ROW * counts.len() as f64 + 8.0, title);
    let mut so_far = 0;
    for (row, (name, count)) in counts.iter().enumerate() {
        let y = 4.0 + ROW * row as f64;
        so_far += count;
        let length = (BARS * *count as f64 / most).max(1.0);
        sheet.text([NAMES - 8.0, y + 16.0], Anchor::End, SIZE, name);
        bar(
            &mut sheet,
            [NAMES, y + 3.0],
            [NAMES + length, y + ROW - 3.0],
            LIMIT,
        );
        let share = format::share_of(so_far, all, language);
        let so_far = text!(language, "chart-so-far", share = share);
        let words = format!("{count}  ({so_far})");
        sheet.text(
            [NAMES + length + 6.0, y + 16.0],
            Anchor::Start,
            SIZE,
            &words,
        );
    }
    sheet.in_page()
}

/// Half of the field that a map of the arch shows, mm.
const FIELD_MM: [f64; 2] = [44.0, 40.0];
const PX_PER_MM: f64 = 5.0;

/// The tissue side of a maxillary impression lies before the reader with the
/// patient's right on the right, that of a mandibular one on the left.
fn right_is_right(arch: &str) -> bool {
    arch == "maxillary"
}

/// Where findings lie: squares, darker for more, with their count; a scale.
pub fn heat_map(
    arch: &str,
    cells: &Counts<[i64; 2]>,
    outlines: &[Vec<[f64; 2]>],
    language: Language,
) -> String {
    let sense = if right_is_right(arch) { 1.0 } else { -1.0 };
    let on_map = |[right, anterior]: [f64; 2]| {
        [
            (FIELD_MM[0] + sense * right) * PX_PER_MM,
            (FIELD_MM[1] - anterior) * PX_PER_MM,
        ]
    };
    let size = FIELD_MM.map(|half| 2.0 * half * PX_PER_MM);
    let jaw = group_words(arch, language);
    let title = text!(language, "chart-where", jaw = jaw);
    let mut sheet = Sheet::new(size[0], size[1] + 46.0, &title);
    let most = cells.values().copied().max().unwrap_or(1);
    for (cell, count) in cells {
        let [low, high] =
            [0, 1].map(|more| on_map(cell.map(|index| (index + more) as f64 * CELL_MM)));
        bar(&mut sheet, low, high, &heat(*count, most));
    }
    for points in outlines {
        let closed = points.iter().chain(points.first());
        let line: Vec<[f64; 2]> = closed.map(|&point| on_map(point)).collect();
        sheet.polyline(&line, Stroke::whole("#8a8a8a", 0.8));
    }
    for (cell, count) in cells {
        let middle = on_map(cell.map(|index| (index as f64 + 0.5) * CELL_MM));
        let at = [middle[0], middle[1] + 4.0];
        sheet.label(at, Anchor::Middle, 11.0, &count.to_string());
    }
    let sides = if right_is_right(arch) {
        ["left", "right"]
    } else {
        ["right", "left"]
    };
    let [left, right] = sides.map(|side| text!(language, "side-letter", side = side));
    sheet.bold([6.0, size[1] / 2.0], Anchor::Start, 16.0, &left);
    sheet.bold([size[0] - 6.0, size[1] / 2.0], Anchor::End, 16.0, &right);
    let front = text!(language, "chart-front");
    sheet.text([size[0] / 2.0, 16.0], Anchor::Middle, SIZE, &front);
    let foot = size[1] + 14.0;
    let ten = 10.0 * PX_PER_MM;
    sheet.line([8.0, foot], [8.0 + ten, foot], Stroke::whole(INK, 2.0));
    sheet.text([14.0 + ten, foot + 4.0], Anchor::Start, 12.0, "10 mm");
    let most_words = text!(language, "chart-findings", count = most);
    heat_scale(&mut sheet, [size[0] - 250.0, foot - 6.0], &most_words);
    sheet.in_page()
}

/// The bright end of cividis is few, the dark end many.
fn heat(count: u64, most: u64) -> String {
    let share = count as f64 / most.max(1) as f64;
    format!("#{:x}", colorous::CIVIDIS.eval_continuous(1.0 - share))
}

fn heat_scale(sheet: &mut Sheet, [left, top]: [f64; 2], most: &str) {
    const BANDS: u64 = 24;
    const WIDTH: f64 = 180.0;
    let x = |band: u64| left + WIDTH * band as f64 / BANDS as f64;
    for band in 0..BANDS {
        let fill = heat(band + 1, BANDS);
        bar(
            sheet,
            [x(band), top],
            [x(band + 1) + 0.3, top + 12.0],
            &fill,
        );
    }
    sheet.text([left, top + 26.0], Anchor::Middle, 12.0, "0");
    sheet.text([left + WIDTH, top + 26.0], Anchor::Middle, 12.0, most);
}

/// A picture with rings where findings fail.
pub fn thumbnail(case: &str, picture: &Thumbnail, png: &[u8], language: Language) -> Markup {
    let [width, height] = picture.size;
    let places = picture.marks.len();
    let alt = text!(language, "chart-thumbnail", case = case, places = places);
    html! {
        svg viewBox={ "0 0 " (width) " " (height) } role="img" aria-label=(alt) {
            title { (alt) }
            image width=(width) height=(height) href={ "data:image/png;base64," (STANDARD.encode(png)) } {}
            @for mark in &picture.marks {
                @let dashes = if mark.is_hidden { "3 3" } else { "none" };
                @for (colour, stroke, dashes) in [("#ffffff", 4.0, "none"), (INK, 1.8, dashes)] {
                    circle cx=(mark.at[0]) cy=(mark.at[1]) r="11" fill="none"
                        stroke=(colour) stroke-width=(stroke) stroke-dasharray=(dashes) {}
                }
            }
        }
    }
}

/// How values are spread: twenty bars, the median marked.
pub fn histogram(title: &str, values: &Spread, language: Language) -> String {
    const BARS: usize = 20;
    const WIDTH: f64 = 440.0;
    const HEIGHT: f64 = 130.0;
    const FOOT: f64 = 40.0;
    let mut sheet = Sheet::new(WIDTH, HEIGHT + FOOT, title);
    let quantile = |part| values.quantile(part);
    let (Some(low), Some(high), Some(median)) = (quantile(0.0), quantile(1.0), quantile(0.5))
    else {
        let none = text!(language, "chart-no-figures");
        sheet.text([WIDTH / 2.0, HEIGHT / 2.0], Anchor::Middle, SIZE, &none);
        return sheet.in_page();
    };
    let span = (high - low).max(1e-6);
    let mut counts = [0_u64; BARS];
    for (value, count) in values.counts() {
        let bin = ((value - low) / span * BARS as f64) as usize;
        counts[bin.min(BARS - 1)] += count;
    }
    let most = counts.iter().copied().max().unwrap_or(1) as f64;
    let x = |value: f64| 10.0 + (value - low) / span * (WIDTH - 20.0);
    for (bin, &count) in counts.iter().enumerate() {
        let [from, to] =
            [bin, bin + 1].map(|edge| 10.0 + edge as f64 / BARS as f64 * (WIDTH - 20.0));
        let top = HEIGHT - (HEIGHT - 16.0) * count as f64 / most;
        bar(&mut sheet, [from + 0.5, top], [to - 0.5, HEIGHT], "#7b7b78");
    }
    sheet.line([10.0, HEIGHT], [WIDTH - 10.0, HEIGHT], AXIS);
    sheet.line(
        [x(median), 4.0],
        [x(median), HEIGHT],
        Stroke::dashed(LIMIT, 2.0, "6 3"),
    );
    sheet.text(
        [10.0, HEIGHT + 15.0],
        Anchor::Start,
        11.0,
        &format::in_language(format::two_decimals(low), language),
    );
    sheet.text(
        [WIDTH - 10.0, HEIGHT + 15.0],
        Anchor::End,
        11.0,
        &format::in_language(format::quantity(high, None, "mm"), language),
    );
    let words = text!(
        language,
        "chart-spread",
        median = Value::number(median, 2),
        impressions = values.total(),
        most = most.to_string()
    );
    sheet.text([WIDTH / 2.0, HEIGHT + 32.0], Anchor::Middle, 12.0, &words);
    sheet.in_page()
}
