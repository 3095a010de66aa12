//! The result contract `archproof-result/1` as types; its JSON Schema is
//! generated from them.
//!
//! Names and units are fixed. A figure that could not be obtained is `null`,
//! and `not_judged` says why. Points are in the coordinates and the unit of the
//! scan file that they lie in.

mod assemble;
mod border;
mod colour;
mod consignment;
mod cover;
mod defects;
mod files;
mod findings;
mod impression;
mod jaw_relation;
mod landmarks;
mod tray_fit;
mod wash;

pub use assemble::assemble;
pub use border::{Border, BorderPart, Dip, DipKind, MissingFigures, MissingReason, Station};
pub use colour::{BesideCover, TrayColour};
pub use consignment::{Consignment, ParcelPart};
pub use cover::{Cover, CoverMap, CoverMethod, Spot, SpotKind};
pub use defects::{Defect, DefectKind, ZoneScan};
pub use files::{FileKind, OutputFile};
pub use findings::{Finding, NotJudged, Severity};
pub use impression::{
    ArchPart, ArchReading, Format, Frame, ImpressionResult, ScanResult, Stage, SurfaceFile,
    TrayScan,
};
pub use jaw_relation::{JawRelation, SpaceStation};
pub use landmarks::{Landmark, LandmarkSource, LandmarkStatus};
pub use tray_fit::{TrayFit, TraySeating, TrayZone};
pub use wash::{Wash, WashPlace};

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
    /// Wash against first pass, for each jaw that has both.
    pub wash: Vec<Wash>,
    /// The relation of the jaws; `null` where the case says nothing of it.
    pub jaw_relation: Option<JawRelation>,
    /// The parcel; `null` where the case says nothing of it.
    pub consignment: Option<Consignment>,
    /// What fails or cannot be judged, most urgent first.
    pub findings: Vec<Finding>,
    /// What was not judged on the case as a whole, and why.
    pub not_judged: Vec<NotJudged>,
    /// The files that belong to the result, beside `result.json`.
    pub files: Vec<OutputFile>,
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

impl From<measure::Arch> for Arch {
    fn from(arch: measure::Arch) -> Self {
        match arch {
            measure::Arch::Maxillary => Self::Maxillary,
            measure::Arch::Mandibular => Self::Mandibular,
        }
    }
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

impl From<measure::Side> for Side {
    fn from(side: measure::Side) -> Self {
        match side {
            measure::Side::Right => Self::Right,
            measure::Side::Left => Self::Left,
        }
    }
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
    /// The limiting value; where it differs by zone, in the zones not named.
    pub value: f64,
    /// Values of their own for some zones.
    pub zones: BTreeMap<String, f64>,
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::json::schema_of;
    use crate::outputs::result_json;
    use crate::testing::{checked_with_border, checked_with_spots, checked_without_cover};
    use serde_json::Value;

    #[test]
    fn a_result_is_valid_by_its_schema_and_survives_the_round_trip() {
        let validator = jsonschema::validator_for(schema_of::<CaseResult>().as_value()).unwrap();
        for checked in [
            checked_with_spots(),
            checked_without_cover(),
            checked_with_border(),
        ] {
            let result = assemble(&checked);
            let text = result_json(&result);
            let value: Value = serde_json::from_str(&text).unwrap();
            let faults: Vec<String> = validator
                .iter_errors(&value)
                .map(|e| e.to_string())
                .collect();
            assert!(faults.is_empty(), "{faults:?}");
            assert_eq!(serde_json::from_str::<CaseResult>(&text).unwrap(), result);
        }
    }

    #[test]
    fn the_schema_refuses_what_the_contract_does_not_allow() {
        let validator = jsonschema::validator_for(schema_of::<CaseResult>().as_value()).unwrap();
        let good: Value =
            serde_json::from_str(&result_json(&assemble(&checked_with_spots()))).unwrap();
        let spoilt = |pointer: &str, by: Value| {
            let mut value = good.clone();
            *value.pointer_mut(pointer).unwrap() = by;
            value
        };
        for value in [
            spoilt("/verdict", "fine".into()),
            spoilt("/schema", "archproof-result/2".into()),
            spoilt("/impressions/0/cover/spots/0/kind", "thick".into()),
            spoilt("/impressions/0/scan/area_mm2", Value::Null),
            spoilt("/findings/0/instruction", Value::Null),
        ] {
            assert!(!validator.is_valid(&value));
        }
    }

    /// Every name of the contract, as the design fixes it.
    #[test]
    fn every_name_of_the_contract_is_there() {
        let value: Value =
            serde_json::from_str(&result_json(&assemble(&checked_with_spots()))).unwrap();
        for (at, names) in [
            (
                "",
                "schema case verdict protocol impressions wash jaw_relation findings",
            ),
            ("/protocol", "name limits"),
            (
                "/impressions/0",
                "arch stage verdict scan frame cover border landmarks defects not_judged",
            ),
            ("/impressions/0/arch", "declared detected confidence"),
            (
                "/impressions/0/scan",
                "file sha256 format unit unit_assumed vertices triangles components boundary_loops non_manifold_edges degenerate_triangles median_edge_mm area_mm2 has_colour has_outer_surface",
            ),
            (
                "/impressions/0/frame",
                "origin right anterior seating confidence",
            ),
            (
                "/impressions/0/cover",
                "method registration_rms_mm uncertainty_mm area_judged_mm2 min_mm p05_mm median_mm spots",
            ),
            (
                "/impressions/0/cover/spots/0",
                "id kind centre area_mm2 min_mm zone",
            ),
            ("/impressions/0/border", "closed length_mm stations"),
            (
                "/impressions/0/border/stations/0",
                "s zone point flange_height_mm flange_thickness_mm border_radius_mm overlap_mm uncertainty_mm",
            ),
            (
                "/findings/0",
                "id severity check arch zone side measured unit limit uncertainty at refers_to instruction",
            ),
        ] {
            let object = value.pointer(at).unwrap().as_object().unwrap();
            for name in names.split(' ') {
                assert!(object.contains_key(name), "{at}/{name}");
            }
        }
    }

    #[test]
    fn points_go_out_in_the_unit_of_the_file() {
        let mut checked = checked_with_spots();
        let in_mm = assemble(&checked);
        let scan = std::sync::Arc::make_mut(&mut checked.impressions[0].scan);
        scan.unit = judge::UnitReading::Given(mesh::Unit::Centimetre);
        let in_cm = assemble(&checked);
        assert_eq!(in_mm.findings[0].at, Some([10.0, 20.0, 5.0]));
        assert_eq!(in_cm.findings[0].at, Some([1.0, 2.0, 0.5]));
        assert_eq!(in_cm.findings[0].measured, in_mm.findings[0].measured);
    }

    #[test]
    fn what_could_not_be_had_is_null_with_its_reason() {
        let result = assemble(&checked_without_cover());
        let impression = &result.impressions[0];
        assert_eq!(impression.cover, None);
        assert_eq!(impression.tray, None);
        let reasons: Vec<&str> = impression
            .not_judged
            .iter()
            .filter(|entry| entry.check == "show-through")
            .map(|entry| entry.why.as_str())
            .collect();
        assert_eq!(reasons, ["no tray scan was given"]);
        let border = assemble(&checked_with_border())
            .impressions
            .remove(0)
            .border;
        let station = &border.unwrap().stations[90];
        assert_eq!(station.border_radius_mm, None);
        assert_eq!(station.border_radius_uncertainty_mm, None);
        assert_eq!(station.missing.border_radius, Some(MissingReason::ScanEnds));
        assert_eq!(station.missing.overlap, None);
    }
}
