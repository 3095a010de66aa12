//! The trough followed to its ends, and the ridge across it that closes it in the
//! negative of an upper jaw: the hamular notch.

use super::figures::{Extent, Seen, Unseen};
use crate::anatomy;
use crate::border::Measured;
use geometry::closed_line::inside_by_in_plan;
use geometry::height_map::HeightMap;
use nalgebra::{Point2, Point3, Vector2};

/// Step along the trough, mm.
pub(super) const TROUGH_STEP_MM: f64 = 0.5;
/// Following begins so far before the crest line's end, where that is sure, mm.
const BEFORE_END_MM: f64 = 24.0;
/// How far the bottom may lie beside the course, mm.
const BESIDE_MM: f64 = 2.5;
/// Holes up to this length are crossed, mm.
const LONGEST_GAP_MM: f64 = 7.0;

/// What closes the trough at its end, or may.
#[derive(Debug, Clone, Copy)]
pub(super) struct Closing {
    pub(super) seen: Seen,
    pub(super) extent: Extent,
    /// The surface shows both sides of it. A hollow that is open at the end may be
    /// a slope of the trough's floor and no pad.
    pub(super) is_whole: bool,
}

/// Bottom of the trough from the middle of a limb to the border, a step apart.
#[derive(Debug, Clone)]
pub(super) struct TroughEnd {
    pub(super) bottoms: Vec<Point3<f64>>,
}

impl TroughEnd {
    /// Follows the trough along crest points that are in order toward the end, as
    /// far as the border line, where there is one: behind it the surface has turned
    /// over. Local coordinates.
    pub(super) fn follow(
        map: &HeightMap,
        border_line: &[Point3<f64>],
        toward_end: &[Point3<f64>],
    ) -> Option<Self> {
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
        let is_outside = |bottom: &Point3<f64>| {
            inside_by_in_plan(border_line, bottom.xy()).is_some_and(|mm| mm < 0.0)
        };
        while bottoms.last().is_some_and(is_outside) {
            bottoms.pop();
        }
        (bottoms.len() > 20).then_some(Self { bottoms })
    }

    /// Level of the trough before what closes it, mm.
    pub(super) fn level(&self) -> f64 {
        let mut heights: Vec<f64> = self.bottoms.iter().map(|p| p.z).collect();
        let count = heights.len() / 2;
        let (_, middle, _) = heights[..=count].select_nth_unstable_by(count / 2, f64::total_cmp);
        *middle
    }

