//! Scans of a reference artefact in their JSON.

use crate::result::in_utc;
use crate::text::rounding::to_decimals;
use judge::Conformity;
use schemars::JsonSchema;
use serde::Serialize;
use study::artefact::{Artefact, Quantity};
use study::artefact::{ArtefactStudy, SizeStudy};

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
    /// When its file was last changed (RFC 3339, UTC); `null` where the system does not say.
    pub changed_at: Option<String>,
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

impl ArtefactResult {
    /// What scans of an artefact came to, in the words of the format.
    #[must_use]
    pub fn of(found: &ArtefactStudy) -> Self {
        let sizes = found.sizes.iter();
        let sizes: Vec<SizeResult> = sizes
            .filter_map(|size| SizeResult::of(&found.artefact, size))
            .collect();
        Self {
            schema: "archproof-artefact/1",
            program: env!("CARGO_PKG_VERSION"),
            artefact: found.artefact.id.clone(),
            certificate: found.artefact.certificate.clone(),
            outcome: worst(sizes.iter().map(|s| s.outcome)),
            scans: found.scans.iter().map(ArtefactScan::of).collect(),
            sizes,
        }
    }
}

impl ArtefactScan {
    fn of(scan: &study::artefact::ArtefactScan) -> Self {
        Self {
            sha256: scan.sha256.clone(),
            changed_at: scan.changed.map(in_utc),
            unit: scan.unit.symbol().to_owned(),
            centres_rms_mm: fine(scan.centres_rms_mm),
            spheres_interchangeable: scan.spheres_interchangeable,
            scale: scan.scale.map(|s| to_decimals(s.0, 7)),
            scale_uncertainty: scan.scale.map(|s| to_decimals(s.1, 7)),
        }
    }
}

impl SizeResult {
    fn of(artefact: &Artefact, size: &SizeStudy) -> Option<Self> {
        let first = size.readings.first()?;
        let (quantity, of) = named(artefact, first.quantity);
        let readings = size.readings.iter().map(|reading| ReadingResult {
            found_mm: fine(reading.found_mm),
            error_mm: fine(reading.error_mm),
            uncertainty_mm: fine(reading.uncertainty_mm),
            outcome: outcome(reading.conformity),
        });
        let readings: Vec<ReadingResult> = readings.collect();
        let spread = size.errors_mm;
        Some(Self {
            quantity,
            of,
            certified_mm: first.certified.map(|c| c.mm),
            certified_uncertainty_mm: first.certified.map(|c| c.uncertainty_mm),
            limit_mm: first.limit_mm,
            outcome: worst(readings.iter().map(|r| r.outcome)),
            readings,
            mean_error_mm: spread.map(|s| fine(s.mean)),
            standard_deviation_mm: spread.map(|s| fine(s.sd)),
            standard_deviation_from_mm: spread.map(|s| fine(s.sd_between.0)),
            standard_deviation_to_mm: spread.map(|s| fine(s.sd_between.1)),
        })
    }
}

/// What was measured, and of which parts of the artefact.
fn named(artefact: &Artefact, quantity: Quantity) -> (&'static str, Vec<String>) {
    let sphere = |number: usize| artefact.spheres[number].name.clone();
    match quantity {
        Quantity::Diameter(k) => ("diameter", vec![sphere(k)]),
        Quantity::Distance(k) => {
            let between = artefact.distances[k].between;
            ("centre-distance", between.map(sphere).into())
        }
        Quantity::Step(k) => ("step-height", vec![artefact.steps[k].name.clone()]),
        Quantity::Dispersion(k) => ("dispersion", vec![sphere(k)]),
    }
}

/// Hundredths of a micrometre: certificates are as fine as tenths.
fn fine(mm: f64) -> f64 {
    to_decimals(mm, 5)
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
