//! What else than an impression shows a trough along an arch: casts, by their
//! vestibule; halves; the shells of denture bases and empty trays; record rims.
//!
//! Each is known by what it is made for. A cast shows the ridge itself, which
//! stands higher over the surface beside it than the vestibule lies below its
//! land, and it rests on a base that was trimmed flat. A half turns through a
//! quarter of the way round. A base and a tray are a wall of even thickness; in
//! an impression a layer of material lies on that wall. A wax rim is a block
//! with a level face under the trough.

use super::candidates::{Candidate, map_along, ridge_size, trough_size};
use crate::anatomy;
use crate::not_an_impression::NotAnImpression;
use geometry::fit::Plane;
use geometry::height_map::{FINE_CELL_MM, HeightMap};
use geometry::order::{at_share, median};
use geometry::sampling::{SurfacePoint, spread_over};
use mesh::Mesh;
use nalgebra::{Matrix2, Point2, Point3, UnitVector3, Vector2};

/// What the best trough of a scan belongs to, if not to an impression.
pub(super) fn something_else(
    mesh: &Mesh,
    best: &Candidate,
    behind: &Behind,
) -> Option<NotAnImpression> {
    if let Some(what) = positive(mesh, ridge_over_trough(&best.map, best.half_width_mm)) {
        return Some(what);
    }
    if is_half(&best.bottoms.points()) {
        return Some(NotAnImpression::Half);
    }
    behind.rim()
}

/// What a scan is in which no trough sweeps round an arch, as far as its form
/// tells: a cast without vestibule to speak of, or a half.
pub(super) fn without_trough(mesh: &Mesh, axes: &[UnitVector3<f64>]) -> Option<NotAnImpression> {
    let greatest = axes
        .iter()
        .map(|axis| map_along(mesh, axis, FINE_CELL_MM))
        .map(|map| ridge_over_trough(&map, anatomy::TROUGH_HALF_WIDTH_MM))
        .fold(0.0, f64::max);
    let rests_on_base = greatest > RIDGE_OVER_TROUGH && flat_base_part(mesh) >= LEAST_BASE_PART;
    rests_on_base.then_some(NotAnImpression::Cast)
}

/// The ridge of a cast is so many times larger than the hollows beside it, and its
/// base is flat. On an impression the trough is the larger one, but for a flat
/// ridge with high flanges.
const RIDGE_OVER_TROUGH: f64 = 2.0;
/// Without a base in sight a ridge so much larger is that of a cast.
const RIDGE_ALONE_OVER_TROUGH: f64 = 5.0;
/// A ridge smaller than this is none, mm³.
const LEAST_RIDGE_MM3: f64 = 1000.0;

/// What a scan is whose ridge stands over its surroundings.
fn positive(mesh: &Mesh, ridge_over_trough: f64) -> Option<NotAnImpression> {
    if ridge_over_trough > RIDGE_OVER_TROUGH && flat_base_part(mesh) >= LEAST_BASE_PART {
        Some(NotAnImpression::Cast)
    } else {
        (ridge_over_trough > RIDGE_ALONE_OVER_TROUGH).then_some(NotAnImpression::Positive)
    }
}

/// How many times larger the ridge is than the hollows beside it, both no wider than twice
/// `half_width_mm`; 0 where there is no ridge.
fn ridge_over_trough(map: &HeightMap, half_width_mm: f64) -> f64 {
    let [hollow, ridge] = [trough_size, ridge_size].map(|size| size(map, half_width_mm));
    if ridge > LEAST_RIDGE_MM3 {
        ridge / hollow.max(1.0)
    } else {
        0.0
    }
}

/// A trimmed base is level over nearly all of a cast's outline; the channel of
/// a tray, level or not, is walled in.
const LEAST_BASE_PART: f64 = 0.8;

/// The largest level face of a scan, as a share of its outline seen square to
/// that face.
pub(super) fn flat_base_part(mesh: &Mesh) -> f64 {
    const SAMPLES: usize = 6_000;
    const TRIALS: usize = 200;
    const SAME_DIRECTION: f64 = 0.97;
    const OFF_MM: f64 = 0.4;
    let samples = spread_over(mesh, SAMPLES, |_| true);
    let on_face_of = |one: &SurfacePoint| {
        samples
            .iter()
            .filter(|s| {
                s.normal.dot(&one.normal) > SAME_DIRECTION
                    && one.normal.dot(&(s.point - one.point)).abs() < OFF_MM
            })
            .count()
    };
    let trials = samples.iter().step_by((samples.len() / TRIALS).max(1));
    let Some((count, normal)) = trials
        .map(|one| (on_face_of(one), one.normal))
        .max_by_key(|(count, _)| *count)
    else {
        return 0.0;
    };
    let map = map_along(mesh, &normal, FINE_CELL_MM);
    let outline = map.cells().count() as f64 * map.cell_mm().powi(2);
    let face = mesh.area() * count as f64 / samples.len().max(1) as f64;
    face / outline.max(f64::MIN_POSITIVE)
}

