//! Folds: long, narrow, steep grooves.

use super::background::Departures;
use super::surface::{Searcher, Surface};
use nalgebra::{Point3, Vector3};

/// A groove.
#[derive(Debug, Clone)]
pub struct Groove {
    /// A place near its middle, on the surface.
    pub centre: Point3<f64>,
    /// From end to end along it, mm.
    pub length_mm: f64,
    /// Of a groove of even depth with the same section, mm.
    pub width_mm: f64,
    /// Greatest depth that a good part of it has, mm.
    pub depth_mm: f64,
    /// Standard uncertainty of the depth, mm.
    pub depth_sd_mm: f64,
    /// Its vertices.
    pub vertices: Vec<u32>,
    /// The line along it.
    pub middles: Vec<Point3<f64>>,
}

impl Groove {
    /// Whether it is a fold and no furrow of the mucosa, which is wider than deep
    /// by far: rugae, raphe and the lines beside frena have smooth, gentle sides.
    fn is_fold(&self) -> bool {
        const LEAST_LENGTH_MM: f64 = 3.0;
        const LEAST_SLENDERNESS: f64 = 3.0;
        /// Depth over width of the groove of even depth; a bell-shaped furrow
        /// as steep has slopes of 37 degrees (common practice, no source).
        const LEAST_STEEPNESS: f64 = 0.28;
        self.length_mm >= LEAST_LENGTH_MM
            && self.length_mm >= LEAST_SLENDERNESS * self.width_mm
            && self.depth_mm * 0.8 >= LEAST_STEEPNESS * self.width_mm
    }
}

/// The folds of a surface that departs so from its smooth self.
pub fn find(surface: &Surface<'_>, over: &Departures, least_mm: f64) -> Vec<Groove> {
    /// A departure is hidden in roughness of more than its half.
    const STANDS_OUT: f32 = 2.0;
    let deep = |v: u32| {
        let v = v as usize;
        -over.smoothed_mm[v] > (least_mm as f32).max(STANDS_OUT * over.roughness_mm[v])
    };
    let mut searcher = Searcher::new(surface);
    let mut taken = vec![false; surface.points.len()];
    let mut grooves = Vec::new();
    for start in 0..surface.points.len() as u32 {
        if taken[start as usize] || !deep(start) {
            continue;
        }
        let whole = searcher.joined(surface, start, deep);
        for &v in &whole {
            taken[v as usize] = true;
        }
        let groove = measured(surface, &mut searcher, over, &whole);
        grooves.extend(groove.filter(Groove::is_fold));
    }
    grooves
}

fn measured(
    surface: &Surface<'_>,
    searcher: &mut Searcher,
    over: &Departures,
    whole: &[u32],
) -> Option<Groove> {
    const LEAST_VERTICES: usize = 8;
    const MOST_BESIDE_END: f64 = 0.2;
    if whole.len() < LEAST_VERTICES {
        return None;
    }
    let first = *whole.first()?;
    let members: std::collections::BTreeSet<u32> = whole.iter().copied().collect();
    // From end to end: the last that is reached from the last reached.
    let one_end = *searcher
        .joined(surface, first, |v| members.contains(&v))
        .last()?;
    let rings = searcher.rings(surface, one_end, |v| members.contains(&v));
    let length_mm = length_along(surface, &rings);
    let middle = *rings.get(rings.len() / 2)?.first()?;
    // A groove has two sides: what runs along the end of the surface, or of the
    // part that is looked at, is where it bends away.
    let ends = |v: u32| surface.at_rim[v as usize] || over.raw_mm[v as usize].is_nan();
    let beside_end = |v: &&u32| ends(**v) || surface.neighbours(**v).iter().any(|&n| ends(n));
    if whole.iter().filter(beside_end).count() as f64 > MOST_BESIDE_END * whole.len() as f64 {
        return None;
    }
    // With one ring more, so that the sides are whole.
    let mut wide = members;
    for &v in whole {
        wide.extend(surface.neighbours(v));
    }
    let (mut first_moment, mut second_moment) = (0.0, 0.0);
    for &v in &wide {
        let depth = -f64::from(over.raw_mm[v as usize]);
        if !depth.is_nan() {
            first_moment += surface.areas[v as usize] * depth;
            second_moment += surface.areas[v as usize] * depth * depth;
        }
    }
    if first_moment <= 0.0 || second_moment <= 0.0 {
        return None;
    }
    let width_mm = first_moment * first_moment / second_moment / length_mm.max(1e-9);
    let mut depths: Vec<f64> = whole
        .iter()
        .map(|&v| -f64::from(over.raw_mm[v as usize]))
        .collect();
    depths.sort_by(f64::total_cmp);
    let depth_mm = depths[depths.len() * 9 / 10];
    let roughness: f64 = whole
        .iter()
        .map(|&v| f64::from(over.roughness_mm[v as usize]))
        .sum::<f64>()
        / whole.len() as f64;
    Some(Groove {
        centre: surface.points[middle as usize],
        length_mm,
        width_mm,
        depth_mm,
        depth_sd_mm: roughness.max(surface.noise_mm),
        vertices: whole.to_vec(),
        middles: middles(surface, &rings),
    })
}

/// The middles of every few rings.
fn middles(surface: &Surface<'_>, rings: &[Vec<u32>]) -> Vec<Point3<f64>> {
    const RINGS: usize = 4;
    rings
        .chunks(RINGS)
        .map(|few| {
            let places = few
                .iter()
                .flatten()
                .map(|&v| surface.points[v as usize].coords);
            let count: usize = few.iter().map(Vec::len).sum();
            Point3::from(places.sum::<Vector3<f64>>() / count as f64)
        })
        .collect()
}

/// Length of what lies in rings around one of its ends: the sum of the steps
/// between the middles of every few rings.
fn length_along(surface: &Surface<'_>, rings: &[Vec<u32>]) -> f64 {
    let middles = middles(surface, rings);
    let between: f64 = middles.windows(2).map(|m| (m[1] - m[0]).norm()).sum();
    let to_end = |ring: Option<&Vec<u32>>, middle: Option<&Point3<f64>>| {
        let end = ring
            .and_then(|r| r.first())
            .map(|&v| surface.points[v as usize]);
        end.zip(middle)
            .map_or(0.0, |(end, middle)| (end - middle).norm())
    };
    to_end(rings.first(), middles.first()) + between + to_end(rings.last(), middles.last())
}
