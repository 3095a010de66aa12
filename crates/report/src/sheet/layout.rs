//! Where everything lies on the sheet. What is at the bottom has its place
//! first; what is to be done fills the room that is left, in lettering as large
//! as fits, and what does not fit is counted.

use super::content::{Content, Parcel, Task};
use super::font::{Weight, clipped, wrapped};
use super::foot::foot;
use super::paper::{INK, LEFT, Paper, Pen, RIGHT, SMALL, THIN, TOP, WIDE};
use super::picture;
use crate::picture::Pictures;
use crate::result::CaseResult;
use messages::{Language, text};

/// Most impressions that have a picture.
const MOST_PICTURES: usize = 2;
/// Most lines that places of one task take.
const MOST_PLACES: usize = 2;
/// Most lines of what is missing from the parcel.
const MOST_MISSING: usize = 5;
/// Sizes of lettering, the largest that fits is taken.
const SIZES: [f64; 4] = [10.0, 9.2, 8.5, 7.8];
/// Width of a box to tick, and of the gap after it, as shares of the lettering.
const BOX: f64 = 1.05;
const INDENT: f64 = 1.7;

/// The page of a case.
pub(super) fn laid_out<'a>(
    result: &'a CaseResult,
    pictures: &'a Pictures,
    content: &Content<'a>,
) -> Paper<'a> {
    let language = content.language;
    let title = text!(
        language,
        "sheet-title",
        case = content.case,
        word = content.word.as_str()
    );
    let mut paper = Paper::new(title, language);
    let below_head = head(&mut paper, content);
    let foot = foot(&mut paper, content);
    let foot = parcel(&mut paper, content, foot);
    let top = views(&mut paper, result, pictures, content, below_head);
    tasks(&mut paper, content, top, foot);
    paper
}

/// Case, verdict, what it asks for, and when. Gives where the next thing begins.
fn head(paper: &mut Paper<'_>, content: &Content<'_>) -> f64 {
    const VERDICT: f64 = 20.0;
    let word = content.word.to_uppercase();
    let width = Weight::Bold.width(&word, VERDICT);
    let frame = [RIGHT - width - 16.0, TOP];
    paper.area(
        frame,
        [width + 16.0, 30.0],
        Some(Pen::whole(2.2, INK)),
        None,
    );
    paper.words(
        [RIGHT - width - 8.0, TOP + 22.5],
        Weight::Bold,
        VERDICT,
        word,
    );
    let room = frame[0] - LEFT - 12.0;
    let case = text!(content.language, "sheet-case", case = content.case);
    let case = clipped(&case, Weight::Bold, 18.0, room);
    paper.words(
        [LEFT, TOP + 8.0],
        Weight::Book,
        SMALL,
        content.purpose.as_str(),
    );
    paper.words([LEFT, TOP + 28.0], Weight::Bold, 18.0, case);
    let mut y = TOP + 48.0;
    for line in wrapped(&content.lead, Weight::Bold, 11.5, WIDE) {
        paper.words([LEFT, y], Weight::Bold, 11.5, line);
        y += 14.0;
    }
    let times = match &content.times {
        Some(times) => times.clone(),
        None => text!(content.language, "sheet-time-not-recorded"),
    };
    paper.time([LEFT, y], SMALL, clipped(&times, Weight::Book, SMALL, WIDE));
    paper.line([LEFT, y + 6.0], [RIGHT, y + 6.0], Pen::whole(1.2, INK));
    y + 10.0
}

/// What is missing from the parcel, drawn above `bottom`. Gives where it begins.
fn parcel(paper: &mut Paper<'_>, content: &Content<'_>, bottom: f64) -> f64 {
    let parcel = &content.parcel;
    let tasks: Vec<Task> = match parcel {
        Parcel::Unsaid => return bottom,
        Parcel::NotStated => Vec::new(),
        Parcel::Missing(texts) => (texts.iter())
            .map(|text| Task {
                text: text.clone(),
                places: Vec::new(),
            })
            .collect(),
    };
    let language = content.language;
    let said = match parcel {
        Parcel::Unsaid | Parcel::NotStated => text!(language, "sheet-parcel-not-stated"),
        Parcel::Missing(texts) if texts.is_empty() => text!(language, "sheet-parcel-complete"),
        Parcel::Missing(_) => content.fixed.missing.clone(),
    };
    const SIZE: f64 = 9.2;
    let rows: Vec<Vec<Line>> = (tasks.iter())
        .map(|task| task_lines(task, SIZE, content.language))
        .collect();
    let mut kept = rows.len();
    while rows[..kept].iter().map(Vec::len).sum::<usize>() > MOST_MISSING && kept > 1 {
        kept -= 1;
    }
    let more = rows.len() - kept;
    let lines: usize = rows[..kept].iter().map(Vec::len).sum();
    let top = bottom - 18.0 - lines as f64 * leading(SIZE) - 3.0 * kept as f64;
    let mut y = top + 12.0;
    let said = match more {
        0 => said,
        _ => text!(
            language,
            "sheet-parcel-more",
            what = said,
            more = more.to_string(),
            place = content.fixed.elsewhere.as_str()
        ),
    };
    paper.words([LEFT, y], Weight::Bold, 9.5, said);
    y += 3.0;
    for row in &rows[..kept] {
        y = ticked(paper, row, SIZE, y);
    }
    paper.line([LEFT, top], [RIGHT, top], THIN);
    top
}

