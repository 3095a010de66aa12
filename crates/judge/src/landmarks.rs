//! Whether landmarks were recorded: what the figures round each one mean by the
//! protocol.

use crate::decision::{Bound, Conformity, decide};
use crate::protocol::{LimitKey, Protocol};
use crate::subject::Subject;
use measure::landmarks::{Landmark, Nearby, NearbyKind, Seen, Unseen};
use measure::{Defect, DefectKind, ImpressionMeasurement};

/// Whether a landmark was recorded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LandmarkStatus {
    /// The surface is there, the border passes beyond it, nothing spoils it.
    Recorded,
    /// Border or scan end at it or before it.
    CutShort,
    /// Something lies over it.
    Obscured,
    /// It was not made out, and nothing tells why it should be missing.
    NotFound,
}

/// Why a landmark counts as cut short or obscured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Spoiled {
    /// The scan ends at it.
    ScanEnds,
    /// The border is short at it.
    ShortBorder,
    /// The trough is open where the landmark should close it.
    TroughOpen,
    /// The border passes too near, or on its near side.
    Margin,
    /// A surface defect, by its number.
    Defect(usize),
    /// The tray shows, by the number of the spot.
    ShowThrough(usize),
}

impl Spoiled {
    fn status(self) -> LandmarkStatus {
        match self {
            Self::ScanEnds | Self::ShortBorder | Self::TroughOpen | Self::Margin => {
                LandmarkStatus::CutShort
            }
            Self::Defect(_) | Self::ShowThrough(_) => LandmarkStatus::Obscured,
        }
    }
}

/// A landmark's status, and what spoils it where something does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JudgedLandmark {
    /// Whether it was recorded.
    pub status: LandmarkStatus,
    pub(crate) spoiled: Option<Spoiled>,
}

/// The status of each landmark of a measured impression, in their order.
#[must_use]
pub(crate) fn judged(subject: &Subject<'_>) -> Vec<JudgedLandmark> {
    let measurement = subject.measurement();
    measurement
        .landmarks
        .iter()
        .map(|landmark| {
            let spoiled = spoiled(landmark, measurement, subject.protocol);
            let status = match (spoiled, &landmark.seen) {
                (Some(spoiled), _) => spoiled.status(),
                (None, Ok(_)) => LandmarkStatus::Recorded,
                (None, Err(_)) => LandmarkStatus::NotFound,
            };
            JudgedLandmark { status, spoiled }
        })
        .collect()
}

fn spoiled(
    landmark: &Landmark,
    measurement: &ImpressionMeasurement,
    protocol: &Protocol,
) -> Option<Spoiled> {
    let clearance = match &landmark.seen {
        Ok(_) => protocol.value(LimitKey::LandmarkClearance),
        // Where it should be is known far less well than where it is.
        Err(_) => protocol.value(LimitKey::LandmarkSearch),
    };
    let nearest = landmark
        .nearby
        .iter()
        .filter(|nearby| nearby.distance_mm <= clearance)
        .find_map(|nearby| spoils(nearby, measurement, protocol));
    if nearest.is_some() {
        return nearest;
    }
    match &landmark.seen {
        Ok(seen) => border_is_too_near(landmark, seen, protocol).then_some(Spoiled::Margin),
        Err(Unseen::TroughOpen { .. }) => Some(Spoiled::TroughOpen),
        Err(_) => None,
    }
}

fn border_is_too_near(landmark: &Landmark, seen: &Seen, protocol: &Protocol) -> bool {
    landmark.margin_mm.is_some_and(|margin| {
        let least = Bound::AtLeast(protocol.value(LimitKey::LandmarkMargin));
        decide(margin, seen.uncertainty_mm, least) == Conformity::NotConforming
    })
}

fn spoils(
    nearby: &Nearby,
    measurement: &ImpressionMeasurement,
    protocol: &Protocol,
) -> Option<Spoiled> {
    match nearby.kind {
        NearbyKind::ScanEnds => Some(Spoiled::ScanEnds),
        NearbyKind::ShortBorder(number) => {
            let border = measurement.border.as_ref().ok()?;
            let dip = border.dips.get(number)?;
            let zone = border.stations.get(dip.bottom)?.zone;
            let most = protocol.limit(LimitKey::UnderExtension).in_zone(zone);
            (dip.depth.mm > most).then_some(Spoiled::ShortBorder)
        }
        NearbyKind::ShowThrough(number) => Some(Spoiled::ShowThrough(number)),
        NearbyKind::Defect(number) => {
            let defect = measurement.tissue.as_ref().ok()?.defects.get(number)?;
            is_worth_a_finding(defect, protocol).then_some(Spoiled::Defect(number))
        }
    }
}

/// What is let pass in critical zones does not spoil a landmark.
fn is_worth_a_finding(defect: &Defect, protocol: &Protocol) -> bool {
    let (size, limit) = match defect.kind {
        DefectKind::Void => (defect.across_mm, LimitKey::CriticalVoid),
        DefectKind::Nodule => (defect.across_mm, LimitKey::CriticalNodule),
        DefectKind::Hole => (defect.across_mm, LimitKey::CriticalHole),
        DefectKind::Fold => (
            defect.length_mm.unwrap_or(defect.across_mm),
            LimitKey::CriticalFold,
        ),
    };
    size > protocol.value(limit)
}
