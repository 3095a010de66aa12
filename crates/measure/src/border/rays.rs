//! Lines in plan along which the border is looked for: outward from the crest
//! line all round, and backward across the back.

use crate::anatomy;
use crate::words::Arch;
use geometry::height_map::HeightMap;
use geometry::polyline::{evenly, smoothed};
use nalgebra::{Point2, Point3, Rotation2, Vector2};
use std::cmp::Ordering;
use std::f64::consts::PI;
use std::ops::RangeInclusive;

/// A line in plan, and which point of the surface over it is border: the one
/// furthest along a direction that leans from the seating axis toward `toward`.
#[derive(Debug, Clone, Copy)]
pub(super) struct Ray {
    /// Where it starts.
    pub from: Point2<f64>,
    /// Unit vector along it.
    pub toward: Vector2<f64>,
    /// How far it reaches, mm.
    pub reach_mm: f64,
    /// Lean of the direction in which the border is furthest, radians.
    pub lean: f64,
}

/// Distance between rays along the crest line, mm.
const RAY_STEP_MM: f64 = 0.5;
/// Angle between rays round an end of the crest line.
const FAN_STEP: f64 = PI / 45.0;

/// Behind a limb the border is where the surface turns from up to back; across
/// the palate it is the posterior edge itself, all but (a face cut square has
/// its edge on the tissue side).
const LEAN_BEHIND_LIMB: f64 = PI / 3.0;
const LEAN_BEHIND_PALATE: f64 = PI * 80.0 / 180.0;

/// How a palatal place at distance `x` from the midline leans, where the ends
/// of the crest line lie `end_x` from it.
pub(super) fn lean_across_back(x: f64, end_x: f64) -> f64 {
    let share = ((end_x - anatomy::BACK_OF_LIMB_WITHIN_MM - x.abs())
        / (anatomy::BACK_OF_PALATE_FROM_MM - anatomy::BACK_OF_LIMB_WITHIN_MM))
        .clamp(0.0, 1.0);
    let smooth = share * share * (3.0 - 2.0 * share);
    LEAN_BEHIND_LIMB + (LEAN_BEHIND_PALATE - LEAN_BEHIND_LIMB) * smooth
}

/// How the border leans at distance `x` from the midline where it faces
/// `outward`: not at all along the flanges, fully where it faces back.
pub(super) fn back_lean(x: f64, end_x: f64, outward: Vector2<f64>, arch: Arch) -> f64 {
    let full = match arch {
        Arch::Maxillary => lean_across_back(x, end_x),
        Arch::Mandibular => LEAN_BEHIND_LIMB,
    };
    let backward = (-1.4 * outward.y).clamp(0.0, 1.0);
    full * backward * backward * (3.0 - 2.0 * backward)
}

/// The crest line in plan, run on to the back, smooth enough to stand
/// perpendiculars on.
#[derive(Debug, Clone)]
pub(super) struct Spine {
    /// From the +x end round the front to the -x end, `RAY_STEP_MM` apart.
    pub points: Vec<Point2<f64>>,
    /// Unit vector along it at each point.
    pub along: Vec<Vector2<f64>>,
    /// The points between which the trough is open: beyond, its floor rises
    /// to the border behind it.
    pub crest: RangeInclusive<usize>,
}

impl Spine {
    /// Smooths the crest line, runs it on at both ends for as long as there is
    /// surface, but for the last few millimetres, and lays it on the trough's floor;
    /// `None` where that leaves no line.
    pub(super) fn of(crest: &[Point3<f64>], map: &HeightMap) -> Option<Self> {
        /// The ends of the crest line are loose: radial lines cross the trough
        /// there at a slant.
        const LOOSE_MM: usize = 5;
        /// The crest line's points lie 1 mm apart.
        const SMOOTH: usize = 4;
        let loose = LOOSE_MM.min(crest.len() / 6);
        let plan: Vec<Point2<f64>> = crest[loose..crest.len() - loose]
            .iter()
            .map(Point3::xy)
            .collect();
        let whole = run_on(&smoothed(&plan, SMOOTH), map);
        let floor: Vec<Point2<f64>> = whole
            .iter()
            .zip(tangents(&whole, 3))
            .map(|(point, along)| middle_of_floor(map, *point, Vector2::new(along.y, -along.x)))
            .collect();
        let floor = smoothed(&floor, SMOOTH);
        // Where the trough closes its middle is lost.
        let open = floor[open_trough(&floor, map)?].to_vec();
        let points = evenly(&run_on(&open, map), RAY_STEP_MM);
        Some(Self {
            along: tangents(&points, 6),
            crest: open_trough(&points, map)?,
            points,
        })
    }

