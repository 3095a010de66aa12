//! Names of spots, defects and landmarks: their numbers run on through a case.

use check::{CheckedCase, CheckedImpression};
use measure::Defect;

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
                sum.defects += defects(impression).len();
                if let Some(found) = impression.measured() {
                    sum.spots += found.spots.len();
                    sum.landmarks += found.landmarks.len();
                }
                Some(before)
            })
            .collect()
    }
}

/// The defects of a tissue surface; none where it was not looked at.
pub(super) fn defects(impression: &CheckedImpression) -> &[Defect] {
    let tissue = impression.measured().map(|found| found.tissue.as_ref());
    match tissue {
        Some(Ok(tissue)) => &tissue.defects,
        _ => &[],
    }
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
