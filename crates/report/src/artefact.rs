//! Scans of a reference artefact, checked: what the scanner errs, as JSON and
//! as text.

use crate::rounding::to_decimals;
use check::load;
use judge::{Artefact, ArtefactError, Conformity, Quantity, SizeReading};
use measure::artefact::{ArtefactNotFound, StepNotFound, find};
use mesh::read::shown_path;
use mesh::{ReadError, Unit};
use schemars::JsonSchema;
use serde::Serialize;
use statistics::repeatability::Repeatability;
use std::fmt::Write;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Why an artefact could not be checked; its text is one line for people.
#[derive(Debug, Error)]
pub enum ArtefactCheckError {
    /// Its description cannot be used.
    #[error(transparent)]
    Artefact(#[from] ArtefactError),
    /// A scan cannot be read.
    #[error(transparent)]
    Scan(#[from] ReadError),
    /// It is not in a scan.
    #[error("{}: {source}", shown_path(.path))]
    NotFound {
        /// The scan.
        path: PathBuf,
        /// What was seen instead.
        source: ArtefactNotFound,
    },
    /// A step of it is not.
    #[error("{}: step {step}: {source}; scan it again, or see whether lower, upper and reach_mm are right", shown_path(.path))]
    StepNotFound {
        /// The scan.
        path: PathBuf,
        /// Name of the step.
        step: String,
        /// What was seen instead.
        source: StepNotFound,
    },
}

/// What scans of an artefact came to.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct ArtefactResult {
    /// Name and version of this format: `archproof-artefact/1`.
    pub schema: &'static str,
    /// Version of the program.
    pub program: &'static str,
    /// Name of the artefact.
    pub artefact: String,
    /// Where its sizes come from.
    pub certificate: String,
    /// What all of it says.
    pub outcome: Outcome,
    /// Each scan, in the order in which they were given.
    pub scans: Vec<ArtefactScan>,
    /// Each size.
    pub sizes: Vec<SizeResult>,
}

/// What a size, or all of them, say of their limits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// Within the limit, the uncertainty allowed for.
    Conforming,
    /// The limit lies within the uncertainty.
    Borderline,
    /// Beyond the limit, the uncertainty allowed for.
    NotConforming,
    /// There is no limit.
    NotJudged,
}

/// One scan of the artefact.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct ArtefactScan {
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// Unit in which its numbers were read.
    pub unit: String,
    /// Root mean square distance of the sphere centres from the nominal ones, mm.
    pub centres_rms_mm: f64,
    /// Whether its spheres could be taken for one another.
    pub spheres_interchangeable: bool,
    /// How many times as long as certified its distances are; `null` without any.
    pub scale: Option<f64>,
    /// Expanded uncertainty (k = 2) of the scale.
    pub scale_uncertainty: Option<f64>,
}

/// One size of the artefact over all scans.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct SizeResult {
    /// `diameter`, `centre-distance`, `step-height` or `dispersion`.
    pub quantity: &'static str,
    /// The sphere, both spheres, or the step.
    pub of: Vec<String>,
    /// As certified, mm; `null` of a dispersion.
    pub certified_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of that, mm.
    pub certified_uncertainty_mm: Option<f64>,
    /// What it may err (of a dispersion: be), mm; `null` where it is not judged.
    pub limit_mm: Option<f64>,
    /// In each scan.
    pub readings: Vec<ReadingResult>,
    /// The worst of them.
    pub outcome: Outcome,
    /// Mean of the errors (trueness), mm; `null` for one scan.
    pub mean_error_mm: Option<f64>,
    /// Standard deviation of the errors (precision), mm; `null` for one scan.
    pub standard_deviation_mm: Option<f64>,
    /// Lower end of its interval of 95 % confidence, mm.
    pub standard_deviation_from_mm: Option<f64>,
    /// Upper end, mm.
    pub standard_deviation_to_mm: Option<f64>,
}

/// A size in one scan.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct ReadingResult {
    /// As scanned, mm.
    pub found_mm: f64,
    /// As scanned less as certified (of a dispersion: itself), mm.
    pub error_mm: f64,
    /// Expanded uncertainty (k = 2) of the error, mm.
    pub uncertainty_mm: f64,
    /// What that says.
    pub outcome: Outcome,
}

