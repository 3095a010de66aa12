//! From what a file holds to a mesh: what every format needs once its
//! vertices and triangles are there.

use super::error::{ParseError, Place};
use super::format::Format;
use super::scan::Parsed;
use super::warning::ReadWarning;
use super::weld::{join_equal, near_earlier};
use crate::Mesh;
use nalgebra::Point3;

/// Greatest coordinate that is believed, in any unit (10 km in micrometres).
pub(super) const GREATEST_COORDINATE: f64 = 1e10;
/// Steps between neighbouring numbers that are too coarse, as a part of the
/// scan's diagonal: 0.01 mm for an arch of 100 mm.
const COARSE_STEP: f64 = 1e-4;
/// Part of the vertices without a triangle from which on it is worth a word.
const MANY_UNUSED: f64 = 0.01;
/// Part of all corners that must be alone for triangles to count as loose.
const NEARLY_ALL: f64 = 0.9;
/// Triangles from which on looseness is an accident and not the shape.
const FEW_TRIANGLES: usize = 16;
/// Near corners are joined within this part of the median edge.
const NEAR_PER_EDGE: f64 = 0.01;

/// How a file stores its coordinates.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Stored {
    /// 32-bit floating point.
    Single,
    /// 64-bit floating point, or decimal text.
    Exact,
    /// Whole numbers.
    Whole,
}

/// Vertices and triangles as a file gives them. Every index is in range and
/// every coordinate has passed [`checked`].
pub(super) struct Surface {
    pub vertices: Vec<Point3<f64>>,
    pub triangles: Vec<[u32; 3]>,
    pub colours: Option<Vec<[u8; 3]>>,
    pub stored: Stored,
}

/// A coordinate, if it can be one.
pub(super) fn checked(value: f64, place: impl FnOnce() -> Place) -> Result<f64, ParseError> {
    if value.abs() <= GREATEST_COORDINATE {
        Ok(value)
    } else if value.is_finite() {
        Err(ParseError::OutOfProportion {
            place: place(),
            value,
        })
    } else {
        Err(ParseError::NotFinite { place: place() })
    }
}

impl Surface {
    /// The mesh as by [`Self::finish`], once equal vertices have been joined;
    /// each keeps the colour of the first. Duplicate triangles are looked for
    /// beside, in case all vertices are different, as they mostly are.
    pub(super) fn weld_and_finish(
        mut self,
        format: Format,
        warnings: Vec<ReadWarning>,
    ) -> Result<Parsed, ParseError> {
        let count = self.vertices.len();
        let (numbers, likely) = rayon::join(
            || join_equal(&mut self.vertices),
            || likely_duplicates(&self.triangles, count),
        );
        let Some(numbers) = numbers else {
            return self.finish_knowing(Some(likely), format, warnings);
        };
        drop(likely);
        if let Some(colours) = &mut self.colours {
            let mut welded = Vec::with_capacity(self.vertices.len());
            for (&number, &colour) in numbers.iter().zip(colours.iter()) {
                if number as usize == welded.len() {
                    welded.push(colour);
                }
            }
            *colours = welded;
        }
        self.renumber(&numbers);
        drop(numbers);
        self.finish(format, warnings)
    }

    /// The mesh, without what has no area or no use, each loss counted in a
    /// warning. Equal vertices must have been joined.
    pub(super) fn finish(
        self,
        format: Format,
        warnings: Vec<ReadWarning>,
    ) -> Result<Parsed, ParseError> {
        self.finish_knowing(None, format, warnings)
    }

