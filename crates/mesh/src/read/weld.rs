//! Joining vertices that are at the same place.

use foldhash::fast::RandomState;
use hashbrown::HashTable;
use hashbrown::hash_table::Entry;
use nalgebra::Point3;
use std::hash::BuildHasher;

/// Numbers different points in order of first appearance; equal points (0 and
/// -0 are equal) get the same number. No coordinate may be NaN.
#[derive(Default)]
pub(super) struct Welder {
    vertices: Vec<Point3<f64>>,
    numbers: HashTable<u32>,
    state: RandomState,
}

impl Welder {
    /// A welder that need not grow before it has so many points.
    pub fn with_room_for(points: usize) -> Self {
        Self {
            vertices: Vec::with_capacity(points),
            numbers: HashTable::with_capacity(points),
            state: RandomState::default(),
        }
    }

    /// The number of a point.
    pub fn add(&mut self, point: Point3<f64>) -> u32 {
        let Self {
            vertices,
            numbers,
            state,
        } = self;
        // Adding 0 turns -0 into 0, which has another bit pattern.
        let point = point.map(|c| c + 0.0);
        let hash = |p: &Point3<f64>| state.hash_one([p.x.to_bits(), p.y.to_bits(), p.z.to_bits()]);
        let entry = numbers.entry(
            hash(&point),
            |&number| vertices[number as usize] == point,
            |&number| hash(&vertices[number as usize]),
        );
        match entry {
            Entry::Occupied(known) => *known.get(),
            Entry::Vacant(free) => {
                // Limits on file size and triangles keep this below 2^32.
                let number = vertices.len() as u32;
                free.insert(number);
                vertices.push(point);
                number
            }
        }
    }

    /// The different points, by number.
    pub fn into_vertices(self) -> Vec<Point3<f64>> {
        self.vertices
    }
}

/// For each point the first earlier one within `tolerance` of it that is not
/// itself joined to another, or itself.
///
/// Points are looked up in a grid of cells twice the tolerance wide, so that
/// everything near a point is in the 8 cells around the nearest cell corner.
pub(super) fn near_earlier(points: &[Point3<f64>], tolerance: f64) -> Vec<u32> {
    const NONE: u32 = u32::MAX;
    let mut first_in_cell: hashbrown::HashMap<[i64; 3], u32, RandomState> =
        hashbrown::HashMap::with_hasher(RandomState::default());
    let mut next_in_cell = vec![NONE; points.len()];
    let mut joined_to = Vec::with_capacity(points.len());
    let cell_of = |p: &Point3<f64>| [p.x, p.y, p.z].map(|c| (c / (2.0 * tolerance)).floor() as i64);
    for (number, point) in points.iter().enumerate() {
        let low = cell_of(&point.map(|c| c - tolerance));
        let near = (0..8).find_map(|corner| {
            let cell = [0, 1, 2].map(|axis| low[axis].saturating_add((corner >> axis) & 1));
            let mut candidate = first_in_cell.get(&cell).copied().unwrap_or(NONE);
            while candidate != NONE {
                if nalgebra::distance(&points[candidate as usize], point) <= tolerance {
                    return Some(candidate);
                }
                candidate = next_in_cell[candidate as usize];
            }
            None
        });
        joined_to.push(near.unwrap_or_else(|| {
            let number = number as u32;
            let before = first_in_cell.insert(cell_of(point), number);
            next_in_cell[number as usize] = before.unwrap_or(NONE);
            number
        }));
    }
    joined_to
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_points_get_the_number_of_the_first() {
        let mut welder = Welder::default();
        let numbers = [
            Point3::new(1.0, 0.0, 0.0),
            Point3::new(0.0, 0.0, 0.0),
            Point3::new(1.0, -0.0, 0.0),
            Point3::new(-0.0, 0.0, -0.0),
            Point3::new(1.0, f64::MIN_POSITIVE, 0.0),
        ]
        .map(|p| welder.add(p));
        assert_eq!(numbers, [0, 1, 0, 1, 2]);
        assert_eq!(welder.into_vertices().len(), 3);
    }

    #[test]
    fn near_points_join_across_cell_borders_and_far_ones_do_not() {
        let points = [0.0, 1.9, 2.1, -0.5, 4.0, 3.2].map(|x| Point3::new(x, 0.0, 0.0));
        assert_eq!(near_earlier(&points, 1.0), [0, 1, 1, 0, 4, 4]);
    }
}