/// Checks scans of the artefact that a TOML file describes. Their numbers are
/// in `unit`, or in mm: it is never guessed here, for a wrong scale is to show.
///
/// # Errors
/// When the description cannot be used, a scan cannot be read, or the artefact
/// is not in it.
pub fn check_artefact(
    description: &Path,
    scans: &[PathBuf],
    unit: Option<Unit>,
) -> Result<ArtefactResult, ArtefactCheckError> {
    let artefact = Artefact::from_file(description)?;
    let nominal = artefact.nominal();
    let mut told = Vec::new();
    let mut readings: Vec<Vec<SizeReading>> = Vec::new();
    for path in scans {
        let scan = load(path, Some(unit.unwrap_or(Unit::Millimetre)))?;
        let seen = find(&scan.mesh, &nominal).map_err(|source| ArtefactCheckError::NotFound {
            path: path.clone(),
            source,
        })?;
        let scale = artefact.scale(&seen);
        told.push(ArtefactScan {
            sha256: scan.sha256,
            unit: scan.unit.unit().symbol().to_owned(),
            centres_rms_mm: fine(seen.rms_mm),
            spheres_interchangeable: seen.is_ambiguous,
            scale: scale.map(|s| to_decimals(s.0, 7)),
            scale_uncertainty: scale.map(|s| to_decimals(s.1, 7)),
        });
        let steps: Result<Vec<_>, _> = (artefact.steps.iter())
            .map(|step| {
                let found = seen.step(&scan.mesh, &step.nominal);
                found.map_err(|source| ArtefactCheckError::StepNotFound {
                    path: path.clone(),
                    step: step.name.clone(),
                    source,
                })
            })
            .collect();
        readings.push(artefact.judge(&seen, &steps?));
    }
    let count = readings.first().map_or(0, Vec::len);
    let of_size = |k: usize| {
        size(
            &artefact,
            &readings.iter().map(|r| r[k]).collect::<Vec<_>>(),
        )
    };
    let sizes: Vec<SizeResult> = (0..count).filter_map(of_size).collect();
    Ok(ArtefactResult {
        schema: "archproof-artefact/1",
        program: env!("CARGO_PKG_VERSION"),
        outcome: worst(sizes.iter().map(|s| s.outcome)),
        artefact: artefact.id,
        certificate: artefact.certificate,
        scans: told,
        sizes,
    })
}

/// Hundredths of a micrometre: certificates are as fine as tenths.
fn fine(mm: f64) -> f64 {
    to_decimals(mm, 5)
}

fn size(artefact: &Artefact, readings: &[SizeReading]) -> Option<SizeResult> {
    let first = readings.first()?;
    let name = |number: usize| artefact.spheres[number].name.clone();
    let (quantity, of) = match first.quantity {
        Quantity::Diameter(k) => ("diameter", vec![name(k)]),
        Quantity::Distance(k) => {
            let between = artefact.distances[k].between;
            ("centre-distance", between.map(name).into())
        }
        Quantity::Step(k) => ("step-height", vec![artefact.steps[k].name.clone()]),
        Quantity::Dispersion(k) => ("dispersion", vec![name(k)]),
    };
    let told: Vec<ReadingResult> = readings
        .iter()
        .map(|reading| ReadingResult {
            found_mm: fine(reading.found_mm),
            error_mm: fine(reading.error_mm),
            uncertainty_mm: fine(reading.uncertainty_mm),
            outcome: outcome(reading.conformity),
        })
        .collect();
    let errors: Vec<f64> = readings.iter().map(|r| r.error_mm).collect();
    let spread = Repeatability::of(&errors);
    Some(SizeResult {
        quantity,
        of,
        certified_mm: first.certified.map(|c| c.mm),
        certified_uncertainty_mm: first.certified.map(|c| c.uncertainty_mm),
        limit_mm: first.limit_mm,
        outcome: worst(told.iter().map(|r| r.outcome)),
        readings: told,
        mean_error_mm: spread.map(|s| fine(s.mean)),
        standard_deviation_mm: spread.map(|s| fine(s.sd)),
        standard_deviation_from_mm: spread.map(|s| fine(s.sd_between.0)),
        standard_deviation_to_mm: spread.map(|s| fine(s.sd_between.1)),
    })
}

