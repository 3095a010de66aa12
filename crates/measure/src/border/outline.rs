//! The border roughly, on the height map: one closed path of most height over
//! the rays, by dynamic programming.

use super::rays::Ray;
use geometry::height_map::HeightMap;
use nalgebra::{Point3, Vector2};

/// Places looked at along a ray.
const PLACES: usize = 64;
/// How much height (mm) a step of 1 mm from one ray to the next is worth,
/// squared: frena are followed, strays are not.
const STEP_COST: f64 = 0.2;
/// Surface beyond a gap as wide as this does not belong to the flange, mm.
const GAP_MM: f64 = 3.0;

/// One rough border point for each ray; `None` where no closed path exists.
pub fn rough_border(map: &HeightMap, rays: &[Ray]) -> Option<Vec<Point3<f64>>> {
    let columns: Vec<Vec<Option<Point3<f64>>>> = rays.iter().map(|ray| places(map, ray)).collect();
    let values: Vec<Vec<f64>> = rays
        .iter()
        .zip(&columns)
        .map(|(ray, column)| {
            column
                .iter()
                .map(|place| value(ray, place.as_ref()))
                .collect()
        })
        .collect();
    // Twice round from anywhere: after the first round the path no longer
    // remembers where it began, and before the last it does not see the end.
    let count = rays.len();
    let mut sums = values.first()?.clone();
    let mut came_from: Vec<Vec<u8>> = Vec::with_capacity(2 * count);
    for step in 1..2 * count {
        let (before, here) = ((step - 1) % count, step % count);
        let (next, from) = advanced(&sums, &columns[before], &columns[here], &values[here]);
        sums = next;
        came_from.push(from);
    }
    let mut at = (0..PLACES).max_by(|&a, &b| sums[a].total_cmp(&sums[b]))?;
    let mut path = vec![0; count];
    for step in (1..2 * count).rev() {
        // The middle of the two rounds is kept.
        if step >= count / 2 && step < count / 2 + count {
            path[step % count] = at;
        }
        at = usize::from(came_from[step - 1][at]);
    }
    let points: Vec<Point3<f64>> = path
        .iter()
        .enumerate()
        .filter_map(|(ray, &place)| columns[ray][place])
        .collect();
    // Rays over holes are passed by; too many of them leave no border.
    (points.len() * 5 > count * 4).then_some(points)
}

/// The surface along a ray up to its first wide gap.
fn places(map: &HeightMap, ray: &Ray) -> Vec<Option<Point3<f64>>> {
    let step = ray.reach_mm / PLACES as f64;
    let mut missing = 0.0;
    let mut seen = false;
    (1..=PLACES)
        .map(|k| {
            let place = ray.from + ray.toward * (k as f64 * step);
            let height = map.at(place);
            missing = if height.is_some() {
                0.0
            } else {
                missing + step
            };
            seen |= height.is_some();
            if missing > GAP_MM && seen {
                missing = f64::INFINITY;
                return None;
            }
            height.map(|z| Point3::new(place.x, place.y, z))
        })
        .collect()
}

/// How far a place lies in the direction in which the border is furthest, mm.
fn value(ray: &Ray, place: Option<&Point3<f64>>) -> f64 {
    let Some(place) = place else {
        return NOWHERE;
    };
    let out: Vector2<f64> = place.xy() - ray.from;
    ray.lean.sin() * out.dot(&ray.toward) + ray.lean.cos() * place.z
}

/// The worth of a place without surface: less than that of any other.
const NOWHERE: f64 = -1000.0;

fn advanced(
    sums: &[f64],
    before: &[Option<Point3<f64>>],
    here: &[Option<Point3<f64>>],
    values: &[f64],
) -> (Vec<f64>, Vec<u8>) {
    (0..PLACES)
        .map(|k| {
            let cost = |j: usize| match (&before[j], &here[k]) {
                (Some(a), Some(b)) => STEP_COST * (a - b).norm_squared(),
                _ => 0.0,
            };
            let (best, from) = (0..PLACES).map(|j| (sums[j] - cost(j), j)).fold(
                (f64::NEG_INFINITY, 0),
                |best, other| {
                    if other.0 > best.0 { other } else { best }
                },
            );
            (best + values[k], from as u8)
        })
        .unzip()
}
