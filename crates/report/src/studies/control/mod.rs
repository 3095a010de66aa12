//! A check standard measured again and again: results of one impression or of the
//! reference artefact in order of time, on control charts.

mod kept;

pub use kept::{ControlError, Standard};

use crate::result::TimeSources;
use crate::text::rounding::to_decimals;
use kept::{Measurement, measurements_in};
use messages::{Message, message};
use schemars::JsonSchema;
use serde::Serialize;
use statistics::control::{Ewma, EwmaChart, IndividualsChart, Process, Rule, signals};
use std::collections::BTreeSet;
use std::path::Path;

/// Measurements without which nothing is judged.
const LEAST: usize = 8;

/// What a check standard says of the measuring.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum InControl {
    /// No chart speaks at the latest measurement.
    InControl,
    /// A chart speaks at the latest measurement.
    OutOfControl,
    /// There are too few measurements.
    TooFew,
}

/// A check standard over time.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct ControlResult {
    /// Name and version of this format: `archproof-control/1`.
    pub schema: &'static str,
    /// Version of the program.
    pub program: &'static str,
    /// What was measured.
    pub standard: String,
    /// The same, for people of any language.
    #[serde(skip)]
    pub(crate) of: Standard,
    /// What all of it says.
    pub outcome: InControl,
    /// When each measurement was scanned (UTC, or a date), in order.
    pub measured: Vec<String>,
    /// Measurements by where these times are taken from.
    pub times_by: TimeSources,
    /// Number of measurements, from the first, that the limits are made from.
    pub limits_from: usize,
    /// Each figure that every measurement has.
    pub figures: Vec<ControlFigure>,
    /// Signals to be expected by chance alone.
    pub by_chance: f64,
    /// Figures that are not judged.
    pub not_judged: Vec<NotCharted>,
}

/// A figure of the standard.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct ControlFigure {
    /// The figure.
    pub figure: String,
    /// Its unit.
    pub unit: String,
    /// In each measurement.
    pub readings: Vec<f64>,
    /// Mean of those that the limits are made from.
    pub centre: f64,
    /// Their standard deviation, by the mean moving range.
    pub standard_deviation: f64,
    /// Lower control limit.
    pub lower: f64,
    /// Upper control limit.
    pub upper: f64,
    /// What its chart says.
    pub signals: Vec<ControlSignal>,
}

/// Something that a chart says.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct ControlSignal {
    /// Name of the rule.
    pub rule: &'static str,
    /// Number of the measurement, from 1, with which it spoke first.
    pub measurement: usize,
    /// Number of the measurement from which on the values lie so.
    pub since: usize,
    /// Number of the last for which it speaks.
    pub last: usize,
    /// Whether they lie above the centre.
    pub is_above: bool,
}

/// A figure that is not judged.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct NotCharted {
    /// The figure.
    pub figure: String,
    /// Why.
    pub why: String,
    /// The same as a message of the catalogue.
    #[serde(skip)]
    pub(crate) reason: Message,
}

/// Judges the results of one check standard in a folder, and in folders below it, in order
/// of time; the limits are made from the first so many, or from all where there are fewer.
///
/// # Errors
/// When the folder cannot be read, holds no results, or results of several things.
pub fn check_standard(
    folder: &Path,
    first: usize,
    rules: &[Rule],
) -> Result<ControlResult, ControlError> {
    let (standard, all) = measurements_in(folder)?;
    Ok(judged(standard, &all, first, rules))
}

