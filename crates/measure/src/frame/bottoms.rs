//! The bottoms of the trough, looked for in each direction from its centre.

use crate::anatomy;
use geometry::height_map::HeightMap;
use geometry::order::median;
use nalgebra::{Point2, Point3, Vector2, Vector3};
use std::f64::consts::TAU;

/// Directions looked in from the centre.
pub(super) const DIRECTIONS: usize = 180;

/// The crest line does not jump so far from one direction to its neighbours, mm.
const FARTHEST_OFF_MM: f64 = 4.0;

/// Lowest point of the trough in each direction from the trough's centre.
#[derive(Debug, Clone)]
pub(super) struct Bottoms {
    /// Where the directions start.
    pub centre: Point2<f64>,
    /// By direction, anticlockwise from x; `None` where no trough lies.
    pub by_direction: Vec<Option<Point3<f64>>>,
}

impl Bottoms {
    /// The bottoms seen from the centroid of the trough's cells, each the deepest of
    /// its direction. `None` without a trough.
    pub(super) fn seen_from_centre(map: &HeightMap, depths: &[f32]) -> Option<Self> {
        let deepest_of_each = |ways: &[Vec<Place>], _: Point2<f64>| -> Vec<Option<Stretch>> {
            ways.iter().map(|way| deepest(troughs(way))).collect()
        };
        Self::chosen(map, depths, deepest_of_each)
    }

    /// The bottoms of a trough that goes round an arch. `None` without a trough.
    pub(super) fn round_the_arch(map: &HeightMap, depths: &[f32]) -> Option<Self> {
        Self::chosen(map, depths, beside_their_neighbours)
    }

    fn chosen(
        map: &HeightMap,
        depths: &[f32],
        choose: impl Fn(&[Vec<Place>], Point2<f64>) -> Vec<Option<Stretch>>,
    ) -> Option<Self> {
        let depths = &of_large_parts(map, depths);
        let (mut sum, mut weight) = (Vector2::zeros(), 0.0);
        for (i, centre) in map.cells() {
            if depths[i] > anatomy::TROUGH_LEAST_DEPTH_MM {
                sum += centre.coords.xy() * f64::from(depths[i]);
                weight += f64::from(depths[i]);
            }
        }
        (weight > 0.0).then(|| Self::seen_from(map, depths, Point2::from(sum / weight), choose))
    }

    /// The bottoms seen from a place: in each direction, the lowest point of
    /// the stretch of trough that is chosen.
    fn seen_from(
        map: &HeightMap,
        depths: &[f32],
        centre: Point2<f64>,
        choose: impl Fn(&[Vec<Place>], Point2<f64>) -> Vec<Option<Stretch>>,
    ) -> Self {
        /// A stretch this shallow beside the usual is a dip of the palate.
        const LEAST_PART_OF_USUAL: f32 = 0.4;
        let ways: Vec<Vec<Place>> = (0..DIRECTIONS)
            .map(|i| TAU * i as f64 / DIRECTIONS as f64)
            .map(|angle| way_out(map, depths, centre, Vector2::new(angle.cos(), angle.sin())))
            .collect();
        let stretches = choose(&ways, centre);
        let mut known: Vec<f32> = stretches.iter().flatten().map(|s| s.depth).collect();
        known.sort_by(f32::total_cmp);
        let usual = known.get(known.len() * 3 / 4).copied().unwrap_or(0.0);
        let by_direction = stretches
            .into_iter()
            .map(|stretch| {
                Some(
                    stretch
                        .filter(|s| s.depth > LEAST_PART_OF_USUAL * usual)?
                        .bottom,
                )
            })
            .collect();
        Self {
            centre,
            by_direction: without_outliers(by_direction, centre),
        }
    }

