//! The result contract `archproof-result/1` as types; its JSON Schema is
//! generated from them.
//!
//! Names and units are fixed. A figure that could not be obtained is `null`,
//! and `not_judged` says why. Points are in the coordinates and the unit of the
//! scan file that they lie in.

mod assemble;
mod border;
mod cover;
mod findings;
mod impression;
mod later;

pub use assemble::assemble;
pub use border::{Border, Station};
pub use cover::{Cover, CoverMap, CoverMethod, Spot, SpotKind};
pub use findings::{Finding, NotJudged, Severity};
pub use impression::{ArchReading, Format, Frame, ImpressionResult, ScanResult, Stage, TrayScan};
pub use later::{Defect, DefectKind, JawRelation, Landmark, LandmarkSource, LandmarkStatus, Wash};

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A point: x, y, z.
pub type Point = [f64; 3];

/// Name and version of the contract.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Contract {
    /// Version 1.
    #[serde(rename = "archproof-result/1")]
    V1,
}

/// What came of a case: the whole of `result.json`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CaseResult {
    /// Name and version of the contract.
    pub schema: Contract,
    /// Version of the program that wrote it.
    pub program: String,
    /// Pseudonym of the case.
    pub case: String,
    /// Verdict on the whole case.
    pub verdict: Verdict,
    /// The limits that it was judged by.
    pub protocol: ProtocolResult,
    /// Each impression scan.
    pub impressions: Vec<ImpressionResult>,
    /// Wash against first pass, for each jaw that has both; empty in this version.
    pub wash: Vec<Wash>,
    /// The relation of the jaws; `null` in this version.
    pub jaw_relation: Option<JawRelation>,
    /// What fails or cannot be judged, most urgent first.
    pub findings: Vec<Finding>,
}

/// What is to become of an impression or a case.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// It can be worked from, as far as it was judged.
    Accept,
    /// Relieve or add, then a wash.
    Rework,
    /// The impression must be taken again.
    Retake,
    /// It cannot be judged from what was given.
    Undecided,
}

/// Which jaw.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Arch {
    /// Upper jaw.
    Maxillary,
    /// Lower jaw.
    Mandibular,
}

/// The patient's side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// The patient's right.
    Right,
    /// The patient's left.
    Left,
}

/// The limits that a case was judged by.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ProtocolResult {
    /// What the protocol calls itself.
    pub name: String,
    /// Every limit by its name; the name ends with the unit.
    pub limits: BTreeMap<String, LimitResult>,
}

/// One limit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LimitResult {
    /// The limiting value.
    pub value: f64,
    /// Its unit; `1` for a plain number.
    pub unit: String,
    /// What missing it means: `fail`, `undecided` or `note`.
    pub level: Level,
    /// Where it comes from.
    pub source: String,
}

/// What missing a limit means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Level {
    /// The impression fails.
    Fail,
    /// The impression is not accepted on this measurement.
    Undecided,
    /// It is said, and changes no verdict.
    Note,
}

/// JSON Schema of a result.
#[must_use]
pub fn json_schema() -> schemars::Schema {
    schemars::schema_for!(CaseResult)
}

/// JSON Schema of a result, as text.
#[must_use]
pub fn json_schema_text() -> String {
    format!("{:#}\n", json_schema().as_value())
}
