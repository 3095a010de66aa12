//! Orders that keep neighbours in space together in memory.

use nalgebra::{Point3, Vector3};
use rayon::prelude::*;

/// Below this many things a task of its own costs more than it gains.
const WORTH_A_TASK: usize = 4096;

/// Numbers of the points in Morton order (30 bits) of their box.
pub(super) fn along_a_curve(points: &[Point3<f64>]) -> Vec<u32> {
    let Some(first) = points.first() else {
        return Vec::new();
    };
    let (low, high) = points
        .iter()
        .fold((first.coords, first.coords), |(l, h), p| {
            (l.inf(&p.coords), h.sup(&p.coords))
        });
    let cells = (high - low).map(|extent| if extent > 0.0 { 1023.0 / extent } else { 0.0 });
    let mut keyed: Vec<(u32, u32)> = points
        .par_iter()
        .zip(0..points.len() as u32)
        .map(|(p, i)| {
            let cell = (p.coords - low).component_mul(&cells);
            let key =
                spread(cell.x as u32) | spread(cell.y as u32) << 1 | spread(cell.z as u32) << 2;
            (key, i)
        })
        .collect();
    keyed.par_sort_unstable();
    keyed.into_iter().map(|(_, i)| i).collect()
}

/// Ten bits moved apart so that two more numbers fit between them.
fn spread(ten_bits: u32) -> u32 {
    let x = ten_bits & 0x3ff;
    let x = (x | x << 16) & 0x0300_00ff;
    let x = (x | x << 8) & 0x0300_f00f;
    let x = (x | x << 4) & 0x030c_30c3;
    (x | x << 2) & 0x0924_9249
}

/// Numbers of the places, such that each run of `size` (the last may be
/// shorter) holds near neighbours: halved across the longest side over and
/// over. Rounder groups than a curve gives, and so smaller boxes.
pub(super) fn in_groups(places: impl Iterator<Item = Vector3<f64>>, size: usize) -> Vec<u32> {
    let mut numbered: Vec<(Vector3<f64>, u32)> = places.zip(0..).collect();
    group(&mut numbered, size);
    numbered.into_iter().map(|(_, i)| i).collect()
}

fn group(places: &mut [(Vector3<f64>, u32)], size: usize) {
    if places.len() <= size {
        return;
    }
    let first = places[0].0;
    let (low, high) = places
        .iter()
        .fold((first, first), |(l, h), (p, _)| (l.inf(p), h.sup(p)));
    let axis = (high - low).imax();
    // Whole groups to the left; equal places part by number, so that the
    // outcome does not depend on the way of selecting.
    let middle = places.len().div_ceil(size) / 2 * size;
    places.select_nth_unstable_by(middle, |a, b| {
        a.0[axis].total_cmp(&b.0[axis]).then(a.1.cmp(&b.1))
    });
    let large = places.len() > WORTH_A_TASK;
    let (left, right) = places.split_at_mut(middle);
    if large {
        rayon::join(|| group(left, size), || group(right, size));
    } else {
        group(left, size);
        group(right, size);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn places() -> impl Strategy<Value = Vec<Vector3<f64>>> {
        let place = (-9.0..9.0, -9.0..9.0, prop_oneof![Just(0.0), -9.0..9.0]);
        prop::collection::vec(place.prop_map(|(x, y, z)| Vector3::new(x, y, z)), 0..300)
    }

    proptest! {
        #[test]
        fn every_number_stands_once_in_either_order(places in places(), size in 1_usize..12) {
            let all: Vec<u32> = (0..places.len() as u32).collect();
            let points: Vec<Point3<f64>> = places.iter().map(|&p| p.into()).collect();
            let mut grouped = in_groups(places.into_iter(), size);
            grouped.sort_unstable();
            prop_assert_eq!(&grouped, &all);
            let mut curve = along_a_curve(&points);
            curve.sort_unstable();
            prop_assert_eq!(&curve, &all);
        }
    }

    /// A square of 16 by 16 places holds 32 groups of eight, 2 by 4 places each.
    #[test]
    fn groups_of_a_square_grid_are_compact() {
        let grid: Vec<Vector3<f64>> = (0..256)
            .map(|i| Vector3::new(f64::from(i % 16), f64::from(i / 16), 0.0))
            .collect();
        for run in in_groups(grid.iter().copied(), 8).chunks(8) {
            let at = |i: &u32| grid[*i as usize];
            let extent = |axis: usize| {
                let along = || run.iter().map(|i| at(i)[axis]);
                along().fold(f64::MIN, f64::max) - along().fold(f64::MAX, f64::min)
            };
            assert_eq!(extent(0) + extent(1), 1.0 + 3.0);
        }
    }
}