/// Standard width of a trough's line as a part of its standard length, below
/// which it is one half of an arch: a whole arch is about as wide as it is deep,
/// a half is a quarter of a circle with one limb.
const HALF_BELOW: f64 = 0.42;

fn is_half(bottoms: &[Point3<f64>]) -> bool {
    roundness(bottoms).is_some_and(|roundness| roundness < HALF_BELOW)
}

/// Standard width across over standard length of points in plan.
pub(super) fn roundness(points: &[Point3<f64>]) -> Option<f64> {
    let count = points.len() as f64;
    let mean = points.iter().map(|p| p.xy().coords).sum::<Vector2<f64>>() / count;
    let spread: Matrix2<f64> = points
        .iter()
        .map(|p| {
            let off = p.xy().coords - mean;
            off * off.transpose()
        })
        .sum();
    let variances = spread.symmetric_eigenvalues();
    let (least, most) = (variances.min(), variances.max());
    (most > 0.0).then(|| (least.max(0.0) / most).sqrt())
}

/// What lies behind the surface that the trough is part of.
pub(super) struct Behind {
    /// Wall thickness where both faces are nearly level, mm.
    walls_mm: Vec<f64>,
    /// Depth of the body under the trough's bottom, mm.
    under_crest_mm: Vec<f64>,
    /// Its back there.
    back: Vec<Point3<f64>>,
}

/// Of a scan of one side both faces are the same.
const LEAST_WALL_MM: f64 = 0.5;

impl Behind {
    pub(super) fn of(mesh: &Mesh, best: &Candidate) -> Self {
        let axis = &best.axis;
        let turn = super::axes::basis_along(axis);
        let upside_down: Vec<Point3<f64>> = mesh
            .vertices()
            .iter()
            .map(|p| turn * p)
            .map(|p| Point3::new(p.x, p.y, -p.z))
            .collect();
        let back = HeightMap::of(&upside_down, mesh.triangles(), FINE_CELL_MM);
        let front = &best.map;
        let thickness = |place: Point2<f64>| Some(front.at(place)? + back.at(place)?);
        let walls_mm = front
            .cells()
            .filter_map(|(_, p)| {
                let slope = steepness(front, p.xy())?.max(steepness(&back, p.xy())?);
                (slope < LEVEL).then_some(thickness(p.xy())? / slope.hypot(1.0))
            })
            .collect();
        let bottoms = best.bottoms.points();
        Self {
            walls_mm,
            under_crest_mm: bottoms.iter().filter_map(|p| thickness(p.xy())).collect(),
            back: bottoms
                .iter()
                .filter_map(|p| Some(Point3::new(p.x, p.y, -back.at(p.xy())?)))
                .collect(),
        }
    }

    /// What a scan is whose wall leaves no room for a tray with material in it. A
    /// scan of an empty tray has a frame all the same.
    pub(super) fn shell(&self) -> Option<NotAnImpression> {
        let mut walls_mm = self.walls_mm.clone();
        let wall_mm = median(&mut walls_mm)?;
        let spread_mm = at_share(&mut walls_mm, 0.75)? - at_share(&mut walls_mm, 0.25)?;
        let is_even = spread_mm < anatomy::SHELL_EVEN_WITHIN_MM;
        (is_even && (LEAST_WALL_MM..anatomy::SHELL_WALL_MM).contains(&wall_mm))
            .then_some(NotAnImpression::Shell { wall_mm })
    }

    fn rim(&self) -> Option<NotAnImpression> {
        const LEVEL_WITHIN_MM: f64 = 0.3;
        /// The rim ends before the base does.
        const MOST: f64 = 0.7;
        let depth_mm = median(&mut self.under_crest_mm.clone())?;
        if depth_mm < anatomy::RIM_LEAST_DEPTH_MM {
            return None;
        }
        let mut heights: Vec<f64> = self.back.iter().map(|p| p.z).collect();
        let face = median(&mut heights)?;
        let kept: Vec<Point3<f64>> = self
            .back
            .iter()
            .filter(|p| (p.z - face).abs() < 2.0)
            .copied()
            .collect();
        let plane = Plane::fit(&kept)?;
        let on_face = kept
            .iter()
            .filter(|p| plane.distance(p).abs() < LEVEL_WITHIN_MM)
            .count();
        (on_face as f64 > MOST * self.back.len() as f64)
            .then_some(NotAnImpression::RecordRim { depth_mm })
    }
}

/// Faces that rise by less than this for each mm are nearly level.
const LEVEL: f64 = 0.5;

