//! What the case says of the relation of the jaws.

use measure::Measured;
use serde::{Deserialize, Serialize};
use std::path::PathBuf;

/// Measurements and scan of the relation of the jaws, lengths in mm.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct JawRelation {
    /// File of the scan of both impressions with the registration material between.
    pub scan: Option<PathBuf>,
    /// Vertical dimension of occlusion, mm.
    pub vertical_dimension_mm: Option<f64>,
    /// Vertical dimension at rest, mm.
    pub rest_vertical_dimension_mm: Option<f64>,
    /// The same as several readings, mm, instead of one value.
    #[serde(default)]
    pub vertical_dimension_readings_mm: Vec<f64>,
    /// The same as several readings, mm, instead of one value.
    #[serde(default)]
    pub rest_vertical_dimension_readings_mm: Vec<f64>,
    /// How the vertical dimension of occlusion was found.
    pub vertical_dimension_by: Option<VerticalDimensionBy>,
    /// How centric relation was found.
    pub centric_relation_by: Option<CentricRelationBy>,
    /// Upper lip length, mm: from the base of the nose (subnasale) to the lip line.
    pub upper_lip_length_mm: Option<f64>,
    /// From the incisive papilla to the lip line at rest, mm. Not the lip's length.
    pub papilla_to_lip_mm: Option<f64>,
}

/// How a vertical dimension of occlusion was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[allow(missing_docs, reason = "the names say it")]
pub enum VerticalDimensionBy {
    RestPosition,
    LipContact,
    ExistingDenture,
    Speech,
    Swallowing,
    Other,
}

impl VerticalDimensionBy {
    /// The words for it.
    #[must_use]
    pub fn in_words(self) -> &'static str {
        match self {
            Self::RestPosition => "from the rest position",
            Self::LipContact => "by lip contact",
            Self::ExistingDenture => "from an existing denture",
            Self::Speech => "by speech",
            Self::Swallowing => "by swallowing",
            Self::Other => "in another way",
        }
    }
}

/// How centric relation was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[allow(missing_docs, reason = "the names say it")]
pub enum CentricRelationBy {
    Guided,
    GothicArch,
    Swallowing,
    Other,
}

impl CentricRelationBy {
    /// The words for it.
    #[must_use]
    pub fn in_words(self) -> &'static str {
        match self {
            Self::Guided => "by guiding the jaw",
            Self::GothicArch => "by a gothic-arch tracing",
            Self::Swallowing => "by swallowing",
            Self::Other => "in another way",
        }
    }
}

impl JawRelation {
    /// Whether the relation itself is given: a scan of the record, or a vertical dimension
    /// of occlusion. A lip length alone relates no jaws.
    #[must_use]
    pub fn is_given(&self) -> bool {
        self.scan.is_some() || self.vertical_mm().is_some()
    }

    /// Vertical dimension of occlusion, mm: as given, or the mean of its readings.
    #[must_use]
    pub fn vertical_mm(&self) -> Option<f64> {
        mean(
            self.vertical_dimension_mm,
            &self.vertical_dimension_readings_mm,
        )
    }

    /// Vertical dimension at rest, mm: as given, or the mean of its readings.
    #[must_use]
    pub fn rest_mm(&self) -> Option<f64> {
        let readings = &self.rest_vertical_dimension_readings_mm;
        mean(self.rest_vertical_dimension_mm, readings)
    }

    /// Rest vertical dimension less that of occlusion, mm, where both are given, with its
    /// expanded uncertainty (k = 2); `one_reading_mm` is that of one reading.
    #[must_use]
    pub fn interocclusal_distance(&self, one_reading_mm: f64) -> Option<Measured> {
        let of = |readings: &[f64]| uncertainty_mm(readings, one_reading_mm);
        let rest = of(&self.rest_vertical_dimension_readings_mm);
        let occlusion = of(&self.vertical_dimension_readings_mm);
        Some(Measured {
            mm: self.rest_mm()? - self.vertical_mm()?,
            uncertainty_mm: rest.hypot(occlusion),
        })
    }

    /// Every number that is given.
    pub(super) fn numbers(&self) -> impl Iterator<Item = f64> {
        [
            self.vertical_dimension_mm,
            self.rest_vertical_dimension_mm,
            self.upper_lip_length_mm,
            self.papilla_to_lip_mm,
        ]
        .into_iter()
        .flatten()
        .chain(self.vertical_dimension_readings_mm.iter().copied())
        .chain(self.rest_vertical_dimension_readings_mm.iter().copied())
    }

    /// Whether one dimension is given both as a value and as readings.
    pub(super) fn is_ambiguous(&self) -> bool {
        let both = |mm: Option<f64>, readings: &[f64]| mm.is_some() && !readings.is_empty();
        both(
            self.vertical_dimension_mm,
            &self.vertical_dimension_readings_mm,
        ) || both(
            self.rest_vertical_dimension_mm,
            &self.rest_vertical_dimension_readings_mm,
        )
    }
}

fn mean(given: Option<f64>, readings: &[f64]) -> Option<f64> {
    let of_readings = readings.iter().sum::<f64>() / readings.len() as f64;
    given.or((!readings.is_empty()).then_some(of_readings))
}

/// Expanded uncertainty (k = 2) of a mean of readings, mm. Few readings may agree by chance:
/// it is never less than that of one reading allows.
fn uncertainty_mm(readings: &[f64], one_reading_mm: f64) -> f64 {
    let count = readings.len().max(1) as f64;
    let mean = readings.iter().sum::<f64>() / count;
    let squares: f64 = readings.iter().map(|mm| (mm - mean).powi(2)).sum();
    let sd = (squares / (count - 1.0).max(1.0)).sqrt();
    one_reading_mm.max(2.0 * sd) / count.sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_give_the_distance_its_uncertainty() {
        let one = JawRelation {
            vertical_dimension_mm: Some(66.0),
            rest_vertical_dimension_mm: Some(69.0),
            ..JawRelation::default()
        };
        let distance = one.interocclusal_distance(0.7).unwrap();
        assert!((distance.mm - 3.0).abs() < 1e-12);
        assert!((distance.uncertainty_mm - 0.7 * 2f64.sqrt()).abs() < 1e-12);

        // Standard deviations 1 mm of three readings and 0 of three: 2/sqrt(3) and 0.7/sqrt(3).
        let three = JawRelation {
            vertical_dimension_readings_mm: vec![65.0, 66.0, 67.0],
            rest_vertical_dimension_readings_mm: vec![69.0; 3],
            ..JawRelation::default()
        };
        let distance = three.interocclusal_distance(0.7).unwrap();
        assert!((distance.mm - 3.0).abs() < 1e-12);
        let expected = (2.0 / 3f64.sqrt()).hypot(0.7 / 3f64.sqrt());
        assert!((distance.uncertainty_mm - expected).abs() < 1e-12);
    }

    #[test]
    fn an_empty_section_gives_no_relation() {
        assert!(!JawRelation::default().is_given());
        let lip_alone = JawRelation {
            papilla_to_lip_mm: Some(7.0),
            ..JawRelation::default()
        };
        assert!(!lip_alone.is_given());
        let readings = JawRelation {
            vertical_dimension_readings_mm: vec![66.0, 66.5],
            ..JawRelation::default()
        };
        assert!(readings.is_given());
    }
}
