//! The trough followed to its ends, and what closes it there: the hamular
//! notch, a ridge across it in the negative, or the retromolar pad, a hollow
//! before its end.

use super::figures::{Covered, Extent, Seen, Unseen};
use crate::anatomy;
use crate::border::Measured;
use geometry::height_map::HeightMap;
use nalgebra::{Point2, Point3, Vector2};

/// Step along the trough, mm.
const TROUGH_STEP_MM: f64 = 0.5;
/// Following begins so far before the crest line's end, where that is sure, mm.
const BEFORE_END_MM: f64 = 24.0;
/// How far the bottom may lie beside the course, mm.
const BESIDE_MM: f64 = 2.5;
/// Holes up to this length are crossed, mm.
const LONGEST_GAP_MM: f64 = 7.0;
/// The last of the trough's bottoms lie on the roll of the posterior border: how
/// far before them the surface turns over, mm (own choice, no source).
const TURN_WITHIN_MM: f64 = 1.0;
/// Expanded uncertainty (k = 2) of where a pad begins, mm.
const PAD_BEGINS_WITHIN_MM: f64 = 1.2;

/// Bottom of the trough from the middle of a limb to the end of the surface,
/// a step apart.
#[derive(Debug, Clone)]
pub(super) struct TroughEnd {
    bottoms: Vec<Point3<f64>>,
}

impl TroughEnd {
    /// Follows the trough along crest points that are in order toward the end;
    /// local coordinates.
    pub(super) fn follow(map: &HeightMap, toward_end: &[Point3<f64>]) -> Option<Self> {
        let (start, mut heading) = course(toward_end)?;
        let mut at = start;
        let mut bottoms = Vec::new();
        let mut missing_mm = 0.0;
        while missing_mm < LONGEST_GAP_MM {
            match bottom_across(map, at, heading) {
                Some(bottom) => {
                    missing_mm = 0.0;
                    bottoms.push(bottom);
                    // Bottoms wander with noise: the course turns slowly.
                    let aside = bottom.xy() - at;
                    at += aside * 0.3;
                    if bottoms.len() > 12 {
                        let before = bottoms[bottoms.len() - 12].xy();
                        let lately = (bottom.xy() - before).try_normalize(0.0)?;
                        heading = (heading * 0.9 + lately * 0.1).normalize();
                    }
                }
                None => missing_mm += TROUGH_STEP_MM,
            }
            at += heading * TROUGH_STEP_MM;
            if bottoms.len() > 400 {
                break;
            }
        }
        (bottoms.len() > 20).then_some(Self { bottoms })
    }

    /// Level of the trough before what closes it, mm.
    fn level(&self) -> f64 {
        let mut heights: Vec<f64> = self.bottoms.iter().map(|p| p.z).collect();
        let count = heights.len() / 2;
        let (_, middle, _) = heights[..=count].select_nth_unstable_by(count / 2, f64::total_cmp);
        *middle
    }

    /// Number of the highest bottom, the end being where it turns down again.
    fn top(&self) -> usize {
        let half = self.bottoms.len() / 2;
        self.highest(half..self.bottoms.len())
    }

    /// Number of the first bottom that rises over the level, for the most part as
    /// high as any, and that turns down behind: where the course runs up a wall at
    /// its end, the highest is no ridge.
    fn first_top(&self, noise_mm: f64) -> usize {
        let near_end = (anatomy::HAMULAR_NOTCH_WITHIN_END_MM / TROUGH_STEP_MM) as usize;
        let first = (self.bottoms.len() / 2).max(self.bottoms.len().saturating_sub(near_end));
        let highest = self.highest(first..self.bottoms.len());
        let z = |i: usize| self.bottoms[i].z;
        let turns_down_mm = 0.1 + 2.0 * noise_mm;
        let least = self.level() + anatomy::HAMULAR_RIDGE_FIRST_PART * (z(highest) - self.level());
        let within = (anatomy::HAMULAR_RIDGE_HALF_LENGTH_MM / TROUGH_STEP_MM) as usize;
        let is_ridge = |i: &usize| {
            let around = i.saturating_sub(within)..(i + within + 1).min(self.bottoms.len());
            let behind = *i..(i + within + 1).min(self.bottoms.len());
            z(*i) >= least
                && self.highest(around) == *i
                && behind.map(z).fold(f64::INFINITY, f64::min) <= z(*i) - turns_down_mm
        };
        (first..highest).find(is_ridge).unwrap_or(highest)
    }

