//! The trough followed to its ends, and what closes it there: the hamular
//! notch, a ridge across it in the negative, or the retromolar pad, a hollow
//! before its end.

use super::figures::{Seen, Unseen};
use crate::anatomy;
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
        (half..self.bottoms.len())
            .max_by(|&a, &b| self.bottoms[a].z.total_cmp(&self.bottoms[b].z))
            .unwrap_or(half)
    }

    /// The last place of the trough.
    pub(super) fn last(&self) -> Point3<f64> {
        self.bottoms[self.bottoms.len() - 1]
    }

    /// The ridge that closes the trough (hamular notch, in the negative: the
    /// saddle that is highest along the trough and lowest across it).
    pub(super) fn ridge(&self, noise_mm: f64) -> Result<Seen, Unseen> {
        let (level, top) = (self.level(), self.top());
        let rise = self.bottoms[top].z - level;
        if rise < anatomy::TROUGH_END_LEAST_RISE_MM {
            return Err(Unseen::TroughOpen {
                open_mm: rise.max(0.0),
            });
        }
        let fall = self.bottoms[top].z - self.last().z;
        let least_mm = anatomy::HAMULAR_RIDGE_LEAST_FALL_MM.max(4.0 * noise_mm);
        if fall < least_mm {
            return Err(Unseen::PoorlyDefined { least_mm });
        }
        let (point, spread_mm) = self.middle_of(top, |z| self.bottoms[top].z - z, noise_mm);
        Ok(Seen {
            point,
            uncertainty_mm: spread_mm,
            confidence: rise / (rise + anatomy::TROUGH_END_LEAST_RISE_MM),
            relief_mm: Some(rise),
        })
    }

    /// The hollow before the trough's end (retromolar pad, in the negative).
    pub(super) fn hollow(&self, noise_mm: f64) -> Result<Seen, Unseen> {
        let top = self.top();
        let rise = self.bottoms[top].z - self.level();
        if rise < anatomy::TROUGH_END_LEAST_RISE_MM {
            return Err(Unseen::TroughOpen {
                open_mm: rise.max(0.0),
            });
        }
        let first = top.saturating_sub((anatomy::PAD_WITHIN_MM / TROUGH_STEP_MM) as usize);
        let z = |i: usize| self.bottoms[i].z;
        let bottom = (first..top)
            .min_by(|&a, &b| z(a).total_cmp(&z(b)))
            .unwrap_or(first);
        let shoulder = (bottom.saturating_sub((10.0 / TROUGH_STEP_MM) as usize)..bottom)
            .map(z)
            .fold(f64::NEG_INFINITY, f64::max);
        let depth = shoulder.min(z(top)) - z(bottom);
        let least_mm = anatomy::PAD_LEAST_DEPTH_MM.max(4.0 * noise_mm);
        if depth < least_mm {
            return Err(Unseen::NoRelief { least_mm });
        }
        // The middle between the places at half depth: the bottom is level.
        let half = z(bottom) + depth / 2.0;
        let low = |i: &usize| z(*i) <= half;
        let from = (0..=bottom).rev().take_while(low).last().unwrap_or(bottom);
        let to = (bottom..top).take_while(low).last().unwrap_or(bottom);
        let middle = (from + to) / 2;
        Ok(Seen {
            point: self.bottoms[middle],
            // Half of the hollow's length, as far as its depth is not known.
            uncertainty_mm: 1.3 + (to - from) as f64 * TROUGH_STEP_MM * (noise_mm / depth).min(0.5),
            confidence: depth / (depth + anatomy::PAD_LEAST_DEPTH_MM),
            relief_mm: Some(depth),
        })
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