    /// Number of the highest bottom, the end being where it turns down again.
    pub(super) fn top(&self) -> usize {
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
        let z = |i: usize| self.z(i);
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
    pub(super) fn ridge(&self, noise_mm: f64) -> Result<Closing, Unseen> {
        let (level, top) = (self.level(), self.first_top(noise_mm));
        let rise = self.bottoms[top].z - level;
        let least_mm = anatomy::HAMULAR_RIDGE_LEAST_RISE_MM.max(4.0 * noise_mm);
        if rise < least_mm {
            return Err(Unseen::TroughOpen {
                open_mm: rise.max(0.0),
            });
        }
        let (point, half_length_mm) = self.level_round(top, noise_mm);
        let seen = Seen {
            point,
            uncertainty_mm: 0.6 + half_length_mm,
            confidence: rise / (rise + anatomy::TROUGH_END_LEAST_RISE_MM),
            relief_mm: Some(rise),
        };
        // The border crosses the trough within the step behind the last bottom.
        let half_step_mm = TROUGH_STEP_MM / 2.0;
        let margin = Measured {
            mm: (self.last() - point).xy().norm() + half_step_mm,
            uncertainty_mm: (half_length_mm + half_step_mm).hypot(TROUGH_STEP_MM),
        };
        let extent = Extent {
            margin: Some(margin),
            covered: None,
        };
        Ok(Closing {
            seen,
            extent,
            is_whole: true,
        })
    }

    /// Middle of the places round a top that are as high as it, but for a little, and
    /// half of their length, mm.
    fn level_round(&self, top: usize, noise_mm: f64) -> (Point3<f64>, f64) {
        let least = self.z(top) - 0.08 - 2.0 * noise_mm;
        let (from, to) = self.run_round(top, |z| z >= least);
        let half_length_mm = (to - from) as f64 * TROUGH_STEP_MM / 2.0;
        (self.bottoms[(from + to) / 2], half_length_mm)
    }

    /// First and last of the bottoms round one whose heights pass.
    pub(super) fn run_round(&self, at: usize, passes: impl Fn(f64) -> bool) -> (usize, usize) {
        let passes = |i: &usize| passes(self.z(*i));
        let from = (0..=at).rev().take_while(passes).last();
        let to = (at..self.bottoms.len()).take_while(passes).last();
        (from.unwrap_or(at), to.unwrap_or(at))
    }

    pub(super) fn z(&self, number: usize) -> f64 {
        self.bottoms[number].z
    }

    pub(super) fn highest_mm(&self, among: std::ops::Range<usize>) -> f64 {
        among.map(|i| self.z(i)).fold(f64::NEG_INFINITY, f64::max)
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

#[cfg(test)]
mod tests {
    use super::*;

    /// A trough along -y whose floor has a height for each y, with a wall of 1 in 1
    /// on either side; from y = 30 to y = -2.
    fn trough(floor: impl Fn(f64) -> f64) -> HeightMap {
        const CELL_MM: f64 = 0.25;
        let (columns, rows) = (33_u32, 129_u32);
        let place = |i: u32| {
            let x = f64::from(i % columns) * CELL_MM - 4.0;
            let y = 30.0 - f64::from(i / columns) * CELL_MM;
            Point3::new(x, y, floor(y) + x.abs())
        };
        let vertices: Vec<Point3<f64>> = (0..columns * rows).map(place).collect();
        let squares = (0..columns - 1).flat_map(|i| (0..rows - 1).map(move |k| k * columns + i));
        let triangles: Vec<[u32; 3]> = squares
            .flat_map(|a| {
                let below = a + columns;
                [[a, below, a + 1], [a + 1, below, below + 1]]
            })
            .collect();
        HeightMap::of(&vertices, &triangles, CELL_MM)
    }

    fn line(corners: &[[f64; 2]]) -> Vec<Point3<f64>> {
        corners
            .iter()
            .map(|[x, y]| Point3::new(*x, *y, 0.0))
            .collect()
    }

    /// The floor rises over 3 mm to the notch, 3 mm in all, and falls again.
    fn rising_to(notch: f64, y: f64) -> f64 {
        3.0 - 3.0 * ((y - notch) / 3.0).clamp(-1.0, 1.0).powi(2)
    }

    fn ridge_of(floor: impl Fn(f64) -> f64, border_y: f64) -> Closing {
        let border = line(&[[-5.0, 31.0], [5.0, 31.0], [5.0, border_y], [-5.0, border_y]]);
        let crest: Vec<Point3<f64>> = (4..30)
            .rev()
            .map(|y| Point3::new(0.0, f64::from(y), 0.0))
            .collect();
        TroughEnd::follow(&trough(floor), &border, &crest)
            .expect("the trough is long enough")
            .ridge(0.02)
            .expect("it ends in a ridge")
    }

    #[test]
    fn a_notch_margin_ends_where_the_border_turns_over() {
        let found = ridge_of(|y| rising_to(2.0, y), 0.0);
        let margin = found.extent.margin.expect("a ridge has one");
        assert!((found.seen.point.y - 2.0).abs() < 0.5, "{found:?}");
        assert!(
            (margin.mm - 2.0).abs() < margin.uncertainty_mm,
            "{margin:?}"
        );
        assert!(margin.uncertainty_mm < 1.2, "{margin:?}");
    }

    #[test]
    fn a_long_saddle_leaves_its_margin_less_certain() {
        let sharp = ridge_of(|y| rising_to(2.0, y), 0.0).extent.margin;
        let level = |y: f64| rising_to(3.0, y.max(3.0)).min(rising_to(1.0, y.min(1.0)));
        let long = ridge_of(level, 0.0).extent.margin;
        let uncertainty_mm = |margin: Option<Measured>| margin.map(|m| m.uncertainty_mm);
        assert!(uncertainty_mm(long) > uncertainty_mm(sharp));
    }

    #[test]
    fn what_rises_behind_the_border_is_no_notch() {
        let with_wall = |y: f64| match y < -0.75 {
            true => 6.0,
            false => rising_to(2.0, y),
        };
        let found = ridge_of(with_wall, 0.0);
        assert!((found.seen.point.y - 2.0).abs() < 0.5, "{found:?}");
    }

    #[test]
    fn a_floor_that_rises_to_the_border_leaves_the_notch_in_doubt() {
        let margin = ridge_of(|y| rising_to(-1.5, y), 0.0).extent.margin;
        let margin = margin.expect("a ridge has one");
        assert!(margin.mm < margin.uncertainty_mm, "{margin:?}");
    }
}