fn judged(standard: Standard, all: &[Measurement], first: usize, rules: &[Rule]) -> ControlResult {
    let limits_from = first.max(LEAST).min(all.len());
    let names: BTreeSet<&String> = all.iter().flat_map(|one| one.figures.keys()).collect();
    let (mut figures, mut not_judged) = (Vec::new(), Vec::new());
    for name in names {
        let readings = all.iter().filter_map(|one| one.figures.get(name));
        let (units, readings): (Vec<&String>, Vec<f64>) =
            readings.map(|(unit, value)| (unit, *value)).unzip();
        let why = if readings.len() < all.len() {
            Some(message!(
                "control-some-have-it",
                have = readings.len(),
                all = all.len()
            ))
        } else if all.len() < LEAST {
            Some(message!("control-least", count = all.len(), least = LEAST))
        } else {
            None
        };
        let process = Process::of(&readings[..limits_from.min(readings.len())]);
        let process = process.filter(|process| process.sigma > 0.0);
        match (why, process) {
            (None, Some(process)) => {
                let unit = units
                    .first()
                    .map_or_else(String::new, |unit| (*unit).clone());
                figures.push(ControlFigure::of(name, unit, readings, process, rules));
            }
            (why, _) => {
                let reason = why.unwrap_or_else(|| message!("control-alike", from = limits_from));
                not_judged.push(NotCharted {
                    figure: name.clone(),
                    why: reason.to_string(),
                    reason,
                });
            }
        }
    }
    let is_latest = |signal: &ControlSignal| signal.last == all.len();
    let speaks = figures
        .iter()
        .any(|figure| figure.signals.iter().any(is_latest));
    let points = (figures.len() * all.len()) as f64;
    let by_chance = rules
        .iter()
        .map(|rule| points / rule.false_alarm_every())
        .sum();
    let mut times_by = TimeSources::default();
    all.iter().for_each(|one| times_by.add(Some(one.at_by)));
    ControlResult {
        times_by,
        schema: "archproof-control/1",
        program: env!("CARGO_PKG_VERSION"),
        standard: standard.message().to_string(),
        of: standard,
        outcome: match (figures.is_empty(), speaks) {
            (true, _) => InControl::TooFew,
            (false, true) => InControl::OutOfControl,
            (false, false) => InControl::InControl,
        },
        measured: all.iter().map(|one| one.at.clone()).collect(),
        limits_from,
        figures,
        by_chance: to_decimals(by_chance, 2),
        not_judged,
    }
}

impl ControlFigure {
    fn of(name: &str, unit: String, readings: Vec<f64>, process: Process, rules: &[Rule]) -> Self {
        let process = Process {
            centre: to_decimals(process.centre, 6),
            sigma: to_decimals(process.sigma, 6).max(1e-6),
        };
        let chart = IndividualsChart::by(process, &readings);
        let said = signals(&readings, process, rules).into_iter();
        Self {
            figure: name.to_owned(),
            unit,
            centre: process.centre,
            standard_deviation: process.sigma,
            lower: to_decimals(chart.lower, 6),
            upper: to_decimals(chart.upper, 6),
            signals: said
                .map(|signal| ControlSignal {
                    rule: signal.rule.name(),
                    measurement: signal.first + 1,
                    since: signal.from + 1,
                    last: signal.last + 1,
                    is_above: signal.is_above,
                })
                .collect(),
            readings,
        }
    }

    /// The process that its limits say.
    pub(crate) fn process(&self) -> Process {
        Process {
            centre: self.centre,
            sigma: self.standard_deviation,
        }
    }

