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

/// Notches at least this part as steep as the steepest may be the frenum as well. No source:
/// chosen by one mouth, where it is 0.79; not yet varied over many.
const AS_STEEP: f64 = 2.0 / 3.0;

/// A frenum and where it was looked for.
pub(super) struct Frenum {
    pub seen: Result<Seen, Unseen>,
    pub expected: Option<Point3<f64>>,
    /// Whether another notch may be the frenum as well.
    has_rival: bool,
}

impl Frenum {
    /// Where it was seen.
    fn point(&self) -> Option<Point3<f64>> {
        self.seen.as_ref().ok().map(|seen| seen.point)
    }
}

/// Looks for a frenum; scan coordinates. `other` is its fellow of the other side.
pub(super) fn find(
    ground: &Ground<'_>,
    name: LandmarkName,
    side: Option<Side>,
    other: Option<&Frenum>,
) -> Frenum {
    let Some(border) = ground.border else {
        return Frenum {
            seen: Err(Unseen::NoBorder),
            expected: None,
            has_rival: false,
        };
    };
    let place = Place { name, side };
    let of_place = |dip: &&Dip| dip.kind.may_be_frenum() && place.holds(ground, border, dip.bottom);
    let dips: Vec<&Dip> = border.dips.iter().filter(of_place).collect();
    // A frenum's notch is steeper than the border's own waves.
    let notches = dips.iter().map(|dip| Notch {
        bottom: border.stations[dip.bottom].point,
        steepness: dip.depth.mm / dip.width_mm.max(STEEPEST_WIDTH_MM),
    });
    let fellow = other
        .filter(|other| !other.has_rival)
        .and_then(Frenum::point);
    let mirrored = fellow.map(|point| ground.mirrored(&point));
    let likeliest = likeliest(&notches.collect::<Vec<_>>(), mirrored.as_ref());
    let expected = || {
        (other.and_then(Frenum::point))
            .map(|point| ground.mirrored(&point))
            .or_else(|| place.middle(ground, border))
            .and_then(|near| nearest_station(border, place.part(), &near))
    };
    match likeliest {
        Some(notch) => Frenum {
            seen: Ok(seen(border, dips[notch.number])),
            expected: None,
            has_rival: notch.has_rival,
        },
        None => Frenum {
            seen: Err(Unseen::NoNotch {
                least_mm: anatomy::DIP_LEAST_DEPTH_MM,
            }),
            expected: expected(),
            has_rival: false,
        },
    }
}

/// A notch of the border that a frenum may have left.
struct Notch {
    bottom: Point3<f64>,
    /// Its depth as a part of its width.
    steepness: f64,
}

/// Which notch is most likely the frenum's.
struct Likeliest {
    number: usize,
    /// Whether another may be it as well.
    has_rival: bool,
}

/// The steepest notch; of notches about as steep as it and too far from it for one frenum, the
/// one nearest to the mirror image of the other side's frenum, where that is known (common
/// practice, no source: both lie at the premolars).
fn likeliest(notches: &[Notch], mirrored: Option<&Point3<f64>>) -> Option<Likeliest> {
    let steepest = (0..notches.len())
        .max_by(|&a, &b| notches[a].steepness.total_cmp(&notches[b].steepness))?;
    let from_steepest_mm = |notch: &Notch| (notch.bottom - notches[steepest].bottom).norm();
    let is_rival = |&number: &usize| {
        let notch = &notches[number];
        notch.steepness >= AS_STEEP * notches[steepest].steepness
            && from_steepest_mm(notch) > anatomy::FRENUM_NOTCH_GREATEST_WIDTH_MM
    };
    let rivals: Vec<usize> = (0..notches.len()).filter(is_rival).collect();
    let has_rival = !rivals.is_empty();
    let number = mirrored.and_then(|mirrored| {
        let off_mm = |number: usize| (notches[number].bottom - mirrored).norm();
        std::iter::once(steepest)
            .chain(rivals)
            .min_by(|&a, &b| off_mm(a).total_cmp(&off_mm(b)))
    });
    Some(Likeliest {
        number: number.unwrap_or(steepest),
        has_rival,
    })
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

#[cfg(test)]
mod tests {
    use super::*;

    fn notch(y_mm: f64, steepness: f64) -> Notch {
        Notch {
            bottom: Point3::new(20.0, y_mm, 0.0),
            steepness,
        }
    }

    /// The number of the notch that is taken, and whether it has a rival.
    fn taken(notches: &[Notch], mirrored_y_mm: Option<f64>) -> Option<(usize, bool)> {
        let mirrored = mirrored_y_mm.map(|y| Point3::new(20.0, y, 0.0));
        likeliest(notches, mirrored.as_ref()).map(|found| (found.number, found.has_rival))
    }

    #[test]
    fn of_two_notches_as_steep_as_each_other_the_one_opposite_the_other_frenum_is_taken() {
        let notches = [notch(10.0, 0.16), notch(-12.0, 0.18)];
        assert_eq!(taken(&notches, Some(11.0)), Some((0, true)));
        assert_eq!(taken(&notches, None), Some((1, true)));
    }

    #[test]
    fn a_steeper_notch_and_a_doubled_one_have_no_rival() {
        let wave_before_frenum = [notch(10.0, 0.1), notch(-12.0, 0.3)];
        assert_eq!(taken(&wave_before_frenum, Some(10.0)), Some((1, false)));
        let doubled = [notch(10.0, 0.2), notch(4.0, 0.25)];
        assert_eq!(taken(&doubled, Some(10.0)), Some((1, false)));
        assert_eq!(taken(&[], Some(10.0)), None);
    }
}