    /// The two longest runs of bottoms alone, and the arch between them: where a deep notch leaves
    /// the trough open in front, other bottoms lie in the hollows behind it.
    pub(super) fn limbs_alone(&self) -> Self {
        let mut runs = self.runs();
        runs.sort_by_key(|run| std::cmp::Reverse(run.len()));
        runs.truncate(2);
        let mut by_direction = vec![None; DIRECTIONS];
        for &i in runs.iter().flatten() {
            by_direction[i] = self.by_direction[i];
        }
        let gap_between = |one: &[usize], next: &[usize]| {
            let (from, to) = (*one.last()?, *next.first()?);
            let steps = (to + DIRECTIONS - from) % DIRECTIONS;
            Some((
                steps,
                from,
                self.by_direction[from]?,
                self.by_direction[to]?,
            ))
        };
        // The wider gap is the open end of the arch.
        let front = match &runs[..] {
            [one, other] => [gap_between(one, other), gap_between(other, one)],
            _ => [None, None],
        };
        if let Some((steps, from, before, behind)) =
            front.into_iter().flatten().min_by_key(|gap| gap.0)
        {
            for k in 1..steps {
                let i = (from + k) % DIRECTIONS;
                let share = k as f64 / steps as f64;
                by_direction[i] = Some(self.between(&before, &behind, share, i));
            }
        }
        Self {
            centre: self.centre,
            by_direction,
        }
    }

    /// The directions of bottoms that follow one another without a jump, each run in order round
    /// the circle.
    fn runs(&self) -> Vec<Vec<usize>> {
        const JUMP_MM: f64 = FARTHEST_OFF_MM / 2.0;
        let follows = |i: usize| {
            let before = self.by_direction[(i + DIRECTIONS - 1) % DIRECTIONS];
            let ends = before.zip(self.by_direction[i]);
            ends.is_some_and(|(a, b)| (a - b).xy().norm() <= JUMP_MM)
        };
        let start = (0..DIRECTIONS).find(|&i| !follows(i)).unwrap_or(0);
        let mut runs: Vec<Vec<usize>> = Vec::new();
        for i in (0..DIRECTIONS).map(|k| (start + k) % DIRECTIONS) {
            match runs.last_mut() {
                Some(run) if follows(i) => run.push(i),
                _ if self.by_direction[i].is_some() => runs.push(vec![i]),
                _ => {}
            }
        }
        runs
    }

    /// A place in a direction: its reach from the centre and its height lie between those of two
    /// bottoms.
    fn between(&self, a: &Point3<f64>, b: &Point3<f64>, share: f64, i: usize) -> Point3<f64> {
        let [reach_a, reach_b] = [a, b].map(|p| (p.xy() - self.centre).norm());
        let angle = TAU * i as f64 / DIRECTIONS as f64;
        let out = Vector2::new(angle.cos(), angle.sin());
        let place = self.centre + out * (reach_a + (reach_b - reach_a) * share);
        Point3::new(place.x, place.y, a.z + (b.z - a.z) * share)
    }

    /// Share of the full circle over which the trough is seen.
    pub(super) fn sweep(&self) -> f64 {
        self.by_direction.iter().flatten().count() as f64 / DIRECTIONS as f64
    }

    /// The bottoms, in order of direction.
    pub(super) fn points(&self) -> Vec<Point3<f64>> {
        self.by_direction.iter().flatten().copied().collect()
    }

    /// Middle of the widest gap between bottoms, as an angle from x: the open
    /// end of the U.
    pub(super) fn open_direction(&self) -> f64 {
        let (start, length) = widest_gap(&self.by_direction);
        TAU * (start as f64 + (length as f64 - 1.0) / 2.0) / DIRECTIONS as f64
    }
}

/// A place on the way out from the centre, and how deep the trough is there, mm.
type Place = (Point3<f64>, f32);

/// A run of trough along one direction.
#[derive(Clone, Copy)]
struct Stretch {
    bottom: Point3<f64>,
    depth: f32,
}

impl Stretch {
    fn of(run: &[Place]) -> Self {
        Self {
            bottom: middle_of_floor(run),
            depth: run.iter().map(|place| place.1).fold(0.0, f32::max),
        }
    }
}

/// The surface on the way out from the centre; without depth where there is none.
fn way_out(
    map: &HeightMap,
    depths: &[f32],
    centre: Point2<f64>,
    along: Vector2<f64>,
) -> Vec<Place> {
    let step = map.cell_mm() / 2.0;
    (1..(anatomy::RIDGE_FROM_ARCH_CENTRE_MM / step) as usize)
        .map(|k| {
            let place = centre + along * (k as f64 * step);
            let depth = map.cell_of(place).map_or(0.0, |cell| depths[cell]);
            match map.at(place) {
                Some(height) => (Point3::new(place.x, place.y, height), depth),
                None => (Point3::new(place.x, place.y, 0.0), 0.0),
            }
        })
        .collect()
}

/// The deepest of some runs of trough.
fn deepest<'a>(runs: impl Iterator<Item = &'a [Place]>) -> Option<Stretch> {
    runs.map(Stretch::of)
        .max_by(|a, b| a.depth.total_cmp(&b.depth))
}

