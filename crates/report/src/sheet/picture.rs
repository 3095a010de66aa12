//! A picture on the sheet, with its numbered places.

use super::content::Shown;
use super::font::Weight;
use super::paper::{At, GREY, INK, Paper, Pen, WHITE};
use crate::page::overlay::{Kind, Mark, apart, finding_marks, telling};
use crate::picture::{Picture, Pictures};
use crate::result::{CaseResult, Severity};
use messages::{Language, text};

/// Size of the numbers beside a picture.
const NUMBER: f64 = 10.0;
/// Room for numbers on either side.
const ASIDE: f64 = 30.0;
/// Room for the letters of the sides, above a picture.
const ABOVE: f64 = 16.0;

/// Draws one impression within a box by its upper left corner, width and
/// height. Gives the numbers of places that do not show.
pub(super) fn draw<'a>(
    paper: &mut Paper<'a>,
    result: &'a CaseResult,
    pictures: &'a Pictures,
    shown: &Shown<'a>,
    [left, top]: At,
    [width, height]: [f64; 2],
) -> Vec<&'a str> {
    let views = pictures
        .views
        .get(shown.number)
        .map_or(&[][..], Vec::as_slice);
    let Some(picture) = telling(result, shown.number, shown.impression, views) else {
        let words = text!(paper.language, "sheet-no-picture");
        paper.words([left, top + 2.0 * ABOVE], Weight::Book, 9.0, words);
        return Vec::new();
    };
    let size = picture.camera.size.map(|px| px as f64);
    let scale = ((width - 2.0 * ASIDE) / size[0]).min((height - ABOVE) / size[1]);
    let [wide, high] = size.map(|px| px * scale);
    let at = [left + (width - wide) / 2.0, top + ABOVE];
    let (wanted, marks) = finding_marks(
        result,
        shown.number,
        shown.impression,
        picture,
        &|p| [at[0] + p[0] * scale, at[1] + p[1] * scale],
        scale,
    );
    let marks: Vec<Mark<'_>> = marks.into_iter().filter(is_pressing).collect();
    let ids: Vec<&str> = marks.iter().map(|mark| mark.id).collect();
    let alt = text!(
        paper.language,
        "sheet-picture",
        name = shown.name.as_str(),
        view = view(picture, paper.language),
        ids = ids.join(", ")
    );
    paper.image(at, [wide, high], &picture.png, alt);
    sides(paper, picture, left, width, top + ABOVE - 4.0);
    for mark in &marks {
        outline(paper, mark);
    }
    let middle = at[0] + wide / 2.0;
    let (first, second): (Vec<&Mark<'_>>, Vec<&Mark<'_>>) =
        marks.iter().partition(|mark| mark.at[0] <= middle);
    numbers(paper, first, [left, top + ABOVE], high, true);
    numbers(paper, second, [left + width, top + ABOVE], high, false);
    let is_pressing = |id: &&str| {
        let finding = result.findings.iter().find(|finding| finding.id == *id);
        finding.is_some_and(|finding| finding.severity != Severity::Note)
    };
    (wanted.into_iter().filter(is_pressing))
        .filter(|id| !ids.contains(id))
        .collect()
}

fn is_pressing(mark: &Mark<'_>) -> bool {
    mark.kind != Kind::Finding(Severity::Note)
}

/// Which way up a picture is.
fn view(picture: &Picture, language: Language) -> String {
    match picture.up {
        "front up" => text!(language, "view-front-up"),
        _ => text!(language, "view-tissue-side-up"),
    }
}

/// Which side is the patient's right.
fn sides(paper: &mut Paper<'_>, picture: &Picture, left: f64, width: f64, y: f64) {
    const SIZE: f64 = 14.0;
    let language = paper.language;
    let [first, second] = picture.sides().map(|side| match side {
        "R" => text!(language, "side-letter", side = "right"),
        _ => text!(language, "side-letter", side = "left"),
    });
    let end = left + width - Weight::Bold.width(&second, SIZE);
    paper.words([left, y], Weight::Bold, SIZE, first);
    paper.words([end, y], Weight::Bold, SIZE, second);
    let up = match picture.up {
        "front up" => text!(language, "view-front"),
        _ => view(picture, language),
    };
    let middle = left + (width - Weight::Book.width(&up, 9.0)) / 2.0;
    paper.words([middle, y], Weight::Book, 9.0, up);
}

/// A ring of ink in a ring of paper, so that it shows on dark and bright.
fn outline(paper: &mut Paper<'_>, mark: &Mark<'_>) {
    let pen = match mark.kind {
        Kind::Finding(Severity::Borderline) => Pen {
            width: 1.4,
            shade: INK,
            dashes: &[3.5, 1.6],
        },
        _ => Pen::whole(1.8, INK),
    };
    let halo = Pen::whole(pen.width + 1.8, WHITE);
    for line in &mark.lines {
        paper.lines(line.clone(), halo);
        paper.lines(line.clone(), pen);
    }
    let radius = mark.radius.max(5.5);
    paper.ring(mark.at, radius, halo);
    paper.ring(mark.at, radius, pen);
}

/// Numbers down one side of a picture, with a line from each to its mark.
fn numbers(paper: &mut Paper<'_>, mut marks: Vec<&Mark<'_>>, at: At, high: f64, is_left: bool) {
    marks.sort_by(|a, b| a.at[1].total_cmp(&b.at[1]));
    let wanted: Vec<f64> = marks.iter().map(|mark| mark.at[1]).collect();
    let heights = apart(&wanted, at[1] + NUMBER, at[1] + high, NUMBER + 2.0);
    for (mark, y) in marks.iter().zip(heights) {
        let width = Weight::Bold.width(mark.id, NUMBER);
        let (x, foot) = if is_left {
            (at[0], at[0] + width + 2.0)
        } else {
            (at[0] - width, at[0] - width - 2.0)
        };
        paper.words([x, y + NUMBER * 0.36], Weight::Bold, NUMBER, mark.id);
        let run = [foot - mark.at[0], y - mark.at[1]];
        let length = run[0].hypot(run[1]).max(1e-9);
        let radius = mark.radius.max(5.5);
        let tip = [0, 1].map(|k| mark.at[k] + run[k] / length * radius);
        paper.line([foot, y], tip, Pen::whole(2.4, WHITE));
        paper.line([foot, y], tip, Pen::whole(0.8, GREY));
    }
}
