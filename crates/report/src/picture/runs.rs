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
        let corners = || triangles.clone().flat_map(|t| mesh.corners(t));
        let first = mesh.corners(triangles.start)[0];
        let (low, high) = corners().fold((first, first), |(low, high), p| {
            (
                low.coords.inf(&p.coords).into(),
                high.coords.sup(&p.coords).into(),
            )
        });
        let centre = center(&low, &high);
        Self {
            radius_mm: corners().map(|p| distance(&p, &centre)).fold(0.0, f64::max),
            centre,
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
