//! Drawings of how to scan, by formula: no scan of anybody is shown.

use super::canvas::{Anchor, GREY, INK, LIMIT, PALE, Sheet, SheetPoint, Stroke, TRAY};
use messages::{Language, text};
use std::f64::consts::{PI, TAU};

const SIZE: [f64; 2] = [460.0, 230.0];
const WORDS: f64 = 20.0;
const SURFACE: Stroke = Stroke::whole(INK, 2.6);
const CUT: Stroke = Stroke::dashed(INK, 1.6, "6 4");

/// What draws, in a language.
type Draw = fn(&mut Sheet, Language);

/// The drawings, in the order of the sections of the page; the last sections have none.
const DRAWINGS: [Draw; 6] = [
    both_sides,
    handle,
    empty_tray,
    before_cutting,
    how_fine,
    good_and_bad,
];

/// The drawing to a section of the page, by its number; `heading` is that of the section.
pub(crate) fn drawing(number: usize, heading: &str, language: Language) -> Option<Vec<u8>> {
    let draw = DRAWINGS.get(number)?;
    let title = text!(language, "scanning-drawing", heading = heading);
    let mut sheet = Sheet::new(SIZE[0], SIZE[1], &title);
    draw(&mut sheet, language);
    Some(sheet.encoded())
}

/// The trough of an impression in section, `middle` its lowest point: tissue face.
fn trough([x, y]: SheetPoint, scale: f64) -> Vec<SheetPoint> {
    (-20..=20)
        .map(|step| {
            let t = f64::from(step) / 20.0;
            [x + t * 75.0 * scale, y - 62.0 * scale * t.abs().powf(2.4)]
        })
        .collect()
}

/// The tray under a trough.
fn tray([x, y]: SheetPoint, scale: f64) -> Vec<SheetPoint> {
    (-20..=20)
        .map(|step| {
            let t = f64::from(step) / 20.0;
            [
                x + t * 92.0 * scale,
                y + 16.0 * scale - 52.0 * scale * t.abs().powi(4),
            ]
        })
        .collect()
}

/// The outline of an upper arch from above, its front at the top.
fn arch([x, y]: SheetPoint, size: f64) -> Vec<SheetPoint> {
    let round = (0..=24).map(|step| {
        let angle = PI - PI * f64::from(step) / 24.0;
        [x + size * angle.cos(), y - size * 1.05 * angle.sin()]
    });
    let back = [
        [x + size * 0.96, y + size * 0.55],
        [x - size * 0.96, y + size * 0.55],
    ];
    let mut outline: Vec<SheetPoint> = round.chain(back).collect();
    outline.extend(outline.first().copied());
    outline
}

/// The handle in front of an arch.
fn handle_of([x, y]: SheetPoint, size: f64) -> Vec<SheetPoint> {
    let (from, to, half) = (y - size * 1.05, y - size * 1.6, size * 0.16);
    vec![
        [x - half, from],
        [x - half, to],
        [x + half, to],
        [x + half, from],
    ]
}

/// An impression in its tray, in section: material pale, tissue face black.
fn impression(sheet: &mut Sheet, at: SheetPoint, scale: f64) {
    let (face, below) = (trough(at, scale), tray(at, scale));
    let around: Vec<SheetPoint> = face.iter().chain(below.iter().rev()).copied().collect();
    sheet.area(&around, PALE);
    sheet.polyline(&below, Stroke::whole(TRAY, 5.0));
    sheet.polyline(&face, SURFACE);
}

fn arrow(sheet: &mut Sheet, from: SheetPoint, to: SheetPoint) {
    const HEAD: f64 = 9.0;
    sheet.line(from, to, Stroke::whole(LIMIT, 2.4));
    let run = [to[0] - from[0], to[1] - from[1]];
    let length = run[0].hypot(run[1]).max(1e-9);
    let [u, v] = run.map(|step| step / length * HEAD);
    let foot = [to[0] - u, to[1] - v];
    let wing = |sense: f64| [foot[0] - v * 0.5 * sense, foot[1] + u * 0.5 * sense];
    sheet.area(&[to, wing(1.0), wing(-1.0)], LIMIT);
}

/// Arrows from all sides onto a place.
fn from_all_sides(sheet: &mut Sheet, [x, y]: SheetPoint, radius: [f64; 2], count: u32) {
    for number in 0..count {
        let angle = TAU * f64::from(number) / f64::from(count);
        let at = |share: f64| {
            [
                x + radius[0] * share * angle.sin(),
                y - radius[1] * share * angle.cos(),
            ]
        };
        arrow(sheet, at(1.0), at(0.72));
    }
}

fn words(sheet: &mut Sheet, at: SheetPoint, text: &str) {
    sheet.label(at, Anchor::Middle, WORDS, text);
}

