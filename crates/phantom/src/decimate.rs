//! Triangles merged where the surface is flat.

use crate::rebuilt::rebuilt;
use mesh::{Mesh, Topology};
use nalgebra::{Point3, Vector3};

/// Sweeps over all vertices.
const SWEEPS: usize = 4;
/// A vertex may lie this far from the triangles that take its place, mm.
const OFF_MM: f64 = 0.012;
/// The new triangles may turn by an angle of this cosine.
const TURN: f64 = 0.98;

/// The mesh with fewer vertices: one goes where its neighbours can stand in for
/// it, no edge grows beyond `longest_mm`, and rims stay as they are.
pub(crate) fn decimated(mesh: &Mesh, longest_mm: f64) -> Mesh {
    let mut thinned = Thinned::of(mesh);
    for _ in 0..SWEEPS {
        for vertex in 0..thinned.vertices.len() as u32 {
            thinned.thin(vertex, longest_mm);
        }
    }
    let colours = mesh.colours().map(<[_]>::to_vec);
    let kept = thinned.triangles.into_iter().flatten().collect();
    without_loose_vertices(thinned.vertices, kept, colours)
}

struct Thinned {
    vertices: Vec<Point3<f64>>,
    /// `None` for those that are gone.
    triangles: Vec<Option<[u32; 3]>>,
    /// Triangles around each vertex; empty for one that is gone or stays.
    around: Vec<Vec<u32>>,
    stays: Vec<bool>,
}

impl Thinned {
    fn of(mesh: &Mesh) -> Self {
        let mut around = vec![Vec::new(); mesh.vertices().len()];
        for (t, corners) in mesh.triangles().iter().enumerate() {
            for &v in corners {
                around[v as usize].push(t as u32);
            }
        }
        let mut stays = vec![false; mesh.vertices().len()];
        for rim in Topology::of(mesh).boundary_loops() {
            for &v in rim {
                stays[v as usize] = true;
            }
        }
        Self {
            vertices: mesh.vertices().to_vec(),
            triangles: mesh.triangles().iter().copied().map(Some).collect(),
            around,
            stays,
        }
    }

    fn neighbours(&self, vertex: u32) -> Vec<u32> {
        let corners = (self.around[vertex as usize].iter())
            .filter_map(|&t| self.triangles[t as usize])
            .flatten();
        let mut near: Vec<u32> = corners.filter(|&v| v != vertex).collect();
        near.sort_unstable();
        near.dedup();
        near
    }

    /// Lets the nearest neighbour that can stand in for a vertex do so.
    fn thin(&mut self, vertex: u32, longest_mm: f64) {
        if self.stays[vertex as usize] {
            return;
        }
        let ring = self.neighbours(vertex);
        let here = self.vertices[vertex as usize];
        let mut nearest = ring.clone();
        nearest.sort_by(|&a, &b| {
            let [a, b] = [a, b].map(|v| (self.vertices[v as usize] - here).norm_squared());
            a.total_cmp(&b)
        });
        let stand_in = nearest
            .into_iter()
            .find(|&other| self.can_stand_in(vertex, other, &ring, longest_mm));
        if let Some(other) = stand_in {
            self.merge(vertex, other);
        }
    }

    fn can_stand_in(&self, vertex: u32, other: u32, ring: &[u32], longest_mm: f64) -> bool {
        let to = self.vertices[other as usize];
        let is_near = |v: &u32| (self.vertices[*v as usize] - to).norm() <= longest_mm;
        let beside = self.neighbours(other);
        let shared = ring.iter().filter(|v| beside.binary_search(v).is_ok());
        if shared.count() != 2 || !ring.iter().all(is_near) {
            return false;
        }
        let here = self.vertices[vertex as usize];
        (self.around[vertex as usize].iter())
            .filter_map(|&t| self.triangles[t as usize])
            .filter(|corners| !corners.contains(&other))
            .all(|corners| {
                let before = self.normal(corners);
                let after = self.normal(corners.map(|v| if v == vertex { other } else { v }));
                before.dot(&after) > TURN && after.dot(&(here - to)).abs() < OFF_MM
            })
    }

    fn normal(&self, corners: [u32; 3]) -> Vector3<f64> {
        let [a, b, c] = corners.map(|v| self.vertices[v as usize]);
        let square = (b - a).cross(&(c - a));
        square.try_normalize(1e-9).unwrap_or_default()
    }

    fn merge(&mut self, vertex: u32, other: u32) {
        for t in std::mem::take(&mut self.around[vertex as usize]) {
            let Some(corners) = self.triangles[t as usize] else {
                continue;
            };
            if corners.contains(&other) {
                self.triangles[t as usize] = None;
                for v in corners.into_iter().filter(|&v| v != vertex) {
                    self.around[v as usize].retain(|&own| own != t);
                }
            } else {
                let replaced = corners.map(|v| if v == vertex { other } else { v });
                self.triangles[t as usize] = Some(replaced);
                self.around[other as usize].push(t);
            }
        }
        self.stays[vertex as usize] = true;
    }
}

fn without_loose_vertices(
    vertices: Vec<Point3<f64>>,
    triangles: Vec<[u32; 3]>,
    colours: Option<Vec<[u8; 3]>>,
) -> Mesh {
    let mut number = vec![None; vertices.len()];
    let (mut kept, mut kept_colours) = (Vec::new(), Vec::new());
    let triangles = triangles
        .into_iter()
        .map(|corners| {
            corners.map(|v| {
                *number[v as usize].get_or_insert_with(|| {
                    kept.push(vertices[v as usize]);
                    kept_colours.extend(colours.as_ref().map(|c| c[v as usize]));
                    kept.len() as u32 - 1
                })
            })
        })
        .collect();
    rebuilt(kept, triangles, colours.map(|_| kept_colours))
}
