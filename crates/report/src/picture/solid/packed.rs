//! A surface in few bytes. Triangles follow each other in a walk over the surface, so that most
//! are named by one turn and one corner, and each number of a new vertex is foretold by the
//! triangle before it: only the difference is kept. `page/turning/unpacked.js` reads it.
//!
//! The bytes, before they are compressed (zlib, RFC 1950):
//! 1. for each triangle its [`Turn`];
//! 2. for each of the [`NUMBERS`] of a vertex, the low bytes of all differences, then the high ones;
//! 3. the corners: 0 for the next new vertex, else 1 + the difference to the last vertex named so.
//!
//! Differences wrap at 16 bits and are folded so that small ones of either sign become small
//! numbers. Corners are of variable length, seven bits a byte, low ones first.

use mesh::{Mesh, Topology};

/// Numbers of a vertex: three coordinates, thickness, part of the arch.
pub const NUMBERS: usize = 5;

/// The numbers of a vertex.
pub type Numbers = [u16; NUMBERS];

/// How hard zlib tries: more takes longer and saves next to nothing.
const EFFORT: u8 = 4;

/// A surface in few bytes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Packed {
    /// Vertices that triangles use.
    pub vertices: usize,
    pub triangles: usize,
    /// Compressed by zlib.
    pub bytes: Vec<u8>,
}

/// Which edge of the triangle before a triangle shares.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Turn {
    /// From its third corner back to the second.
    Right = 0,
    /// From its first corner to the third.
    Left = 1,
    /// None that is known here: all three corners are given.
    Anew = 2,
}

/// Packs a mesh with the numbers of its vertices.
pub fn packed(mesh: &Mesh, numbers: &[Numbers]) -> Packed {
    let mut writer = Writer::new(mesh, numbers);
    for (turn, corners) in Walk::over(mesh) {
        writer.put(turn, corners);
    }
    let vertices = writer.next;
    Packed {
        vertices,
        triangles: mesh.triangles().len(),
        bytes: miniz_oxide::deflate::compress_to_vec_zlib(&writer.bytes(), EFFORT),
    }
}

/// Goes over all triangles, each once: to the right where it can, else to the left, so that it
/// winds round what was seen and meets its rim again in order.
struct Walk<'a> {
    triangles: &'a [[u32; 3]],
    topology: Topology,
    is_seen: Vec<bool>,
    /// The last triangle, and its corners from the one where it was entered.
    last: Option<(usize, [u32; 3])>,
    /// Left turns that were not taken.
    open: Vec<usize>,
    /// All before it are seen.
    first: usize,
}

impl<'a> Walk<'a> {
    fn over(mesh: &'a Mesh) -> Self {
        Self {
            triangles: mesh.triangles(),
            topology: Topology::of(mesh),
            is_seen: vec![false; mesh.triangles().len()],
            last: None,
            open: Vec::new(),
            first: 0,
        }
    }

    /// The triangle beyond an edge of another that was not seen, with its corners from there.
    fn beyond(&self, triangle: usize, [from, to]: [u32; 2]) -> Option<(usize, [u32; 3])> {
        let unseen = (self.topology.neighbours(triangle)).filter(|&other| !self.is_seen[other]);
        unseen.into_iter().find_map(|other| {
            let [a, b, c] = self.triangles[other];
            let turned = [[a, b, c], [b, c, a], [c, a, b]];
            let corners = turned.into_iter().find(|t| [t[0], t[1]] == [from, to])?;
            Some((other, corners))
        })
    }

    fn onward(&mut self) -> Option<(Turn, usize, [u32; 3])> {
        let (last, [a, b, c]) = self.last?;
        let right = self.beyond(last, [c, b]);
        let left = self.beyond(last, [a, c]);
        if let (Some(_), Some((left, _))) = (right, left) {
            self.open.push(left);
        }
        let taken = right.map(|(number, corners)| (Turn::Right, number, corners));
        taken.or(left.map(|(number, corners)| (Turn::Left, number, corners)))
    }

    fn anew(&mut self) -> Option<(Turn, usize, [u32; 3])> {
        while let Some(number) = self.open.pop() {
            if !self.is_seen[number] {
                return Some((Turn::Anew, number, self.triangles[number]));
            }
        }
        while *self.is_seen.get(self.first)? {
            self.first += 1;
        }
        Some((Turn::Anew, self.first, self.triangles[self.first]))
    }
}

impl Iterator for Walk<'_> {
    type Item = (Turn, [u32; 3]);

    fn next(&mut self) -> Option<Self::Item> {
        let (turn, number, corners) = self.onward().or_else(|| self.anew())?;
        self.is_seen[number] = true;
        self.last = Some((number, corners));
        Some((turn, corners))
    }
}