fn both_sides(sheet: &mut Sheet, language: Language) {
    let at = [230.0, 124.0];
    impression(sheet, at, 1.2);
    for x in [-50.0, 0.0, 50.0] {
        arrow(sheet, [at[0] + x, 30.0], [at[0] + x, 68.0]);
        arrow(sheet, [at[0] + x, 196.0], [at[0] + x, 160.0]);
    }
    for (x, sense) in [(98.0, 1.0), (362.0, -1.0)] {
        arrow(sheet, [x - 40.0 * sense, 40.0], [x - 4.0 * sense, 58.0]);
        arrow(sheet, [x - 44.0 * sense, 110.0], [x - 4.0 * sense, 104.0]);
    }
    words(
        sheet,
        [230.0, 20.0],
        &text!(language, "scanning-tissue-side"),
    );
    words(
        sheet,
        [230.0, 226.0],
        &text!(language, "scanning-outer-side"),
    );
    words(sheet, [44.0, 84.0], &text!(language, "section-border"));
    words(sheet, [416.0, 84.0], &text!(language, "section-border"));
}

fn handle(sheet: &mut Sheet, language: Language) {
    let at = [230.0, 150.0];
    sheet.area(&handle_of(at, 78.0), PALE);
    sheet.polyline(&handle_of(at, 78.0), SURFACE);
    sheet.polyline(&arch(at, 78.0), SURFACE);
    arrow(sheet, [110.0, 40.0], [208.0, 42.0]);
    words(sheet, [56.0, 47.0], &text!(language, "scanning-handle"));
    words(sheet, [330.0, 45.0], &text!(language, "view-front"));
    words(
        sheet,
        [230.0, 218.0],
        &text!(language, "scanning-tissue-side"),
    );
}

fn empty_tray(sheet: &mut Sheet, language: Language) {
    let at = [230.0, 104.0];
    sheet.polyline(&tray(at, 1.0), Stroke::whole(TRAY, 6.0));
    from_all_sides(sheet, [230.0, 104.0], [150.0, 92.0], 10);
    words(sheet, [230.0, 92.0], &text!(language, "scanning-empty"));
}

fn before_cutting(sheet: &mut Sheet, language: Language) {
    for (x, is_whole) in [(120.0, true), (340.0, false)] {
        let at = [x, 118.0];
        sheet.polyline(&arch(at, 66.0), SURFACE);
        if is_whole {
            words(sheet, [x, 190.0], &text!(language, "scanning-now"));
            // A tick.
            sheet.polyline(
                &[[x - 14.0, 108.0], [x - 3.0, 120.0], [x + 18.0, 90.0]],
                SURFACE,
            );
        } else {
            sheet.line([x - 84.0, 86.0], [x + 84.0, 142.0], CUT);
            sheet.line([x, 40.0], [x, 166.0], CUT);
            words(sheet, [x, 190.0], &text!(language, "scanning-too-late"));
        }
    }
}

fn how_fine(sheet: &mut Sheet, language: Language) {
    for (left, edge, text) in [
        (20.0, 18.0, text!(language, "scanning-fine")),
        (250.0, 63.0, text!(language, "scanning-coarse")),
    ] {
        let (count, top) = ((190.0 / edge) as i32, 16.0);
        let size = edge * f64::from(count);
        let stroke = Stroke::whole(GREY, 0.9);
        for step in 0..=count {
            let along = edge * f64::from(step);
            sheet.line([left + along, top], [left + along, top + size], stroke);
            sheet.line([left, top + along], [left + size, top + along], stroke);
            sheet.line([left + along, top], [left, top + along], stroke);
            sheet.line(
                [left + size, top + along],
                [left + along, top + size],
                stroke,
            );
        }
        sheet.circle([left + 95.0, top + 92.0], 23.0, SURFACE);
        words(sheet, [left + 95.0, 224.0], &text);
    }
}

fn good_and_bad(sheet: &mut Sheet, language: Language) {
    sheet.polyline(&trough([115.0, 156.0], 1.2), SURFACE);
    words(sheet, [115.0, 214.0], &text!(language, "scanning-good"));
    let bad = trough([345.0, 156.0], 1.2);
    let shifted = |points: &[SheetPoint], by: &dyn Fn(usize) -> SheetPoint| {
        let moved = points.iter().enumerate();
        moved
            .map(|(number, p)| [p[0] + by(number)[0], p[1] + by(number)[1]])
            .collect::<Vec<SheetPoint>>()
    };
    sheet.polyline(&bad[..10], SURFACE);
    sheet.polyline(&bad[16..31], SURFACE);
    sheet.polyline(&shifted(&bad[20..31], &|_| [2.0, -11.0]), SURFACE);
    let rough = |number: usize| [if number.is_multiple_of(2) { 7.0 } else { -7.0 }, 0.0];
    sheet.polyline(&shifted(&bad[31..], &rough), SURFACE);
    words(sheet, [254.0, 150.0], &text!(language, "scanning-hole"));
    words(
        sheet,
        [334.0, 120.0],
        &text!(language, "scanning-two-layers"),
    );
    words(sheet, [400.0, 72.0], &text!(language, "scanning-rough"));
    words(sheet, [345.0, 214.0], &text!(language, "scanning-bad"));
}