    /// The crest line as it is, smooth: for a trough whose floor rises so early that
    /// too little of it counts as open; `None` where it has no length.
    pub(super) fn whole(crest: &[Point3<f64>], map: &HeightMap) -> Option<Self> {
        const SMOOTH: usize = 6;
        let plan: Vec<Point2<f64>> = crest.iter().map(Point3::xy).collect();
        let points = evenly(&smoothed(&plan, SMOOTH), RAY_STEP_MM);
        Some(Self {
            along: tangents(&points, 6),
            crest: open_trough(&points, map)?,
            points,
        })
    }

    /// Unit vector away from the inside of the arch.
    pub(super) fn outward(&self, i: usize) -> Vector2<f64> {
        Vector2::new(self.along[i].y, -self.along[i].x)
    }

    /// Mean distance of the ends from the midline, mm.
    pub(super) fn end_x(&self) -> f64 {
        (self.points[0].x - self.points[self.points.len() - 1].x).abs() / 2.0
    }

    /// The foot of the perpendicular from a place.
    pub(super) fn foot(&self, place: Point2<f64>) -> Foot {
        let mut best = Foot {
            at: self.points[0],
            outward: self.outward(0),
            on_crest: false,
            is_end: true,
        };
        let mut least = f64::INFINITY;
        for i in 1..self.points.len() {
            let (a, b) = (self.points[i - 1], self.points[i]);
            let step = b - a;
            let share = (place - a).dot(&step) / step.norm_squared().max(f64::MIN_POSITIVE);
            let at = a + step * share.clamp(0.0, 1.0);
            let distance = (place - at).norm_squared();
            if distance < least {
                least = distance;
                best = Foot {
                    at,
                    outward: self.outward(i),
                    on_crest: self.crest.contains(&i),
                    is_end: (i == 1 && share < 0.0) || (i == self.points.len() - 1 && share > 1.0),
                };
            }
        }
        best
    }
}

/// The nearest point of a spine.
#[derive(Debug, Clone, Copy)]
pub(super) struct Foot {
    /// Where.
    pub at: Point2<f64>,
    /// Unit vector there away from the inside of the arch.
    pub outward: Vector2<f64>,
    /// Whether the trough is open there.
    pub on_crest: bool,
    /// Whether the place lies beyond an end.
    pub is_end: bool,
}

/// Rays all round, from one side of the labial midline on in the direction in
/// which the crest line runs, and closed.
pub(super) fn rays_round(spine: &Spine, arch: Arch) -> Vec<Ray> {
    // Beside the closed end of the trough, the rise behind it would be taken
    // for the flange.
    let (first, last) = (*spine.crest.start(), *spine.crest.end());
    let front = (first..=last)
        .min_by(|&a, &b| spine.points[a].x.abs().total_cmp(&spine.points[b].x.abs()))
        .unwrap_or(first);
    let outer = |i: usize| Ray {
        from: spine.points[i],
        toward: spine.outward(i),
        reach_mm: anatomy::OUTER_BORDER_WITHIN_MM,
        lean: 0.0,
    };
    let inner = |i: usize| Ray {
        toward: -spine.outward(i),
        reach_mm: anatomy::LINGUAL_BORDER_WITHIN_MM,
        ..outer(i)
    };
    let round_end = |i: usize, by: f64| fan(&outer(i), by, spine, arch);
    let mut rays: Vec<Ray> = (front..=last).map(outer).collect();
    match arch {
        Arch::Maxillary => {
            rays.extend(round_end(last, PI / 2.0));
            rays.extend(across_back(spine.points[last], spine.points[first]));
            rays.extend(round_end(first, -PI / 2.0).into_iter().rev());
        }
        Arch::Mandibular => {
            rays.extend(round_end(last, PI));
            rays.extend((first..=last).rev().map(inner));
            rays.extend(round_end(first, -PI).into_iter().rev());
        }
    }
    rays.extend((first..front).map(outer));
    rays
}