/// The three parts of the bytes as they grow.
struct Writer<'a> {
    numbers: &'a [Numbers],
    /// New number of each vertex of the mesh.
    renumbered: Vec<Option<u32>>,
    next: usize,
    named: u32,
    /// Vertices of the last triangle, in the numbering of the mesh.
    last: Option<[u32; 3]>,
    turns: Vec<u8>,
    differences: Vec<Numbers>,
    corners: Vec<u8>,
}

impl<'a> Writer<'a> {
    fn new(mesh: &Mesh, numbers: &'a [Numbers]) -> Self {
        Self {
            numbers,
            renumbered: vec![None; mesh.vertices().len()],
            next: 0,
            named: 0,
            last: None,
            turns: Vec::with_capacity(mesh.triangles().len()),
            differences: Vec::with_capacity(mesh.vertices().len()),
            corners: Vec::with_capacity(mesh.triangles().len() * 2),
        }
    }

    fn put(&mut self, turn: Turn, [a, b, c]: [u32; 3]) {
        self.turns.push(turn as u8);
        let of = |vertex: u32| self.numbers[vertex as usize];
        let before = self.last.map(|corners| corners.map(of));
        match (turn, before) {
            (Turn::Right, Some([dropped, ..])) | (Turn::Left, Some([_, dropped, _])) => {
                self.corner(c, beyond_edge(of(a), of(b), dropped));
            }
            _ => {
                let (first, second) = (of(a), of(b));
                self.corner(a, before.map_or([0; NUMBERS], |[.., last]| last));
                self.corner(b, first);
                self.corner(c, second);
            }
        }
        self.last = Some([a, b, c]);
    }

    fn corner(&mut self, vertex: u32, foretold: Numbers) {
        let vertex = vertex as usize;
        match self.renumbered[vertex] {
            Some(number) => {
                let difference = i64::from(number) - i64::from(self.named);
                self.named = number;
                self.varied(1 + ((difference << 1) ^ (difference >> 63)) as u64);
            }
            None => {
                self.renumbered[vertex] = Some(self.next as u32);
                self.next += 1;
                self.varied(0);
                let numbers = self.numbers[vertex];
                let difference = |k: usize| folded(numbers[k].wrapping_sub(foretold[k]));
                self.differences.push(std::array::from_fn(difference));
            }
        }
    }

    fn varied(&mut self, mut number: u64) {
        while number >= 0x80 {
            self.corners.push(number as u8 | 0x80);
            number >>= 7;
        }
        self.corners.push(number as u8);
    }

    fn bytes(self) -> Vec<u8> {
        let mut bytes = self.turns;
        for k in 0..NUMBERS {
            for half in 0..2 {
                let halves = self.differences.iter().map(|d| d[k].to_le_bytes()[half]);
                bytes.extend(halves);
            }
        }
        bytes.extend(self.corners);
        bytes
    }
}

/// What completes a parallelogram over an edge.
fn beyond_edge(a: Numbers, b: Numbers, dropped: Numbers) -> Numbers {
    std::array::from_fn(|k| a[k].wrapping_add(b[k]).wrapping_sub(dropped[k]))
}