/// The pictures side by side. Gives where the next thing begins.
fn views<'a>(
    paper: &mut Paper<'a>,
    result: &'a CaseResult,
    pictures: &'a Pictures,
    content: &Content<'a>,
    top: f64,
) -> f64 {
    const HIGH: f64 = 222.0;
    const GAP: f64 = 14.0;
    let shown = &content.impressions;
    let few = &shown[..shown.len().min(MOST_PICTURES)];
    let wide = match few.len() {
        0 => return top,
        1 => WIDE * 0.66,
        number => (WIDE - GAP * (number - 1) as f64) / number as f64,
    };
    let mut hidden = Vec::new();
    for (number, one) in few.iter().enumerate() {
        let left = if few.len() == 1 {
            LEFT + (WIDE - wide) / 2.0
        } else {
            LEFT + number as f64 * (wide + GAP)
        };
        let name = format!("{}: {}", one.name, one.verdict);
        paper.words(
            [left, top + 10.0],
            Weight::Bold,
            10.0,
            clipped(&name, Weight::Bold, 10.0, wide),
        );
        let place = [left, top + 14.0];
        hidden.extend(picture::draw(
            paper,
            result,
            pictures,
            one,
            place,
            [wide, HIGH],
        ));
    }
    let y = top + 14.0 + HIGH + 12.0;
    let language = content.language;
    let mut legend = content.fixed.legend.clone();
    if !hidden.is_empty() {
        let ids = hidden.join(", ");
        legend = text!(language, "sheet-hidden", ids = ids, legend = legend);
    }
    if shown.len() > few.len() {
        legend = text!(
            language,
            "sheet-more-impressions",
            more = shown.len() - few.len(),
            place = content.fixed.elsewhere.as_str(),
            legend = legend
        );
    }
    let mut y = y;
    for line in wrapped(&legend, Weight::Book, 7.4, WIDE)
        .into_iter()
        .take(2)
    {
        paper.words([LEFT, y], Weight::Book, 7.4, line);
        y += 9.4;
    }
    paper.line([LEFT, y - 4.0], [RIGHT, y - 4.0], THIN);
    y
}

/// What is to be done between two heights.
fn tasks(paper: &mut Paper<'_>, content: &Content<'_>, top: f64, bottom: f64) {
    let mut y = top + 12.0;
    let fixed = &content.fixed;
    paper.words([LEFT, y], Weight::Bold, 11.5, fixed.tasks.as_str());
    y += 3.0;
    if content.tasks.is_empty() {
        let at = [LEFT, y + 13.0];
        paper.words(at, Weight::Book, 10.0, fixed.no_tasks.as_str());
        y += 16.0;
    }
    let room = bottom - y - leading(SMALL) - 4.0;
    let smallest = SIZES[SIZES.len() - 1];
    let language = content.language;
    let rows = |size: f64| -> Vec<Vec<Line>> {
        let tasks = content.tasks.iter();
        tasks.map(|task| task_lines(task, size, language)).collect()
    };
    let size = (SIZES.into_iter())
        .find(|&size| fitting(&rows(size), size, room) == content.tasks.len())
        .unwrap_or(smallest);
    let rows = rows(size);
    let kept = fitting(&rows, size, room);
    for row in &rows[..kept] {
        y = ticked(paper, row, size, y);
    }
    let more = content.tasks.len() - kept;
    let elsewhere = fixed.elsewhere.as_str();
    let rest = match (more, content.notes) {
        (0, 0) => return,
        (0, notes) => text!(
            language,
            "sheet-notes-elsewhere",
            notes = notes,
            place = elsewhere
        ),
        (more, 0) => text!(language, "sheet-more-tasks", more = more, place = elsewhere),
        (more, notes) => text!(
            language,
            "sheet-more-tasks-and-notes",
            more = more,
            notes = notes,
            place = elsewhere
        ),
    };
    let weight = if more > 0 { Weight::Bold } else { Weight::Book };
    paper.words([LEFT, y + leading(SMALL)], weight, SMALL, rest);
}

/// How many tasks, from the first, fit into a height.
fn fitting(tasks: &[Vec<Line>], size: f64, room: f64) -> usize {
    let mut y = 0.0;
    (tasks.iter())
        .take_while(|lines| {
            y += lines.len() as f64 * leading(size) + 3.0;
            y <= room
        })
        .count()
}

fn leading(size: f64) -> f64 {
    size * 1.22
}

/// A line of lettering.
type Line = (Weight, String);

/// The lines of a task: where, then what is to be done.
fn task_lines(task: &Task, size: f64, language: Language) -> Vec<Line> {
    let wide = WIDE - INDENT * size;
    let of = |weight, lines: Vec<String>| lines.into_iter().map(move |line| (weight, line));
    let all = task.places.len();
    let places = |kept: usize| {
        let bare = task.places[..kept]
            .iter()
            .map(|place| place.trim_end_matches('.'));
        let listed = bare.collect::<Vec<_>>().join("; ");
        let text = match all - kept {
            0 => listed,
            more => text!(
                language,
                "sheet-more-places",
                places = listed,
                more = more.to_string()
            ),
        };
        wrapped(&text, Weight::Bold, size, wide)
    };
    let fits = |lines: &Vec<String>| lines.len() <= MOST_PLACES;
    let places = (1..=all).rev().map(places).find(fits).unwrap_or_default();
    let text = wrapped(&task.text, Weight::Book, size, wide);
    of(Weight::Bold, places)
        .chain(of(Weight::Book, text))
        .collect()
}

/// Lines with a box to tick before the first. Gives where the next begin.
fn ticked(paper: &mut Paper<'_>, lines: &[Line], size: f64, top: f64) -> f64 {
    let side = BOX * size;
    let box_top = top + leading(size) - size * 0.9;
    paper.area(
        [LEFT, box_top],
        [side, side],
        Some(Pen::whole(1.0, INK)),
        None,
    );
    let mut y = top;
    for (weight, line) in lines {
        y += leading(size);
        paper.words([LEFT + INDENT * size, y], *weight, size, line.clone());
    }
    y + 3.0
}
