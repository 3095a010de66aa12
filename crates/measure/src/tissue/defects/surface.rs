//! The surface as points that know their neighbours.

use mesh::{Mesh, Topology};
use nalgebra::{Point3, Vector3};
use std::ops::Range;

/// Vertices with normals and neighbours.
pub struct Surface<'a> {
    pub points: &'a [Point3<f64>],
    pub normals: Vec<Vector3<f64>>,
    /// Area that each vertex stands for, mm².
    pub areas: Vec<f64>,
    /// Vertices of the part that is looked at.
    pub chosen: Vec<bool>,
    /// Vertices on the rim of the scan or of a hole.
    pub at_rim: Vec<bool>,
    /// Median edge, mm.
    pub edge_mm: f64,
    /// Standard deviation of the scan's noise, mm.
    pub noise_mm: f64,
    first: Vec<u32>,
    others: Vec<u32>,
}

impl<'a> Surface<'a> {
    /// A surface of which the triangles that are `chosen` are looked at.
    pub fn new(
        mesh: &'a Mesh,
        topology: &Topology,
        chosen: &[bool],
        edge_mm: f64,
        noise_mm: f64,
    ) -> Self {
        let count = mesh.vertices().len();
        let mut first = vec![0u32; count + 1];
        let mut areas = vec![0.0; count];
        let mut sums = vec![Vector3::zeros(); count];
        let mut chosen_vertex = vec![false; count];
        for (t, corners) in mesh.triangles().iter().enumerate() {
            let vector = mesh.area_vector(t);
            let share = vector.norm() / 3.0;
            for &v in corners {
                let v = v as usize;
                first[v + 1] += 1;
                areas[v] += share;
                sums[v] += vector;
                chosen_vertex[v] |= chosen[t];
            }
        }
        for v in 0..count {
            first[v + 1] += first[v];
        }
        // In a manifold each neighbour follows a vertex in one triangle only.
        let mut next = first.clone();
        let mut others = vec![0; mesh.triangles().len() * 3];
        for corners in mesh.triangles() {
            for k in 0..3 {
                let place = &mut next[corners[k] as usize];
                others[*place as usize] = corners[(k + 1) % 3];
                *place += 1;
            }
        }
        for normal in &mut sums {
            *normal = normal.try_normalize(0.0).unwrap_or_default();
        }
        let mut at_rim = vec![false; count];
        for &v in topology.boundary_loops().iter().flatten() {
            at_rim[v as usize] = true;
        }
        Self {
            points: mesh.vertices(),
            normals: sums,
            areas,
            chosen: chosen_vertex,
            at_rim,
            edge_mm,
            noise_mm,
            first,
            others,
        }
    }

    /// The neighbours of a vertex.
    pub fn neighbours(&self, v: u32) -> &[u32] {
        let range: Range<usize> =
            self.first[v as usize] as usize..self.first[v as usize + 1] as usize;
        &self.others[range]
    }

    /// One vertex for each cube of this side that chosen vertices lie in.
    pub fn spread(&self, side_mm: f64) -> Vec<u32> {
        let cube = |p: &Point3<f64>| [p.x, p.y, p.z].map(|c| (c / side_mm).floor() as i64);
        let mut cubes: Vec<([i64; 3], u32)> = (0..self.points.len())
            .filter(|&v| self.chosen[v])
            .map(|v| (cube(&self.points[v]), v as u32))
            .collect();
        cubes.sort_unstable();
        // The middle one: the first would stand at the cube's side.
        let mut spread: Vec<u32> = cubes
            .chunk_by(|a, b| a.0 == b.0)
            .map(|same| same[same.len() / 2].1)
            .collect();
        spread.sort_unstable();
        spread
    }
}

/// Finds what lies around a vertex; kept between searches, for speed.
pub struct Searcher {
    seen: Vec<u32>,
    round: u32,
}

impl Searcher {
    pub fn new(surface: &Surface<'_>) -> Self {
        Self {
            seen: vec![0; surface.points.len()],
            round: 0,
        }
    }

    /// The vertices that are joined to `from` through vertices that `open`
    /// accepts; nearest, by edges, first.
    pub fn joined(
        &mut self,
        surface: &Surface<'_>,
        from: u32,
        open: impl Fn(u32) -> bool,
    ) -> Vec<u32> {
        self.round += 1;
        let mut found = vec![from];
        self.seen[from as usize] = self.round;
        let mut next = 0;
        while next < found.len() {
            for &other in surface.neighbours(found[next]) {
                let seen = &mut self.seen[other as usize];
                if *seen != self.round {
                    *seen = self.round;
                    if open(other) {
                        found.push(other);
                    }
                }
            }
            next += 1;
        }
        found
    }

    /// Like [`Self::joined`], in rings of as many edges from the start.
    pub fn rings(
        &mut self,
        surface: &Surface<'_>,
        from: u32,
        open: impl Fn(u32) -> bool,
    ) -> Vec<Vec<u32>> {
        self.round += 1;
        self.seen[from as usize] = self.round;
        let mut rings = vec![vec![from]];
        while let Some(last) = rings.last().filter(|ring| !ring.is_empty()) {
            let mut ring = Vec::new();
            for &other in last.iter().flat_map(|&v| surface.neighbours(v)) {
                let seen = &mut self.seen[other as usize];
                if *seen != self.round {
                    *seen = self.round;
                    if open(other) {
                        ring.push(other);
                    }
                }
            }
            rings.push(ring);
        }
        rings.pop();
        rings
    }

    /// The vertices within `radius_mm` of `from`, joined to it within that ball.
    pub fn ball(&mut self, surface: &Surface<'_>, from: u32, radius_mm: f64) -> Vec<u32> {
        let centre = surface.points[from as usize];
        let reach = radius_mm * radius_mm;
        self.joined(surface, from, |v| {
            (surface.points[v as usize] - centre).norm_squared() <= reach
        })
    }
}
