//! What lies under the pointer.

use crate::opened::Shown;
use nalgebra::{Point3, Vector3};
use report::result::Point;

/// A place on an impression.
#[derive(Debug, Clone, PartialEq)]
pub struct Probe {
    /// Where it is shown, mm.
    pub place: Point3<f64>,
    /// In the numbers of the scan file.
    pub in_file: Point,
    /// Cover there, mm; `None` where it is not known.
    pub cover_mm: Option<f64>,
}

/// The first place that a ray (shown frame, unit direction) meets.
#[must_use]
pub fn probe(shown: &Shown, from: &Point3<f64>, along: &Vector3<f64>) -> Option<Probe> {
    const REACH_MM: f64 = 2.0 * crate::view::FRONT_MM;
    let hit = shown.index.first_hit(from, along, REACH_MM)?;
    let corners = shown.surface.corners(hit.triangle as usize);
    let place = on_plane(from, along, &corners).unwrap_or(from + along * hit.distance);
    Some(Probe {
        in_file: shown.placement.in_file(&place),
        cover_mm: cover_at(shown, hit.triangle as usize, &place),
        place,
    })
}

/// Where a ray meets the plane of a triangle: the tree's own distances are in
/// single precision, over half a metre.
fn on_plane(
    from: &Point3<f64>,
    along: &Vector3<f64>,
    corners: &[Point3<f64>; 3],
) -> Option<Point3<f64>> {
    let normal = (corners[1] - corners[0]).cross(&(corners[2] - corners[0]));
    let slope = normal.dot(along);
    let distance = normal.dot(&(corners[0] - from)) / slope;
    (slope.abs() > 1e-3 * normal.norm() && distance.is_finite()).then(|| from + along * distance)
}

/// The cover at the corners of a triangle, weighted by nearness to each.
fn cover_at(shown: &Shown, triangle: usize, place: &Point3<f64>) -> Option<f64> {
    let [a, b, c] = shown.surface.corners(triangle);
    let area = |p: &Point3<f64>, q: &Point3<f64>, r: &Point3<f64>| (q - p).cross(&(r - p)).norm();
    let whole = area(&a, &b, &c);
    let weights = [
        area(place, &b, &c),
        area(&a, place, &c),
        area(&a, &b, place),
    ];
    let figures = shown.surface.triangles()[triangle].map(|v| shown.cover_mm[v as usize]);
    if whole <= 0.0 {
        return figures[0].map(f64::from);
    }
    let mut sum = 0.0;
    for (figure, weight) in figures.into_iter().zip(weights) {
        sum += f64::from(figure?) * weight / weights.iter().sum::<f64>();
    }
    Some(sum)
}

/// Whether nothing lies between a place and a viewer in this direction.
#[must_use]
pub fn in_sight(shown: &Shown, place: &Point3<f64>, to_viewer: &Vector3<f64>) -> bool {
    // A place may lie a little within the surface: its figure is rounded.
    const SKIN_MM: f64 = 0.3;
    const REACH_MM: f64 = 200.0;
    let start = place + to_viewer * SKIN_MM;
    shown.index.first_hit(&start, to_viewer, REACH_MM).is_none()
}

/// The outward direction of the surface near a place.
#[must_use]
pub fn normal_at(shown: &Shown, place: &Point3<f64>) -> Option<Vector3<f64>> {
    const NEAR_MM: f64 = 2.0;
    let near = shown.index.nearest(place, NEAR_MM)?;
    let corners = shown.surface.triangles()[near.triangle as usize];
    let sum: Vector3<f64> = corners.iter().map(|&v| shown.normals[v as usize]).sum();
    sum.try_normalize(1e-9)
}
