//! The rows of a border chart: one figure each.

use super::canvas::{Anchor, GREY, INK, LIMIT, PALE, Sheet, SheetPoint, Stroke, text_width};
use super::plot::{Across, Chart, SMALL};
use super::track::Track;
use super::words::{at_least, at_most, short_reason};
use crate::text::figures::{figure_name, station_figure};
use crate::text::format::capital;
use crate::text::names;
use judge::{Check, Finding, LimitKey, Severity};
use measure::{DipKind, Missing, Reading, Station, StationFigure};
use messages::{Language, Value, text};

/// A limit from below.
pub(super) const LEAST: Stroke = Stroke::dashed(LIMIT, 1.6, "8 4");
/// A limit from above.
pub(super) const MOST: Stroke = Stroke::dashed(LIMIT, 1.6, "2 3");
const CURVE: Stroke = Stroke::whole(INK, 1.8);
/// Room above a row's plot for its title, px.
const HEAD: f64 = 20.0;
/// A row without any figure, px.
const EMPTY: f64 = 30.0;

/// A figure of the stations.
pub(super) struct Row {
    figure: StationFigure,
    height: f64,
}

impl Row {
    fn reading(&self, station: &Station) -> Reading {
        station.figure(self.figure)
    }

    fn limits(&self) -> impl Iterator<Item = Limit> {
        let of = station_figure(self.figure);
        let limit = |key: Option<LimitKey>, stroke, words: fn(Language, String) -> String| {
            key.map(|key| Limit { key, stroke, words })
        };
        let both = [
            limit(of.least, LEAST, at_least),
            limit(of.most, MOST, at_most),
        ];
        both.into_iter().flatten()
    }
}

pub(super) const ROWS: [Row; StationFigure::ALL.len()] = [
    Row {
        figure: StationFigure::Height,
        height: 180.0,
    },
    Row {
        figure: StationFigure::Thickness,
        height: 140.0,
    },
    Row {
        figure: StationFigure::Radius,
        height: 115.0,
    },
    Row {
        figure: StationFigure::Overlap,
        height: 125.0,
    },
];

/// Where a row is drawn, px.
pub(super) struct RowFrame {
    pub across: Across,
    pub left: f64,
    pub right: f64,
    pub top: f64,
    pub bottom: f64,
}

/// From figures to the sheet.
struct Scale {
    bottom: f64,
    px_per_mm: f64,
    most_mm: f64,
}

impl Scale {
    fn y(&self, mm: f64) -> f64 {
        self.bottom - mm.clamp(0.0, self.most_mm) * self.px_per_mm
    }
}

pub(super) fn row_height(row: &Row, chart: &Chart<'_>, track: &Track) -> f64 {
    if only_reason(row, chart, track).is_some() {
        EMPTY
    } else {
        row.height
    }
}

/// The one reason why a whole track lacks the figure, where flanges lack it.
fn only_reason(row: &Row, chart: &Chart<'_>, track: &Track) -> Option<Missing> {
    let reasons: Option<Vec<Missing>> = track
        .stations
        .iter()
        .map(|&(number, _)| row.reading(&chart.border.stations[number]).err())
        .collect();
    let reasons = reasons?;
    let flange = reasons.iter().find(|&&why| why != Missing::NoCrest);
    flange.or(reasons.first()).copied()
}

pub(super) fn draw_row(
    sheet: &mut Sheet,
    row: &Row,
    chart: &Chart<'_>,
    track: &Track,
    frame: &RowFrame,
) {
    let title = title(row, chart);
    if let Some(why) = only_reason(row, chart, track) {
        let words = text!(
            chart.language,
            "chart-row-none",
            row = title,
            why = why.message()
        );
        sheet.bold([frame.left, frame.top + 20.0], Anchor::Start, 12.0, &words);
        return;
    }
    sheet.bold(
        [frame.left + 6.0, frame.top + 15.0],
        Anchor::Start,
        12.0,
        &title,
    );
    let scale = scale(row, chart, track, frame);
    draw_grid(sheet, frame, &scale);
    let reasons = draw_gaps(sheet, row, chart, track, frame, &scale);
    let curve = draw_curve(sheet, row, chart, track, frame, &scale);
    let drawn = Drawn { curve, reasons };
    for limit in row.limits() {
        draw_limit(sheet, chart, track, frame, &scale, &limit, &drawn);
    }
    if row.figure == StationFigure::Height {
        draw_notches(sheet, chart, track, frame, &scale);
    }
    for &(number, finding) in &chart.findings {
        if judge::station_figure_of(finding.check) == Some(row.figure) {
            draw_mark(sheet, track, frame, &scale, (number, finding));
        }
    }
}

