//! The contract's page on a wash over its first pass.

use super::{Arch, CoverMap, Point, Side, SpotKind};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Wash against first pass of one jaw.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Wash {
    /// Which jaw.
    pub arch: Arch,
    /// Number of the wash among the impressions, from 0.
    pub impression: u64,
    /// Number of its first pass among the impressions, from 0.
    pub first_pass: u64,
    /// Median thickness, mm.
    pub median_mm: f64,
    /// 5th percentile of the thickness by area, mm.
    pub p05_mm: f64,
    /// 95th percentile of the thickness by area, mm.
    pub p95_mm: f64,
    /// Expanded uncertainty (k = 2) of a thickness, mm; differences within it do not count.
    pub uncertainty_mm: f64,
    /// Tissue surface over which thickness is known, mm².
    pub area_judged_mm2: f64,
    /// Share of it over which material was surely added, 0 to 1.
    pub added_share: f64,
    /// Share of it over which the surface surely lies lower than before, 0 to 1.
    pub lowered_share: f64,
    /// Spots of the first pass that are resolved.
    pub resolved: Vec<String>,
    /// Spots of the first pass that are still open.
    pub still_open: Vec<String>,
    /// Spots of the first pass of which that cannot be told: too near the limit
    /// for its uncertainty, or not scanned.
    pub unclear: Vec<String>,
    /// Spots of the wash where the first pass had none.
    pub new: Vec<String>,
    /// Each place of the first pass with its cover before and now.
    pub places: Vec<WashPlace>,
    /// The wash's scan coloured by thickness.
    pub map: Option<CoverMap>,
}

/// A bare or thin place of the first pass, seen again under the wash.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct WashPlace {
    /// The spot of the first pass.
    pub spot: String,
    /// What it was.
    pub kind: SpotKind,
    /// Part of the arch.
    pub zone: String,
    /// Patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Where it lies on the wash, in the wash scan's coordinates.
    pub at: Point,
    /// Least cover on the first pass, mm; `null` where colour alone told of it.
    pub was_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the cover on the first pass, mm.
    pub was_uncertainty_mm: f64,
    /// Least cover under the wash, mm; `null` where the wash was not scanned.
    pub cover_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the cover under the wash, mm.
    pub uncertainty_mm: f64,
}
