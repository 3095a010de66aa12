//! One triangle measured in full precision.

use nalgebra::{Point3, Vector3};

/// The place of a triangle nearest to a point, its distance, and the
/// barycentric weights of the three corners there.
///
/// The nearest place lies on an edge or within: the best of the four is taken,
/// which stays right for slivers and triangles without area.
pub(super) fn nearest_place(
    to: &Point3<f64>,
    corners: &[Point3<f64>; 3],
) -> (Point3<f64>, f64, [f64; 3]) {
    let [a, b, c] = corners;
    let along = |from: &Point3<f64>, end: &Point3<f64>| share(&(to - from), &(end - from));
    let (ab, bc, ca) = (along(a, b), along(b, c), along(c, a));
    let on_edges = [
        [1.0 - ab, ab, 0.0],
        [0.0, 1.0 - bc, bc],
        [ca, 0.0, 1.0 - ca],
    ];
    let measured = |weights: [f64; 3]| {
        let place =
            Point3::from(a.coords * weights[0] + b.coords * weights[1] + c.coords * weights[2]);
        (place, (to - place).norm(), weights)
    };
    weights_within(&(to - a), &(b - a), &(c - a))
        .into_iter()
        .chain(on_edges)
        .map(measured)
        .fold(measured([1.0, 0.0, 0.0]), |best, next| {
            if next.1 < best.1 { next } else { best }
        })
}

/// How far along an edge the foot of a point lies, from 0 to 1.
fn share(from_start: &Vector3<f64>, edge: &Vector3<f64>) -> f64 {
    let squared = edge.norm_squared();
    if squared > 0.0 {
        (from_start.dot(edge) / squared).clamp(0.0, 1.0)
    } else {
        0.0
    }
}

/// Weights of the foot on the plane, where that lies within the triangle.
fn weights_within(
    from_first: &Vector3<f64>,
    to_second: &Vector3<f64>,
    to_third: &Vector3<f64>,
) -> Option<[f64; 3]> {
    let normal = to_second.cross(to_third);
    let twice_area_squared = normal.norm_squared();
    let second = from_first.cross(to_third).dot(&normal) / twice_area_squared;
    let third = to_second.cross(from_first).dot(&normal) / twice_area_squared;
    let weights = [1.0 - second - third, second, third];
    // No numbers, where there is no area, are not at least 0 either.
    weights.iter().all(|&w| w >= 0.0).then_some(weights)
}
