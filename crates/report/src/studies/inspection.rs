//! A quick look at a scan file in its JSON, whatever the file holds.

use crate::result::{Arch, Format};
use crate::text::rounding::{confidence, figure};
use check::LoadedScan;
use check::reader::{turned, why_refused};
use judge::UnitReading;
use measure::intake::FirstLook;
use measure::{Frame, NotAnImpression};
use mesh::ReadError;
use mesh::read::shown_path;
use messages::{Language, Message, Value, message};
use schemars::JsonSchema;
use serde::Serialize;
use std::path::Path;

/// A message that the JSON holds as its English sentence.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(into = "String")]
pub struct Said(Message);

impl Said {
    /// What is read in a language.
    #[must_use]
    pub fn text(&self, language: Language) -> String {
        self.0.text(language)
    }
}

impl From<Message> for Said {
    fn from(message: Message) -> Self {
        Self(message)
    }
}

impl From<Said> for String {
    fn from(said: Said) -> Self {
        said.0.into()
    }
}

/// What a look at one file showed. The name stands here because the operator
/// gave it; results never hold it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct Inspection {
    /// The file, as it was given.
    pub file: String,
    /// Why it could not be read; `null` where it could.
    #[schemars(with = "Option<String>")]
    pub refused: Option<Said>,
    /// What it holds; `null` where it could not be read.
    pub scan: Option<InspectedScan>,
}

/// What a scan file holds. Lengths in mm after the unit was settled.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct InspectedScan {
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// What the file's contents are.
    pub format: Format,
    /// Unit in which the file's numbers were read.
    pub unit: String,
    /// Whether nobody named the unit.
    pub unit_assumed: bool,
    /// Whether the size leaves the unit in doubt: it is not that of an impression in mm.
    #[serde(default)]
    pub unit_in_doubt: bool,
    /// Sides of the box around the scan, along the coordinate axes, mm.
    pub size_mm: [f64; 3],
    /// What it shows, in a few words: "maxillary impression", "cast", "no arch".
    #[schemars(with = "String")]
    pub shows: Said,
    /// The jaw, as found; `null` where the scan is no impression.
    pub arch: Option<Arch>,
    /// Of the jaw found: 0 (a guess) to 1.
    pub arch_confidence: Option<f64>,
    /// What it is instead of an impression; `null` for an impression.
    #[schemars(with = "Option<String>")]
    pub not_an_impression: Option<Said>,
    /// Whether the outer surface was scanned too; `null` where that cannot be told.
    pub has_outer_surface: Option<bool>,
    /// Number of vertices.
    pub vertices: u64,
    /// Number of triangles.
    pub triangles: u64,
    /// Connected parts.
    pub components: u64,
    /// Closed loops of edges that belong to one triangle only.
    pub boundary_loops: u64,
    /// Edges of three triangles or more.
    pub non_manifold_edges: u64,
    /// Triangles without area.
    pub degenerate_triangles: u64,
    /// Median edge length, mm.
    pub median_edge_mm: f64,
    /// Area of the whole mesh, mm².
    pub area_mm2: f64,
    /// Standard deviation of the scan's noise along the normal, mm.
    pub noise_mm: Option<f64>,
    /// Share of the area that has another sheet close over or under it, 0 to 1.
    pub double_layer_share: f64,
    /// Whether vertices carry colour.
    pub has_colour: bool,
    /// Whether the file holds free text, which may name a person.
    pub carries_text: bool,
    /// What was odd, what was assumed, and what was mended.
    #[schemars(with = "Vec<String>")]
    pub warnings: Vec<Said>,
}

impl Inspection {
    /// What a look at a file showed, or why it could not be read.
    #[must_use]
    pub fn of(path: &Path, seen: Result<(&LoadedScan, &FirstLook), &ReadError>) -> Self {
        Self {
            file: shown_path(path),
            refused: seen.err().map(|error| why_refused(error).into()),
            scan: seen.ok().map(|(scan, glance)| inspected(scan, glance)),
        }
    }
}

fn inspected(scan: &LoadedScan, seen: &FirstLook) -> InspectedScan {
    let integrity = &seen.integrity;
    let frame = seen.frame.as_ref();
    let attributes = scan.stl_attributes;
    let attributes = attributes.then(|| message!("inspect-attribute-bytes"));
    let said = [unit_in_words(&scan.unit), turned(&seen.turned), attributes];
    let warnings = scan.warnings.iter().cloned();
    let warnings = warnings.chain(said.into_iter().flatten());
    InspectedScan {
        sha256: scan.sha256.clone(),
        format: scan.format.into(),
        unit: scan.unit.unit().symbol().to_owned(),
        unit_assumed: scan.unit.is_assumed(),
        unit_in_doubt: !matches!(scan.unit, UnitReading::Given(_) | UnitReading::Assumed),
        size_mm: <[f64; 3]>::from(seen.size_mm).map(figure),
        shows: shows(frame).into(),
        arch: frame.ok().map(|frame| frame.arch.into()),
        arch_confidence: frame.ok().map(|frame| confidence(frame.arch_confidence)),
        not_an_impression: frame.err().map(|what| what.message().into()),
        has_outer_surface: seen.has_outer_surface,
        vertices: integrity.vertices as u64,
        triangles: integrity.triangles as u64,
        components: integrity.components as u64,
        boundary_loops: integrity.boundary_loops as u64,
        non_manifold_edges: integrity.non_manifold_edges as u64,
        degenerate_triangles: integrity.degenerate_triangles as u64,
        median_edge_mm: figure(integrity.median_edge),
        area_mm2: figure(integrity.area),
        noise_mm: seen.noise_mm.map(figure),
        double_layer_share: figure(seen.double_layer_share),
        has_colour: scan.mesh.colours().is_some(),
        carries_text: scan.carries_text,
        warnings: warnings.map(Said::from).collect(),
    }
}

/// What a scan shows, in a few words.
fn shows(frame: Result<&Frame, &NotAnImpression>) -> Message {
    match frame.map(|frame| frame.arch) {
        Ok(measure::Arch::Maxillary) => message!("impression-one-step", jaw = "maxillary"),
        Ok(measure::Arch::Mandibular) => message!("impression-one-step", jaw = "mandibular"),
        Err(what) => what.name(),
    }
}

/// What was assumed of the unit, where there was something to assume.
fn unit_in_words(unit: &UnitReading) -> Option<Message> {
    match unit {
        UnitReading::Given(_) | UnitReading::Assumed => None,
        UnitReading::Inferred(unit) => {
            Some(message!("inspect-unit-inferred", unit = unit.symbol()))
        }
        UnitReading::Ambiguous(units) => {
            let mut units = units.iter().map(|unit| Value::from(unit.symbol()));
            let first = units.next()?;
            let either = |one, other| message!("either", one = one, other = other).into();
            let units: Value = units.fold(first, either);
            Some(message!("inspect-unit-ambiguous", units = units))
        }
        UnitReading::Implausible => Some(message!("inspect-unit-implausible")),
    }
}
