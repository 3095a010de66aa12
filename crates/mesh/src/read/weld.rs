//! Joining vertices that are at the same place.

use hashbrown::HashTable;
use nalgebra::Point3;
use std::collections::HashMap;
use std::hash::{BuildHasher, RandomState};

/// A point as the bits of its coordinates, which say at once whether two are
/// equal, as long as no coordinate is NaN and none is -0.
pub(super) trait Bits: Copy + Eq {
    /// The same with 0 for -0.
    fn without_negative_zero(self) -> Self;
    /// A number that is the same for equal points.
    fn hash(self, seed: Seed) -> u64;
    /// The point of these bits.
    fn point(self) -> Point3<f64>;
}

/// 32-bit coordinates, x in the lower half of the first number and y in the
/// upper one. Three numbers of their own would be written one by one and read
/// back as two, which a processor must wait for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Single(u64, u32);

impl Single {
    /// No number in any coordinate: no point of a scan.
    pub(super) const NOWHERE: Self = Self(u64::MAX, u32::MAX);

    /// The point that 12 bytes hold, the least significant of each number first.
    #[inline]
    pub(super) fn from_le_bytes([x @ .., z0, z1, z2, z3]: [u8; 12]) -> Self {
        Self(u64::from_le_bytes(x), u32::from_le_bytes([z0, z1, z2, z3]))
    }

    /// The bits of the coordinates.
    #[inline]
    pub(super) fn coordinates(self) -> [u32; 3] {
        [self.0 as u32, (self.0 >> 32) as u32, self.1]
    }
}

impl Bits for Single {
    #[inline]
    fn without_negative_zero(self) -> Self {
        let [x, y, z] = self
            .coordinates()
            .map(|bits| if bits == 1 << 31 { 0 } else { bits });
        Self(u64::from(x) | u64::from(y) << 32, z)
    }

    #[inline]
    fn hash(self, seed: Seed) -> u64 {
        folded_product(self.0 ^ seed[0], u64::from(self.1) ^ seed[1])
    }

    fn point(self) -> Point3<f64> {
        Point3::from(self.coordinates().map(f32::from_bits).map(f64::from))
    }
}

/// 64-bit coordinates.
impl Bits for [u64; 3] {
    #[inline]
    fn without_negative_zero(self) -> Self {
        self.map(|bits| (f64::from_bits(bits) + 0.0).to_bits())
    }

    #[inline]
    fn hash(self, seed: Seed) -> u64 {
        const ODD: u64 = 0x9E37_79B9_7F4A_7C15;
        let [x, y, z] = self;
        folded_product(folded_product(x ^ seed[0], y ^ seed[1]) ^ z, ODD)
    }

    fn point(self) -> Point3<f64> {
        Point3::from(self.map(f64::from_bits))
    }
}

/// A secret that keeps a file from being made to collide.
type Seed = [u64; 2];

fn secret_seed() -> Seed {
    let state = RandomState::new();
    [state.hash_one(0), state.hash_one(1)]
}

/// Three numbers need no general hasher, which is where most of the time of
/// reading a binary STL went.
#[inline]
fn folded_product(a: u64, b: u64) -> u64 {
    let product = u128::from(a) * u128::from(b);
    (product as u64) ^ ((product >> 64) as u64)
}

/// Marks that hashes have left. One that has left none is new; most of those
/// that are new have left none, and need not be looked up among the others.
struct Marks {
    bits: Vec<u64>,
    shift: u32,
}

impl Marks {
    /// No marks yet; those of so many will fill a sixteenth of the room at most.
    fn with_room_for(hashes: usize) -> Self {
        let size = (16 * hashes).next_power_of_two().max(64);
        Self {
            bits: vec![0; size / 64],
            shift: 64 - size.ilog2(),
        }
    }

    fn place(&self, hash: u64) -> (usize, u64) {
        let bit = hash >> self.shift;
        ((bit / 64) as usize, 1 << (bit % 64))
    }

    /// Leaves a mark; whether it was there before.
    fn leave(&mut self, hash: u64) -> bool {
        let (word, bit) = self.place(hash);
        let before = self.bits[word] & bit != 0;
        self.bits[word] |= bit;
        before
    }

    fn has(&self, hash: u64) -> bool {
        let (word, bit) = self.place(hash);
        self.bits[word] & bit != 0
    }
}

/// Numbers different points in order of first appearance; equal points (0 and
/// -0 are equal) get the same number. No coordinate may be NaN.
pub(super) struct Welder<B> {
    points: Vec<B>,
    numbers: HashTable<u32>,
    seed: Seed,
}

impl<B: Bits> Welder<B> {
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
    pub(super) fn add(&mut self, point: B) -> u32 {
        let Self {
            points,
            numbers,
            seed,
        } = self;
        let point = point.without_negative_zero();
        let entry = numbers.entry(
            point.hash(*seed),
            |&n| points[n as usize] == point,
            |&n| points[n as usize].hash(*seed),
        );
        // Limits on file size and triangles keep this below 2^32.
        let new = points.len() as u32;
        let number = *entry.or_insert(new).get();
        if number == new {
            points.push(point);
        }
        number
    }