    /// As [`Self::finish`], where [`likely_duplicates`] may be known already.
    fn finish_knowing(
        mut self,
        likely: Option<Vec<u32>>,
        format: Format,
        mut warnings: Vec<ReadWarning>,
    ) -> Result<Parsed, ParseError> {
        let given = self.triangles.len() as u64;
        if given == 0 {
            return Err(ParseError::NoTriangles);
        }
        let mut repeated = self.drop_repeated_corners();
        if let Some(joined) = self.join_near_corners() {
            warnings.push(joined);
            repeated += self.drop_repeated_corners();
        }
        if self.triangles.is_empty() {
            return Err(ParseError::OnlyDegenerate { dropped: given });
        }
        if repeated > 0 {
            warnings.push(ReadWarning::RepeatedCorners { count: repeated });
        }
        let likely = likely
            .filter(|_| repeated == 0)
            .unwrap_or_else(|| likely_duplicates(&self.triangles, self.vertices.len()));
        let duplicates = self.drop_duplicates(likely);
        if repeated > 0 || duplicates.is_some() || !format.numbers_corners_only() {
            warnings.extend(duplicates);
            warnings.extend(self.drop_unused_vertices());
        }
        let stored = self.stored;
        let mesh = Mesh::new(self.vertices, self.triangles, self.colours)?;
        warnings.extend(coarseness(&mesh, stored));
        Ok(Parsed {
            mesh,
            format,
            warnings,
            solids: 1,
            carries_text: false,
            stl_attributes: false,
        })
    }

    fn renumber(&mut self, numbers: &[u32]) {
        for corner in self.triangles.as_flattened_mut() {
            *corner = numbers[*corner as usize];
        }
    }

    fn drop_repeated_corners(&mut self) -> u64 {
        let is_flat = |&[a, b, c]: &[u32; 3]| (a == b) | (b == c) | (c == a);
        // Asked of all before any is moved: that takes a fraction of the time.
        let before = self.triangles.len();
        if self.triangles.iter().fold(false, |any, t| any | is_flat(t)) {
            self.triangles.retain(|t| !is_flat(t));
        }
        (before - self.triangles.len()) as u64
    }

    /// Joins near corners where exact joining has left nearly every triangle
    /// loose: some exporters write each corner of a triangle with its own
    /// rounding.
    fn join_near_corners(&mut self) -> Option<ReadWarning> {
        let corners = 3 * self.triangles.len();
        let loose = self.triangles.len() >= FEW_TRIANGLES
            && self.vertices.len() as f64 > NEARLY_ALL * corners as f64;
        if !loose || self.colours.is_some() {
            return None;
        }
        let tolerance = NEAR_PER_EDGE * self.median_edge();
        let largest = self.vertices.iter().map(|p| p.coords.amax());
        // Below the numbers' own steps nothing is near but what is equal.
        if tolerance <= f64::EPSILON * largest.fold(0.0, f64::max) {
            return None;
        }
        let numbers = near_earlier(&self.vertices, tolerance);
        let joined = numbers
            .iter()
            .enumerate()
            .filter(|&(own, &number)| own != number as usize)
            .count() as u64;
        if joined == 0 {
            return None;
        }
        self.renumber(&numbers);
        // Those that were joined to another are not unused in the file.
        self.drop_unused_vertices();
        Some(ReadWarning::JoinedNearCorners { joined, tolerance })
    }

    fn median_edge(&self) -> f64 {
        let mut edges: Vec<f64> = self
            .triangles
            .iter()
            .flat_map(|t| {
                let [a, b, c] = t.map(|v| self.vertices[v as usize]);
                [b - a, c - b, a - c].map(|e| e.norm())
            })
            .collect();
        let middle = edges.len() / 2;
        if edges.is_empty() {
            0.0
        } else {
            *edges.select_nth_unstable_by(middle, f64::total_cmp).1
        }
    }

    /// Drops triangles whose three corners are those of an earlier one, which
    /// is among the `likely` as they are.
    fn drop_duplicates(&mut self, mut likely: Vec<u32>) -> Option<ReadWarning> {
        let key = |t: u32| corners_in_order(self.triangles[t as usize]);
        likely.sort_unstable_by_key(|&t| (key(t), t));
        let (mut count, mut turned) = (0, 0);
        let mut duplicate = vec![false; self.triangles.len()];
        for same in likely.chunk_by(|&t, &u| key(t) == key(u)) {
            let first = rotated(self.triangles[same[0] as usize]);
            for &later in &same[1..] {
                duplicate[later as usize] = true;
                count += 1;
                turned += u64::from(rotated(self.triangles[later as usize]) != first);
            }
        }
        if count == 0 {
            return None;
        }
        let mut number = 0;
        self.triangles.retain(|_| {
            number += 1;
            !duplicate[number - 1]
        });
        Some(ReadWarning::DuplicateTriangles { count, turned })
    }

