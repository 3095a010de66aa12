//! The indexed triangle mesh that everything else works on.

use nalgebra::{Isometry3, Point3, Vector3};
use rayon::prelude::*;
use thiserror::Error;

/// Why vertices and triangles do not make a mesh.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum MeshError {
    /// A triangle names a vertex that is not there.
    #[error("triangle {triangle} refers to vertex {vertex}, but there are {vertices}")]
    VertexOutOfRange {
        /// Triangle number, from 0.
        triangle: usize,
        /// The vertex number it names.
        vertex: u32,
        /// How many vertices there are.
        vertices: usize,
    },
    /// A coordinate is NaN or infinite.
    #[error("vertex {vertex} has a coordinate that is not a finite number")]
    NotFinite {
        /// Vertex number, from 0.
        vertex: usize,
    },
    /// The colour list is not as long as the vertex list.
    #[error("{colours} colours for {vertices} vertices")]
    ColourCount {
        /// Length of the colour list.
        colours: usize,
        /// Length of the vertex list.
        vertices: usize,
    },
    /// More vertices than a 32-bit index can name.
    #[error("{0} vertices are more than a mesh can index (4,294,967,295)")]
    TooManyVertices(usize),
}

/// Indexed triangles with optional colour per vertex.
///
/// Every index is in range and every coordinate finite; triangles wind
/// counter-clockwise seen from outside. Nothing else is promised: scans have
/// holes, loose parts, degenerate and non-manifold places.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Mesh {
    vertices: Vec<Point3<f64>>,
    triangles: Vec<[u32; 3]>,
    colours: Option<Vec<[u8; 3]>>,
}

impl Mesh {
    /// A mesh from its parts.
    ///
    /// # Errors
    /// When an index is out of range, a coordinate is not finite, or the
    /// colours (sRGB, one per vertex) are of another number than the vertices.
    pub fn new(
        vertices: Vec<Point3<f64>>,
        triangles: Vec<[u32; 3]>,
        colours: Option<Vec<[u8; 3]>>,
    ) -> Result<Self, MeshError> {
        if vertices.len() > u32::MAX as usize {
            return Err(MeshError::TooManyVertices(vertices.len()));
        }
        let is_finite = |p: &Point3<f64>| {
            p.coords
                .iter()
                .fold(true, |so_far, c| so_far & c.is_finite())
        };
        let count = vertices.len();
        // Asked of all before it is asked which: that takes a fraction of the time.
        let (all_finite, greatest) = rayon::join(
            || vertices.iter().fold(true, |all, p| all & is_finite(p)),
            || {
                let corners = triangles.as_flattened().iter();
                corners.fold(0, |greatest, &v| v.max(greatest))
            },
        );
        if !all_finite && let Some(vertex) = vertices.iter().position(|p| !is_finite(p)) {
            return Err(MeshError::NotFinite { vertex });
        }
        if greatest as usize >= count
            && let Some((triangle, vertex)) =
                triangles
                    .iter()
                    .enumerate()
                    .find_map(|(triangle, corners)| {
                        let vertex = corners.iter().find(|&&v| v as usize >= count)?;
                        Some((triangle, *vertex))
                    })
        {
            return Err(MeshError::VertexOutOfRange {
                triangle,
                vertex,
                vertices: count,
            });
        }
        if let Some(colours) = &colours
            && colours.len() != count
        {
            return Err(MeshError::ColourCount {
                colours: colours.len(),
                vertices: count,
            });
        }
        Ok(Self {
            vertices,
            triangles,
            colours,
        })
    }

    /// The vertices.
    #[must_use]
    pub fn vertices(&self) -> &[Point3<f64>] {
        &self.vertices
    }

    /// The triangles as vertex numbers.
    #[must_use]
    pub fn triangles(&self) -> &[[u32; 3]] {
        &self.triangles
    }

    /// sRGB colour of each vertex, where the scan has colour.
    #[must_use]
    pub fn colours(&self) -> Option<&[[u8; 3]]> {
        self.colours.as_deref()
    }

    /// The same mesh with these vertex colours (sRGB) or none.
    ///
    /// # Errors
    /// When the colours are of another number than the vertices.
    pub fn with_colours(self, colours: Option<Vec<[u8; 3]>>) -> Result<Self, MeshError> {
        Self::new(self.vertices, self.triangles, colours)
    }

    /// Whether 32-bit floating point holds every coordinate exactly.
    #[must_use]
    pub fn is_single(&self) -> bool {
        let mut coordinates = self.vertices.iter().flat_map(|p| p.coords.iter());
        coordinates.all(|&c| f64::from(c as f32) == c)
    }