/// Rays from the point where `first` starts, turned from its direction.
fn fan(first: &Ray, by: f64, spine: &Spine, arch: Arch) -> Vec<Ray> {
    let steps = (by.abs() / FAN_STEP).round() as usize;
    (1..steps)
        .map(|i| {
            let toward = Rotation2::new(by * i as f64 / steps as f64) * first.toward;
            Ray {
                toward,
                lean: back_lean(first.from.x, spine.end_x(), toward, arch),
                ..*first
            }
        })
        .collect()
}

/// Rays backward from a line between the ends of the crest line.
fn across_back(from: Point2<f64>, to: Point2<f64>) -> Vec<Ray> {
    let end_x = (to.x - from.x).abs() / 2.0;
    let middle_x = (to.x + from.x) / 2.0;
    let steps = ((to - from).norm() / RAY_STEP_MM).ceil().max(1.0) as usize;
    (0..=steps)
        .map(|i| {
            let at = from + (to - from) * (i as f64 / steps as f64);
            let lean = lean_across_back(at.x - middle_x, end_x);
            let palatal = (lean - LEAN_BEHIND_LIMB) / (LEAN_BEHIND_PALATE - LEAN_BEHIND_LIMB);
            Ray {
                from: at + Vector2::y() * (anatomy::POSTERIOR_EDGE_BEFORE_ENDS_MM * palatal),
                toward: -Vector2::y(),
                reach_mm: anatomy::POSTERIOR_EDGE_BEHIND_ENDS_MM
                    + anatomy::POSTERIOR_EDGE_BEFORE_ENDS_MM * palatal,
                lean,
            }
        })
        .collect()
}

/// Unit vector along a line at each point, over `reach` points to either side.
fn tangents(points: &[Point2<f64>], reach: usize) -> Vec<Vector2<f64>> {
    (0..points.len())
        .map(|i| {
            let ahead = points[(i + reach).min(points.len() - 1)];
            let behind = points[i.saturating_sub(reach)];
            (ahead - behind)
                .try_normalize(0.0)
                .unwrap_or_else(Vector2::y)
        })
        .collect()
}

/// The middle of the lowest part of the trough across a place.
fn middle_of_floor(map: &HeightMap, place: Point2<f64>, across: Vector2<f64>) -> Point2<f64> {
    const REACH_MM: f64 = 3.0;
    const FLAT_MM: f64 = 0.25;
    let step = map.cell_mm() / 2.0;
    let reach = (REACH_MM / step) as i32;
    let seen: Vec<(Point2<f64>, f64)> = (-reach..=reach)
        .filter_map(|k| {
            let at = place + across * (f64::from(k) * step);
            Some((at, map.at(at)?))
        })
        .collect();
    let lowest = seen.iter().map(|s| s.1).fold(f64::INFINITY, f64::min);
    let floor = seen.iter().filter(|s| s.1 <= lowest + FLAT_MM);
    let (sum, count) = floor.fold((Vector2::zeros(), 0.0), |(sum, count), (at, _)| {
        (sum + at.coords, count + 1.0)
    });
    if count > 0.0 {
        Point2::from(sum / count)
    } else {
        place
    }
}

