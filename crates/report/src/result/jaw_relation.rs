//! The relation of the jaws in a result.

use super::{NotJudged, Point, Side};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The relation of the jaws.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct JawRelation {
    /// Space between the crest lines, mm, at each station where the lower stands
    /// under the upper, from the patient's right to the left.
    pub interarch_space_mm: Vec<f64>,
    /// The same with its places.
    pub stations: Vec<SpaceStation>,
    /// Expanded uncertainty (k = 2) of a space, mm.
    pub uncertainty_mm: Option<f64>,
    /// Angle between the planes of the crest lines, degrees.
    pub ridge_angle_deg: Option<f64>,
    /// Expanded uncertainty (k = 2) of that angle, degrees.
    pub ridge_angle_uncertainty_deg: Option<f64>,
    /// SHA-256 of the scan of the record.
    pub record_sha256: Option<String>,
    /// Vertical dimension of occlusion, mm.
    pub vertical_dimension_mm: Option<f64>,
    /// Vertical dimension at rest, mm.
    pub rest_vertical_dimension_mm: Option<f64>,
    /// Rest vertical dimension less that of occlusion, mm.
    pub interocclusal_distance_mm: Option<f64>,
    /// Incisive papilla to lip line, mm.
    pub upper_lip_length_mm: Option<f64>,
    /// What was not judged, and why.
    pub not_judged: Vec<NotJudged>,
}

/// The space between the jaws at one place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SpaceStation {
    /// On the upper crest line, in the coordinates of the record's scan.
    pub point: Point,
    /// Along the upper crest line from its foremost point, mm.
    pub from_front_mm: f64,
    /// The patient's side; `null` in front.
    pub side: Option<Side>,
    /// The space, mm; `null` where no lower crest line stands there.
    pub space_mm: Option<f64>,
}