/// 0, -1, 1, -2, … as 0, 1, 2, 3, …
fn folded(difference: u16) -> u16 {
    (difference << 1) ^ (if difference >> 15 == 1 { u16::MAX } else { 0 })
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Point3;

    /// Vertices and triangles of packed bytes, read as the page reads them.
    fn unpacked(packed: &Packed) -> (Vec<Numbers>, Vec<[u32; 3]>) {
        let bytes = miniz_oxide::inflate::decompress_to_vec_zlib(&packed.bytes).unwrap();
        let (turns, rest) = bytes.split_at(packed.triangles);
        let (planes, corners) = rest.split_at(2 * NUMBERS * packed.vertices);
        let difference = |vertex: usize, k: usize| {
            let half = |half: usize| planes[(2 * k + half) * packed.vertices + vertex];
            let folded = u16::from_le_bytes([half(0), half(1)]);
            (folded >> 1) ^ (folded & 1).wrapping_neg()
        };
        let mut corners = corners.iter();
        let mut vertices: Vec<Numbers> = Vec::new();
        let mut named = 0i64;
        let mut vertex = |vertices: &mut Vec<Numbers>, foretold: Numbers| -> u32 {
            let mut number = 0u64;
            for shift in (0..).step_by(7) {
                let byte = *corners.next().unwrap();
                number |= u64::from(byte & 0x7f) << shift;
                if byte < 0x80 {
                    break;
                }
            }
            if number == 0 {
                let new = vertices.len();
                vertices.push(std::array::from_fn(|k| {
                    foretold[k].wrapping_add(difference(new, k))
                }));
                return new as u32;
            }
            let folded = number - 1;
            named += (folded >> 1) as i64 ^ -((folded & 1) as i64);
            named as u32
        };
        let mut triangles: Vec<[u32; 3]> = Vec::new();
        let [mut a, mut b, mut c] = [0u32; 3];
        for &turn in turns {
            let of = |vertices: &Vec<Numbers>, v: u32| {
                vertices.get(v as usize).copied().unwrap_or_default()
            };
            if turn == Turn::Anew as u8 {
                let foretold = of(&vertices, c);
                a = vertex(&mut vertices, foretold);
                let foretold = of(&vertices, a);
                b = vertex(&mut vertices, foretold);
                let foretold = of(&vertices, b);
                c = vertex(&mut vertices, foretold);
            } else {
                let dropped = if turn == Turn::Right as u8 {
                    std::mem::replace(&mut a, c)
                } else {
                    std::mem::replace(&mut b, c)
                };
                let [a, b, dropped] = [a, b, dropped].map(|v| of(&vertices, v));
                c = vertex(&mut vertices, beyond_edge(a, b, dropped));
            }
            triangles.push([a, b, c]);
        }
        assert!(corners.next().is_none());
        (vertices, triangles)
    }

    /// A wavy sheet with a hole, a piece apart, a triangle that faces the other way, and one
    /// that shares an edge with two others.
    fn sheet() -> (Mesh, Vec<Numbers>) {
        const SIDE: u32 = 40;
        let place = |n: u32| (n % SIDE, n / SIDE);
        let point = |n: u32| {
            let (x, y) = place(n);
            Point3::new(f64::from(x), f64::from(y), (f64::from(x + y) * 0.3).sin())
        };
        let mut triangles = Vec::new();
        for (x, y) in (0..(SIDE - 1) * (SIDE - 1)).map(|n| (n % (SIDE - 1), n / (SIDE - 1))) {
            let n = y * SIDE + x;
            let is_hole = (10..14).contains(&x) && (20..23).contains(&y);
            if !is_hole && x != 30 {
                triangles.push([n, n + 1, n + SIDE + 1]);
                triangles.push([n, n + SIDE + 1, n + SIDE]);
            }
        }
        triangles[77].swap(0, 1);
        triangles.push([0, 1, 5 * SIDE]);
        triangles.push([1, 0, 7 * SIDE]);
        let vertices: Vec<Point3<f64>> = (0..SIDE * SIDE).map(point).collect();
        let numbers = (vertices.iter().enumerate())
            .map(|(n, p)| {
                let of = |c: f64| ((c + 2.0) * 1500.0) as u16;
                let unknown = n % 7 == 0;
                let thickness = if unknown { 0 } else { 60_000 + (n % 11) as u16 };
                [of(p.x), of(p.y), of(p.z), thickness, (n / 300) as u16]
            })
            .collect();
        (Mesh::new(vertices, triangles, None).unwrap(), numbers)
    }

    #[test]
    fn what_is_packed_comes_back_in_the_order_of_the_walk() {
        let (mesh, numbers) = sheet();
        let packed = packed(&mesh, &numbers);
        let (vertices, triangles) = unpacked(&packed);
        let walked: Vec<[u32; 3]> = Walk::over(&mesh).map(|(_, corners)| corners).collect();
        assert_eq!(triangles.len(), walked.len());
        for (back, there) in triangles.iter().zip(&walked) {
            let read = back.map(|v| vertices[v as usize]);
            assert_eq!(read, there.map(|v| numbers[v as usize]));
        }
        // The walk goes over each triangle once, and turns none over.
        let least_first = |t: &[u32; 3]| {
            let [a, b, c] = *t;
            [[a, b, c], [b, c, a], [c, a, b]].into_iter().min()
        };
        let mut all: Vec<_> = mesh.triangles().iter().map(least_first).collect();
        let mut seen: Vec<_> = walked.iter().map(least_first).collect();
        all.sort_unstable();
        seen.sort_unstable();
        assert_eq!(all, seen);
    }

    #[test]
    fn a_surface_takes_few_bytes() {
        let (mesh, numbers) = sheet();
        let packed = packed(&mesh, &numbers);
        let each = packed.bytes.len() as f64 / packed.triangles as f64;
        assert!(each < 3.0, "{each} bytes a triangle");
    }

    #[test]
    fn small_differences_of_either_sign_become_small_numbers() {
        let differences = [0, -1, 1, -2, i16::MAX, i16::MIN];
        let folded = differences.map(|d: i16| folded(d as u16));
        assert_eq!(folded, [0, 1, 2, 3, u16::MAX - 1, u16::MAX]);
    }
}
