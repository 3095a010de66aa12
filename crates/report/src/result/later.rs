//! Parts of the contract that this version leaves empty: their shape is fixed
//! all the same, so that readers of a result can be written once.

use super::{Arch, NotJudged};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

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
