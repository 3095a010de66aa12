//! Signed distance to the surface of a thin-walled solid.

use mesh::{Mesh, Nearest, SpatialIndex, Topology};
use nalgebra::{Isometry3, Point3, Vector3};

/// A thin-walled solid ready to be measured from.
pub struct Solid<'a> {
    mesh: &'a Mesh,
    topology: &'a Topology,
    index: &'a SpatialIndex,
    corner_normals: &'a [Vector3<f64>],
    half_wall_mm: f64,
}

impl<'a> Solid<'a> {
    /// A solid in mm, wound outward, with the normals that
    /// [`angle_weighted_normals`] gives for it. No point inside it lies deeper
    /// than `half_wall_mm`: a larger distance is outside, whatever the normals say.
    pub fn new(
        mesh: &'a Mesh,
        topology: &'a Topology,
        index: &'a SpatialIndex,
        corner_normals: &'a [Vector3<f64>],
        half_wall_mm: f64,
    ) -> Self {
        Self {
            mesh,
            topology,
            index,
            corner_normals,
            half_wall_mm,
        }
    }

    /// Signed distances, mm, of points to the solid, negative inside its wall;
    /// `solid_from_points` moves them into its coordinates. `None` where the
    /// nearest part of it shows its back: the wall between was not scanned, or
    /// no solid lies there.
    pub fn distances(
        &self,
        points: &[Point3<f64>],
        solid_from_points: &Isometry3<f64>,
    ) -> Vec<Option<f64>> {
        let moved: Vec<Point3<f64>> = points.iter().map(|p| solid_from_points * p).collect();
        self.index
            .nearest_many(&moved, f64::INFINITY)
            .iter()
            .zip(&moved)
            .map(|(nearest, point)| self.signed(point, nearest.as_ref()?))
            .collect()
    }

    /// The sign is that of the pseudonormal of the nearest face, edge or corner
    /// (Baerentzen and Aanaes 2005), which is exact for a closed surface.
    fn signed(&self, point: &Point3<f64>, nearest: &Nearest) -> Option<f64> {
        /// Cosine from which a back is meant; at the rim of an open scan the
        /// sign alone says nothing.
        const BACK: f64 = -0.5;
        let off = point - nearest.point;
        let outward = self.pseudonormal(nearest);
        if nearest.distance <= self.half_wall_mm {
            let inside = outward.dot(&off) < 0.0;
            return Some(if inside {
                -nearest.distance
            } else {
                nearest.distance
            });
        }
        let cosine = outward.dot(&off) / (outward.norm() * off.norm()).max(f64::MIN_POSITIVE);
        (cosine > BACK).then_some(nearest.distance)
    }

    fn pseudonormal(&self, nearest: &Nearest) -> Vector3<f64> {
        const ON_EDGE: f64 = 1e-6;
        let triangle = nearest.triangle as usize;
        let corners = self.mesh.triangles()[triangle];
        let off: Vec<usize> = (0..3).filter(|&k| nearest.weights[k] < ON_EDGE).collect();
        match off[..] {
            [] => unit_normal(self.mesh, triangle),
            [opposite] => {
                let edge = [(opposite + 1) % 3, (opposite + 2) % 3].map(|k| corners[k]);
                let across = self
                    .topology
                    .neighbours(triangle)
                    .find(|&n| edge.iter().all(|v| self.mesh.triangles()[n].contains(v)));
                unit_normal(self.mesh, triangle)
                    + across.map_or_else(Vector3::zeros, |n| unit_normal(self.mesh, n))
            }
            _ => {
                let corner = (0..3).find(|k| !off.contains(k)).unwrap_or(0);
                self.corner_normals[corners[corner] as usize]
            }
        }
    }
}

fn unit_normal(mesh: &Mesh, triangle: usize) -> Vector3<f64> {
    mesh.area_vector(triangle)
        .try_normalize(0.0)
        .unwrap_or_default()
}

/// Sum of the unit normals round each vertex, weighted by the angle at it.
#[must_use]
pub fn angle_weighted_normals(mesh: &Mesh) -> Vec<Vector3<f64>> {
    let mut sums = vec![Vector3::zeros(); mesh.vertices().len()];
    for t in 0..mesh.triangles().len() {
        let normal = unit_normal(mesh, t);
        let p = mesh.corners(t);
        for k in 0..3 {
            let angle = (p[(k + 1) % 3] - p[k]).angle(&(p[(k + 2) % 3] - p[k]));
            sums[mesh.triangles()[t][k] as usize] += normal * angle;
        }
    }
    sums
}
