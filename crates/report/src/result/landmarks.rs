//! Landmarks in a result.

use super::common::{Point, Side};
use super::findings::{MessageOfCatalogue, in_language};
use super::numbering::landmark_id;
use crate::text::rounding::{confidence, figure, point};
use judge::words;
use mesh::Unit;
use messages::{Language, Message};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Whether a landmark was recorded.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum LandmarkStatus {
    /// It shows on the surface, the border passes beyond it, nothing spoils it.
    Recorded,
    /// The impression reaches its place, which nothing on the surface verifies.
    Reached,
    /// Border or scan end at it or before it.
    CutShort,
    /// A defect or bare tray lies over it.
    Obscured,
    /// It was not made out.
    NotFound,
}

/// How a landmark came to be known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum LandmarkSource {
    /// Found on the surface.
    Detected,
    /// Marked by an operator.
    Marked,
}

/// A landmark.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Landmark {
    /// Name within the case: L1, L2, …
    pub id: String,
    /// Its name in the trade.
    pub name: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Whether it was recorded.
    pub status: LandmarkStatus,
    /// Where it is; `null` where it was not seen.
    pub point: Option<Point>,
    /// Expanded uncertainty (k = 2) of the place, mm; `null` where it was not seen.
    pub uncertainty_mm: Option<f64>,
    /// 0 to 1; 0 where it was not seen.
    pub confidence: f64,
    /// How it came to be known.
    pub source: LandmarkSource,
    /// Depth of its notch or hollow, height of its ridge, mm; `null` for a place
    /// that is known by its neighbours.
    pub relief_mm: Option<f64>,
    /// From the landmark to the border beyond it, in plan, mm; below 0 where it
    /// lies beyond the border; `null` for one that lies in the border, and where
    /// that is not known.
    pub margin_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub margin_uncertainty_mm: Option<f64>,
    /// How much of the landmark's own area lies inside the border, %; `null` for a
    /// landmark without an area, and where that is not known.
    pub covered_percent: Option<f64>,
    /// Part of the arch; `null` where no place is known.
    pub zone: Option<String>,
    /// Why it was not seen; `null` where it was.
    pub why: Option<String>,
    /// The messages that make this reason, each with its key and its parameters.
    #[serde(default)]
    #[schemars(with = "Vec<MessageOfCatalogue>")]
    pub why_messages: Message,
}

impl From<judge::LandmarkStatus> for LandmarkStatus {
    fn from(status: judge::LandmarkStatus) -> Self {
        match status {
            judge::LandmarkStatus::Recorded => Self::Recorded,
            judge::LandmarkStatus::Reached => Self::Reached,
            judge::LandmarkStatus::CutShort => Self::CutShort,
            judge::LandmarkStatus::Obscured => Self::Obscured,
            judge::LandmarkStatus::NotFound => Self::NotFound,
        }
    }
}

impl From<measure::landmarks::LandmarkSource> for LandmarkSource {
    fn from(source: measure::landmarks::LandmarkSource) -> Self {
        match source {
            measure::landmarks::LandmarkSource::Detected => Self::Detected,
            measure::landmarks::LandmarkSource::Marked => Self::Marked,
        }
    }
}

impl Landmark {
    /// A landmark with this number in the case, from 0.
    pub(super) fn of(
        found: &measure::landmarks::Landmark,
        judged: &judge::JudgedLandmark,
        number: usize,
        unit: Unit,
    ) -> Self {
        let seen = found.seen.as_ref().ok();
        Self {
            id: landmark_id(number),
            name: found.name.in_words().to_owned(),
            side: found.side.map(Into::into),
            status: judged.status.into(),
            point: seen.map(|seen| point(&seen.point, unit)),
            uncertainty_mm: seen.map(|seen| figure(seen.uncertainty_mm)),
            confidence: seen.map_or(0.0, |seen| confidence(seen.confidence)),
            source: found.source.into(),
            relief_mm: seen.and_then(|seen| seen.relief_mm).map(figure),
            margin_mm: found.extent.margin.map(|margin| figure(margin.mm)),
            margin_uncertainty_mm: found
                .extent
                .margin
                .map(|margin| figure(margin.uncertainty_mm)),
            covered_percent: found.extent.covered.map(|covered| figure(covered.percent)),
            zone: found.zone.map(|zone| words::zone(zone).to_owned()),
            why: found.seen.as_ref().err().map(ToString::to_string),
            why_messages: found
                .seen
                .as_ref()
                .err()
                .map(Message::from)
                .unwrap_or_default(),
        }
    }

    /// Why it was not seen, in a language; in English where a result of an earlier version
    /// holds no messages.
    #[must_use]
    pub fn why_in(&self, language: Language) -> Option<String> {
        let why = self.why.as_ref()?;
        Some(in_language(&self.why_messages, why, language))
    }
}
