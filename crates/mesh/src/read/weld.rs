//! Joining vertices that are at the same place.

use hashbrown::HashTable;
use nalgebra::Point3;
use std::collections::HashMap;
use std::hash::{BuildHasher, RandomState};

/// A coordinate as it is stored. Equal numbers have equal bits, as long as
/// none is NaN and -0 has been turned into 0.
pub(super) trait Coordinate: Copy {
    /// The bits, at the lower end of 64.
    type Bits: Copy + Eq + Into<u64>;
    /// The bits of the number, those of 0 for -0.
    fn bits(self) -> Self::Bits;
    /// The number of these bits.
    fn from_bits(bits: Self::Bits) -> f64;
}

impl Coordinate for f32 {
    type Bits = u32;
    fn bits(self) -> u32 {
        (self + 0.0).to_bits()
    }
    fn from_bits(bits: u32) -> f64 {
        f64::from(Self::from_bits(bits))
    }
}

impl Coordinate for f64 {
    type Bits = u64;
    fn bits(self) -> u64 {
        (self + 0.0).to_bits()
    }
    fn from_bits(bits: u64) -> f64 {
        Self::from_bits(bits)
    }
}

/// Numbers different points in order of first appearance; equal points (0 and
/// -0 are equal) get the same number. No coordinate may be NaN.
pub(super) struct Welder<C: Coordinate> {
    points: Vec<[C::Bits; 3]>,
    numbers: HashTable<u32>,
    seed: [u64; 2],
}

impl<C: Coordinate> Welder<C> {
    /// A welder that need not grow before it has so many points.
    pub(super) fn with_room_for(points: usize) -> Self {
        Self {
            points: Vec::with_capacity(points),
            numbers: HashTable::with_capacity(points),
            seed: secret_seed(),
        }
    }

    /// The number of a point.
    #[inline]
    pub(super) fn add(&mut self, point: [C; 3]) -> u32 {
        self.add_bits(point.map(C::bits))
    }

    /// Adds the points of another, in its order; gives their numbers here.
    pub(super) fn add_all(&mut self, other: Self) -> Vec<u32> {
        let points = other.points.into_iter();
        points.map(|point| self.add_bits(point)).collect()
    }

    #[inline]
    fn add_bits(&mut self, point: [C::Bits; 3]) -> u32 {
        let Self {
            points,
            numbers,
            seed,
        } = self;
        let hash_of = |bits: [C::Bits; 3]| hash(bits.map(Into::into), *seed);
        let own_hash = hash_of(point);
        let entry = numbers.entry(
            own_hash,
            |&n| points[n as usize] == point,
            |&n| hash_of(points[n as usize]),
        );
        // Limits on file size and triangles keep this below 2^32.
        let new = points.len() as u32;
        let number = *entry.or_insert(new).get();
        if number == new {
            points.push(point);
        }
        number
    }

    /// The different points, by number.
    pub(super) fn into_vertices(self) -> Vec<Point3<f64>> {
        self.points
            .into_iter()
            .map(|point| Point3::from(point.map(C::from_bits)))
            .collect()
    }
}

/// Joins equal points of a list in place (0 and -0 are equal): what is left are
/// the different ones in order of first appearance. Gives for each point its
/// number among these, or nothing where all are different. No coordinate may be
/// NaN.
pub(super) fn join_equal(points: &mut Vec<Point3<f64>>) -> Option<Vec<u32>> {
    let mut known = HashTable::<u32>::with_capacity(points.len());
    let seed = secret_seed();
    let hash_of = |p: &Point3<f64>| hash([p.x, p.y, p.z].map(f64::to_bits), seed);
    let mut numbers: Option<Vec<u32>> = None;
    let mut different = 0;
    for index in 0..points.len() {
        // -0 becomes 0.
        let point = points[index].map(|c| c + 0.0);
        let entry = known.entry(
            hash_of(&point),
            |&n| points[n as usize] == point,
            |&n| hash_of(&points[n as usize]),
        );
        let number = *entry.or_insert(different).get();
        if number == different {
            points[different as usize] = point;
            different += 1;
        } else if numbers.is_none() {
            let mut before = Vec::with_capacity(points.len());
            before.extend(0..different);
            numbers = Some(before);
        }
        if let Some(numbers) = &mut numbers {
            numbers.push(number);
        }
    }
    points.truncate(different as usize);
    numbers
}

/// A secret seed keeps a file from being made to collide.
fn secret_seed() -> [u64; 2] {
    let state = RandomState::new();
    [state.hash_one(0), state.hash_one(1)]
}

/// Two folded multiplications: three numbers need no general hasher, which is
/// where most of the time of reading a binary STL went.
fn hash([x, y, z]: [u64; 3], seed: [u64; 2]) -> u64 {
    let fold = |a: u64, b: u64| {
        let product = u128::from(a) * u128::from(b);
        (product as u64) ^ ((product >> 64) as u64)
    };
    fold(
        fold(x ^ seed[0], y.rotate_left(32) ^ seed[1]) ^ z,
        0x9E37_79B9_7F4A_7C15,
    )
}

/// For each point the first earlier one within `tolerance` of it that is not
/// itself joined to another, or itself.
///
/// Points are looked up in a grid of cells twice the tolerance wide, so that
/// everything near a point is in the 8 cells around the nearest cell corner.
pub(super) fn near_earlier(points: &[Point3<f64>], tolerance: f64) -> Vec<u32> {
    const NONE: u32 = u32::MAX;
    let mut first_in_cell: HashMap<[i64; 3], u32> = HashMap::new();
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
        let mut welder = Welder::with_room_for(0);
        let numbers = [
            [1.0, 0.0, 0.0],
            [0.0, 0.0, 0.0],
            [1.0, -0.0, 0.0],
            [-0.0, 0.0, -0.0],
            [1.0, f64::MIN_POSITIVE, 0.0],
        ]
        .map(|p| welder.add(p));
        assert_eq!(numbers, [0, 1, 0, 1, 2]);
        assert_eq!(welder.into_vertices().len(), 3);
    }

    #[test]
    fn a_list_is_joined_as_points_one_by_one_are() {
        let given = [1.0, 0.0, 2.0, -0.0, 1.0, 3.0].map(|x| Point3::new(x, 0.0, -x));
        let mut joined = given.to_vec();
        assert_eq!(join_equal(&mut joined), Some(vec![0, 1, 2, 1, 0, 3]));
        let mut welder = Welder::with_room_for(0);
        for p in &given {
            welder.add([p.x, p.y, p.z]);
        }
        assert_eq!(joined, welder.into_vertices());
        assert_eq!(join_equal(&mut joined), None);
        assert_eq!(joined.len(), 4);
    }

    #[test]
    fn near_points_join_across_cell_borders_and_far_ones_do_not() {
        let points = [0.0, 1.9, 2.1, -0.5, 4.0, 3.2].map(|x| Point3::new(x, 0.0, 0.0));
        assert_eq!(near_earlier(&points, 1.0), [0, 1, 1, 0, 4, 4]);
    }
}