    fn drop_unused_vertices(&mut self) -> Option<ReadWarning> {
        let mut used = vec![false; self.vertices.len()];
        for &corner in self.triangles.as_flattened() {
            used[corner as usize] = true;
        }
        let of = self.vertices.len() as u64;
        let count = of - used.iter().map(|&used| u64::from(used)).sum::<u64>();
        if count == 0 {
            return None;
        }
        let mut is_used = used.iter();
        self.vertices.retain(|_| is_used.next() == Some(&true));
        if let Some(colours) = &mut self.colours {
            let mut is_used = used.iter();
            colours.retain(|_| is_used.next() == Some(&true));
        }
        let mut next = 0;
        let number_of = |&used: &bool| {
            let number = next;
            next += u32::from(used);
            number
        };
        let numbers: Vec<u32> = used.iter().map(number_of).collect();
        self.renumber(&numbers);
        (count as f64 > MANY_UNUSED * of as f64)
            .then_some(ReadWarning::UnusedVertices { count, of })
    }
}

/// The corners in the same order, the least first.
fn rotated([a, b, c]: [u32; 3]) -> [u32; 3] {
    if a < b && a < c {
        [a, b, c]
    } else if b < c {
        [b, c, a]
    } else {
        [c, a, b]
    }
}

fn corners_in_order(mut corners: [u32; 3]) -> [u32; 3] {
    corners.sort_unstable();
    corners
}

/// Every triangle that has a duplicate, among a few that have none: those at
/// whose least corner two triangles left the same mark of 64.
fn likely_duplicates(triangles: &[[u32; 3]], vertices: usize) -> Vec<u32> {
    let mark = |corners: [u32; 3]| {
        let [least, _, _] = rotated(corners);
        let others = (corners[0] ^ corners[1] ^ corners[2]).wrapping_mul(0x9E37_79B9);
        (least as usize, 1_u64 << (others >> 26))
    };
    let mut marks = vec![0; vertices];
    let mut twice = vec![false; vertices];
    for &corners in triangles {
        let (least, mark) = mark(corners);
        twice[least] |= marks[least] & mark != 0;
        marks[least] |= mark;
    }
    drop(marks);
    let is_likely = |corners: &[u32; 3]| twice[mark(*corners).0];
    let count = triangles.iter().filter(|t| is_likely(t)).count();
    let mut likely = Vec::with_capacity(count);
    likely.extend(
        (0..)
            .zip(triangles)
            .filter(|(_, t)| is_likely(t))
            .map(|(number, _)| number),
    );
    likely
}

/// A warning where the numbers' own steps are too coarse for the surface.
fn coarseness(mesh: &Mesh, stored: Stored) -> Option<ReadWarning> {
    match stored {
        Stored::Exact => return None,
        Stored::Whole => return Some(ReadWarning::WholeNumbers),
        Stored::Single => {}
    }
    // Every vertex is used, so the box needs no look at the triangles.
    let first = mesh.vertices().first()?.coords;
    let (low, high) = mesh
        .vertices()
        .iter()
        .fold((first, first), |(low, high), p| {
            (low.inf(&p.coords), high.sup(&p.coords))
        });
    let largest = low.amax().max(high.amax());
    let size = (high - low).norm();
    let step = f64::from((largest as f32).next_up()) - f64::from(largest as f32);
    (step > COARSE_STEP * size).then_some(ReadWarning::CoarseCoordinates {
        largest,
        step,
        size,
    })
}
