//! Figures of a mesh that say whether a scan is sound.

use crate::{Mesh, Topology};

/// Counts and sizes of a mesh. Lengths and areas are in the mesh's unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Integrity {
    /// Number of vertices.
    pub vertices: usize,
    /// Number of triangles.
    pub triangles: usize,
    /// Connected parts.
    pub components: usize,
    /// Closed loops of edges that belong to one triangle only.
    pub boundary_loops: usize,
    /// Edges of three triangles or more.
    pub non_manifold_edges: usize,
    /// Triangles without area.
    pub degenerate_triangles: usize,
    /// Median edge length.
    pub median_edge: f64,
    /// Total area.
    pub area: f64,
}

impl Integrity {
    /// The figures of a mesh whose topology is known.
    #[must_use]
    pub fn of(mesh: &Mesh, topology: &Topology) -> Self {
        let mut edges: Vec<f32> = (0..mesh.triangles().len())
            .flat_map(|t| {
                let [a, b, c] = mesh.corners(t);
                [b - a, c - b, a - c].map(|e| e.norm() as f32)
            })
            .collect();
        let middle = edges.len() / 2;
        let median_edge = if edges.is_empty() {
            0.0
        } else {
            f64::from(*edges.select_nth_unstable_by(middle, f32::total_cmp).1)
        };
        let mut area = 0.0;
        let mut degenerate_triangles = 0;
        for t in 0..mesh.triangles().len() {
            let own = mesh.area_vector(t).norm();
            area += own;
            // Relative to the mesh's own scale: the same part in metres must
            // give the same count.
            if own <= 1e-9 * median_edge * median_edge {
                degenerate_triangles += 1;
            }
        }
        Self {
            vertices: mesh.vertices().len(),
            triangles: mesh.triangles().len(),
            components: topology.components(),
            boundary_loops: topology.boundary_loops().len(),
            non_manifold_edges: topology.non_manifold_edges(),
            degenerate_triangles,
            median_edge,
            area,
        }
    }
}
