//! The result contract `archproof-result/1` as types; its JSON Schema is
//! generated from them.
//!
//! Names and units are fixed. A figure that could not be obtained is `null`,
//! and `not_judged` says why. Points are in the coordinates and the unit of the
//! scan file that they lie in.

mod as_sent;
mod border;
mod case;
mod colour;
mod common;
mod consignment;
mod cover;
mod defects;
mod files;
mod findings;
mod impression;
mod jaw_relation;
mod landmarks;
mod numbering;
mod on_tray;
mod protocol;
mod scan;
mod time_source;
mod times;
mod tray_bend;
mod tray_chosen;
mod tray_fit;
mod trays_tried;
mod wash;

pub use as_sent::{AsSent, ChangeInTransit, Damage, DamageWord, PlaceThen};
pub use border::{
    Border, BorderPart, Dip, DipKind, MissingFigures, MissingReason, Station, StationReading,
};
pub use case::{CaseResult, Contract};
pub use colour::{BesideCover, TrayColour};
pub use common::{Arch, Point, Side, Verdict};
pub use consignment::{Consignment, ParcelPart};
pub(crate) use cover::parts;
pub use cover::{
    ArchPart, Cover, CoverGap, CoverMap, CoverMethod, EdgeExtent, Spot, SpotKind, SurfaceFile,
};
pub use defects::{Defect, DefectKind, ZoneScan};
pub use files::{FileKind, OutputFile};
pub use findings::{Bound, Cause, Finding, NotJudged, Severity};
pub use impression::{ArchReading, Frame, ImpressionResult, Stage};
pub use jaw_relation::{JawRelation, SpaceStation};
pub use landmarks::{Landmark, LandmarkSource, LandmarkStatus};
pub use on_tray::OnTray;
pub use protocol::{Level, LimitResult, ProtocolResult, ScannerResult};
pub use scan::{Format, PartScan, ScanResult, TrayJoint, TrayScan};
pub use time_source::{TimeSource, TimeSources, Timed};
pub(crate) use times::in_utc;
pub use times::{StepTime, Times};
pub use tray_bend::LimbBend;
pub use tray_chosen::{TrayChosen, TrayTrial};
pub use tray_fit::{TrayFit, TraySeating, TrayZone};
pub use trays_tried::{
    ClearanceResult, Conclusion, EdgeResult, TouchResult, TrayResult, TraysTried,
};
pub use wash::{Wash, WashPlace};

#[cfg(test)]
mod tests {
    use super::*;
    use crate::files::json::schema_of;
    use crate::files::outputs::result_json;
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
            let result = CaseResult::of(&checked);
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
            serde_json::from_str(&result_json(&CaseResult::of(&checked_with_spots()))).unwrap();
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
            serde_json::from_str(&result_json(&CaseResult::of(&checked_with_spots()))).unwrap();
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
        let in_mm = CaseResult::of(&checked);
        let scan = std::sync::Arc::make_mut(&mut checked.impressions[0].scan);
        scan.unit = judge::UnitReading::Given(mesh::Unit::Centimetre);
        let in_cm = CaseResult::of(&checked);
        assert_eq!(in_mm.findings[0].at, Some([10.0, 20.0, 5.0]));
        assert_eq!(in_cm.findings[0].at, Some([1.0, 2.0, 0.5]));
        assert_eq!(in_cm.findings[0].measured, in_mm.findings[0].measured);
    }

    #[test]
    fn what_could_not_be_had_is_null_with_its_reason() {
        let result = CaseResult::of(&checked_without_cover());
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
        let border = CaseResult::of(&checked_with_border())
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
