//! The surface that others are registered on.

use super::evenly::evenly_apart;
use super::point_pairs::TargetPairs;
use crate::sampling::{SurfacePoint, spread_over};
use mesh::{Mesh, SpatialIndex};
use nalgebra::{Isometry3, Point3, Vector3};
use std::sync::OnceLock;

/// Normals that differ by more than this (cosine) are different surfaces: the
/// two faces of a shell lie closer together than a start may be off.
const SAME_FACE: f64 = 0.5;

/// Points that stand for the whole surface.
const POINTS: usize = 20_000;
/// Squares as wide as the spacing that would cover the surface: about two points
/// that keep the spacing from each other find room on three of them.
const SQUARES: f64 = 1400.0;

/// A surface with its search tree and normals.
#[derive(Clone)]
pub struct Target {
    index: SpatialIndex,
    normals: Vec<Vector3<f64>>,
    centre: Point3<f64>,
    size_mm: f64,
    spacing_mm: f64,
    pairs: OnceLock<TargetPairs>,
}

/// A source point and the place on the target that it is paired with, both in
/// target coordinates.
#[derive(Debug, Clone, Copy)]
pub struct Match {
    /// The source point, moved.
    pub moved: Point3<f64>,
    /// Nearest place on the target.
    pub place: Point3<f64>,
    /// The target's normal there.
    pub normal: Vector3<f64>,
}

impl Match {
    /// Distance of the source point from the tangent plane of its place, mm.
    pub fn off_plane(&self) -> f64 {
        self.normal.dot(&(self.moved - self.place))
    }

    /// Distance of the source point from its place, mm.
    pub fn distance(&self) -> f64 {
        (self.moved - self.place).norm()
    }
}

impl Target {
    /// A target from a mesh in mm.
    #[must_use]
    pub fn new(mesh: &Mesh) -> Self {
        let count = mesh.vertices().len().max(1) as f64;
        let sum: Vector3<f64> = mesh.vertices().iter().map(|p| p.coords).sum();
        let spacing_mm = (mesh.area() / SQUARES).sqrt();
        Self {
            spacing_mm,
            pairs: OnceLock::new(),
            centre: Point3::from(sum / count),
            index: SpatialIndex::new(mesh),
            normals: mesh.vertex_normals(),
            size_mm: mesh.bounds().map_or(0.0, |(low, high)| (high - low).norm()),
        }
    }

    /// Diagonal of the target's box, mm.
    #[must_use]
    pub fn size_mm(&self) -> f64 {
        self.size_mm
    }

    /// Mean of the target's vertices.
    #[must_use]
    pub fn centre(&self) -> Point3<f64> {
        self.centre
    }

    /// Distance of the [`spaced`](Self::spaced) points from each other, mm.
    #[must_use]
    pub fn spacing_mm(&self) -> f64 {
        self.spacing_mm
    }

    /// About a thousand points that keep a distance from each other, with
    /// normals that are means over it.
    #[must_use]
    pub fn spaced(&self) -> Vec<SurfacePoint> {
        let spread = spread_over(self.index.mesh(), POINTS, |_| true);
        evenly_apart(&spread, self.spacing_mm)
    }

    /// The pairs of the spaced points, made when first asked for: few targets
    /// are ever asked.
    pub(super) fn pairs(&self) -> &TargetPairs {
        self.pairs
            .get_or_init(|| TargetPairs::of(&self.spaced(), self.spacing_mm))
    }

    /// The search tree.
    #[must_use]
    pub fn index(&self) -> &SpatialIndex {
        &self.index
    }

    /// Pairs source points, moved by `pose`, with the nearest places within
    /// `reach` that face the same way. As many answers as points.
    pub fn matches(
        &self,
        source: &[SurfacePoint],
        pose: &Isometry3<f64>,
        reach: f64,
    ) -> Vec<Option<Match>> {
        let moved: Vec<Point3<f64>> = source.iter().map(|s| pose * s.point).collect();
        let nearest = self.index.nearest_many(&moved, reach);
        moved
            .iter()
            .zip(source)
            .zip(nearest)
            .map(|((&moved, s), nearest)| {
                let nearest = nearest?;
                let corners = self.index.mesh().triangles()[nearest.triangle as usize];
                let normal = (0..3)
                    .map(|k| self.normals[corners[k] as usize] * nearest.weights[k])
                    .sum::<Vector3<f64>>()
                    .try_normalize(0.0)?;
                let same_face = normal.dot(&(pose * s.normal.into_inner())) > SAME_FACE;
                same_face.then_some(Match {
                    moved,
                    place: nearest.point,
                    normal,
                })
            })
            .collect()
    }
}
