//! The relation of the jaws in the words of the contract.

use super::not_judged;
use crate::result::{JawRelation, SpaceStation};
use crate::rounding::{figure, point};
use check::CheckedCase;

/// What the case and the scan of the record say; `None` where neither does.
pub(super) fn jaw_relation(checked: &CheckedCase) -> Option<JawRelation> {
    let given = checked.case.jaw_relation.as_ref()?;
    let measured = checked.jaw_relation.as_ref().and_then(|r| r.as_ref().ok());
    let stations = measured.map_or(&[][..], |relation| &relation.stations);
    let unit = checked.record.as_ref().map(|record| record.unit.unit());
    Some(JawRelation {
        interarch_space_mm: stations.iter().filter_map(|s| s.mm).map(figure).collect(),
        stations: stations
            .iter()
            .zip(unit.into_iter().cycle())
            .map(|(station, unit)| SpaceStation {
                point: point(&station.at, unit),
                from_front_mm: figure(station.from_front_mm),
                side: station.side.map(Into::into),
                space_mm: station.mm.map(figure),
            })
            .collect(),
        uncertainty_mm: measured.map(|relation| figure(relation.uncertainty_mm)),
        ridge_angle_deg: measured.map(|relation| figure(relation.ridge_angle_deg)),
        ridge_angle_uncertainty_deg: measured
            .map(|relation| figure(relation.ridge_angle_uncertainty_deg)),
        record_sha256: checked.record.as_ref().map(|record| record.sha256.clone()),
        vertical_dimension_mm: given.vertical_dimension_mm,
        rest_vertical_dimension_mm: given.rest_vertical_dimension_mm,
        interocclusal_distance_mm: checked.case.interocclusal_distance_mm().map(figure),
        upper_lip_length_mm: given.upper_lip_length_mm,
        not_judged: not_judged(&checked.judged.not_judged)
            .into_iter()
            .filter(|entry| entry.check == "jaw_relation")
            .collect(),
    })
}