/// What a row shows.
fn title(row: &Row, chart: &Chart<'_>) -> String {
    let name = capital(&figure_name(row.figure, chart.language));
    if row.figure == StationFigure::Thickness {
        let depth = chart.checked.protocol.value(LimitKey::FlangeDepth);
        let depth = Value::figure(depth.to_string());
        text!(
            chart.language,
            "chart-row-at-depth",
            figure = name,
            depth = depth
        )
    } else {
        text!(chart.language, "chart-row", figure = name)
    }
}

fn scale(row: &Row, chart: &Chart<'_>, track: &Track, frame: &RowFrame) -> Scale {
    let stations = || {
        track
            .stations
            .iter()
            .map(|&(n, _)| &chart.border.stations[n])
    };
    // A few figures far off must not flatten all others: they leave the plot.
    const SHOWN_SHARE: f64 = 0.98;
    let mut figures: Vec<f64> = stations()
        .filter_map(|station| row.reading(station).ok())
        .map(|figure| figure.mm)
        .collect();
    figures.sort_by(f64::total_cmp);
    let last = figures.len().saturating_sub(1) as f64;
    let shown = figures
        .get((last * SHOWN_SHARE) as usize)
        .map(|mm| mm * 1.15);
    let limits = row.limits().flat_map(|limit| {
        let limit = chart.checked.protocol.limit(limit.key);
        stations().map(|station| limit.in_zone(station.zone))
    });
    let most = limits.chain(shown).fold(1.0, f64::max);
    let most_mm = (most * 1.06).ceil();
    Scale {
        bottom: frame.bottom - 6.0,
        px_per_mm: (frame.bottom - 6.0 - frame.top - HEAD) / most_mm,
        most_mm,
    }
}

fn draw_grid(sheet: &mut Sheet, frame: &RowFrame, scale: &Scale) {
    let step = [1.0, 2.0, 5.0, 10.0, 20.0]
        .into_iter()
        .find(|step| step * scale.px_per_mm >= 18.0)
        .unwrap_or(50.0);
    for tick in 0..=(scale.most_mm / step).floor() as usize {
        let mm = tick as f64 * step;
        let y = scale.y(mm);
        let stroke = if tick == 0 {
            Stroke::whole(INK, 1.0)
        } else {
            Stroke::whole(PALE, 0.8)
        };
        sheet.line([frame.left, y], [frame.right, y], stroke);
        sheet.text(
            [frame.left - 6.0, y + 4.0],
            Anchor::End,
            SMALL,
            &format!("{mm:.0}"),
        );
    }
    let top = scale.y(scale.most_mm);
    sheet.line(
        [frame.left, top],
        [frame.left, scale.bottom],
        Stroke::whole(INK, 1.0),
    );
}

/// Hatches the stretches without a figure, and writes the reason on each; returns places
/// along those letters.
fn draw_gaps(
    sheet: &mut Sheet,
    row: &Row,
    chart: &Chart<'_>,
    track: &Track,
    frame: &RowFrame,
    scale: &Scale,
) -> Vec<SheetPoint> {
    let mut letters = Vec::new();
    let why = |number: usize| row.reading(&chart.border.stations[number]).err();
    let half_step = half_step(track);
    let runs = track.stations.chunk_by(|a, b| why(a.0) == why(b.0));
    for run in runs {
        let (Some(first), Some(last)) = (run.first(), run.last()) else {
            continue;
        };
        let Some(why) = why(first.0) else { continue };
        let from = frame.across.px(first.1 - half_step).max(frame.left);
        let to = frame.across.px(last.1 + half_step).min(frame.right);
        let top = scale.y(scale.most_mm) + 2.0;
        sheet.hatched([from, top], [to, scale.bottom]);
        let words = short_reason(why, chart.language);
        let middle = f64::midpoint(from, to);
        let half = text_width(&words, SMALL) / 2.0;
        if to - from > 2.0 * half + 6.0 {
            let y = clear_of_limits(row, chart, first.0, scale, [top, scale.bottom]);
            sheet.label([middle, y + 4.0], Anchor::Middle, SMALL, &words);
            letters.extend(steps(2.0 * half).map(|step| [middle - half + step, y]));
        } else if to - from > 12.0 {
            // Beside a narrow gap there is room in the sheet's middle only.
            let bottom = scale.bottom - 4.0;
            sheet.upright([middle + 4.0, bottom], SMALL, &words);
            letters.extend(steps(2.0 * half).map(|step| [middle, bottom - step]));
        }
    }
    letters
}

