//! Scan files in a result.

use super::findings::MessageOfCatalogue;
use crate::text::rounding::{figure, share};
use check::reader::turned;
use check::{CheckedImpression, CheckedPieces, LoadedScan};
use messages::{Language, Message};
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
    /// The messages that make each of them, with keys and parameters.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(with = "Vec<Vec<MessageOfCatalogue>>")]
    pub warning_messages: Vec<Message>,
    /// The scans of its parts, where the impression was cut apart; then `sha256` is that of
    /// their checksums in this order, and coordinates are those of the tray's scan.
    #[serde(default)]
    pub parts: Vec<PartScan>,
    /// Median width of the cuts, mm.
    #[serde(default)]
    pub cut_width_mm: Option<f64>,
}

/// The scan of one part of an impression.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PartScan {
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// Share of its surface that lies on the tray, 0 to 1; this and what follows is `null`
    /// where the parts were not joined.
    pub fitting_share: Option<f64>,
    /// Root mean square distance of that surface from the tray, mm.
    pub rms_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of where the part lies, mm.
    pub uncertainty_mm: Option<f64>,
}

impl PartScan {
    fn all(one: &CheckedImpression) -> Vec<Self> {
        let Some(parts) = &one.parts else {
            return Vec::new();
        };
        let laid = parts
            .joined
            .as_ref()
            .map_or(&[][..], |joined| &joined.parts);
        (parts.scans.iter().enumerate())
            .map(|(number, scan)| {
                let laid = laid.get(number);
                Self {
                    sha256: scan.sha256.clone(),
                    fitting_share: laid.map(|laid| share(laid.fitting_share)),
                    rms_mm: laid.map(|laid| figure(laid.rms_mm)),
                    uncertainty_mm: laid.map(|laid| figure(laid.uncertainty_mm)),
                }
            })
            .collect()
    }
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
    /// The messages that make each of them, with keys and parameters.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(with = "Vec<Vec<MessageOfCatalogue>>")]
    pub warning_messages: Vec<Message>,
}

/// Where two pieces of a tray meet, as they lay in the impression.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrayJoint {
    /// Numbers of the pieces, from 1.
    pub pieces: [u64; 2],
    /// Distance between their faces, mm; less than 0 where they reach into one another.
    pub gap_mm: f64,
    /// Step of the tray's surface over the joint, mm.
    pub step_mm: f64,
    /// Expanded uncertainty (k = 2) of both, mm.
    pub uncertainty_mm: f64,
}

impl TrayJoint {
    /// Those of the tray of an impression.
    pub(super) fn all(one: &CheckedImpression) -> Vec<Self> {
        let joints = one.pieces.iter().flat_map(CheckedPieces::joints);
        joints
            .map(|joint| Self {
                pieces: joint.pieces.map(|piece| piece as u64),
                gap_mm: figure(joint.gap_mm),
                step_mm: figure(joint.step_mm),
                uncertainty_mm: figure(joint.uncertainty_mm),
            })
            .collect()
    }
}

/// Warnings in a language; in English where a result of an earlier version holds no messages.
fn warnings_in(messages: &[Message], english: &[String], language: Language) -> Vec<String> {
    if messages.len() == english.len() {
        return messages.iter().map(|one| one.text(language)).collect();
    }
    english.to_vec()
}

impl ScanResult {
    /// What was odd about the file, in a language.
    #[must_use]
    pub fn warnings_in(&self, language: Language) -> Vec<String> {
        warnings_in(&self.warning_messages, &self.warnings, language)
    }

    /// An impression's scan; `name` is what the file is in the case.
    pub(super) fn of(one: &CheckedImpression, name: &str) -> Self {
        let measured = one.measured();
        let figures = one.scanned.figures();
        let integrity = &figures.integrity;
        let warnings: Vec<Message> = (one.scan.warnings.iter().cloned())
            .chain(turned(&figures.turned))
            .collect();
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
            noise_mm: measured.and_then(|found| found.noise_mm).map(figure),
            has_colour: one.scan.mesh.colours().is_some(),
            has_outer_surface: measured.map(|found| found.has_outer_surface),
            carries_text: one.scan.carries_text,
            warnings: warnings.iter().map(ToString::to_string).collect(),
            warning_messages: warnings,
            parts: PartScan::all(one),
            cut_width_mm: figures.cut_width_mm.map(figure),
        }
    }
}

impl TrayScan {
    /// What was odd about the file, in a language.
    #[must_use]
    pub fn warnings_in(&self, language: Language) -> Vec<String> {
        warnings_in(&self.warning_messages, &self.warnings, language)
    }

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
            warnings: scan.warnings.iter().map(ToString::to_string).collect(),
            warning_messages: scan.warnings.clone(),
        }
    }
}
