//! Drawings of control charts. What a rule speaks of is ringed; nothing is told by colour
//! alone.

use super::charts::svg;
use crate::drawing::canvas::{Anchor, GREY, INK, LIMIT, PALE, Sheet, Stroke};
use crate::folder::drift::{Chart, ShareChart};
use crate::text::format;

const LEFT: f64 = 64.0;
const RIGHT: f64 = 850.0;
const WIDTH: f64 = 980.0;

/// One chart under another on a sheet.
struct Pane<'a> {
    name: &'a str,
    top: f64,
    height: f64,
    /// Place along the axis, 0 to 1, and value.
    points: Vec<[f64; 2]>,
    /// Points that lie outside or in a run.
    ringed: Vec<bool>,
    centre: f64,
    /// Lower and upper limit at each point.
    limits: Vec<[f64; 2]>,
    /// The limits in words, at the last point.
    labels: [String; 3],
}

impl Pane<'_> {
    fn draw(&self, sheet: &mut Sheet) {
        let values = self.points.iter().map(|point| point[1]);
        let all = values.chain(self.limits.iter().flatten().copied());
        let (low, high) = all.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), v| {
            (low.min(v), high.max(v))
        });
        let x = |share: f64| LEFT + (RIGHT - LEFT) * share;
        let y = |value: f64| self.top + self.height * (high - value) / (high - low).max(1e-12);
        sheet.text([LEFT, self.top - 8.0], Anchor::Start, 12.0, self.name);
        let centre = y(self.centre);
        sheet.line([LEFT, centre], [RIGHT, centre], Stroke::whole(GREY, 1.0));
        for side in [0, 1] {
            let line = self.points.iter().zip(&self.limits);
            let line: Vec<[f64; 2]> = line.map(|(p, ends)| [x(p[0]), y(ends[side])]).collect();
            sheet.polyline(&line, Stroke::dashed(LIMIT, 1.5, "6 4"));
        }
        let ends = self.limits.last().copied().unwrap_or_default();
        for (value, label) in [ends[1], self.centre, ends[0]]
            .into_iter()
            .zip(&self.labels)
        {
            sheet.text([RIGHT + 4.0, y(value) + 4.0], Anchor::Start, 10.0, label);
        }
        let line: Vec<[f64; 2]> = self.points.iter().map(|p| [x(p[0]), y(p[1])]).collect();
        sheet.polyline(&line, Stroke::whole(PALE, 1.0));
        for (&place, &is_ringed) in line.iter().zip(&self.ringed) {
            sheet.dot(place, 2.2, INK);
            if is_ringed {
                sheet.circle(place, 5.5, Stroke::whole(LIMIT, 1.8));
            }
        }
    }
}

/// Individuals, moving ranges and moving averages of a figure, in order of time.
pub(super) fn control_chart(chart: &Chart) -> String {
    let title = format!("{}, {}", chart.figure.title(), chart.group.words());
    let mut sheet = Sheet::new(WIDTH, 420.0, &title);
    for pane in [individuals(chart), ranges(chart), averages(chart)] {
        pane.draw(&mut sheet);
    }
    svg(&sheet)
}

fn labels(chart: &Chart, [lower, centre, upper]: [f64; 3]) -> [String; 3] {
    let decimals = chart.figure.decimals();
    [
        format!("upper limit {upper:.decimals$}"),
        format!("centre {centre:.decimals$}"),
        format!("lower limit {lower:.decimals$}"),
    ]
}

/// Place along the axis of each of so many points, 0 to 1.
fn places(count: usize) -> impl Iterator<Item = f64> {
    (0..count).map(move |number| number as f64 / (count.max(2) - 1) as f64)
}

fn points(values: &[f64]) -> Vec<[f64; 2]> {
    let values = places(values.len()).zip(values);
    values.map(|(place, value)| [place, *value]).collect()
}

fn individuals(chart: &Chart) -> Pane<'static> {
    let of = &chart.individuals;
    let spoken = |point: usize| {
        let runs = chart
            .signals
            .iter()
            .filter(|signal| signal.rule != statistics::control::Rule::Ewma);
        let mut runs = runs.filter(|signal| (signal.from..=signal.last).contains(&point));
        runs.next().is_some()
    };
    Pane {
        name: "individuals",
        top: 24.0,
        height: 130.0,
        points: points(&chart.values),
        ringed: (0..chart.values.len()).map(spoken).collect(),
        centre: of.mean,
        limits: vec![[of.lower, of.upper]; chart.values.len()],
        labels: labels(chart, [of.lower, of.mean, of.upper]),
    }
}

/// The first range belongs to the second value.
fn ranges(chart: &Chart) -> Pane<'static> {
    let of = &chart.individuals;
    let places = places(chart.values.len()).skip(1);
    Pane {
        name: "moving range",
        top: 190.0,
        height: 70.0,
        points: places.zip(&of.ranges).map(|(x, y)| [x, *y]).collect(),
        ringed: of
            .ranges
            .iter()
            .map(|range| *range > of.upper_range)
            .collect(),
        centre: of.mean_range,
        limits: vec![[0.0, of.upper_range]; of.ranges.len()],
        labels: labels(chart, [0.0, of.mean_range, of.upper_range]),
    }
}

fn averages(chart: &Chart) -> Pane<'static> {
    let of = &chart.averages;
    let limits: Vec<[f64; 2]> = of
        .reaches
        .iter()
        .map(|r| [of.centre - r, of.centre + r])
        .collect();
    let [lower, upper] = limits.last().copied().unwrap_or_default();
    Pane {
        name: "moving average, weight 0.2",
        top: 296.0,
        height: 110.0,
        points: points(&of.averages),
        ringed: (0..of.averages.len())
            .map(|point| of.is_out(point))
            .collect(),
        centre: of.centre,
        limits,
        labels: labels(chart, [lower, of.centre, upper]),
    }
}

/// The share that fails, by groups of days, each with limits of its own size.
pub(super) fn share_chart(chart: &ShareChart) -> String {
    let title = format!("Share that fails, {}", chart.group.words());
    let mut sheet = Sheet::new(WIDTH, 190.0, &title);
    let shares: Vec<f64> = chart.days.iter().map(|days| days.share()).collect();
    let limits: Vec<[f64; 2]> = chart
        .days
        .iter()
        .map(|d| [d.limits.lower, d.limits.upper])
        .collect();
    let [lower, upper] = limits.last().copied().unwrap_or_default();
    let words = |name: &str, share: f64| format!("{name} {}", format::percent(share));
    Pane {
        name: "share that fails",
        top: 24.0,
        height: 140.0,
        points: points(&shares),
        ringed: chart.days.iter().map(|days| days.is_out()).collect(),
        centre: chart.share,
        limits,
        labels: [
            words("upper limit", upper),
            words("share", chart.share),
            words("lower limit", lower),
        ],
    }
    .draw(&mut sheet);
    let ends = chart.days.first().zip(chart.days.last());
    if let Some((first, last)) = ends {
        sheet.text([LEFT, 184.0], Anchor::Start, 11.0, &first.from);
        sheet.text([RIGHT, 184.0], Anchor::End, 11.0, &last.to);
    }
    svg(&sheet)
}
