//! The crest line: the bottoms of the trough from limb to limb.

use super::bottoms::{Bottoms, DIRECTIONS};
use geometry::height_map::HeightMap;
use geometry::polyline::{evenly, smoothed};
use nalgebra::{Point2, Point3, Vector2, Vector3};

/// The crest line in local coordinates (y anterior, z seating), from the end
/// with positive x round the front to the other, one point a millimetre.
#[derive(Debug, Clone)]
pub struct CrestLine {
    points: Vec<Point3<f64>>,
}

impl CrestLine {
    /// Traces the crest line on a height map in local directions, whose plane
    /// of symmetry lies at `midline_x`, by a trough no wider than twice `half_width_mm`.
    pub fn trace(map: &HeightMap, midline_x: f64, half_width_mm: f64) -> Option<Self> {
        let depths = map.valley_depths(half_width_mm);
        let deepest = Bottoms::seen_from_centre(map, &depths)?;
        let first = Self::through(&deepest, |from_front| {
            limb_length(from_front, midline_x, 0.0)
        })?;
        if is_one_arch(&first.points) {
            return Some(first);
        }
        // Hollows beside the trough led the line astray.
        let round = |bottoms: Bottoms| {
            Self::through(&bottoms, |from_front| {
                limb_length(from_front, midline_x, BEHIND_FRONT_MM)
            })
            .filter(|crest| is_one_arch(&crest.points))
        };
        Bottoms::round_the_arch(map, &depths)
            .and_then(round)
            .or_else(|| {
                let limbs = round(deepest.limbs_alone())?;
                (limbs.points.len() > first.points.len()).then_some(limbs)
            })
            .or(Some(first))
    }

    /// The line through bottoms, from limb to limb; `limb_length` says how many of
    /// the points from the front belong to a limb.
    fn through(
        bottoms: &Bottoms,
        limb_length: impl Fn(Vec<&Point3<f64>>) -> usize,
    ) -> Option<Self> {
        // From straight back (-y), anticlockwise: over +x, front, -x.
        let back = DIRECTIONS * 3 / 4;
        let ordered: Vec<Point3<f64>> = (0..DIRECTIONS)
            .filter_map(|i| bottoms.by_direction[(back + i) % DIRECTIONS])
            .collect();
        if ordered.len() < 20 {
            return None;
        }
        let whole = evenly(&smoothed(&ordered, 3), 1.0);
        let front = (0..whole.len()).max_by(|&a, &b| whole[a].y.total_cmp(&whole[b].y))?;
        let first = front - limb_length(whole[..=front].iter().rev().collect());
        let last = front + limb_length(whole[front..].iter().collect());
        Some(Self {
            points: whole[first..=last].to_vec(),
        })
    }

    /// The points, mm.
    pub fn points(&self) -> &[Point3<f64>] {
        &self.points
    }

    /// Mean of the crest line's points.
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
        let (mut nearest, mut least) = (0, f64::INFINITY);
        for (i, p) in self.points.iter().enumerate() {
            let (x, y) = (p.x - place.x, p.y - place.y);
            let squared = x * x + y * y;
            if squared < least {
                (nearest, least) = (i, squared);
            }
        }
        nearest
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

    /// Unit vector in plan at a point, away from the inside of the arch.
    pub fn outward(&self, at: usize) -> Vector2<f64> {
        let along = self.direction(at);
        Vector2::new(along.y, -along.x)
    }
}

/// Nearer to the front a line may turn in toward a papilla, mm.
const BEHIND_FRONT_MM: f64 = 10.0;

/// Whether a crest line, whose points lie a millimetre apart, goes round one arch.
fn is_one_arch(crest: &[Point3<f64>]) -> bool {
    has_both_limbs(crest) && !turns_outward(crest)
}

/// Whether neither limb of a crest line is much shorter than the other: arches are
/// nearly symmetric, and a shorter limb was lost while it was traced.
pub(crate) fn has_both_limbs(crest: &[Point3<f64>]) -> bool {
    /// Room for an impression that ends early on one side.
    const LEAST_SHARE: f64 = 0.6;
    let Some(front) = (0..crest.len()).max_by(|&a, &b| crest[a].y.total_cmp(&crest[b].y)) else {
        return false;
    };
    let limbs = [front, crest.len() - 1 - front].map(|points| points as f64);
    limbs[0].min(limbs[1]) >= LEAST_SHARE * limbs[0].max(limbs[1])
}

/// Whether a line in plan turns far away from the inside of its arch, as where it was
/// led into a hollow and back: an arch bends one way all along, but for the waves of a
/// ridge and limbs that spread at the back (common practice, no source).
fn turns_outward(line: &[Point3<f64>]) -> bool {
    const SPAN: usize = 4;
    const FARTHEST: f64 = std::f64::consts::FRAC_PI_3;
    let headings: Vec<Vector2<f64>> = line
        .windows(SPAN + 1)
        .map(|w| (w[SPAN] - w[0]).xy())
        .collect();
    let turns = headings
        .windows(2)
        .map(|w| w[0].perp(&w[1]).atan2(w[0].dot(&w[1])));
    // The greatest sum of neighbouring turns to the right.
    let (mut sum, mut most) = (0.0_f64, 0.0_f64);
    for turn in turns {
        sum = (sum - turn).max(0.0);
        most = most.max(sum);
    }
    most > FARTHEST
}

/// How many points of a line from the front run on until it turns in across
/// the back, further than `behind_front_mm` behind the front: limbs run backward,
/// and what joins them is not crest.
fn limb_length(from_front: Vec<&Point3<f64>>, midline_x: f64, behind_front_mm: f64) -> usize {
    let off_midline = |p: &Point3<f64>| (p.x - midline_x).abs();
    const SPAN: usize = 5;
    const BACKWARD: f64 = 0.7;
    const INWARD: f64 = 0.6;
    let points = from_front;
    let mut is_limb = false;
    for i in SPAN..points.len() {
        let (from, to) = (points[i - SPAN], points[i]);
        let length = (to - from).norm().max(f64::MIN_POSITIVE);
        is_limb |= (from.y - to.y) / length > BACKWARD && points[0].y - to.y > behind_front_mm;
        if is_limb && (off_midline(from) - off_midline(to)) / length > INWARD {
            return i - SPAN;
        }
    }
    points.len().saturating_sub(1)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Half a circle of 20 mm, from +x round the front, pushed in over the middle 8 mm.
    fn arch(pushed_in_mm: f64) -> Vec<Point3<f64>> {
        (0..=60)
            .map(|k| std::f64::consts::PI * f64::from(k) / 60.0)
            .map(|angle| {
                let off_front = (angle - std::f64::consts::FRAC_PI_2) * 20.0;
                let reach = 20.0 - pushed_in_mm * (-(off_front / 3.0).powi(2)).exp();
                Point3::new(reach * angle.cos(), reach * angle.sin(), 0.0)
            })
            .collect()
    }

    #[test]
    fn a_line_that_goes_into_a_hollow_and_back_is_no_arch() {
        assert!(is_one_arch(&arch(0.0)) && is_one_arch(&arch(1.5)));
        assert!(!is_one_arch(&arch(8.0)));
    }
}
