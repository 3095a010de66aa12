//! Findings in a result.

use super::{Arch, Point, Side};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How a check came out where it did not come out well.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Severity {
    /// The limit is surely missed.
    Fail,
    /// It cannot be decided.
    Borderline,
    /// Worth knowing; changes no verdict.
    Note,
}

/// One thing that fails or cannot be judged.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Finding {
    /// Name within the case: F1, F2, … in order of urgency.
    pub id: String,
    /// How it came out.
    pub severity: Severity,
    /// Code of the check; `archproof explain CODE` prints its page.
    pub check: String,
    /// Number, from 0, of the impression in `impressions`; `null` for the case itself.
    pub impression: Option<u64>,
    /// The jaw.
    pub arch: Option<Arch>,
    /// Part of the arch; `null` where it is a matter of the whole.
    pub zone: Option<String>,
    /// The patient's side; `null` on the midline or where it is a matter of the whole.
    pub side: Option<Side>,
    /// The figure, in `unit`; `null` where it is no matter of figures or could not be had.
    pub measured: Option<f64>,
    /// Unit of `measured`, `limit` and `uncertainty`; `1` for a plain number.
    pub unit: Option<String>,
    /// The limit, in `unit`.
    pub limit: Option<f64>,
    /// Expanded uncertainty (k = 2) of `measured`, in `unit`; `null` where none is known.
    pub uncertainty: Option<f64>,
    /// Where, in the coordinates of the impression scan.
    pub at: Option<Point>,
    /// Name of the spot, the defect or the landmark that it speaks of.
    pub refers_to: Option<String>,
    /// Number, from 0, of the station where the stretch of border that it
    /// speaks of begins.
    pub from_station: Option<u64>,
    /// Number of the station where that stretch ends; less than `from_station`
    /// where it lies across the first station.
    pub to_station: Option<u64>,
    /// Name of the file with a drawing of the section at its worst place.
    pub drawing: Option<String>,
    /// One plain instruction.
    pub instruction: String,
}

/// A check that was not made, and why.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct NotJudged {
    /// Code of the check, or name of the part of the result that stays empty.
    pub check: String,
    /// The reason, in plain words.
    pub why: String,
}