/// From 0 to a length in small steps, px.
fn steps(length: f64) -> impl Iterator<Item = f64> {
    const STEP_PX: f64 = 8.0;
    let count = (length / STEP_PX).ceil().max(1.0);
    (0..=count as u32).map(move |step| length * f64::from(step) / count)
}

/// A height between top and bottom where no limit of a station runs: the
/// middle, or else nearer to the top or the bottom.
fn clear_of_limits(
    row: &Row,
    chart: &Chart<'_>,
    station: usize,
    scale: &Scale,
    [top, bottom]: [f64; 2],
) -> f64 {
    const CLEAR_PX: f64 = 16.0;
    let zone = chart.border.stations[station].zone;
    let limits: Vec<f64> = row
        .limits()
        .map(|limit| chart.checked.protocol.limit(limit.key).in_zone(zone))
        .filter(|mm| *mm > 0.0)
        .map(|mm| scale.y(mm))
        .collect();
    [0.5, 0.25, 0.75, 0.12, 0.88]
        .map(|share| top + (bottom - top) * share)
        .into_iter()
        .find(|y| limits.iter().all(|limit| (limit - y).abs() > CLEAR_PX))
        .unwrap_or(f64::midpoint(top, bottom))
}

fn half_step(track: &Track) -> f64 {
    let (from, to) = track.reach();
    (to - from) / (2.0 * track.stations.len().max(2) as f64)
}

fn draw_curve(
    sheet: &mut Sheet,
    row: &Row,
    chart: &Chart<'_>,
    track: &Track,
    frame: &RowFrame,
    scale: &Scale,
) -> Vec<SheetPoint> {
    let mut drawn = Vec::new();
    let figure = |number: usize| row.reading(&chart.border.stations[number]).ok();
    let runs = track
        .stations
        .chunk_by(|a, b| figure(a.0).is_some() == figure(b.0).is_some());
    for run in runs {
        let measured: Vec<_> = run
            .iter()
            .filter_map(|&(number, along)| Some((frame.across.px(along), figure(number)?)))
            .collect();
        let edge = |sense: f64| {
            measured
                .iter()
                .map(move |(x, m)| [*x, scale.y(m.mm + sense * m.uncertainty_mm)])
        };
        let band: Vec<SheetPoint> = edge(1.0).chain(edge(-1.0).rev()).collect();
        sheet.area(&band, PALE);
        let line: Vec<SheetPoint> = edge(0.0).collect();
        match line[..] {
            [only] => sheet.dot(only, 1.4, INK),
            _ => sheet.polyline(&line, CURVE),
        }
        drawn.extend(line);
    }
    drawn
}

/// A limit of a row.
struct Limit {
    key: LimitKey,
    stroke: Stroke,
    /// The words for a limit from that side.
    words: fn(Language, String) -> String,
}

/// A limit as a stepped line, its value written where the curve leaves room; 0
/// is no limit.
fn draw_limit(
    sheet: &mut Sheet,
    chart: &Chart<'_>,
    track: &Track,
    frame: &RowFrame,
    scale: &Scale,
    of: &Limit,
    drawn: &Drawn,
) {
    let limit = chart.checked.protocol.limit(of.key);
    let value = |number: usize| limit.in_zone(chart.border.stations[number].zone);
    let half_step = half_step(track);
    for run in track.stations.chunk_by(|a, b| value(a.0) == value(b.0)) {
        let (Some(first), Some(last)) = (run.first(), run.last()) else {
            continue;
        };
        let mm = value(first.0);
        if mm <= 0.0 {
            continue;
        }
        let y = scale.y(mm);
        let from = frame.across.px(first.1 - half_step).max(frame.left);
        let to = frame.across.px(last.1 + half_step).min(frame.right);
        sheet.line([from, y], [to, y], of.stroke);
        let words = (of.words)(chart.language, format!("{mm} mm"));
        let width = text_width(&words, SMALL);
        if to - from > width + 8.0 {
            let x = room_along(drawn, y - 8.0, [from + 5.0, to - width - 3.0], width);
            sheet.label([x, y - 4.0], Anchor::Start, SMALL, &words);
        }
    }
}

