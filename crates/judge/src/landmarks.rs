//! Whether landmarks were recorded: what the figures round each one mean by the
//! protocol.

use crate::bands;
use crate::decision::{Bound, Conformity, decide};
use crate::protocol::{LimitKey, Protocol};
use crate::subject::Subject;
use measure::landmarks::{Landmark, LandmarkName, Nearby, NearbyKind, Unseen};
use measure::{Defect, DefectKind, Measurement, Zone};

/// Whether a landmark was recorded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LandmarkStatus {
    /// It shows on the surface, the border passes beyond it, nothing spoils it.
    Recorded,
    /// The impression reaches its place, but nothing on the surface verifies it: it
    /// carries no relief of its own, or the border passes very near.
    Reached,
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
    /// The border passes on its near side, or may.
    Margin,
    /// The border passes beyond it, but less far than is wished, or may.
    Near,
    /// Too little of the landmark's own area lies inside the border.
    Covered,
    /// A surface defect, by its number.
    Defect(usize),
    /// The tray shows, by the number of the spot.
    ShowThrough(usize),
}

impl Spoiled {
    fn status(self) -> LandmarkStatus {
        match self {
            Self::ScanEnds
            | Self::ShortBorder
            | Self::TroughOpen
            | Self::Margin
            | Self::Covered => LandmarkStatus::CutShort,
            Self::Near => LandmarkStatus::Reached,
            Self::Defect(_) | Self::ShowThrough(_) => LandmarkStatus::Obscured,
        }
    }
}

/// A landmark's status, and what spoils it where something does or may.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JudgedLandmark {
    /// Whether it was recorded.
    pub status: LandmarkStatus,
    pub(crate) spoiled: Option<Spoiled>,
    /// How far the impression goes on there, against its limit.
    pub(crate) conformity: Conformity,
    /// The impression ends before it, beyond doubt.
    pub(crate) is_missed: bool,
}

/// The status of each landmark of a measured impression, in their order.
#[must_use]
pub(crate) fn judged(subject: &Subject<'_>) -> Vec<JudgedLandmark> {
    let measurement = subject.measurement();
    let judge = |landmark| judged_one(landmark, measurement, subject.protocol());
    measurement.landmarks.iter().map(judge).collect()
}

fn judged_one(
    landmark: &Landmark,
    measurement: &Measurement,
    protocol: &Protocol,
) -> JudgedLandmark {
    let over_it = lies_over(landmark, measurement, protocol);
    let (short, conformity) = ends_before(landmark, protocol);
    let spoiled = over_it.or(short);
    let status = match (spoiled, conformity, &landmark.seen) {
        (Some(Spoiled::Margin | Spoiled::Covered), Conformity::Borderline, Ok(_)) => {
            LandmarkStatus::Reached
        }
        (Some(spoiled), _, _) => spoiled.status(),
        (None, _, Ok(_)) if landmark.is_verified() => LandmarkStatus::Recorded,
        (None, _, Ok(_)) => LandmarkStatus::Reached,
        (None, _, Err(_)) => LandmarkStatus::NotFound,
    };
    JudgedLandmark {
        status,
        spoiled,
        conformity,
        is_missed: over_it.is_none() && is_missed(landmark, protocol),
    }
}

/// What lies so near to a landmark that it spoils it.
fn lies_over(
    landmark: &Landmark,
    measurement: &Measurement,
    protocol: &Protocol,
) -> Option<Spoiled> {
    let clearance = match &landmark.seen {
        Ok(_) => protocol.value(LimitKey::LandmarkClearance),
        // Where it should be is known far less well than where it is.
        Err(_) => protocol.value(LimitKey::LandmarkSearch),
    };
    landmark
        .nearby
        .iter()
        .filter(|nearby| nearby.distance_mm <= clearance)
        .filter(|nearby| !is_hole_beside(landmark, nearby, measurement, clearance))
        .find_map(|nearby| spoils(nearby, measurement, protocol))
}