    fn highest(&self, among: std::ops::Range<usize>) -> usize {
        let first = among.start;
        among
            .max_by(|&a, &b| self.bottoms[a].z.total_cmp(&self.bottoms[b].z))
            .unwrap_or(first)
    }

    /// The last place of the trough.
    pub(super) fn last(&self) -> Point3<f64> {
        self.bottoms[self.bottoms.len() - 1]
    }

    /// The ridge that closes the trough (hamular notch, in the negative: the
    /// saddle that is highest along the trough and lowest across it), and how far
    /// the surface goes on behind it.
    pub(super) fn ridge(&self, noise_mm: f64) -> Result<(Seen, Extent), Unseen> {
        let (level, top) = (self.level(), self.first_top(noise_mm));
        let rise = self.bottoms[top].z - level;
        let least_mm = anatomy::HAMULAR_RIDGE_LEAST_RISE_MM.max(4.0 * noise_mm);
        if rise < least_mm {
            return Err(Unseen::TroughOpen {
                open_mm: rise.max(0.0),
            });
        }
        let (point, spread_mm) = self.middle_of(top, |z| self.bottoms[top].z - z, noise_mm);
        let seen = Seen {
            point,
            uncertainty_mm: spread_mm,
            confidence: rise / (rise + anatomy::TROUGH_END_LEAST_RISE_MM),
            relief_mm: Some(rise),
        };
        let margin = Measured {
            mm: (self.last() - self.bottoms[top]).xy().norm(),
            uncertainty_mm: TROUGH_STEP_MM.hypot(TURN_WITHIN_MM),
        };
        let extent = Extent {
            margin: Some(margin),
            covered: None,
        };
        Ok((seen, extent))
    }

    /// Number of the last bottom before the surface turns over the back of the
    /// border: what falls there is outside.
    fn last_before_the_turn(&self) -> usize {
        /// A longer fall is the slope of a pad.
        const TURN_MM: f64 = 3.0;
        let last = self.bottoms.len() - 1;
        let falls = (1..=last)
            .rev()
            .take_while(|&i| self.bottoms[i].z < self.bottoms[i - 1].z)
            .count();
        if falls as f64 * TROUGH_STEP_MM <= TURN_MM {
            last - falls
        } else {
            last
        }
    }

    /// The hollow before the trough's end (retromolar pad, in the negative), and
    /// how much of the pad the impression covers. Where the trough rises again
    /// behind the hollow, that is all of it; else the pad's usual length says.
    pub(super) fn hollow(&self, noise_mm: f64) -> Result<(Seen, Extent), Unseen> {
        let z = |i: usize| self.bottoms[i].z;
        let last = self.last_before_the_turn();
        let steps = |mm: f64| (mm / TROUGH_STEP_MM) as usize;
        let first = last.saturating_sub(steps(anatomy::PAD_WITHIN_MM));
        let bottom = (first..=last)
            .min_by(|&a, &b| z(a).total_cmp(&z(b)))
            .unwrap_or(last);
        let shoulder = (bottom.saturating_sub(steps(anatomy::PAD_SLOPE_MM))..=bottom)
            .map(z)
            .fold(f64::NEG_INFINITY, f64::max);
        let rise = (bottom..=last).map(z).fold(f64::NEG_INFINITY, f64::max) - z(bottom);
        let fall = shoulder - z(bottom);
        let least_mm = anatomy::PAD_LEAST_DEPTH_MM.max(4.0 * noise_mm);
        if fall < least_mm {
            let over_level = z(self.top()) - self.level();
            return Err(if over_level < anatomy::TROUGH_END_LEAST_RISE_MM {
                Unseen::TroughOpen {
                    open_mm: over_level.max(0.0),
                }
            } else {
                Unseen::NoRelief { least_mm }
            });
        }
        let is_closed = rise >= least_mm.max(anatomy::PAD_CLOSED_PART * fall);
        let depth = if is_closed { fall.min(rise) } else { fall };
        // The middle between the places at half depth: the bottom is level.
        let half = z(bottom) + depth / 2.0;
        let low = |i: &usize| z(*i) <= half;
        let from = (0..=bottom).rev().take_while(low).last().unwrap_or(bottom);
        let to = (bottom..=last).take_while(low).last().unwrap_or(bottom);
        let begins = (0..=bottom)
            .rev()
            .find(|&i| shoulder - z(i) <= anatomy::PAD_BEGINS_PART * fall)
            .unwrap_or(from);
        let length_mm = (last - begins) as f64 * TROUGH_STEP_MM;
        let percent = if is_closed {
            100.0
        } else {
            (100.0 * length_mm / anatomy::PAD_USUAL_LENGTH_MM).min(100.0)
        };
        let seen = Seen {
            point: self.bottoms[(from + to) / 2],
            // Half of the hollow's length, as far as its depth is not known.
            uncertainty_mm: 1.3 + (to - from) as f64 * TROUGH_STEP_MM * (noise_mm / depth).min(0.5),
            confidence: depth / (depth + anatomy::PAD_LEAST_DEPTH_MM),
            relief_mm: Some(depth),
        };
        let extent = Extent {
            margin: None,
            covered: Some(Covered {
                percent,
                uncertainty_percent: 100.0 * PAD_BEGINS_WITHIN_MM / anatomy::PAD_USUAL_LENGTH_MM,
            }),
        };
        Ok((seen, extent))
    }

