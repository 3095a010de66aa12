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
    /// The vertices around it, each with its nearness; these sum to 1.
    corners: [(usize, f64); 3],
}

impl Probe {
    /// A figure here by those at the vertices; `None` where one is not known.
    #[must_use]
    pub fn between(&self, figures: &[Option<f32>]) -> Option<f64> {
        let mut sum = 0.0;
        for (vertex, weight) in self.corners {
            sum += f64::from((*figures.get(vertex)?)?) * weight;
        }
        Some(sum)
    }

    /// A figure here that is one for a whole part: that of the nearest vertex.
    #[must_use]
    pub fn nearest(&self, figures: &[Option<f32>]) -> Option<f64> {
        let near = |a: &&(usize, f64), b: &&(usize, f64)| a.1.total_cmp(&b.1);
        let (vertex, _) = self.corners.iter().max_by(near)?;
        figures.get(*vertex)?.map(f64::from)
    }
}

/// The first place that a ray (shown frame, unit direction) meets.
#[must_use]
pub fn probe(shown: &Shown, from: &Point3<f64>, along: &Vector3<f64>) -> Option<Probe> {
    const REACH_MM: f64 = 2.0 * crate::view::FRONT_MM;
    let hit = shown.index.first_hit(from, along, REACH_MM)?;
    let triangle = hit.triangle as usize;
    let corners = shown.surface.corners(triangle);
    let place = on_plane(from, along, &corners).unwrap_or(from + along * hit.distance);
    let [a, b, c] = shown.surface.triangles()[triangle].map(|v| v as usize);
    let [near_a, near_b, near_c] = nearness(&corners, &place);
    Some(Probe {
        in_file: shown.placement.in_file(&place),
        place,
        corners: [(a, near_a), (b, near_b), (c, near_c)],
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

/// Nearness of a place to each corner of its triangle, in sum 1.
fn nearness([a, b, c]: &[Point3<f64>; 3], place: &Point3<f64>) -> [f64; 3] {
    let area = |p: &Point3<f64>, q: &Point3<f64>, r: &Point3<f64>| (q - p).cross(&(r - p)).norm();
    let areas = [area(place, b, c), area(a, place, c), area(a, b, place)];
    let whole: f64 = areas.iter().sum();
    if whole > 0.0 {
        areas.map(|part| part / whole)
    } else {
        [1.0, 0.0, 0.0]
    }
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
