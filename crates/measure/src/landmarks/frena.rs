//! Frena: notches of the border at the midline and about the premolars
//! (LM-09, LM-10, LM-16).

use super::figures::{LandmarkName, Seen, Unseen};
use super::ground::Ground;
use crate::anatomy;
use crate::border::{Border, BorderPart, Dip};
use crate::words::Side;
use nalgebra::Point3;

/// Of notches narrower than this the deeper one counts as steeper, mm.
const STEEPEST_WIDTH_MM: f64 = 3.0;

/// A frenum and where it was looked for.
pub(super) struct Frenum {
    pub seen: Result<Seen, Unseen>,
    pub expected: Option<Point3<f64>>,
}

/// Looks for a frenum; scan coordinates. `other` is where its fellow of the
/// other side was seen.
pub(super) fn find(
    ground: &Ground<'_>,
    name: LandmarkName,
    side: Option<Side>,
    other: Option<Point3<f64>>,
) -> Frenum {
    let Some(border) = ground.border else {
        return Frenum {
            seen: Err(Unseen::NoBorder),
            expected: None,
        };
    };
    let place = Place { name, side };
    // A frenum's notch is steeper than the border's own waves.
    let steepness = |dip: &Dip| dip.depth.mm / dip.width_mm.max(STEEPEST_WIDTH_MM);
    let steepest = border
        .dips
        .iter()
        .filter(|dip| dip.kind.may_be_frenum() && place.holds(ground, border, dip.bottom))
        .max_by(|a, b| steepness(a).total_cmp(&steepness(b)));
    let expected = || {
        other
            .map(|point| ground.mirrored(&point))
            .or_else(|| place.middle(ground, border))
            .and_then(|near| nearest_station(border, place.part(), &near))
    };
    match steepest {
        Some(dip) => Frenum {
            seen: Ok(seen(border, dip)),
            expected: None,
        },
        None => Frenum {
            seen: Err(Unseen::NoNotch {
                least_mm: anatomy::DIP_LEAST_DEPTH_MM,
            }),
            expected: expected(),
        },
    }
}

fn seen(border: &Border, dip: &Dip) -> Seen {
    let depth = dip.depth;
    // A notch is level at its bottom for as long as heights differ by less than
    // their uncertainty: a parabola of its depth and width.
    let level_mm = dip.width_mm / 2.0 * (depth.uncertainty_mm / depth.mm).sqrt();
    Seen {
        point: border.stations[dip.bottom].point,
        uncertainty_mm: 0.5 + level_mm,
        confidence: depth.mm / (depth.mm + anatomy::DIP_LEAST_DEPTH_MM),
        relief_mm: Some(depth.mm),
    }
}

/// Where a frenum may lie.
struct Place {
    name: LandmarkName,
    side: Option<Side>,
}

impl Place {
    fn part(&self) -> BorderPart {
        if self.name == LandmarkName::LingualFrenum {
            BorderPart::Lingual
        } else {
            BorderPart::Outer
        }
    }

    fn holds(&self, ground: &Ground<'_>, border: &Border, station: usize) -> bool {
        let at = &border.stations[station];
        if at.part != self.part() {
            return false;
        }
        let local = ground.local(&at.point);
        match self.side {
            None => local.x.abs() <= anatomy::MIDLINE_FRENA_WITHIN_MM,
            Some(side) => {
                local.x.abs() > anatomy::MIDLINE_FRENA_WITHIN_MM
                    && ground.side(&local) == Some(side)
                    && anatomy::BUCCAL_FRENA_PART.contains(&ground.part_of_outer(station))
            }
        }
    }

    /// Its likeliest place.
    fn middle(&self, ground: &Ground<'_>, border: &Border) -> Option<Point3<f64>> {
        let off = |station: usize| match self.side {
            None => ground.local(&border.stations[station].point).x.abs(),
            Some(_) => (ground.part_of_outer(station) - anatomy::BUCCAL_FRENUM_USUAL_PART).abs(),
        };
        let own = |station: &usize| {
            border.stations[*station].part == self.part()
                && (self.side.is_none() || border.stations[*station].side == self.side)
        };
        (0..border.stations.len())
            .filter(own)
            .min_by(|&a, &b| off(a).total_cmp(&off(b)))
            .map(|station| border.stations[station].point)
    }
}

/// The border point of a part nearest to a place.
fn nearest_station(border: &Border, part: BorderPart, near: &Point3<f64>) -> Option<Point3<f64>> {
    border
        .stations
        .iter()
        .filter(|station| station.part == part)
        .map(|station| station.point)
        .min_by(|a, b| (a - near).norm().total_cmp(&(b - near).norm()))
}
