//! A check standard measured again and again: results of one impression or of the
//! reference artefact in order of time, on control charts.

use super::comparable::comparable_figures;
use crate::result::CaseResult;
use crate::text::rounding::to_decimals;
use mesh::read::shown_path;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use statistics::control::{Ewma, EwmaChart, IndividualsChart, Process, Rule, signals};
use std::collections::{BTreeMap, BTreeSet};
use std::io;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Measurements without which nothing is judged.
const LEAST: usize = 8;
/// Folders below each other that are looked through.
const DEPTH: usize = 6;

/// Why a check standard could not be judged; its text is one line for people.
#[derive(Debug, Error)]
pub enum ControlError {
    /// The folder cannot be read.
    #[error("{}: cannot be read ({source}); give a folder with results of one standard", shown_path(.path))]
    Unreadable {
        /// The folder or file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// It holds none.
    #[error("{}: holds no results of 'archproof check' or 'archproof artefact --json'; keep one for each measurement there", shown_path(.0))]
    None(PathBuf),
    /// It holds results of different things.
    #[error("{}: is of {found}, others are of {wanted}; keep the results of one standard in a folder", shown_path(.path))]
    Mixed {
        /// The result.
        path: PathBuf,
        /// What it is of.
        found: String,
        /// What those before it are of.
        wanted: String,
    },
    /// A result does not say when it was measured.
    #[error("{}: does not say when it was measured; measure again with this version", shown_path(.0))]
    NoTime(PathBuf),
}

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
    /// What all of it says.
    pub outcome: InControl,
    /// When each measurement was scanned (time of the scan file, UTC), in order.
    pub measured: Vec<String>,
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
}

/// A measurement: when, and its figures with their units.
struct Measurement {
    at: String,
    path: PathBuf,
    figures: BTreeMap<String, (String, f64)>,
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
    let mut files = Vec::new();
    look_through(folder, 0, &mut files)?;
    files.sort();
    let mut standard: Option<String> = None;
    let mut all: Vec<Measurement> = Vec::new();
    for path in files {
        let Some((of, measurements)) = read(&path)? else {
            continue;
        };
        let wanted = standard.get_or_insert_with(|| of.clone());
        if *wanted != of {
            let wanted = wanted.clone();
            return Err(ControlError::Mixed {
                path,
                found: of,
                wanted,
            });
        }
        all.extend(measurements);
    }
    let standard = standard.ok_or_else(|| ControlError::None(folder.to_owned()))?;
    all.sort_by(|a, b| (&a.at, &a.path).cmp(&(&b.at, &b.path)));
    Ok(judged(standard, &all, first, rules))
}

fn look_through(folder: &Path, depth: usize, files: &mut Vec<PathBuf>) -> Result<(), ControlError> {
    let unreadable = |source| ControlError::Unreadable {
        path: folder.to_owned(),
        source,
    };
    for entry in std::fs::read_dir(folder).map_err(unreadable)? {
        let path = entry.map_err(unreadable)?.path();
        let is_hidden = path
            .file_name()
            .is_some_and(|name| name.to_string_lossy().starts_with('.'));
        if path.is_dir() && !is_hidden && depth < DEPTH {
            look_through(&path, depth + 1, files)?;
        } else if path.extension().is_some_and(|ending| ending == "json") {
            files.push(path);
        }
    }
    Ok(())
}

/// As much of the JSON of an artefact check as is charted.
#[derive(Deserialize)]
struct KeptArtefact {
    artefact: String,
    scans: Vec<KeptScan>,
    sizes: Vec<KeptSize>,
}

#[derive(Deserialize)]
struct KeptScan {
    changed_at: Option<String>,
}

#[derive(Deserialize)]
struct KeptSize {
    quantity: String,
    of: Vec<String>,
    readings: Vec<KeptReading>,
}

#[derive(Deserialize)]
struct KeptReading {
    error_mm: f64,
}

/// What a file is of and its measurements; `None` of any other JSON.
fn read(path: &Path) -> Result<Option<(String, Vec<Measurement>)>, ControlError> {
    let bytes = std::fs::read(path).map_err(|source| ControlError::Unreadable {
        path: path.to_owned(),
        source,
    })?;
    let Ok(value) = serde_json::from_slice::<serde_json::Value>(&bytes) else {
        return Ok(None);
    };
    let schema = value
        .get("schema")
        .and_then(serde_json::Value::as_str)
        .map(str::to_owned);
    match schema.as_deref() {
        Some("archproof-result/1") => {
            let Ok(result) = serde_json::from_value::<CaseResult>(value) else {
                return Ok(None);
            };
            let one = of_case(&result, path)?;
            Ok(Some(("an impression".to_owned(), vec![one])))
        }
        Some("archproof-artefact/1") => {
            let Ok(kept) = serde_json::from_value::<KeptArtefact>(value) else {
                return Ok(None);
            };
            let of = format!("artefact {}", kept.artefact);
            Ok(Some((of, of_artefact(&kept, path)?)))
        }
        _ => Ok(None),
    }
}

fn of_case(result: &CaseResult, path: &Path) -> Result<Measurement, ControlError> {
    let times = result.times.as_ref();
    let at = times.map(|times| {
        let scanned = times.scans_changed_at.iter().flatten().min();
        scanned.unwrap_or(&times.checked_at).clone()
    });
    let figures = comparable_figures(result).into_iter();
    Ok(Measurement {
        at: at.ok_or_else(|| ControlError::NoTime(path.to_owned()))?,
        path: path.to_owned(),
        figures: figures
            .map(|f| (f.name, (f.unit.to_owned(), f.value)))
            .collect(),
    })
}

fn of_artefact(kept: &KeptArtefact, path: &Path) -> Result<Vec<Measurement>, ControlError> {
    let scans = kept.scans.iter().enumerate();
    scans
        .map(|(number, scan)| {
            let at = scan.changed_at.clone();
            let sizes = kept.sizes.iter().filter_map(|size| {
                let reading = size.readings.get(number)?;
                let name = format!("error of {} {}", size.quantity, size.of.join(" to "));
                Some((name, ("mm".to_owned(), reading.error_mm)))
            });
            Ok(Measurement {
                at: at.ok_or_else(|| ControlError::NoTime(path.to_owned()))?,
                path: path.to_owned(),
                figures: sizes.collect(),
            })
        })
        .collect()
}

fn judged(standard: String, all: &[Measurement], first: usize, rules: &[Rule]) -> ControlResult {
    let limits_from = first.max(LEAST).min(all.len());
    let names: BTreeSet<&String> = all.iter().flat_map(|one| one.figures.keys()).collect();
    let (mut figures, mut not_judged) = (Vec::new(), Vec::new());
    for name in names {
        let readings = all.iter().filter_map(|one| one.figures.get(name));
        let (units, readings): (Vec<&String>, Vec<f64>) =
            readings.map(|(unit, value)| (unit, *value)).unzip();
        let why = if readings.len() < all.len() {
            Some(format!(
                "{} of {} measurements have it",
                readings.len(),
                all.len()
            ))
        } else if all.len() < LEAST {
            Some(format!("{} measurements; {LEAST} are needed", all.len()))
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
            (why, _) => not_judged.push(NotCharted {
                figure: name.clone(),
                why: why.unwrap_or_else(|| {
                    format!("the first {limits_from} readings are alike, which gives no limits")
                }),
            }),
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
    ControlResult {
        schema: "archproof-control/1",
        program: env!("CARGO_PKG_VERSION"),
        standard,
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
    use crate::result::Times;
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