/// The part of a spine along which the trough's floor does not rise toward
/// the back; `None` of a line without length.
fn open_trough(points: &[Point2<f64>], map: &HeightMap) -> Option<RangeInclusive<usize>> {
    let [first, second, ..] = points else {
        return None;
    };
    let step_mm = (second - first).norm();
    if step_mm.is_nan() || step_mm <= 0.0 {
        return None;
    }
    let heights: Vec<Option<f64>> = points.iter().map(|p| map.at(*p)).collect();
    let mut backward = heights.clone();
    backward.reverse();
    let last = points.len() - 1;
    let from = closed_part(&heights, step_mm).min(last / 2);
    Some(from..=last - closed_part(&backward, step_mm).min(last / 2))
}

/// How many of the first points lie where the floor, seen from further in,
/// rises steeply to its end.
fn closed_part(heights: &[Option<f64>], step_mm: f64) -> usize {
    const STEEP: f64 = 0.3;
    const OVER_MM: f64 = 2.0;
    const END_MM: f64 = 7.0;
    let over = (OVER_MM / step_mm).round().max(1.0) as usize;
    let height = |k: usize| heights.get(k).copied().flatten();
    let top = (0..(END_MM / step_mm) as usize)
        .filter(|&k| height(k).is_some())
        .max_by(|&a, &b| height(a).partial_cmp(&height(b)).unwrap_or(Ordering::Equal))
        .unwrap_or(0);
    let rises = |k: &usize| match (height(*k), height(k + over)) {
        (Some(here), Some(further_in)) => here - further_in > STEEP * OVER_MM,
        _ => false,
    };
    match (top..).take_while(rises).last() {
        Some(foot) => foot + over,
        None => 0,
    }
}

/// A line whose points lie 1 mm apart, run on at both ends.
fn run_on(line: &[Point2<f64>], map: &HeightMap) -> Vec<Point2<f64>> {
    let [before, after] = [true, false].map(|at_start| beyond(line, at_start, map));
    let before = before.into_iter().rev();
    before.chain(line.iter().copied()).chain(after).collect()
}

/// Points beyond one end of a line, in its direction there, as far as there is
/// surface and then some way back.
fn beyond(line: &[Point2<f64>], at_start: bool, map: &HeightMap) -> Vec<Point2<f64>> {
    const SHORT_OF_THE_BACK_MM: f64 = 3.0;
    const DIRECTION_MM: usize = 8;
    const FALL_MM: f64 = 2.0;
    const FARTHEST_MM: f64 = 25.0;
    const GAP_MM: f64 = 2.0;
    let reach = DIRECTION_MM.min(line.len() - 1);
    let (end, before) = if at_start {
        (line[0], line[reach])
    } else {
        (line[line.len() - 1], line[line.len() - 1 - reach])
    };
    let Some(along) = (end - before).try_normalize(0.0) else {
        return Vec::new();
    };
    // What lies lower behind the border is its outer side.
    let mut highest = map.at(end).unwrap_or(0.0);
    let mut seen = 0.0;
    for step in 1..=(FARTHEST_MM / 0.5) as usize {
        let length = step as f64 * 0.5;
        if let Some(height) = map.at(end + along * length)
            && height > highest - FALL_MM
        {
            seen = length;
            highest = highest.max(height);
        } else if length - seen > GAP_MM {
            break;
        }
    }
    let length = (seen - SHORT_OF_THE_BACK_MM).max(0.0);
    (1..=length as usize)
        .map(|step| end + along * step as f64)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_crest_line_too_short_to_have_a_length_leads_to_no_line() {
        let corners = [(0.0, 0.0), (9.0, 0.0), (0.0, 9.0)].map(|(x, y)| Point3::new(x, y, 1.0));
        let map = HeightMap::of(&corners, &[[0, 1, 2]], 0.5);
        assert_eq!(open_trough(&[], &map), None);
        assert_eq!(open_trough(&[Point2::new(1.0, 1.0)], &map), None);
        assert_eq!(open_trough(&[Point2::new(1.0, 1.0); 3], &map), None);
        let line = [1.0, 2.0, 3.0].map(|x| Point2::new(x, 1.0));
        assert_eq!(open_trough(&line, &map), Some(0..=2));
        assert!(Spine::whole(&[Point3::new(1.0, 1.0, 1.0)], &map).is_none());
    }
}
