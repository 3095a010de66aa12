//! Scan files in a result.

use crate::text::rounding::figure;
use check::{CheckedImpression, LoadedScan};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Container and encoding of a scan file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
#[allow(missing_docs, reason = "the names say it")]
pub enum Format {
    StlBinary,
    StlAscii,
    PlyBinaryLe,
    PlyBinaryBe,
    PlyAscii,
    Obj,
}

impl From<mesh::Format> for Format {
    fn from(format: mesh::Format) -> Self {
        match format {
            mesh::Format::StlBinary => Self::StlBinary,
            mesh::Format::StlAscii => Self::StlAscii,
            mesh::Format::PlyBinaryLe => Self::PlyBinaryLe,
            mesh::Format::PlyBinaryBe => Self::PlyBinaryBe,
            mesh::Format::PlyAscii => Self::PlyAscii,
            mesh::Format::Obj => Self::Obj,
        }
    }
}

/// An impression scan as a file and as a mesh.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ScanResult {
    /// What the file is in the case, with the ending of its format. Its own
    /// name may be a patient's and is kept nowhere; `sha256` tells which it was.
    pub file: String,
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// What the file's contents are.
    pub format: Format,
    /// Unit in which the file's numbers were read: `um`, `mm`, `cm`, `m` or `in`.
    pub unit: String,
    /// Whether nobody named the unit.
    pub unit_assumed: bool,
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
    /// Whether vertices carry colour.
    pub has_colour: bool,
    /// Whether the outer surface was scanned too; `null` where that cannot be told.
    pub has_outer_surface: Option<bool>,
    /// Whether the file holds free text (header, comment, name), which may name
    /// a person. The text itself is kept nowhere.
    pub carries_text: bool,
    /// What was odd about the file and how it was read all the same.
    pub warnings: Vec<String>,
}

/// A tray scan as a file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrayScan {
    /// What the file is in the case, with the ending of its format. Its own
    /// name may be a patient's and is kept nowhere; `sha256` tells which it was.
    pub file: String,
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// What the file's contents are.
    pub format: Format,
    /// Unit in which the file's numbers were read.
    pub unit: String,
    /// Whether nobody named the unit.
    pub unit_assumed: bool,
    /// Number of vertices.
    pub vertices: u64,
    /// Number of triangles.
    pub triangles: u64,
    /// Whether the file holds free text (header, comment, name), which may name
    /// a person. The text itself is kept nowhere.
    pub carries_text: bool,
    /// What was odd about the file and how it was read all the same.
    pub warnings: Vec<String>,
}

impl ScanResult {
    /// An impression's scan; `name` is what the file is in the case.
    pub(super) fn of(one: &CheckedImpression, name: &str) -> Self {
        let measurement = &one.measurement;
        let integrity = &measurement.integrity;
        Self {
            file: format!("{name}.{}", one.scan.format.extension()),
            sha256: one.scan.sha256.clone(),
            format: one.scan.format.into(),
            unit: one.scan.unit.unit().symbol().to_owned(),
            unit_assumed: one.scan.unit.is_assumed(),
            vertices: integrity.vertices as u64,
            triangles: integrity.triangles as u64,
            components: integrity.components as u64,
            boundary_loops: integrity.boundary_loops as u64,
            non_manifold_edges: integrity.non_manifold_edges as u64,
            degenerate_triangles: integrity.degenerate_triangles as u64,
            median_edge_mm: figure(integrity.median_edge),
            area_mm2: figure(integrity.area),
            noise_mm: measurement.noise_mm.map(figure),
            has_colour: one.scan.mesh.colours().is_some(),
            has_outer_surface: measurement.has_outer_surface,
            carries_text: one.scan.carries_text,
            warnings: (one.scan.warnings.iter().cloned())
                .chain(measurement.turned.in_words())
                .collect(),
        }
    }
}

impl TrayScan {
    /// A tray's scan; `name` is what the file is in the case.
    pub(super) fn of(scan: &LoadedScan, name: &str) -> Self {
        Self {
            file: format!("{name}.{}", scan.format.extension()),
            sha256: scan.sha256.clone(),
            format: scan.format.into(),
            unit: scan.unit.unit().symbol().to_owned(),
            unit_assumed: scan.unit.is_assumed(),
            vertices: scan.mesh.vertices().len() as u64,
            triangles: scan.mesh.triangles().len() as u64,
            carries_text: scan.carries_text,
            warnings: scan.warnings.clone(),
        }
    }
}
