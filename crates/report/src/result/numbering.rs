//! Names of spots, defects and landmarks: their numbers run on through a case.

use check::CheckedCase;
use measure::{Defect, ImpressionMeasurement};

/// How many spots, defects and landmarks the impressions before one have.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Before {
    pub spots: usize,
    pub defects: usize,
    pub landmarks: usize,
}

impl Before {
    /// For each impression of a case.
    pub(super) fn each(checked: &CheckedCase) -> Vec<Self> {
        let impressions = checked.impressions.iter();
        impressions
            .scan(Self::default(), |sum, impression| {
                let before = *sum;
                sum.spots += impression.measurement.spots.len();
                sum.defects += defects(&impression.measurement).len();
                sum.landmarks += impression.measurement.landmarks.len();
                Some(before)
            })
            .collect()
    }
}

/// The defects of a tissue surface; none where it was not looked at.
pub(super) fn defects(measurement: &ImpressionMeasurement) -> &[Defect] {
    let tissue = measurement.tissue.as_ref();
    tissue.map_or(&[], |tissue| tissue.defects.as_slice())
}

/// Name of a spot; spots are counted from 0.
pub(super) fn spot_id(number: usize) -> String {
    format!("C{}", number + 1)
}

/// Name of a defect; defects are counted from 0.
pub(super) fn defect_id(number: usize) -> String {
    format!("D{}", number + 1)
}

/// Name of a landmark; landmarks are counted from 0.
pub(super) fn landmark_id(number: usize) -> String {
    format!("L{}", number + 1)
}
