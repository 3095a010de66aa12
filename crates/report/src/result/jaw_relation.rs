//! The relation of the jaws in a result.

use super::common::{Point, Side};
use super::findings::{NotJudged, not_judged};
use crate::text::rounding::{figure, point};
use check::CheckedCase;
use judge::{LimitKey, Part};
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
    /// Number of stations at which the scan of the record does not show both ridges.
    #[serde(default)]
    pub stations_not_shown: usize,
    /// Expanded uncertainty (k = 2) of a space, mm.
    pub uncertainty_mm: Option<f64>,
    /// Angle between the planes of the crest lines, degrees.
    pub ridge_angle_deg: Option<f64>,
    /// Expanded uncertainty (k = 2) of that angle, degrees.
    pub ridge_angle_uncertainty_deg: Option<f64>,
    /// SHA-256 of the scan of the record.
    pub record_sha256: Option<String>,
    /// Vertical dimension of occlusion, mm; the mean where readings were given.
    pub vertical_dimension_mm: Option<f64>,
    /// Vertical dimension at rest, mm; the mean where readings were given.
    pub rest_vertical_dimension_mm: Option<f64>,
    /// How the vertical dimension of occlusion was found.
    #[serde(default)]
    pub vertical_dimension_by: Option<String>,
    /// How centric relation was found.
    #[serde(default)]
    pub centric_relation_by: Option<String>,
    /// Rest vertical dimension less that of occlusion, mm.
    pub interocclusal_distance_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of that distance, mm.
    #[serde(default)]
    pub interocclusal_distance_uncertainty_mm: Option<f64>,
    /// Upper lip length, mm: from the base of the nose to the lip line.
    pub upper_lip_length_mm: Option<f64>,
    /// From the incisive papilla to the lip line at rest, mm.
    #[serde(default)]
    pub papilla_to_lip_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) that one reading of these lengths is taken to have, mm.
    #[serde(default)]
    pub reading_uncertainty_mm: Option<f64>,
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
    /// The space, mm; `null` where it was not measured.
    pub space_mm: Option<f64>,
    /// Why it was not measured.
    #[serde(default)]
    pub why_not: Option<String>,
}

impl JawRelation {
    /// What the case and the scan of the record say; `None` where neither does.
    pub(super) fn of(checked: &CheckedCase) -> Option<Self> {
        let given = checked.case.jaw_relation.as_ref()?;
        let measured = checked.jaw_relation.as_ref().and_then(|r| r.as_ref().ok());
        let stations = measured.map_or(&[][..], |relation| &relation.stations);
        let one_reading_mm = checked.protocol.value(LimitKey::ReadingUncertainty);
        let interocclusal = given.interocclusal_distance(one_reading_mm);
        let unit = checked.record.as_ref().map(|record| record.unit.unit());
        Some(Self {
            interarch_space_mm: (stations.iter())
                .filter_map(|station| station.mm.ok())
                .map(figure)
                .collect(),
            stations: stations
                .iter()
                .zip(unit.into_iter().cycle())
                .map(|(station, unit)| SpaceStation {
                    point: point(&station.at, unit),
                    from_front_mm: figure(station.from_front_mm),
                    side: station.side.map(Into::into),
                    space_mm: station.mm.ok().map(figure),
                    why_not: station.mm.err().map(|why| why.to_string()),
                })
                .collect(),
            stations_not_shown: measured.map_or(0, |relation| relation.not_shown()),
            uncertainty_mm: measured.map(|relation| figure(relation.uncertainty_mm)),
            ridge_angle_deg: measured.map(|relation| figure(relation.ridge_angle_deg)),
            ridge_angle_uncertainty_deg: measured
                .map(|relation| figure(relation.ridge_angle_uncertainty_deg)),
            record_sha256: checked.record.as_ref().map(|record| record.sha256.clone()),
            vertical_dimension_mm: given.vertical_mm().map(figure),
            rest_vertical_dimension_mm: given.rest_mm().map(figure),
            vertical_dimension_by: given
                .vertical_dimension_by
                .map(|by| by.in_words().to_owned()),
            centric_relation_by: given.centric_relation_by.map(|by| by.in_words().to_owned()),
            interocclusal_distance_mm: interocclusal.map(|distance| figure(distance.mm)),
            interocclusal_distance_uncertainty_mm: interocclusal
                .map(|distance| figure(distance.uncertainty_mm)),
            upper_lip_length_mm: given.upper_lip_length_mm,
            papilla_to_lip_mm: given.papilla_to_lip_mm,
            reading_uncertainty_mm: Some(one_reading_mm),
            not_judged: not_judged(&checked.judged.not_judged)
                .into_iter()
                .filter(|entry| entry.check == Part::JawRelation.name())
                .collect(),
        })
    }
}