    /// The corners of a triangle.
    #[must_use]
    #[inline]
    pub fn corners(&self, triangle: usize) -> [Point3<f64>; 3] {
        self.triangles[triangle].map(|v| self.vertices[v as usize])
    }

    /// Half the cross product of two edges: outward normal times area.
    #[must_use]
    #[inline]
    pub fn area_vector(&self, triangle: usize) -> Vector3<f64> {
        let [a, b, c] = self.corners(triangle);
        (b - a).cross(&(c - a)) / 2.0
    }

    /// Total area of all triangles, in squared units of the coordinates.
    #[must_use]
    pub fn area(&self) -> f64 {
        (0..self.triangles.len())
            .map(|t| self.area_vector(t).norm())
            .sum()
    }

    /// Volume by the divergence theorem, in cubed units of the coordinates:
    /// positive when the triangles of a closed mesh face outward. Meaningless
    /// where the mesh is open (see [`crate::Topology::is_closed`]).
    #[must_use]
    pub fn signed_volume(&self) -> f64 {
        let Some(origin) = self.vertices.first() else {
            return 0.0;
        };
        (0..self.triangles.len())
            .map(|t| {
                let [a, b, c] = self.corners(t).map(|p| p - origin);
                a.dot(&b.cross(&c)) / 6.0
            })
            .sum()
    }

    /// Unit normal of each vertex, weighted by the area of its triangles; zero
    /// where a vertex belongs to no triangle of any area.
    #[must_use]
    pub fn vertex_normals(&self) -> Vec<Vector3<f64>> {
        let mut sums = vec![Vector3::zeros(); self.vertices.len()];
        for (t, corners) in self.triangles.iter().enumerate() {
            let area = self.area_vector(t);
            for &v in corners {
                sums[v as usize] += area;
            }
        }
        for normal in &mut sums {
            *normal = normal.try_normalize(0.0).unwrap_or_default();
        }
        sums
    }

    /// Least and greatest corner of the axis-parallel box around the vertices
    /// that triangles use, or `None` without triangles.
    #[must_use]
    pub fn bounds(&self) -> Option<(Point3<f64>, Point3<f64>)> {
        let first = self.vertices[self.triangles.first()?[0] as usize];
        let (mut low, mut high) = (first, first);
        for &v in self.triangles.as_flattened() {
            let p = &self.vertices[v as usize];
            for axis in 0..3 {
                low[axis] = low[axis].min(p[axis]);
                high[axis] = high[axis].max(p[axis]);
            }
        }
        Some((low, high))
    }

    /// The mesh moved by a rigid motion.
    #[must_use]
    pub fn moved(&self, motion: &Isometry3<f64>) -> Self {
        self.mapped(|p| motion * p)
    }

    /// The mesh with every coordinate multiplied by `factor`.
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Self {
        self.mapped(|p| p * factor)
    }

    /// The mesh with every triangle wound the other way round.
    #[must_use]
    pub fn turned_inside_out(mut self) -> Self {
        for corners in &mut self.triangles {
            corners.swap(1, 2);
        }
        self
    }

    /// The triangles for which `keep` holds, with the vertices that they use,
    /// in their old order.
    #[must_use]
    pub fn filtered(&self, keep: impl Fn(usize) -> bool) -> Self {
        const UNUSED: u32 = u32::MAX;
        let mut new_number = vec![UNUSED; self.vertices.len()];
        let kept: Vec<usize> = (0..self.triangles.len()).filter(|&t| keep(t)).collect();
        for &t in &kept {
            for &v in &self.triangles[t] {
                new_number[v as usize] = 0;
            }
        }
        let mut vertices = Vec::new();
        let mut colours = self.colours.as_ref().map(|_| Vec::new());
        for (v, number) in new_number.iter_mut().enumerate() {
            if *number != UNUSED {
                *number = vertices.len() as u32;
                vertices.push(self.vertices[v]);
                if let (Some(out), Some(all)) = (&mut colours, &self.colours) {
                    out.push(all[v]);
                }
            }
        }
        let triangles = kept
            .iter()
            .map(|&t| self.triangles[t].map(|v| new_number[v as usize]))
            .collect();
        Self {
            vertices,
            triangles,
            colours,
        }
    }

    /// The mesh with every vertex where `f` puts it.
    #[must_use]
    pub fn mapped(&self, f: impl Fn(&Point3<f64>) -> Point3<f64> + Sync + Send) -> Self {
        Self {
            vertices: self.vertices.par_iter().map(f).collect(),
            triangles: self.triangles.clone(),
            colours: self.colours.clone(),
        }
    }
}
