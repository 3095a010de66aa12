//! A small arch beside a drawing, that shows where its place lies: the border seen
//! as the impression is in pictures, with the letters of its sides as large as there.

use super::canvas::{Anchor, GREY, INK, Sheet, SheetPoint, Stroke};
use super::words::side_letter;
use crate::text::facing;
use measure::{Border, BorderPart, Frame, Side};
use messages::{Language, text};

/// Size of the letters of the patient's sides, px, in pictures and here.
pub(crate) const SIDE_LETTER: f64 = 30.0;
const SMALL: f64 = 12.0;

/// A small arch in a rectangle of the sheet.
pub(super) struct Locator<'a> {
    border: &'a Border,
    frame: &'a Frame,
    /// Middle of the arch to the right and to the front, mm.
    middle: [f64; 2],
    at: SheetPoint,
    px_per_mm: f64,
}

impl<'a> Locator<'a> {
    /// Draws the outline and the letters into a rectangle by its upper left corner, width
    /// and height, px.
    pub(super) fn draw(
        sheet: &mut Sheet,
        border: &'a Border,
        frame: &'a Frame,
        language: Language,
        [left, top]: SheetPoint,
        [width, height]: [f64; 2],
    ) -> Self {
        let places: Vec<[f64; 2]> = (0..border.stations.len())
            .map(|number| seen(border, frame, number))
            .collect();
        let [across, along] = [0, 1].map(|k| {
            let values = places.iter().map(|place| place[k]);
            let least = values.clone().fold(f64::INFINITY, f64::min);
            (least, values.fold(f64::NEG_INFINITY, f64::max))
        });
        // The letters stand beside the front, where an arch is narrow.
        let room = [width - 24.0, height - 34.0];
        let px_per_mm =
            (room[0] / (across.1 - across.0).max(1.0)).min(room[1] / (along.1 - along.0).max(1.0));
        let locator = Self {
            border,
            frame,
            middle: [across, along].map(|(least, most)| f64::midpoint(least, most)),
            at: [left + width / 2.0, top + 22.0 + room[1] / 2.0],
            px_per_mm,
        };
        let mut outline: Vec<SheetPoint> = (0..border.stations.len())
            .map(|number| locator.px(number))
            .collect();
        outline.extend(outline.first().copied());
        sheet.polyline(&outline, Stroke::whole(GREY, 1.8));
        let letters = [
            (facing::on_the_left(frame.arch), left, Anchor::Start),
            (facing::on_the_right(frame.arch), left + width, Anchor::End),
        ];
        for (side, x, anchor) in letters {
            let letter = side_letter(side, language);
            sheet.bold([x, top + SIDE_LETTER * 0.8], anchor, SIDE_LETTER, &letter);
        }
        sheet.text(
            [left + width / 2.0, top + 12.0],
            Anchor::Middle,
            SMALL,
            &text!(language, "view-front"),
        );
        locator
    }

    /// Marks the section at a station: a dot, and the line that the section cuts.
    pub(super) fn mark_section(&self, sheet: &mut Sheet, station: usize, of: &str) {
        const HALF: f64 = 17.0;
        let at = self.px(station);
        let count = self.border.stations.len();
        let [before, after] = [count - 2, 2].map(|step| self.px((station + step) % count));
        let run = [after[0] - before[0], after[1] - before[1]];
        let length = run[0].hypot(run[1]).max(1e-9);
        let aside = [-run[1] / length * HALF, run[0] / length * HALF];
        let ends = [-1.0, 1.0].map(|sense| [0, 1].map(|k| at[k] + aside[k] * sense));
        sheet.line(ends[0], ends[1], Stroke::whole(INK, 2.2));
        sheet.place(at, 5.0, of);
    }

    /// Marks stations with their names beside the arch: on the inside those of a lingual
    /// border, outside the others. Names of places side by side stand in one line.
    pub(super) fn mark(&self, sheet: &mut Sheet, named: &[(usize, String)]) {
        const NEAR: f64 = SMALL + 1.0;
        let mut lines: Vec<(usize, SheetPoint, Vec<&str>)> = Vec::new();
        for (station, name) in named {
            let at = self.px(*station);
            sheet.place(at, 3.2, name);
            let is_near = |line: &&mut (usize, SheetPoint, Vec<&str>)| {
                (0..2).all(|k| (line.1[k] - at[k]).abs() < NEAR)
            };
            match lines.iter_mut().find(is_near) {
                Some(line) => line.2.push(name),
                None => lines.push((*station, at, vec![name])),
            }
        }
        for (station, at, names) in lines {
            let is_inside = self.border.stations[station].part == BorderPart::Lingual;
            let is_to_the_left = (at[0] < self.at[0]) != is_inside;
            let (anchor, aside) = if is_to_the_left {
                (Anchor::End, -6.0)
            } else {
                (Anchor::Start, 6.0)
            };
            let place = [at[0] + aside, at[1] + 4.0];
            sheet.label(place, anchor, SMALL, &names.join(", "));
        }
    }

    fn px(&self, station: usize) -> SheetPoint {
        let place = seen(self.border, self.frame, station);
        [
            self.at[0] + (place[0] - self.middle[0]) * self.px_per_mm,
            self.at[1] - (place[1] - self.middle[1]) * self.px_per_mm,
        ]
    }
}

/// A station as it is seen: to the right of the page and to the front, mm.
fn seen(border: &Border, frame: &Frame, station: usize) -> [f64; 2] {
    let from_origin = border.stations[station].point - frame.origin;
    let to_the_right = match facing::on_the_right(frame.arch) {
        Side::Right => 1.0,
        Side::Left => -1.0,
    };
    [
        from_origin.dot(&frame.right) * to_the_right,
        from_origin.dot(&frame.anterior),
    ]
}