    /// Middle of the places round an extreme that lie within a little of it, and
    /// the expanded uncertainty of it.
    fn middle_of(
        &self,
        extreme: usize,
        off: impl Fn(f64) -> f64,
        noise_mm: f64,
    ) -> (Point3<f64>, f64) {
        let within = 0.08 + 2.0 * noise_mm;
        let near = |i: &usize| off(self.bottoms[*i].z) <= within;
        let from = (0..=extreme).rev().take_while(near).last();
        let to = (extreme..self.bottoms.len()).take_while(near).last();
        let (from, to) = (from.unwrap_or(extreme), to.unwrap_or(extreme));
        let middle = self.bottoms[(from + to) / 2];
        (middle, 0.6 + (to - from) as f64 * TROUGH_STEP_MM / 2.0)
    }
}

/// Where following begins and in which direction.
fn course(toward_end: &[Point3<f64>]) -> Option<(Point2<f64>, Vector2<f64>)> {
    let last = toward_end.last()?;
    let before = |mm: f64| {
        toward_end
            .iter()
            .rev()
            .find(|p| (*p - last).xy().norm() >= mm)
    };
    let start = before(BEFORE_END_MM)?;
    let ahead = before(BEFORE_END_MM - 6.0)?;
    let heading = (ahead - start).xy().try_normalize(0.0)?;
    Some((start.xy(), heading))
}

/// The lowest place across the course: the vertex of the parabola through what
/// lies within a little of the lowest.
fn bottom_across(map: &HeightMap, at: Point2<f64>, heading: Vector2<f64>) -> Option<Point3<f64>> {
    const STEP: f64 = 0.25;
    let across = Vector2::new(-heading.y, heading.x);
    let reach = (BESIDE_MM / STEP) as i32;
    let seen: Vec<(f64, f64)> = (-reach..=reach)
        .filter_map(|k| {
            let aside = f64::from(k) * STEP;
            Some((aside, map.at(at + across * aside)?))
        })
        .collect();
    let lowest = seen.iter().min_by(|a, b| a.1.total_cmp(&b.1))?;
    let near: Vec<f64> = seen
        .iter()
        .filter(|(aside, height)| (aside - lowest.0).abs() <= 1.5 && height - lowest.1 <= 0.15)
        .map(|(aside, _)| *aside)
        .collect();
    let middle = near.iter().sum::<f64>() / near.len() as f64;
    let place = at + across * middle;
    let around: Vec<f64> = seen
        .iter()
        .filter(|(aside, _)| (aside - middle).abs() <= 0.6)
        .map(|(_, height)| *height)
        .collect();
    let height = around.iter().sum::<f64>() / around.len().max(1) as f64;
    Some(Point3::new(place.x, place.y, height))
}
