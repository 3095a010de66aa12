//! Eight triangles measured at once, one to a lane.

use nalgebra::Vector3;
use wide::f32x8;

/// Triangles in an octet.
pub(super) const LANES: usize = 8;

/// Slack in the barycentric weights of a ray's hit, so that none slips between
/// two triangles on the edge that they share.
const EDGE_SLACK: f32 = 1e-6;

/// Eight vectors, each coordinate together.
type Vectors = [f32x8; 3];

/// Eight triangles, laid out so that one instruction works on all of them.
///
/// Whatever does not depend on the query is worked out beforehand in `f64`, so
/// that slivers lose nothing in `f32`.
#[derive(Clone)]
pub(super) struct Octet {
    corner: Vectors,
    to_second: Vectors,
    to_third: Vectors,
    second_to_third: Vectors,
    /// Products with these, of the way from the first corner to a point, give
    /// the weights of the second and the third corner in the plane.
    second_weight: Vectors,
    third_weight: Vectors,
    /// One over the squared length of each edge, in the order above.
    inverse_squares: [f32x8; 3],
}

impl Octet {
    /// Eight triangles by their corners.
    pub(super) fn new(triangles: &[[Vector3<f64>; 3]; LANES]) -> Self {
        let edges = triangles.map(|[a, b, c]| [b - a, c - a, c - b]);
        let weights = edges.map(|[ab, ac, _]| reciprocal_basis(&ab, &ac));
        let lanes = |k: usize| vectors(&edges.map(|e| e[k]));
        Self {
            corner: vectors(&triangles.map(|t| t[0])),
            to_second: lanes(0),
            to_third: lanes(1),
            second_to_third: lanes(2),
            second_weight: vectors(&weights.map(|w| w[0])),
            third_weight: vectors(&weights.map(|w| w[1])),
            inverse_squares: [0, 1, 2].map(|k| f32x8::new(edges.map(|e| inverse_square(&e[k])))),
        }
    }

    /// Squared distance from a point to the nearest place of each triangle.
    ///
    /// The nearest place lies on an edge, or else within: all four candidates
    /// are measured, since lanes cannot branch apart. Each is the way from the
    /// point to a place of the triangle, never a difference of large squares.
    #[inline]
    pub(super) fn squared_distances(&self, point: [f32; 3]) -> f32x8 {
        let from_first = minus(&point.map(f32x8::splat), &self.corner);
        let from_second = minus(&from_first, &self.to_second);
        let [per_ab, per_ac, per_bc] = self.inverse_squares;
        let on_edge = to_segment(&from_first, &self.to_second, per_ab)
            .fast_min(to_segment(&from_first, &self.to_third, per_ac))
            .fast_min(to_segment(&from_second, &self.second_to_third, per_bc));

        let second = dot(&from_first, &self.second_weight);
        let third = dot(&from_first, &self.third_weight);
        let in_plane = scaled(&self.to_second, second);
        let off_plane = minus(
            &minus(&from_first, &in_plane),
            &scaled(&self.to_third, third),
        );
        let over_inside = second.simd_ge(f32x8::ZERO)
            & third.simd_ge(f32x8::ZERO)
            & f32x8::ONE.simd_ge(second + third);
        over_inside.bitselect(dot(&off_plane, &off_plane).fast_min(on_edge), on_edge)
    }

    /// Distance along a ray to each triangle, either side, or infinity (Möller
    /// and Trumbore 1997).
    #[inline]
    pub(super) fn ray_distances(&self, from: [f32; 3], direction: [f32; 3]) -> f32x8 {
        let direction = direction.map(f32x8::splat);
        let across = cross(&direction, &self.to_third);
        // Parallel to the plane: infinite or no numbers, which pass no test below.
        let inverse = f32x8::ONE / dot(&self.to_second, &across);
        let from_first = minus(&from.map(f32x8::splat), &self.corner);
        let turned = cross(&from_first, &self.to_second);
        let second = dot(&from_first, &across) * inverse;
        let third = dot(&direction, &turned) * inverse;
        let distance = dot(&self.to_third, &turned) * inverse;
        let slack = f32x8::splat(EDGE_SLACK);
        let hit = second.simd_ge(-slack)
            & third.simd_ge(-slack)
            & (f32x8::ONE + slack).simd_ge(second + third)
            & distance.simd_ge(f32x8::ZERO);
        hit.bitselect(distance, f32x8::splat(f32::INFINITY))
    }
}

/// The least of eight numbers and its lane.
#[inline]
pub(super) fn least(numbers: f32x8) -> (f32, usize) {
    numbers
        .to_array()
        .into_iter()
        .zip(0..)
        .fold((f32::INFINITY, 0), |least, next| {
            if next.0 < least.0 { next } else { least }
        })
}

/// The vectors in the plane of `b` and `c` whose products with a combination
/// of both give the share of each; zero where the two span no plane, which
/// takes the first corner for the nearest place and leaves it to the edges.
fn reciprocal_basis(b: &Vector3<f64>, c: &Vector3<f64>) -> [Vector3<f64>; 2] {
    let (bb, bc, cc) = (b.norm_squared(), b.dot(c), c.norm_squared());
    let determinant = bb * cc - bc * bc;
    if determinant > f64::EPSILON * bb * cc {
        [
            (b * cc - c * bc) / determinant,
            (c * bb - b * bc) / determinant,
        ]
    } else {
        [Vector3::zeros(); 2]
    }
}

/// Finite for an edge of no length too, whose products are zero.
fn inverse_square(edge: &Vector3<f64>) -> f32 {
    (1.0 / edge.norm_squared()).min(f64::from(f32::MAX)) as f32
}

#[inline]
fn to_segment(from_start: &Vectors, edge: &Vectors, inverse_square: f32x8) -> f32x8 {
    let share = (dot(from_start, edge) * inverse_square)
        .fast_max(f32x8::ZERO)
        .fast_min(f32x8::ONE);
    let way = minus(from_start, &scaled(edge, share));
    dot(&way, &way)
}

fn vectors(lanes: &[Vector3<f64>; LANES]) -> Vectors {
    [0, 1, 2].map(|k| f32x8::new(lanes.map(|v| v[k] as f32)))
}

#[inline]
fn minus(a: &Vectors, b: &Vectors) -> Vectors {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

#[inline]
fn scaled(v: &Vectors, by: f32x8) -> Vectors {
    [v[0] * by, v[1] * by, v[2] * by]
}

#[inline]
fn dot(a: &Vectors, b: &Vectors) -> f32x8 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

#[inline]
fn cross(a: &Vectors, b: &Vectors) -> Vectors {
    [
        a[1] * b[2] - a[2] * b[1],
        a[2] * b[0] - a[0] * b[2],
        a[0] * b[1] - a[1] * b[0],
    ]
}