    /// The different points of both, by number, those of `other` after these;
    /// and the number of each of `other` among them.
    pub(super) fn joined_with(self, other: Self) -> (Vec<B>, Vec<u32>) {
        let Self {
            mut points,
            numbers,
            seed,
        } = self;
        let mut marks = Marks::with_room_for(points.len());
        for point in &points {
            marks.leave(point.hash(seed));
        }
        points.reserve_exact(other.points.len());
        let number_of = |point: B| {
            let hash = point.hash(seed);
            let known = marks
                .has(hash)
                .then(|| numbers.find(hash, |&n| points[n as usize] == point))
                .flatten();
            known.copied().unwrap_or_else(|| {
                points.push(point);
                points.len() as u32 - 1
            })
        };
        let others = other.points.into_iter().map(number_of).collect();
        (points, others)
    }

    /// Adds the points of another, in its order; gives their numbers here.
    pub(super) fn add_all(&mut self, other: Self) -> Vec<u32> {
        let points = other.points.into_iter();
        points.map(|point| self.add(point)).collect()
    }

    /// The different points, by number.
    pub(super) fn into_points(self) -> Vec<B> {
        self.points
    }
}

/// The places of points.
pub(super) fn places<B: Bits>(points: Vec<B>) -> Vec<Point3<f64>> {
    points.into_iter().map(B::point).collect()
}

/// Joins equal points of a list in place (0 and -0 are equal): what is left are
/// the different ones in order of first appearance. Gives for each point its
/// number among these, or nothing where all are different. No coordinate may be
/// NaN.
pub(super) fn join_equal(points: &mut Vec<Point3<f64>>) -> Option<Vec<u32>> {
    let seed = secret_seed();
    let hash_of = |p: &Point3<f64>| [p.x, p.y, p.z].map(f64::to_bits).hash(seed);
    let mut once = Marks::with_room_for(points.len());
    let mut twice = Marks::with_room_for(points.len());
    let mut likely = 0;
    for point in &mut *points {
        // -0 becomes 0.
        *point = point.map(|c| c + 0.0);
        let hash = hash_of(point);
        if once.leave(hash) {
            twice.leave(hash);
            likely += 1;
        }
    }
    drop(once);
    let mut known = HashTable::<u32>::with_capacity(likely);
    let mut numbers: Option<Vec<u32>> = None;
    let mut different = 0;
    for index in 0..points.len() {
        let point = points[index];
        let hash = hash_of(&point);
        let number = if twice.has(hash) {
            let entry = known.entry(
                hash,
                |&n| points[n as usize] == point,
                |&n| hash_of(&points[n as usize]),
            );
            *entry.or_insert(different).get()
        } else {
            different
        };
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
#[allow(clippy::unwrap_used)]
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
        .map(|p| welder.add(p.map(f64::to_bits)));
        assert_eq!(numbers, [0, 1, 0, 1, 2]);
        assert_eq!(welder.into_points().len(), 3);
    }

    #[test]
    fn a_list_is_joined_as_points_one_by_one_are() {
        let given = [1.0, 0.0, 2.0, -0.0, 1.0, 3.0].map(|x| Point3::new(x, 0.0, -x));
        let mut joined = given.to_vec();
        assert_eq!(join_equal(&mut joined), Some(vec![0, 1, 2, 1, 0, 3]));
        let mut welder = Welder::with_room_for(0);
        for p in &given {
            welder.add([p.x, p.y, p.z].map(f64::to_bits));
        }
        assert_eq!(joined, places(welder.into_points()));
        assert_eq!(join_equal(&mut joined), None);
        assert_eq!(joined.len(), 4);
    }

    #[test]
    fn two_welders_number_as_one_does() {
        let single = |x: f32| {
            let bytes = [x, 2.0, -x].map(f32::to_le_bytes);
            Single::from_le_bytes(*bytes.as_flattened().first_chunk().unwrap())
        };
        let given: Vec<_> = [1.0, 0.0, 3.0, -0.0, 4.0, 1.0, 5.0, 4.0].map(single).into();
        let mut one = Welder::with_room_for(0);
        let wanted: Vec<u32> = given.iter().map(|&p| one.add(p)).collect();
        let (mut first, mut second) = (Welder::with_room_for(0), Welder::with_room_for(0));
        let mut numbers: Vec<u32> = given[..3].iter().map(|&p| first.add(p)).collect();
        let own: Vec<u32> = given[3..].iter().map(|&p| second.add(p)).collect();
        let (points, others) = first.joined_with(second);
        numbers.extend(own.iter().map(|&n| others[n as usize]));
        assert_eq!(numbers, wanted);
        assert_eq!(points, one.into_points());
    }

    #[test]
    fn near_points_join_across_cell_borders_and_far_ones_do_not() {
        let points = [0.0, 1.9, 2.1, -0.5, 4.0, 3.2].map(|x| Point3::new(x, 0.0, 0.0));
        assert_eq!(near_earlier(&points, 1.0), [0, 1, 1, 0, 4, 4]);
    }
}
