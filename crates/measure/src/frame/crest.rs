//! The bottom of the trough.

use super::candidates::{BOTTOM_DEPTH_MM, TROUGH_HALF_WIDTH_MM};
use crate::height_map::HeightMap;
use nalgebra::{Point2, Point3, Vector2, Vector3};
use std::f64::consts::TAU;

/// Directions looked in from the centre.
const DIRECTIONS: usize = 180;

/// Lowest point of the trough in each direction from the trough's centre.
#[derive(Debug, Clone)]
pub struct Bottoms {
    /// Where the directions start.
    pub centre: Point2<f64>,
    /// By direction, anticlockwise from x; `None` where no trough lies.
    pub by_direction: Vec<Option<Point3<f64>>>,
}

impl Bottoms {
    /// The bottoms seen from the centroid of the trough's cells. `None` without
    /// a trough.
    pub fn seen_from_centre(map: &HeightMap, depths: &[f32]) -> Option<Self> {
        let (mut sum, mut weight) = (Vector2::zeros(), 0.0);
        for (i, centre) in map.cells() {
            if depths[i] > BOTTOM_DEPTH_MM {
                sum += centre.coords.xy() * f64::from(depths[i]);
                weight += f64::from(depths[i]);
            }
        }
        (weight > 0.0).then(|| Self::seen_from(map, depths, Point2::from(sum / weight)))
    }

    /// The bottoms seen from a place.
    pub fn seen_from(map: &HeightMap, depths: &[f32], centre: Point2<f64>) -> Self {
        const FARTHEST_MM: f64 = 70.0;
        let step = map.cell_mm() / 2.0;
        let by_direction = (0..DIRECTIONS)
            .map(|i| {
                let angle = TAU * i as f64 / DIRECTIONS as f64;
                let along = Vector2::new(angle.cos(), angle.sin());
                (1..(FARTHEST_MM / step) as usize)
                    .filter_map(|k| {
                        let place = centre + along * (k as f64 * step);
                        let in_trough = depths[map.cell_of(place)?] > BOTTOM_DEPTH_MM;
                        let height = map.at(place)?;
                        in_trough.then(|| Point3::new(place.x, place.y, height))
                    })
                    .min_by(|a, b| a.z.total_cmp(&b.z))
            })
            .collect();
        Self {
            centre,
            by_direction: without_outliers(by_direction, centre),
        }
    }

    /// Share of the full circle over which the trough is seen.
    pub fn sweep(&self) -> f64 {
        self.by_direction.iter().flatten().count() as f64 / DIRECTIONS as f64
    }

    /// The bottoms, in order of direction.
    pub fn points(&self) -> Vec<Point3<f64>> {
        self.by_direction.iter().flatten().copied().collect()
    }

    /// Middle of the widest gap between bottoms, as an angle from x: the open
    /// end of the U.
    pub fn open_direction(&self) -> f64 {
        let (start, length) = widest_gap(&self.by_direction);
        TAU * (start as f64 + (length as f64 - 1.0) / 2.0) / DIRECTIONS as f64
    }
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
    const FARTHEST_OFF_MM: f64 = 4.0;
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

/// The crest line in local coordinates (y anterior, z seating), from the end
/// with positive x round the front to the other, one point a millimetre.
#[derive(Debug, Clone)]
pub struct CrestLine {
    points: Vec<Point3<f64>>,
}

impl CrestLine {
    /// Traces the crest line on a height map in local directions.
    pub fn trace(map: &HeightMap) -> Option<Self> {
        let depths = map.valley_depths(TROUGH_HALF_WIDTH_MM);
        let bottoms = Bottoms::seen_from_centre(map, &depths)?;
        // From straight back (-y), anticlockwise: over +x, front, -x.
        let back = DIRECTIONS * 3 / 4;
        let ordered: Vec<Point3<f64>> = (0..DIRECTIONS)
            .filter_map(|i| bottoms.by_direction[(back + i) % DIRECTIONS])
            .collect();
        (ordered.len() >= 20).then(|| Self {
            points: resampled(&smoothed(&ordered), 1.0),
        })
    }

    /// The points, mm.
    pub fn points(&self) -> &[Point3<f64>] {
        &self.points
    }

    /// Middle of the crest line: halfway between its sides, mean otherwise.
    pub fn centre(&self) -> Vector3<f64> {
        self.points.iter().map(|p| p.coords).sum::<Vector3<f64>>() / self.points.len() as f64
    }

    /// The same line moved.
    pub fn moved_by(self, step: Vector3<f64>) -> Self {
        Self {
            points: self.points.iter().map(|p| p + step).collect(),
        }
    }

    /// Number of the crest point nearest in plan.
    pub fn nearest(&self, place: Point2<f64>) -> usize {
        let distance = |p: &Point3<f64>| (p.xy() - place).norm_squared();
        (0..self.points.len())
            .min_by(|&a, &b| distance(&self.points[a]).total_cmp(&distance(&self.points[b])))
            .unwrap_or(0)
    }

    /// Unit vector in plan along the line at a point, from +x toward -x.
    pub fn direction(&self, at: usize) -> Vector2<f64> {
        const SPAN: usize = 3;
        let ahead = &self.points[(at + SPAN).min(self.points.len() - 1)];
        let behind = &self.points[at.saturating_sub(SPAN)];
        (ahead - behind)
            .xy()
            .try_normalize(0.0)
            .unwrap_or_else(Vector2::y)
    }
}

/// Running mean over a few points, ends kept.
fn smoothed(points: &[Point3<f64>]) -> Vec<Point3<f64>> {
    const REACH: usize = 3;
    (0..points.len())
        .map(|i| {
            let reach = REACH.min(i).min(points.len() - 1 - i);
            let window = &points[i - reach..=i + reach];
            Point3::from(
                window.iter().map(|p| p.coords).sum::<Vector3<f64>>() / window.len() as f64,
            )
        })
        .collect()
}

/// Points at even steps along a polyline.
fn resampled(points: &[Point3<f64>], step: f64) -> Vec<Point3<f64>> {
    let mut out = vec![points[0]];
    let mut left = step;
    for pair in points.windows(2) {
        let length = (pair[1] - pair[0]).norm();
        let mut at = left;
        while at <= length {
            out.push(pair[0] + (pair[1] - pair[0]) * (at / length));
            at += step;
        }
        left = at - length;
    }
    out
}
