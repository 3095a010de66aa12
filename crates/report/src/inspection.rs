//! A quick look at scan files, one row a file, whatever they hold.

use crate::result::{Arch, Format};
use crate::rounding::{confidence, figure};
use check::{LoadedScan, load};
use judge::UnitReading;
use measure::{Glance, glance};
use mesh::Unit;
use mesh::read::shown_path;
use schemars::JsonSchema;
use serde::Serialize;
use std::fmt::Write;
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
    /// Sides of the box around the scan, along the coordinate axes, mm.
    pub size_mm: [f64; 3],
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
    /// Looks at a file. Its numbers are in `unit`, if that is known.
    #[must_use]
    pub fn of(path: &Path, unit: Option<Unit>) -> Self {
        let file = shown_path(path);
        match load(path, unit) {
            Ok(scan) => Self {
                file,
                refused: None,
                scan: Some(inspected(&scan, &glance(&scan.mesh))),
            },
            Err(error) => Self {
                file,
                refused: Some(error.reason()),
                scan: None,
            },
        }
    }

    /// The row of a table, in columns of fixed width, the file's name and the
    /// remarks last.
    #[must_use]
    pub fn row(&self) -> String {
        let mut row = String::new();
        // Writing to a String cannot fail.
        let _ = match &self.scan {
            Some(scan) => write!(row, "{}  {}", scan.columns(), self.file),
            None => write!(row, "{:<WIDTH$}  {}", "not read", self.file),
        };
        let of_scan = self.scan.iter().flat_map(InspectedScan::remarks);
        let remarks: Vec<String> = self.refused.iter().cloned().chain(of_scan).collect();
        if !remarks.is_empty() {
            let _ = write!(row, ": {}", remarks.join("; "));
        }
        row
    }
}

/// Width of all columns of a row but the last.
const WIDTH: usize = 77;

/// The head of the table.
#[must_use]
pub fn inspection_head() -> String {
    format!(
        "{:<17} {:<4} {:<10} {:<7} {:>6} {:>6} {:>6}  {:>5}  {:>6}  file: remarks",
        "size mm", "unit", "shows", "sides", "parts", "loops", "faults", "edge", "noise"
    )
}

impl InspectedScan {
    fn columns(&self) -> String {
        let [x, y, z] = self.size_mm.map(|side| format!("{side:.0}"));
        let shows = match self.arch {
            Some(Arch::Maxillary) => "maxillary",
            Some(Arch::Mandibular) => "mandibular",
            None => "other",
        };
        let sides = match self.has_outer_surface {
            Some(true) => "both",
            Some(false) => "tissue",
            None => "?",
        };
        let noise = self
            .noise_mm
            .map_or_else(|| "?".to_owned(), |mm| format!("{mm:.3}"));
        format!(
            "{:<17} {:<4} {shows:<10} {sides:<7} {:>6} {:>6} {:>6}  {:>5.2}  {noise:>6}",
            format!("{x} x {y} x {z}"),
            format!("{}{}", self.unit, if self.unit_assumed { "?" } else { "" }),
            self.components,
            self.boundary_loops,
            self.non_manifold_edges + self.degenerate_triangles,
            self.median_edge_mm,
        )
    }

    fn remarks(&self) -> Vec<String> {
        /// Share of doubled area that is worth a word.
        const NOTABLE: f64 = 0.001;
        let text = self.carries_text.then(|| {
            "holds free text, which may name a person ('archproof clean' writes it without)"
                .to_owned()
        });
        let doubled = (self.double_layer_share > NOTABLE).then(|| {
            let percent = 100.0 * self.double_layer_share;
            format!("{percent:.1} % of it lies in double layers")
        });
        let other = self.not_an_impression.as_ref();
        other
            .map(|what| format!("not an impression: {what}"))
            .into_iter()
            .chain(self.warnings.iter().cloned())
            .chain(doubled)
            .chain(text)
            .collect()
    }
}

fn inspected(scan: &LoadedScan, seen: &Glance) -> InspectedScan {
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
        size_mm: <[f64; 3]>::from(seen.size_mm).map(figure),
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
            .cloned()
            .chain(said.into_iter().flatten())
            .collect(),
    }
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
