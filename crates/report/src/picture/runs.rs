//! Runs of triangles with a ball round each, so that a close view looks only at
//! what may show in it.

use super::camera::Camera;
use mesh::Mesh;
use nalgebra::{Point3, center, distance};
use std::ops::Range;

/// Neighbours in a file are mostly neighbours in space.
const LENGTH: usize = 64;

/// Triangles that follow each other in the mesh.
pub struct Run {
    /// Their numbers.
    pub triangles: Range<usize>,
    centre: Point3<f64>,
    radius_mm: f64,
}

impl Run {
    /// All triangles of a mesh, in their order.
    pub fn all_of(mesh: &Mesh) -> Vec<Self> {
        let count = mesh.triangles().len();
        (0..count)
            .step_by(LENGTH)
            .map(|from| Self::of(mesh, from..(from + LENGTH).min(count)))
            .collect()
    }

    fn of(mesh: &Mesh, triangles: Range<usize>) -> Self {
        let first = mesh.corners(triangles.start)[0];
        let (mut low, mut high) = (first, first);
        for &v in mesh.triangles()[triangles.clone()].as_flattened() {
            let p = &mesh.vertices()[v as usize];
            for axis in 0..3 {
                low[axis] = low[axis].min(p[axis]);
                high[axis] = high[axis].max(p[axis]);
            }
        }
        Self {
            centre: center(&low, &high),
            radius_mm: distance(&low, &high) / 2.0,
            triangles,
        }
    }

    /// Whether some of them may show in a picture.
    pub fn may_show(&self, camera: &Camera) -> bool {
        let [x, y, _] = camera.place(&self.centre);
        // A pixel more, for what is lost in rounding.
        let reach = self.radius_mm * camera.px_per_mm + 1.0;
        let is_within = |at: f64, size: usize| at > -reach && at < size as f64 + reach;
        is_within(x, camera.size[0]) && is_within(y, camera.size[1])
    }
}
