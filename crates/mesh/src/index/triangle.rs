//! One triangle measured in full precision.

use nalgebra::{Point3, Vector3};

/// Squared sine of the angle between two edges at and below which a triangle
/// is taken for its edges, which is good to 1e-7 of its length: the foot of a
/// point on the plane of a thinner one is lost in rounding.
const SLIVER: f64 = 1e-14;

/// Barycentric weights of the place of a triangle that is nearest to a point:
/// the foot on its plane, if that lies within, or else the best of its edges.
#[inline]
pub(super) fn nearest_weights(to: &Point3<f64>, corners: &[Point3<f64>; 3]) -> [f64; 3] {
    let [a, b, c] = corners;
    let (ab, ac) = (b - a, c - a);
    let (from_a, from_b) = (to - a, to - b);
    if let Some(within) = weights_within(&from_a, &ab, &ac) {
        return within;
    }
    let (on_ab, ab_squared) = on_edge(&from_a, &ab);
    let (on_ac, ac_squared) = on_edge(&from_a, &ac);
    let (on_bc, bc_squared) = on_edge(&from_b, &(c - b));
    if ab_squared <= ac_squared && ab_squared <= bc_squared {
        [1.0 - on_ab, on_ab, 0.0]
    } else if ac_squared <= bc_squared {
        [1.0 - on_ac, 0.0, on_ac]
    } else {
        [0.0, 1.0 - on_bc, on_bc]
    }
}

/// Weights of the foot on the plane, where that lies within the triangle.
fn weights_within(from_a: &Vector3<f64>, ab: &Vector3<f64>, ac: &Vector3<f64>) -> Option<[f64; 3]> {
    let normal = ab.cross(ac);
    let squared = normal.norm_squared();
    if squared <= SLIVER * ab.norm_squared() * ac.norm_squared() {
        return None;
    }
    let second = from_a.cross(ac).dot(&normal) / squared;
    let third = ab.cross(from_a).dot(&normal) / squared;
    let first = 1.0 - second - third;
    (first >= 0.0 && second >= 0.0 && third >= 0.0).then_some([first, second, third])
}

/// How far along an edge its place nearest to a point lies, from 0 to 1, and
/// the squared distance.
fn on_edge(from_start: &Vector3<f64>, edge: &Vector3<f64>) -> (f64, f64) {
    let squared = edge.norm_squared();
    let share = if squared > 0.0 {
        (from_start.dot(edge) / squared).clamp(0.0, 1.0)
    } else {
        0.0
    };
    (share, (from_start - edge * share).norm_squared())
}
