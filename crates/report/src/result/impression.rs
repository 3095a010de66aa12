//! One impression of a result.

use super::{
    Arch, Border, Cover, Defect, Landmark, NotJudged, Point, Side, TrayColour, TrayFit, Verdict,
    ZoneScan,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// One impression scan and what came of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ImpressionResult {
    /// Which jaw it is of.
    pub arch: ArchReading,
    /// How far the impression has come.
    pub stage: Stage,
    /// Verdict on this impression alone.
    pub verdict: Verdict,
    /// The scan file.
    pub scan: ScanResult,
    /// The tray scan's file; `null` without one.
    pub tray: Option<TrayScan>,
    /// Impression frame, axes and origin in scan coordinates; `null` where none was found.
    pub frame: Option<Frame>,
    /// Cover over the tissue surface; `null` where it could not be measured.
    pub cover: Option<Cover>,
    /// What the scan's colours tell of the tray; `null` where it has none, or they tell nothing.
    pub tray_colour: Option<TrayColour>,
    /// How the tray suits and how it stood; `null` without a registered tray.
    pub tray_fit: Option<TrayFit>,
    /// The border; `null` where it could not be followed.
    pub border: Option<Border>,
    /// The file of its surface; `null` where the scan shows no impression.
    pub surface: Option<SurfaceFile>,
    /// Landmarks of the jaw; empty where the scan shows no impression.
    pub landmarks: Vec<Landmark>,
    /// Surface defects; empty also where they could not be looked for, which
    /// `not_judged` says.
    pub defects: Vec<Defect>,
    /// How well each part of the arch was scanned.
    pub zones: Vec<ZoneScan>,
    /// What was not judged, and why.
    pub not_judged: Vec<NotJudged>,
}

/// The impression mesh with figures at each vertex, NaN where they are not
/// known: `cover_mm` where it was measured, `tray_share` where colours were told
/// apart (0 the material's, 1 the tray's), `part`, and on flanges `station`,
/// the number of the station of the border whose figures hold there.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct SurfaceFile {
    /// Name of the file, beside the result.
    pub file: String,
    /// The parts of the arch, by which `part` counts, from 0.
    pub parts: Vec<ArchPart>,
}

/// A part of the arch.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct ArchPart {
    /// Its zone.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
}

/// The jaw, as declared and as found.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ArchReading {
    /// As declared; `null` where nothing was said.
    pub declared: Option<Arch>,
    /// As found from the shape; `null` where that was not possible.
    pub detected: Option<Arch>,
    /// Of the jaw found: 0 (a guess) to 1; `null` where none was found.
    pub confidence: Option<f64>,
}

/// How far an impression has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    /// The heavy or medium body, before the wash.
    FirstPass,
    /// With the wash over it.
    Wash,
    /// Taken in one go, or not said.
    Single,
}

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

/// The impression frame, in scan coordinates.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Frame {
    /// Centre of the crest line.
    pub origin: Point,
    /// Unit vector toward the patient's right.
    pub right: Point,
    /// Unit vector toward the patient's front.
    pub anterior: Point,
    /// Unit vector from tray toward tissue.
    pub seating: Point,
    /// 0 to 1, for the axes.
    pub confidence: f64,
}