/// The runs of a way that are deep enough to be trough.
fn troughs(way: &[Place]) -> impl Iterator<Item = &[Place]> {
    let is_trough = |place: &Place| place.1 > anatomy::TROUGH_LEAST_DEPTH_MM;
    way.chunk_by(move |a, b| is_trough(a) == is_trough(b))
        .filter(move |run| is_trough(&run[0]))
}

/// In each direction the deepest stretch; where that leaves those of many
/// neighbours, the trough between those. It goes round without a jump, while the
/// outside of a flange, a papilla and a palate have hollows of their own.
fn beside_their_neighbours(ways: &[Vec<Place>], centre: Point2<f64>) -> Vec<Option<Stretch>> {
    /// Wider than what a hollow near the centre hides.
    const NEIGHBOURS: usize = 20;
    let reach = |point: &Point3<f64>| (point.xy() - centre).norm();
    let count = ways.len();
    let is_trough: Vec<bool> = (ways.iter())
        .map(|way| troughs(way).next().is_some())
        .collect();
    let seen_to = |i: usize, sense: usize| {
        let beside = (1..=NEIGHBOURS).filter(|k| is_trough[(i + sense * k) % count]);
        beside.count()
    };
    // A limb goes on to its end away from where it comes from.
    let is_at_an_end: Vec<bool> = (0..count)
        .map(|i| seen_to(i, 1).min(seen_to(i, count - 1)) < NEIGHBOURS / 2)
        .collect();
    let first: Vec<Option<Stretch>> = (ways.iter().zip(&is_at_an_end))
        .map(|(way, is_at_an_end)| {
            let with_floor = deepest(troughs(way).filter(|run| has_floor(run)));
            let usual = with_floor.filter(|_| !is_at_an_end);
            usual.or_else(|| deepest(troughs(way)))
        })
        .collect();
    (0..count)
        .map(|i| {
            let own = first[i]?;
            if is_at_an_end[i] {
                return Some(own);
            }
            let around = (0..=2 * NEIGHBOURS)
                .filter_map(|k| first[(i + count + k - NEIGHBOURS) % count].as_ref());
            let usual = median(&mut around.map(|other| reach(&other.bottom)).collect::<Vec<_>>())?;
            let is_near = |point: &Point3<f64>| (reach(point) - usual).abs() <= FARTHEST_OFF_MM;
            if is_near(&own.bottom) {
                return Some(own);
            }
            let near = ways[i]
                .split(|place| !is_near(&place.0))
                .max_by_key(|part| part.len())?;
            let trough = troughs(near).max_by_key(|run| run.len());
            match trough {
                Some(run) => has_floor(run).then(|| Stretch::of(run)),
                // The trough itself leads away, as at the end of a limb.
                None => Some(own),
            }
        })
        .collect()
}

/// Whether a part of a run has its lowest place between its ends, and does not
/// fall until the surface ends.
fn has_floor(part: &[Place]) -> bool {
    const ENDS: usize = 3;
    let lowest = (0..part.len()).min_by(|&a, &b| part[a].0.z.total_cmp(&part[b].0.z));
    lowest.is_some_and(|at| (ENDS..part.len().saturating_sub(ENDS)).contains(&at))
}

/// Middle of the lowest part of a run: a tray's channel has a flat floor, on
/// which the lowest place of all is anywhere.
fn middle_of_floor(run: &[Place]) -> Point3<f64> {
    const FLAT_MM: f64 = 0.15;
    let lowest = run.iter().map(|w| w.0.z).fold(f64::INFINITY, f64::min);
    let floor = run.iter().map(|w| w.0).filter(|p| p.z <= lowest + FLAT_MM);
    let (sum, count) = floor.fold((Vector3::zeros(), 0.0), |(s, n), p| (s + p.coords, n + 1.0));
    Point3::from(sum / f64::max(count, 1.0))
}