/// Rise of a map at a place, by differences over 1 mm to either side.
fn steepness(map: &HeightMap, at: Point2<f64>) -> Option<f64> {
    const STEP_MM: f64 = 1.0;
    let rise = |x: f64, y: f64| {
        let step = Vector2::new(x, y) * STEP_MM;
        Some((map.at(at + step)? - map.at(at - step)?) / (2.0 * STEP_MM))
    };
    Some(rise(1.0, 0.0)?.hypot(rise(0.0, 1.0)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::f64::consts::PI;

    /// Heights over a plan of 60 by 60 mm; where there is none, no surface.
    fn over_plan(height: impl Fn(f64, f64) -> Option<f64>) -> Mesh {
        let (side, step) = (121_u32, 0.5);
        let at = |n: u32| (f64::from(n) - f64::from(side / 2)) * step;
        let heights: Vec<Option<f64>> = (0..side * side)
            .map(|k| height(at(k % side), at(k / side)))
            .collect();
        let vertices = (0..side * side)
            .zip(&heights)
            .map(|(k, h)| Point3::new(at(k % side), at(k / side), h.unwrap_or(0.0)))
            .collect();
        let triangles = (0..side - 1)
            .flat_map(|j| (0..side - 1).map(move |i| j * side + i))
            .flat_map(|a| [[a, a + 1, a + side + 1], [a, a + side + 1, a + side]])
            .filter(|t| t.iter().all(|&k| heights[k as usize].is_some()))
            .collect();
        Mesh::new(vertices, triangles, None).expect("grid indices are in range")
    }

    /// How far a place lies from an arch of 20 mm with limbs of 15 mm.
    fn off_arch(x: f64, y: f64) -> f64 {
        if y > 0.0 {
            (x.hypot(y) - 20.0).abs()
        } else {
            (x.abs() - 20.0).hypot((-15.0 - y).max(0.0))
        }
    }

    /// An impression's trough between two borders 8 mm high, or the ridge of a
    /// cast between two vestibules of 2 mm with a land around them.
    fn section(off: f64, is_cast: bool) -> Option<f64> {
        let bump =
            |middle: f64, half_width: f64| (1.0 - ((off - middle) / half_width).powi(2)).max(0.0);
        if is_cast {
            Some(8.0 * bump(0.0, 5.0) - 2.0 * bump(6.5, 1.5))
        } else {
            (off < 8.0).then(|| 8.0 * bump(6.5, 2.5))
        }
    }

    #[test]
    fn a_ridge_between_vestibules_is_told_from_a_trough_between_borders() {
        for (is_cast, stands) in [(true, true), (false, false)] {
            let mesh = over_plan(|x, y| section(off_arch(x, y), is_cast));
            let map = HeightMap::of(mesh.vertices(), mesh.triangles(), FINE_CELL_MM);
            let ratio = ridge_over_trough(&map, anatomy::TROUGH_HALF_WIDTH_MM);
            assert_eq!(ratio > RIDGE_OVER_TROUGH, stands);
        }
    }

    #[test]
    fn a_level_base_covers_its_outline_and_a_rounded_one_does_not() {
        let level = over_plan(|_, _| Some(0.0));
        assert!((flat_base_part(&level) - 1.0).abs() < 0.05);
        let half_level = over_plan(|x, _| Some(0.7 * x.max(0.0)));
        assert!(flat_base_part(&half_level) < LEAST_BASE_PART);
    }

    #[test]
    fn half_an_arch_is_told_from_a_whole_one() {
        let arch = |from: f64, to: f64, limbs: &[f64]| -> Vec<Point3<f64>> {
            let curve = (0..=60).map(|k| {
                let angle = from + (to - from) * f64::from(k) / 60.0;
                Point3::new(22.0 * angle.cos(), 22.0 * angle.sin(), 0.0)
            });
            let limbs = limbs
                .iter()
                .flat_map(|&x| (0..20).map(move |k| Point3::new(x, -f64::from(k), 0.0)));
            curve.chain(limbs).collect()
        };
        assert!(!is_half(&arch(0.0, PI, &[22.0, -22.0])));
        // One limb scanned by half its length, still an arch.
        assert!(!is_half(&arch(0.0, PI, &[22.0])));
        assert!(is_half(&arch(0.0, PI / 2.0, &[22.0])));
    }

    #[test]
    fn a_wall_without_room_for_material_is_a_shell_and_a_deep_level_block_a_rim() {
        let level = |z: f64| (0..20).map(move |k| Point3::new(f64::from(k), f64::from(k % 5), z));
        let behind = |wall_mm: f64, depth_mm: f64| Behind {
            walls_mm: vec![wall_mm; 100],
            under_crest_mm: vec![depth_mm; 20],
            back: level(-depth_mm).collect(),
        };
        assert!(behind(2.4, 2.4).shell().is_some());
        let mut uneven = behind(2.7, 2.7);
        uneven
            .walls_mm
            .extend((0..100).map(|k| 2.0 + 0.02 * f64::from(k)));
        assert!(uneven.shell().is_some());
        uneven
            .walls_mm
            .extend((0..300).map(|k| 2.0 + 0.01 * f64::from(k)));
        assert!(uneven.shell().is_none());
        assert!(behind(4.5, 4.5).shell().is_none());
        assert!(behind(0.0, 0.0).shell().is_none());
        assert!(behind(2.5, 11.0).rim().is_some());
        assert!(behind(4.5, 5.0).rim().is_none());
    }
}
