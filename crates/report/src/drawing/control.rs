//! Control charts: individuals, moving ranges and moving averages in order of time. What
//! lies outside or in a run is ringed; nothing is told by colour alone.

use super::canvas::{Anchor, GREY, INK, LIMIT, PALE, Sheet, Stroke};
use messages::{Language, Value, text};
use statistics::control::{Ewma, EwmaChart, IndividualsChart, Rule};

pub const LEFT: f64 = 64.0;
pub const RIGHT: f64 = 850.0;
pub const WIDTH: f64 = 980.0;

/// One chart under another on a sheet.
pub struct Pane {
    pub name: String,
    pub top: f64,
    pub height: f64,
    /// Place along the axis, 0 to 1, and value.
    pub points: Vec<[f64; 2]>,
    /// Points that lie outside or in a run.
    pub ringed: Vec<bool>,
    pub centre: f64,
    /// Lower and upper limit at each point.
    pub limits: Vec<[f64; 2]>,
    /// The limits in words, at the last point.
    pub labels: [String; 3],
}

impl Pane {
    pub fn draw(&self, sheet: &mut Sheet) {
        let values = self.points.iter().map(|point| point[1]);
        let all = values.chain(self.limits.iter().flatten().copied());
        let (low, high) = all.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), v| {
            (low.min(v), high.max(v))
        });
        let x = |share: f64| LEFT + (RIGHT - LEFT) * share;
        let y = |value: f64| self.top + self.height * (high - value) / (high - low).max(1e-12);
        sheet.text([LEFT, self.top - 8.0], Anchor::Start, 12.0, &self.name);
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

/// A figure in order of time with its charts.
pub struct Charts<'a> {
    /// What a screen reader says.
    pub title: &'a str,
    /// Language of the labels.
    pub language: Language,
    /// Decimals of the labels.
    pub decimals: usize,
    pub values: &'a [f64],
    pub individuals: &'a IndividualsChart,
    pub averages: &'a EwmaChart,
    /// Rule with the first and the last point, from 0, of which it speaks.
    pub spoken: Vec<(Rule, usize, usize)>,
}

/// Individuals over moving ranges over moving averages.
pub fn control_charts(charts: &Charts<'_>) -> Sheet {
    let mut sheet = Sheet::new(WIDTH, 420.0, charts.title);
    for pane in [individuals(charts), ranges(charts), averages(charts)] {
        pane.draw(&mut sheet);
    }
    sheet
}

/// Points at even distances.
pub fn points(values: &[f64]) -> Vec<[f64; 2]> {
    let values = places(values.len()).zip(values);
    values.map(|(place, value)| [place, *value]).collect()
}

/// Place along the axis of each of so many points, 0 to 1.
fn places(count: usize) -> impl Iterator<Item = f64> {
    (0..count).map(move |number| number as f64 / (count.max(2) - 1) as f64)
}

fn labels(charts: &Charts<'_>, [lower, centre, upper]: [f64; 3]) -> [String; 3] {
    let (decimals, language) = (charts.decimals, charts.language);
    let number = |value| Value::number(value, decimals);
    [
        text!(language, "chart-upper", value = number(upper)),
        text!(language, "chart-centre", value = number(centre)),
        text!(language, "chart-lower", value = number(lower)),
    ]
}

fn individuals(charts: &Charts<'_>) -> Pane {
    let of = charts.individuals;
    let is_ringed = |point: usize| {
        let mut runs = charts.spoken.iter().filter(|run| run.0 != Rule::Ewma);
        runs.any(|&(_, from, last)| (from..=last).contains(&point))
    };
    Pane {
        name: text!(charts.language, "chart-individuals"),
        top: 24.0,
        height: 130.0,
        points: points(charts.values),
        ringed: (0..charts.values.len()).map(is_ringed).collect(),
        centre: of.mean,
        limits: vec![[of.lower, of.upper]; charts.values.len()],
        labels: labels(charts, [of.lower, of.mean, of.upper]),
    }
}

/// The first range belongs to the second value.
fn ranges(charts: &Charts<'_>) -> Pane {
    let of = charts.individuals;
    let places = places(charts.values.len()).skip(1);
    Pane {
        name: text!(charts.language, "chart-ranges"),
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
        labels: labels(charts, [0.0, of.mean_range, of.upper_range]),
    }
}

fn averages(charts: &Charts<'_>) -> Pane {
    let of = charts.averages;
    let limits = of
        .reaches
        .iter()
        .map(|reach| [of.centre - reach, of.centre + reach]);
    let limits: Vec<[f64; 2]> = limits.collect();
    let [lower, upper] = limits.last().copied().unwrap_or_default();
    let is_ringed = |point| {
        let mut runs = charts.spoken.iter().filter(|run| run.0 == Rule::Ewma);
        runs.any(|_| of.is_out(point))
    };
    Pane {
        name: text!(
            charts.language,
            "chart-averages",
            weight = Value::number(Ewma::DEFAULT.weight, 1)
        ),
        top: 296.0,
        height: 110.0,
        points: points(&of.averages),
        ringed: (0..of.averages.len()).map(is_ringed).collect(),
        centre: of.centre,
        limits,
        labels: labels(charts, [lower, of.centre, upper]),
    }
}
