//! Eight triangles measured at once, one to a lane, by the widest instructions
//! that the processor has. None of them rounds differently from another.

use fearless_simd::{Level, Simd, dispatch, f32x8, prelude::*};
use nalgebra::Vector3;

/// Triangles in an octet.
pub(super) const LANES: usize = 8;

/// Slack in the barycentric weights of a ray's hit, so that none slips between
/// two triangles on the edge that they share.
const EDGE_SLACK: f32 = 1e-6;

/// A number of each triangle.
type Numbers = [f32; LANES];

/// A vector of each triangle, each coordinate together.
type Vectors = [Numbers; 3];

/// A vector of each triangle, in the processor's registers.
type Loaded<S> = [f32x8<S>; 3];

/// Eight triangles, laid out so that one instruction works on all of them.
///
/// Whatever does not depend on the query is worked out beforehand in `f64`, so
/// that slivers lose nothing in `f32`.
#[derive(Clone)]
#[repr(align(32))]
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
    inverse_squares: [Numbers; 3],
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
            inverse_squares: [0, 1, 2].map(|k| edges.map(|e| inverse_square(&e[k]))),
        }
    }

    /// The triangle nearest to a point and its squared distance, if that is less
    /// than a bound.
    pub(super) fn nearer(&self, level: Level, point: [f32; 3], than: f32) -> Option<(f32, usize)> {
        dispatch!(level, simd => {
            let distances = self.squared_distances(simd, point);
            distances.simd_lt(than).any_true().then(|| least(distances))
        })
    }

    /// The first triangle along a ray and the distance to it, or infinity.
    pub(super) fn first_hit(
        &self,
        level: Level,
        from: [f32; 3],
        direction: [f32; 3],
    ) -> (f32, usize) {
        dispatch!(level, simd => least(self.ray_distances(simd, from, direction)))
    }

    /// Squared distance from a point to the nearest place of each triangle.
    ///
    /// The nearest place lies on an edge, or else within: all four candidates
    /// are measured, since lanes cannot branch apart. Each is the way from the
    /// point to a place of the triangle, never a difference of large squares.
    #[inline(always)]
    fn squared_distances<S: Simd>(&self, simd: S, point: [f32; 3]) -> f32x8<S> {
        let load = |v: &Vectors| loaded(simd, v);
        let [to_second, to_third] = [&self.to_second, &self.to_third].map(load);
        let from_first = minus(&splat(simd, point), &load(&self.corner));
        let from_second = minus(&from_first, &to_second);
        let [per_ab, per_ac, per_bc] = loaded(simd, &self.inverse_squares);
        let on_edge = to_segment(&from_first, &to_second, per_ab)
            .min(to_segment(&from_first, &to_third, per_ac))
            .min(to_segment(
                &from_second,
                &load(&self.second_to_third),
                per_bc,
            ));

        let second = dot(&from_first, &load(&self.second_weight));
        let third = dot(&from_first, &load(&self.third_weight));
        let in_plane = scaled(&to_second, second);
        let off_plane = minus(&minus(&from_first, &in_plane), &scaled(&to_third, third));
        let over_inside = second.simd_ge(0.0) & third.simd_ge(0.0) & (second + third).simd_le(1.0);
        over_inside.select(dot(&off_plane, &off_plane).min(on_edge), on_edge)
    }

    /// Distance along a ray to each triangle, either side, or infinity (Möller
    /// and Trumbore 1997).
    #[inline(always)]
    fn ray_distances<S: Simd>(&self, simd: S, from: [f32; 3], direction: [f32; 3]) -> f32x8<S> {
        let load = |v: &Vectors| loaded(simd, v);
        let [to_second, to_third] = [&self.to_second, &self.to_third].map(load);
        let direction = splat(simd, direction);
        let across = cross(&direction, &to_third);
        // Parallel to the plane: infinite or no numbers, which pass no test below.
        let inverse = f32x8::splat(simd, 1.0) / dot(&to_second, &across);
        let from_first = minus(&splat(simd, from), &load(&self.corner));
        let turned = cross(&from_first, &to_second);
        let second = dot(&from_first, &across) * inverse;
        let third = dot(&direction, &turned) * inverse;
        let distance = dot(&to_third, &turned) * inverse;
        let hit = second.simd_ge(-EDGE_SLACK)
            & third.simd_ge(-EDGE_SLACK)
            & (second + third).simd_le(1.0 + EDGE_SLACK)
            & distance.simd_ge(0.0);
        hit.select(distance, f32x8::splat(simd, f32::INFINITY))
    }
}

/// The least of eight numbers and its lane.
#[inline(always)]
fn least<S: Simd>(numbers: f32x8<S>) -> (f32, usize) {
    numbers
        .as_slice()
        .iter()
        .zip(0..)
        .fold((f32::INFINITY, 0), |least, (&number, lane)| {
            if number < least.0 {
                (number, lane)
            } else {
                least
            }
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

fn vectors(lanes: &[Vector3<f64>; LANES]) -> Vectors {
    [0, 1, 2].map(|k| lanes.map(|v| v[k] as f32))
}

#[inline(always)]
fn to_segment<S: Simd>(
    from_start: &Loaded<S>,
    edge: &Loaded<S>,
    inverse_square: f32x8<S>,
) -> f32x8<S> {
    let share = (dot(from_start, edge) * inverse_square).max(0.0).min(1.0);
    let way = minus(from_start, &scaled(edge, share));
    dot(&way, &way)
}

#[inline(always)]
fn loaded<S: Simd>(simd: S, v: &Vectors) -> Loaded<S> {
    let [x, y, z] = v;
    [x, y, z].map(|lanes| simd.load_array_ref_f32x8(lanes))
}

#[inline(always)]
fn splat<S: Simd>(simd: S, v: [f32; 3]) -> Loaded<S> {
    v.map(|c| f32x8::splat(simd, c))
}

#[inline(always)]
fn minus<S: Simd>(a: &Loaded<S>, b: &Loaded<S>) -> Loaded<S> {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

#[inline(always)]
fn scaled<S: Simd>(v: &Loaded<S>, by: f32x8<S>) -> Loaded<S> {
    [v[0] * by, v[1] * by, v[2] * by]
}

#[inline(always)]
fn dot<S: Simd>(a: &Loaded<S>, b: &Loaded<S>) -> f32x8<S> {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

#[inline(always)]
fn cross<S: Simd>(a: &Loaded<S>, b: &Loaded<S>) -> Loaded<S> {
    [
        a[1] * b[2] - a[2] * b[1],
        a[2] * b[0] - a[0] * b[2],
        a[0] * b[1] - a[1] * b[0],
    ]
}