/// The depths with those of small valleys set to nothing: pits, the step of a
/// handle, hollows between rugae.
fn of_large_parts(map: &HeightMap, depths: &[f32]) -> Vec<f32> {
    /// A valley smaller than this part of the largest is none of the trough.
    const LEAST_PART: f32 = 0.12;
    let parts = map.connected(|cell| depths[cell] > anatomy::TROUGH_LEAST_DEPTH_MM);
    let sizes: Vec<f32> = parts
        .iter()
        .map(|part| part.iter().map(|&cell| depths[cell]).sum())
        .collect();
    let largest = sizes.iter().copied().fold(0.0, f32::max);
    let mut kept = vec![0.0; depths.len()];
    for (part, size) in parts.iter().zip(sizes) {
        if size >= LEAST_PART * largest {
            for &cell in part {
                kept[cell] = depths[cell];
            }
        }
    }
    kept
}

/// Start and length of the longest run (round the circle) without a bottom.
fn widest_gap(by_direction: &[Option<Point3<f64>>]) -> (usize, usize) {
    let count = by_direction.len();
    let mut best = (0, 0);
    let mut length = 0;
    for i in 0..2 * count {
        if by_direction[i % count].is_some() {
            length = 0;
        } else {
            length = (length + 1).min(count);
            if length > best.1 {
                best = ((i + 1 - length) % count, length);
            }
        }
    }
    best
}

/// Drops bottoms whose distance from the centre is far from that of their
/// neighbours: other hollows that a ray happened to cross.
fn without_outliers(
    bottoms: Vec<Option<Point3<f64>>>,
    centre: Point2<f64>,
) -> Vec<Option<Point3<f64>>> {
    const NEIGHBOURS: usize = 5;
    let count = bottoms.len();
    let reach = |p: &Point3<f64>| (p.xy() - centre).norm();
    (0..count)
        .map(|i| {
            let own = bottoms[i]?;
            let mut around: Vec<f64> = (0..=2 * NEIGHBOURS)
                .filter_map(|k| bottoms[(i + count + k - NEIGHBOURS) % count].as_ref())
                .map(reach)
                .collect();
            around.sort_by(f64::total_cmp);
            let usual = around[around.len() / 2];
            ((reach(&own) - usual).abs() <= FARTHEST_OFF_MM).then_some(own)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Places a quarter of a millimetre apart, of heights by formula, mm.
    fn run(length_mm: f64, height: impl Fn(f64) -> f64) -> Vec<Place> {
        let steps = (4.0 * length_mm) as u32;
        (0..=steps)
            .map(|k| f64::from(k) / 4.0)
            .map(|x| (Point3::new(x, 0.0, height(x)), 5.0))
            .collect()
    }

    /// In front the trough is open, and a hollow of the palate lies behind it.
    #[test]
    fn a_hollow_behind_an_open_trough_is_no_part_of_the_arch() {
        let by_direction = |i: usize| {
            let angle = TAU * i as f64 / DIRECTIONS as f64;
            let reach = match i {
                40..=49 => 14.0,
                35..=39 | 50..=54 | 100.. => return None,
                _ => 20.0,
            };
            Some(Point3::new(reach * angle.cos(), reach * angle.sin(), 1.0))
        };
        let seen = Bottoms {
            centre: Point2::origin(),
            by_direction: (0..DIRECTIONS).map(by_direction).collect(),
        };
        let arch = seen.limbs_alone();
        assert_eq!(arch.points().len(), 100);
        assert!(
            arch.points()
                .iter()
                .all(|p| (p.xy().coords.norm() - 20.0).abs() < 0.01)
        );
    }

    /// Round the arch the trough's floor lies 16 mm from the centre; in some
    /// directions it runs on through a frenum's notch into the outside of the
    /// flange, which falls until the surface ends, below the floor.
    #[test]
    fn the_outside_of_a_flange_is_no_trough() {
        let trough = |x: f64| 0.1 * (x - 16.0).powi(2);
        let usual = |length_mm: f64| run(length_mm, |x| if x < 9.0 { 9.0 } else { trough(x) });
        let open = |x: f64| {
            if x < 9.0 {
                5.0 - 1.2 * (9.0 - x)
            } else {
                trough(x)
            }
        };
        let ways: Vec<Vec<Place>> = (0..DIRECTIONS)
            .map(|i| match i {
                45..=54 => run(24.0, open),
                0..=99 => usual(24.0),
                _ => Vec::new(),
            })
            .map(|way| way.into_iter().skip(18).collect())
            .collect();
        let found = beside_their_neighbours(&ways, Point2::origin());
        let far: Vec<usize> = (0..100)
            .filter(|&i| found[i].is_none_or(|s| (s.bottom.x - 16.0).abs() > 0.5))
            .collect();
        assert!(far.is_empty(), "{far:?}");
    }
}
