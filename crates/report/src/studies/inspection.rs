//! A quick look at a scan file in its JSON, whatever the file holds.

use crate::result::{Arch, Format};
use crate::text::rounding::{confidence, figure};
use check::LoadedScan;
use judge::UnitReading;
use measure::intake::FirstLook;
use measure::{Frame, NotAnImpression};
use mesh::ReadError;
use mesh::read::shown_path;
use schemars::JsonSchema;
use serde::Serialize;
use std::path::Path;

/// What a look at one file showed. The name stands here because the operator
/// gave it; results never hold it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct Inspection {
    /// The file, as it was given.
    pub file: String,
    /// Why it could not be read; `null` where it could.
    pub refused: Option<String>,
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
    pub shows: String,
    /// The jaw, as found; `null` where the scan is no impression.
    pub arch: Option<Arch>,
    /// Of the jaw found: 0 (a guess) to 1.
    pub arch_confidence: Option<f64>,
    /// What it is instead of an impression; `null` for an impression.
    pub not_an_impression: Option<String>,
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
    pub warnings: Vec<String>,
}

impl Inspection {
    /// What a look at a file showed, or why it could not be read.
    #[must_use]
    pub fn of(path: &Path, seen: Result<(&LoadedScan, &FirstLook), &ReadError>) -> Self {
        Self {
            file: shown_path(path),
            refused: seen.err().map(ReadError::reason),
            scan: seen.ok().map(|(scan, glance)| inspected(scan, glance)),
        }
    }
}

fn inspected(scan: &LoadedScan, seen: &FirstLook) -> InspectedScan {
    let integrity = &seen.integrity;
    let frame = seen.frame.as_ref();
    let attributes = scan.stl_attributes.then(|| {
        "its attribute bytes, in which some programs store colour, were not used".to_owned()
    });
    let said = [
        unit_in_words(&scan.unit),
        seen.turned.in_words(),
        attributes,
    ];
    InspectedScan {
        sha256: scan.sha256.clone(),
        format: scan.format.into(),
        unit: scan.unit.unit().symbol().to_owned(),
        unit_assumed: scan.unit.is_assumed(),
        unit_in_doubt: !matches!(scan.unit, UnitReading::Given(_) | UnitReading::Assumed),
        size_mm: <[f64; 3]>::from(seen.size_mm).map(figure),
        shows: shows(frame),
        arch: frame.ok().map(|frame| frame.arch.into()),
        arch_confidence: frame.ok().map(|frame| confidence(frame.arch_confidence)),
        not_an_impression: frame.err().map(ToString::to_string),
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
        warnings: scan
            .warnings
            .iter()
            .map(ToString::to_string)
            .chain(said.into_iter().flatten())
            .collect(),
    }
}

/// What a scan shows, in a few words.
fn shows(frame: Result<&Frame, &NotAnImpression>) -> String {
    match frame.map(|frame| frame.arch) {
        Ok(measure::Arch::Maxillary) => "maxillary impression",
        Ok(measure::Arch::Mandibular) => "mandibular impression",
        Err(what) => what.name(),
    }
    .to_owned()
}

/// What was assumed of the unit, where there was something to assume.
fn unit_in_words(unit: &UnitReading) -> Option<String> {
    match unit {
        UnitReading::Given(_) | UnitReading::Assumed => None,
        UnitReading::Inferred(unit) => Some(format!(
            "read in {unit}: in mm its size is not that of an impression, in {unit} it is; say \
             --unit {unit} if so"
        )),
        UnitReading::Ambiguous(units) => {
            let names: Vec<&str> = units.iter().map(|unit| unit.symbol()).collect();
            Some(format!(
                "read in mm, but its size could be that of an impression in {}; say --unit",
                names.join(" or ")
            ))
        }
        UnitReading::Implausible => {
            Some("read in mm, but in no unit is its size that of an impression".to_owned())
        }
    }
}
