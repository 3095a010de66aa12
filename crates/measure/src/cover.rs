//! Cover: distance from the tissue surface to the tray.

use crate::figures::{Cover, CoverMethod};
use mesh::{Mesh, Nearest, SpatialIndex, Topology};
use nalgebra::{Isometry3, Point3, Vector3};

/// No point of a tray's wall lies deeper in it than this, mm (half of a wall of
/// 3 mm): a larger distance is never through the tray, whatever its normals say.
const HALF_WALL_MM: f64 = 1.5;

/// A tray ready to be measured from.
pub struct Tray<'a> {
    mesh: &'a Mesh,
    topology: &'a Topology,
    index: &'a SpatialIndex,
    corner_normals: &'a [Vector3<f64>],
}

impl<'a> Tray<'a> {
    /// A tray in mm, wound outward, with the normals that
    /// [`angle_weighted_normals`] gives for it.
    pub fn new(
        mesh: &'a Mesh,
        topology: &'a Topology,
        index: &'a SpatialIndex,
        corner_normals: &'a [Vector3<f64>],
    ) -> Self {
        Self {
            mesh,
            topology,
            index,
            corner_normals,
        }
    }

    /// Signed distances, mm, of points (impression coordinates) to the tray:
    /// negative inside its wall. `None` where the nearest part of the tray shows
    /// its back: the wall between was not scanned, or there is no tray.
    pub fn distances(
        &self,
        points: &[Point3<f64>],
        tray_from_impression: &Isometry3<f64>,
    ) -> Vec<Option<f64>> {
        let moved: Vec<Point3<f64>> = points.iter().map(|p| tray_from_impression * p).collect();
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
        if nearest.distance <= HALF_WALL_MM {
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

/// Values at vertices averaged with their neighbours' so many times, so that a
/// patch's least cover is not its noisiest point. Vertices without a value
/// neither give nor get one.
#[must_use]
pub fn smoothed(mesh: &Mesh, values: &[Option<f64>], rounds: usize) -> Vec<Option<f64>> {
    let mut values = values.to_vec();
    for _ in 0..rounds {
        let mut sums = vec![(0.0, 0.0); values.len()];
        for corners in mesh.triangles() {
            if let [Some(a), Some(b), Some(c)] = corners.map(|v| values[v as usize]) {
                for &v in corners {
                    sums[v as usize].0 += a + b + c;
                    sums[v as usize].1 += 3.0;
                }
            }
        }
        for (value, (sum, weight)) in values.iter_mut().zip(sums) {
            if weight > 0.0 && value.is_some() {
                *value = Some(sum / weight);
            }
        }
    }
    values
}

impl Cover {
    /// Cover known at vertices that each stand for an area (mm²); `None` where
    /// it is known nowhere.
    pub(crate) fn of(
        method: CoverMethod,
        at_vertex_mm: Vec<Option<f64>>,
        areas: &[f64],
        uncertainty_mm: f64,
    ) -> Option<Self> {
        let mut weighted: Vec<(f64, f64)> = (at_vertex_mm.iter().zip(areas))
            .filter_map(|(mm, &area)| Some(((*mm)?, area)))
            .filter(|(_, area)| *area > 0.0)
            .collect();
        let area_judged_mm2 = weighted.iter().map(|w| w.1).sum();
        let mut part = |part| quantile(&mut weighted, part);
        Some(Self {
            min_mm: part(0.0)?,
            p05_mm: part(0.05)?,
            median_mm: part(0.5)?,
            p95_mm: part(0.95)?,
            method,
            registration: None,
            at_vertex_mm,
            uncertainty_mm,
            area_judged_mm2,
        })
    }
}

/// Quantiles of values that each stand for an area; `None` without area.
pub fn quantile(weighted: &mut [(f64, f64)], part: f64) -> Option<f64> {
    weighted.sort_by(|a, b| a.0.total_cmp(&b.0));
    let total: f64 = weighted.iter().map(|w| w.1).sum();
    let mut passed = 0.0;
    weighted.iter().find_map(|&(value, weight)| {
        passed += weight;
        (passed >= part * total).then_some(value)
    })
}
