//! Landmarks as the contract has them.

use crate::result::{Landmark, LandmarkSource, LandmarkStatus};
use crate::rounding::{confidence, figure, point};
use judge::words;
use measure::landmarks::Landmark as Measured;
use mesh::Unit;

/// Name of a landmark, unique within its case; landmarks are counted from 0.
pub fn landmark_id(number: usize) -> String {
    format!("L{}", number + 1)
}

pub fn landmark(
    found: &Measured,
    judged: &judge::JudgedLandmark,
    number: usize,
    unit: Unit,
) -> Landmark {
    let seen = found.seen.as_ref().ok();
    Landmark {
        id: landmark_id(number),
        name: found.name.in_words().to_owned(),
        side: found.side.map(Into::into),
        status: match judged.status {
            judge::LandmarkStatus::Recorded => LandmarkStatus::Recorded,
            judge::LandmarkStatus::CutShort => LandmarkStatus::CutShort,
            judge::LandmarkStatus::Obscured => LandmarkStatus::Obscured,
            judge::LandmarkStatus::NotFound => LandmarkStatus::NotFound,
        },
        point: seen.map(|seen| point(&seen.point, unit)),
        uncertainty_mm: seen.map(|seen| figure(seen.uncertainty_mm)),
        confidence: seen.map_or(0.0, |seen| confidence(seen.confidence)),
        source: match found.source {
            measure::landmarks::LandmarkSource::Detected => LandmarkSource::Detected,
            measure::landmarks::LandmarkSource::Marked => LandmarkSource::Marked,
        },
        relief_mm: seen.and_then(|seen| seen.relief_mm).map(figure),
        margin_mm: found.margin_mm.map(figure),
        zone: found.zone.map(|zone| words::zone(zone).to_owned()),
        why: found.seen.as_ref().err().map(ToString::to_string),
    }
}
