//! Points spread evenly over a surface.

use mesh::Mesh;
use nalgebra::{Isometry3, Point3, Unit, UnitVector3, Vector3};

/// A point of a surface with its outward normal.
#[derive(Debug, Clone, Copy)]
pub struct SurfacePoint {
    /// Position, mm.
    pub point: Point3<f64>,
    /// Outward normal.
    pub normal: UnitVector3<f64>,
}

impl SurfacePoint {
    /// The point after a motion.
    #[must_use]
    pub fn moved(&self, motion: &Isometry3<f64>) -> Self {
        Self {
            point: motion * self.point,
            normal: motion * self.normal,
        }
    }

    /// The point in a mirror across x = 0.
    #[must_use]
    pub fn mirrored(&self) -> Self {
        let across = |v: Vector3<f64>| Vector3::new(-v.x, v.y, v.z);
        Self {
            point: Point3::from(across(self.point.coords)),
            normal: UnitVector3::new_unchecked(across(self.normal.into_inner())),
        }
    }
}

/// About `count` centres of those triangles that `chosen` accepts, one in each
/// equal share of their area, so that every point stands for as much surface
/// as any other. Deterministic.
pub fn spread_over(mesh: &Mesh, count: usize, chosen: impl Fn(usize) -> bool) -> Vec<SurfacePoint> {
    let spread = triangles_spread_over(mesh, count, chosen).into_iter();
    let centre = |t: usize| {
        let [a, b, c] = mesh.corners(t);
        SurfacePoint {
            point: Point3::from((a.coords + b.coords + c.coords) / 3.0),
            normal: Unit::new_normalize(mesh.area_vector(t)),
        }
    };
    spread.map(centre).collect()
}

/// The triangles whose centres [`spread_over`] gives: every one that is larger than a share
/// of the area is among them.
pub fn triangles_spread_over(
    mesh: &Mesh,
    count: usize,
    chosen: impl Fn(usize) -> bool,
) -> Vec<usize> {
    let areas: Vec<(u32, f64)> = (0..mesh.triangles().len())
        .filter(|&t| chosen(t))
        .map(|t| (t as u32, mesh.area_vector(t).norm()))
        .collect();
    let share = areas.iter().map(|a| a.1).sum::<f64>() / count.max(1) as f64;
    let mut spread = Vec::with_capacity(count);
    let (mut passed, mut due) = (0.0, share / 2.0);
    for (t, area) in areas {
        passed += area;
        if passed <= due {
            continue;
        }
        due += share * ((passed - due) / share).ceil();
        spread.push(t as usize);
    }
    spread
}

/// Mean of points; the origin where there are none.
pub fn centre_of(points: &[SurfacePoint]) -> Point3<f64> {
    let sum: Vector3<f64> = points.iter().map(|s| s.point.coords).sum();
    Point3::from(sum / points.len().max(1) as f64)
}