/// What is in a row already.
struct Drawn {
    curve: Vec<SheetPoint>,
    /// Places along the reasons why there is no figure.
    reasons: Vec<SheetPoint>,
}

/// Where between two places lettering of some width at height `y` has a curve
/// above or below it that keeps away, and no reason on it: the first such place, else the
/// first.
fn room_along(drawn: &Drawn, y: f64, [from, to]: [f64; 2], width: f64) -> f64 {
    const STEP_PX: f64 = 24.0;
    const CLEAR_PX: f64 = 11.0;
    let is_clear = |x: f64| {
        let beside = |p: &&SheetPoint| (x - 6.0..=x + width + 6.0).contains(&p[0]);
        let mut near = drawn.curve.iter().filter(beside).peekable();
        let mut reasons = drawn.reasons.iter().filter(beside);
        let keeps_away = |p: &SheetPoint| (p[1] - y).abs() > CLEAR_PX;
        near.peek().is_some() && near.all(keeps_away) && reasons.all(keeps_away)
    };
    (0..)
        .map(|i| from + STEP_PX * f64::from(i))
        .take_while(|x| *x <= to)
        .find(|x| is_clear(*x))
        .unwrap_or(from)
}

fn draw_notches(
    sheet: &mut Sheet,
    chart: &Chart<'_>,
    track: &Track,
    frame: &RowFrame,
    scale: &Scale,
) {
    for dip in chart
        .border
        .dips
        .iter()
        .filter(|d| d.kind == DipKind::Notch)
    {
        let height = chart.border.stations[dip.bottom].flange_height;
        let Some((along, height)) = track.place(dip.bottom).zip(height.ok()) else {
            continue;
        };
        let (x, y) = (frame.across.px(along), scale.y(height.mm) + 4.0);
        // An open triangle that points up into the notch.
        let corners = [[x, y], [x - 5.0, y + 9.0], [x + 5.0, y + 9.0], [x, y]];
        sheet.polyline(&corners, Stroke::whole(INK, 1.3));
        let depth = Value::number(dip.depth.mm, 1);
        let words = text!(chart.language, "chart-frenum", depth = depth);
        sheet.label([x, scale.bottom - 5.0], Anchor::Middle, SMALL, &words);
    }
}

/// The worst station of a finding.
fn draw_mark(
    sheet: &mut Sheet,
    track: &Track,
    frame: &RowFrame,
    scale: &Scale,
    (number, finding): (usize, &Finding),
) {
    let worst = finding
        .stretch
        .and_then(|stretch| track.place(stretch.worst));
    let figure = finding.figure.as_ref();
    let Some((along, figure)) = worst.zip(figure) else {
        return;
    };
    // A depth or a difference is no figure of the row: its mark stands at the foot.
    let is_of_row = !matches!(
        finding.check,
        Check::UnderExtension | Check::BorderAsymmetry
    );
    let mm = if is_of_row { figure.measured } else { 0.0 };
    let x = frame.across.px(along);
    let y = scale.y(mm);
    let size = 4.5;
    match finding.severity {
        Severity::Fail => sheet.area(
            &[
                [x - size, y - size],
                [x + size, y - size],
                [x + size, y + size],
                [x - size, y + size],
            ],
            INK,
        ),
        Severity::Borderline => {
            let size = size * 1.4;
            sheet.area(
                &[[x, y - size], [x + size, y], [x, y + size], [x - size, y]],
                INK,
            );
        }
        Severity::Note => sheet.dot([x, y], size, GREY),
    }
    sheet.label(
        [x + 8.0, y - 5.0],
        Anchor::Start,
        SMALL,
        &names::finding(number),
    );
}

/// A measured line with its band, for the legend.
pub(super) fn sample(sheet: &mut Sheet, at: SheetPoint) {
    let [x, y] = [at[0], at[1] - 4.0];
    sheet.area(
        &[
            [x, y - 5.0],
            [x + 36.0, y - 5.0],
            [x + 36.0, y + 5.0],
            [x, y + 5.0],
        ],
        PALE,
    );
    sheet.line([x, y], [x + 36.0, y], CURVE);
}