    /// Its chart of moving averages.
    pub(crate) fn averages(&self) -> EwmaChart {
        EwmaChart::of(&self.readings, self.process(), Ewma::DEFAULT)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::json_text;
    use crate::result::{CaseResult, Times};
    use crate::testing::checked_with_border;
    use std::fs;

    /// The result of a day, in a folder whose name says nothing of the order.
    fn keep(folder: &Path, day: usize, more_mm: f64) {
        let mut result = CaseResult::of(&checked_with_border());
        let border = result.impressions[0].border.as_mut().unwrap();
        border.length_mm += 0.1 * (day * 3 % 5) as f64 + more_mm;
        let at = format!("2026-03-{day:02}T00:00:00Z");
        result.times = Some(Times {
            checked_at: "2026-04-01T00:00:00Z".to_owned(),
            scans_changed_at: vec![Some(at)],
            steps: Vec::new(),
        });
        let place = folder.join(format!("r{}", 99 - day));
        fs::create_dir_all(&place).unwrap();
        fs::write(place.join("result.json"), json_text(&result)).unwrap();
    }

    /// Copied on one day, in an order that is not that of scanning: the stated dates decide,
    /// and where two are alike, the names.
    #[test]
    fn stated_dates_come_before_the_times_of_the_files() {
        let folder = tempfile::tempdir().unwrap();
        for (name, changed, stated) in [
            ("a", "2026-03-09T00:00:00Z", Some("2026-03-02")),
            ("b", "2026-03-08T00:00:00Z", Some("2026-03-01T12:00:00Z")),
            ("d", "2026-03-07T00:00:00Z", Some("2026-03-03")),
            ("c", "2026-03-06T00:00:00Z", Some("2026-03-03")),
            ("e", "2026-03-01T18:00:00Z", None),
        ] {
            let mut result = CaseResult::of(&checked_with_border());
            result.scanned_at = stated.map(str::to_owned);
            let position = ["b", "e", "a", "c", "d"]
                .iter()
                .position(|one| *one == name);
            result.impressions[0].border.as_mut().unwrap().length_mm = position.unwrap() as f64;
            result.times = Some(Times {
                checked_at: "2026-04-01T00:00:00Z".to_owned(),
                scans_changed_at: vec![Some(changed.to_owned())],
                steps: Vec::new(),
            });
            let place = folder.path().join(name);
            fs::create_dir_all(&place).unwrap();
            fs::write(place.join("result.json"), json_text(&result)).unwrap();
        }
        let (_, all) = measurements_in(folder.path()).unwrap();
        let lengths: Vec<f64> = all
            .iter()
            .map(|one| one.figures["border length"].1)
            .collect();
        assert_eq!(lengths, [0.0, 1.0, 2.0, 3.0, 4.0]);
        let found = check_standard(folder.path(), 8, &Rule::DEFAULT).unwrap();
        assert_eq!([found.times_by.case_file, found.times_by.scan_file], [4, 1]);
    }

    #[test]
    fn an_impression_measured_daily_is_out_of_control_at_the_day_that_differs() {
        let folder = tempfile::tempdir().unwrap();
        (1..=12).for_each(|day| keep(folder.path(), day, 0.0));
        let judge = || check_standard(folder.path(), 8, &Rule::DEFAULT).unwrap();
        assert_eq!(judge().outcome, InControl::InControl);
        keep(folder.path(), 13, 2.0);
        let found = judge();
        assert_eq!(found.outcome, InControl::OutOfControl);
        assert_eq!(found.measured[12], "2026-03-13T00:00:00Z");
        let spoken: Vec<&ControlFigure> =
            (found.figures.iter().filter(|one| !one.signals.is_empty())).collect();
        let [length] = spoken[..] else {
            panic!("{spoken:?}");
        };
        let at = (length.figure.as_str(), length.signals[0].measurement);
        assert_eq!(at, ("border length", 13));
        // What never varies has no limits, and says so.
        let alike = found
            .not_judged
            .iter()
            .find(|one| one.figure == "scanned area");
        assert!(
            alike
                .unwrap()
                .why
                .starts_with("the first 8 readings are alike")
        );
    }

    #[test]
    fn results_of_two_standards_or_without_a_time_are_refused() {
        let folder = tempfile::tempdir().unwrap();
        let refusal = || {
            let refused = check_standard(folder.path(), 8, &Rule::DEFAULT);
            refused.unwrap_err().to_string()
        };
        assert!(refusal().contains("holds no results"));
        let result = CaseResult::of(&checked_with_border());
        fs::write(folder.path().join("a.json"), json_text(&result)).unwrap();
        assert!(refusal().contains("does not say when"), "{}", refusal());
        keep(folder.path(), 1, 0.0);
        fs::remove_file(folder.path().join("a.json")).unwrap();
        let artefact =
            "{\"schema\":\"archproof-artefact/1\",\"artefact\":\"B\",\"scans\":[],\"sizes\":[]}";
        fs::write(folder.path().join("b.json"), artefact).unwrap();
        assert!(
            refusal().contains("keep the results of one standard"),
            "{}",
            refusal()
        );
    }
}
