//! Parts of the contract that this version leaves empty: their shape is fixed
//! all the same, so that readers of a result can be written once.

use super::{Arch, NotJudged, Point, Side};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Whether a landmark was recorded.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs, reason = "the names are the contract's own")]
pub enum LandmarkStatus {
    Recorded,
    CutShort,
    Obscured,
    NotFound,
}

/// How a landmark came to be known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs, reason = "the names are the contract's own")]
pub enum LandmarkSource {
    Detected,
    Marked,
}

/// A landmark.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Landmark {
    /// Its name.
    pub name: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Whether it was recorded.
    pub status: LandmarkStatus,
    /// Where.
    pub point: Option<Point>,
    /// 0 to 1.
    pub confidence: f64,
    /// How it came to be known.
    pub source: LandmarkSource,
}

/// Wash against first pass of one jaw.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Wash {
    /// Which jaw.
    pub arch: Arch,
    /// Median thickness, mm.
    pub median_mm: f64,
    /// 95th percentile of the thickness, mm.
    pub p95_mm: f64,
    /// Spots of the first pass that are resolved.
    pub resolved: Vec<String>,
    /// Spots of the first pass that are still open.
    pub still_open: Vec<String>,
}

/// The relation of the jaws.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct JawRelation {
    /// Space between the arches along the crest lines, mm.
    pub interarch_space_mm: Vec<f64>,
    /// Vertical dimension of occlusion, mm.
    pub vertical_dimension_mm: Option<f64>,
    /// What was not judged, and why.
    pub not_judged: Vec<NotJudged>,
}