/// A small hole beside a landmark that shows all the same leaves it recorded:
/// `hole` speaks of it.
fn is_hole_beside(
    landmark: &Landmark,
    nearby: &Nearby,
    measurement: &Measurement,
    clearance: f64,
) -> bool {
    let NearbyKind::Defect(number) = nearby.kind else {
        return false;
    };
    /// A larger hole may hide the landmark itself, and what was found beside it may
    /// be something else.
    const SMALL_MM: f64 = 2.5;
    let is_small_hole = (measurement.tissue.as_ref().ok())
        .and_then(|tissue| tissue.defects.get(number))
        .is_some_and(|defect| defect.kind == DefectKind::Hole && defect.across_mm < SMALL_MM);
    let from_place_mm = nearby.distance_mm + landmark.name.reach_mm();
    is_small_hole && landmark.is_verified() && from_place_mm > clearance
}

/// Whether the impression ends before a landmark, or may.
fn ends_before(landmark: &Landmark, protocol: &Protocol) -> (Option<Spoiled>, Conformity) {
    let reach = margin_conformity(landmark, protocol, LimitKey::LandmarkReach);
    let covered = landmark.extent.covered.map(|covered| {
        let least = Bound::AtLeast(least_covered_percent(landmark.name, protocol));
        decide(covered.percent, covered.uncertainty_percent, least)
    });
    if landmark.seen.is_err() {
        // Surface goes on beyond where its fellow on the other side puts it: it is
        // there and not made out.
        let is_open = matches!(landmark.seen, Err(Unseen::TroughOpen { .. }));
        return match reach {
            Some(Conformity::Conforming) => (None, Conformity::Conforming),
            _ if is_open => (Some(Spoiled::TroughOpen), Conformity::Borderline),
            Some(Conformity::NotConforming) => (Some(Spoiled::Margin), Conformity::NotConforming),
            _ => (None, Conformity::Conforming),
        };
    }
    let margin = margin_conformity(landmark, protocol, LimitKey::LandmarkMargin);
    let misses = |found: &(Option<Conformity>, Spoiled)| {
        found
            .0
            .filter(|conformity| *conformity != Conformity::Conforming)
    };
    // What matters most first.
    [
        (reach, Spoiled::Margin),
        (covered, Spoiled::Covered),
        (margin, Spoiled::Near),
    ]
    .into_iter()
    .find_map(|found| Some((Some(found.1), misses(&found)?)))
    .unwrap_or((None, Conformity::Conforming))
}

/// Whether the impression ends before a landmark beyond doubt.
fn is_missed(landmark: &Landmark, protocol: &Protocol) -> bool {
    let key = LimitKey::LandmarkReach;
    margin_conformity(landmark, protocol, key) == Some(Conformity::NotConforming)
}

fn margin_conformity(
    landmark: &Landmark,
    protocol: &Protocol,
    least: LimitKey,
) -> Option<Conformity> {
    let margin = landmark.extent.margin?;
    let least = Bound::AtLeast(protocol.value(least));
    Some(decide(margin.mm, margin.uncertainty_mm, least))
}

/// The least share of a landmark's own area that must lie inside the border, %.
pub(crate) fn least_covered_percent(name: LandmarkName, protocol: &Protocol) -> f64 {
    let limit = protocol.limit(LimitKey::LandmarkCovered);
    match name {
        LandmarkName::RetromolarPad => limit.in_zone(Zone::RetromolarPad),
        LandmarkName::PosteriorPalatalSeal => limit.in_zone(Zone::PosteriorPalatalSeal),
        _ => limit.value,
    }
}

fn spoils(nearby: &Nearby, measurement: &Measurement, protocol: &Protocol) -> Option<Spoiled> {
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
            let spoils = is_worth_a_finding(defect, protocol)
                && !bands::may_lie_between(measurement, defect);
            spoils.then_some(Spoiled::Defect(number))
        }
    }
}

/// What is let pass or only noted in critical zones does not spoil a landmark.
fn is_worth_a_finding(defect: &Defect, protocol: &Protocol) -> bool {
    let (size, limit) = match defect.kind {
        DefectKind::Void => (defect.across_mm, LimitKey::CriticalVoidRedo),
        DefectKind::Nodule => (defect.across_mm, LimitKey::CriticalNodule),
        DefectKind::Hole => (defect.across_mm, LimitKey::Hole),
        DefectKind::Fold => (
            defect.length_mm.unwrap_or(defect.across_mm),
            LimitKey::CriticalFold,
        ),
    };
    size > protocol.value(limit)
}