fn outcome(conformity: Option<Conformity>) -> Outcome {
    match conformity {
        Some(Conformity::Conforming) => Outcome::Conforming,
        Some(Conformity::Borderline) => Outcome::Borderline,
        Some(Conformity::NotConforming) => Outcome::NotConforming,
        None => Outcome::NotJudged,
    }
}

/// The worst of several; what was not judged says nothing beside others.
fn worst(of: impl Iterator<Item = Outcome>) -> Outcome {
    let rank = |one: &Outcome| match one {
        Outcome::NotJudged => 0,
        Outcome::Conforming => 1,
        Outcome::Borderline => 2,
        Outcome::NotConforming => 3,
    };
    of.max_by_key(rank).unwrap_or(Outcome::NotJudged)
}

/// The scans of an artefact as text for people.
#[must_use]
pub fn artefact_text(result: &ArtefactResult) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = write_text(&mut text, result);
    text
}

fn write_text(out: &mut String, result: &ArtefactResult) -> std::fmt::Result {
    let verdict = match result.outcome {
        Outcome::Conforming => "CONFORMING",
        Outcome::Borderline => "BORDERLINE",
        Outcome::NotConforming => "NOT CONFORMING",
        Outcome::NotJudged => "NOT JUDGED (the description states no limit)",
    };
    let scans = result.scans.len();
    let of = if scans == 1 { "scan" } else { "scans" };
    writeln!(out, "{verdict}: artefact {}, {scans} {of}", result.artefact)?;
    for (number, scan) in result.scans.iter().enumerate() {
        if let Some((scale, doubt)) = scan.scale.zip(scan.scale_uncertainty) {
            writeln!(
                out,
                "  scan {}: lengths {:+.4} ± {:.4} % of those certified",
                number + 1,
                100.0 * (scale - 1.0),
                100.0 * doubt
            )?;
        }
        if scan.spheres_interchangeable {
            writeln!(
                out,
                "  scan {}: the spheres stand so evenly that one may be taken for another",
                number + 1
            )?;
        }
    }
    writeln!(
        out,
        "\n{:<28}{:>5}{:>12}{:>12}{:>22}{:>10}  ",
        "size, mm", "scan", "certified", "found", "error ± U (k = 2)", "limit"
    )?;
    for size in &result.sizes {
        let name = format!("{} {}", size.quantity, size.of.join(" to "));
        for (number, reading) in size.readings.iter().enumerate() {
            let certified = size
                .certified_mm
                .map_or("-".to_owned(), |mm| format!("{mm:.4}"));
            let limit = size
                .limit_mm
                .map_or("-".to_owned(), |mm| format!("{mm:.4}"));
            let error = match size.certified_mm {
                Some(_) => format!(
                    "{:+.4} ± {:.4}",
                    to_decimals(reading.error_mm, 4),
                    reading.uncertainty_mm
                ),
                None => format!("{:.4} ± {:.4}", reading.error_mm, reading.uncertainty_mm),
            };
            let says = match reading.outcome {
                Outcome::Conforming => "conforming",
                Outcome::Borderline => "borderline",
                Outcome::NotConforming => "NOT CONFORMING",
                Outcome::NotJudged => "not judged",
            };
            writeln!(
                out,
                "{name:<28}{:>5}{certified:>12}{:>12.4}{error:>22}{limit:>10}  {says}",
                number + 1,
                reading.found_mm
            )?;
        }
        write_spread(out, size)?;
    }
    writeln!(
        out,
        "Uncertainty: of the certified size and of the fit, which takes the points to err independently. \
         Dispersion: the shell that holds 95 % of a sphere's points."
    )
}

/// Mean and spread of the errors over the scans, where there are several.
fn write_spread(out: &mut String, size: &SizeResult) -> std::fmt::Result {
    let (Some(mean), Some(sd)) = (size.mean_error_mm, size.standard_deviation_mm) else {
        return Ok(());
    };
    let mean = to_decimals(mean, 4);
    let mean = match size.certified_mm {
        Some(_) => format!("error {mean:+.4}"),
        None => format!("{mean:.4}"),
    };
    write!(out, "{:<28}mean {mean}, standard deviation {sd:.4}", "")?;
    let ends = size.standard_deviation_from_mm;
    if let Some((from, to)) = ends.zip(size.standard_deviation_to_mm) {
        write!(out, " ({from:.4} to {to:.4} with 95 % confidence)")?;
    }
    writeln!(out)
}
