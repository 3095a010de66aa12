//! Nearest points and rays on a mesh.
//!
//! parry3d's bounding volume hierarchy holds the triangles in `f32`, moved to
//! the centre of the mesh; the triangle it finds is then measured in `f64`.

use crate::Mesh;
use nalgebra::{Point3, Vector3};
use parry3d::bounding_volume::Aabb;
use parry3d::math::Vector;
use parry3d::partitioning::{Bvh, BvhBuildStrategy, BvhNode};
use parry3d::query::Ray;
use rayon::prelude::*;

/// Queries per parallel task: enough that neighbours share their path through
/// the tree, few enough to keep every core busy.
const TASK: usize = 512;

/// The place on a mesh that is nearest to a point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nearest {
    /// The place.
    pub point: Point3<f64>,
    /// The triangle it lies on.
    pub triangle: u32,
    /// Its distance, in the mesh's unit.
    pub distance: f64,
    /// Barycentric weights of the triangle's corners at the place.
    pub weights: [f64; 3],
}

/// A search tree over the triangles of a mesh.
#[derive(Clone)]
pub struct SpatialIndex {
    centre: Point3<f64>,
    tree: Bvh,
    /// Corners in the centred frame, in the order of the mesh's triangles.
    corners: Vec<[Vector; 3]>,
    exact: Vec<[Point3<f64>; 3]>,
}

impl SpatialIndex {
    /// The tree of a mesh.
    #[must_use]
    pub fn new(mesh: &Mesh) -> Self {
        let centre = mesh
            .bounds()
            .map_or_else(Point3::origin, |(low, high)| nalgebra::center(&low, &high));
        let exact: Vec<[Point3<f64>; 3]> = (0..mesh.triangles().len())
            .map(|t| mesh.corners(t))
            .collect();
        let corners: Vec<[Vector; 3]> = exact
            .iter()
            .map(|t| t.map(|p| single(&(p - centre))))
            .collect();
        let boxes: Vec<Aabb> = corners
            .iter()
            .map(|&[a, b, c]| Aabb::new(a.min(b).min(c), a.max(b).max(c)))
            .collect();
        Self {
            centre,
            tree: Bvh::from_leaves(BvhBuildStrategy::Binned, &boxes),
            corners,
            exact,
        }
    }

    /// The nearest place on the mesh within `reach`, or `None`.
    #[must_use]
    pub fn nearest(&self, to: &Point3<f64>, reach: f64) -> Option<Nearest> {
        self.nearest_from(single(&(to - self.centre)), reach, None)
            .map(|triangle| self.measured(to, triangle))
    }

    /// The nearest place for each of many points: much quicker than one by one,
    /// since points are taken in an order in which each answer bounds the next.
    #[must_use]
    pub fn nearest_many(&self, points: &[Point3<f64>], reach: f64) -> Vec<Option<Nearest>> {
        let order = spatial_order(points);
        let found: Vec<Option<Nearest>> = order
            .par_chunks(TASK)
            .flat_map_iter(|chunk| {
                let mut last = None;
                chunk.iter().map(move |&i| {
                    let to = &points[i as usize];
                    let triangle = self.nearest_from(single(&(to - self.centre)), reach, last)?;
                    last = Some(triangle);
                    Some(self.measured(to, triangle))
                })
            })
            .collect();
        let mut answers = vec![None; points.len()];
        for (&i, answer) in order.iter().zip(found) {
            answers[i as usize] = answer;
        }
        answers
    }

    /// Distance along a ray (`direction` of unit length) to the first triangle
    /// within `reach`, whichever side it shows.
    #[must_use]
    pub fn ray(&self, from: &Point3<f64>, direction: &Vector3<f64>, reach: f64) -> Option<f64> {
        let ray = Ray::new(single(&(from - self.centre)), single(direction));
        self.tree
            .find_best(
                reach as f32,
                |node: &BvhNode, best| node.cast_ray(&ray, best),
                |leaf, _| hit(&ray, &self.corners[leaf as usize]),
            )
            .map(|(_, distance)| f64::from(distance))
    }

    /// The nearest triangle, starting from a triangle that is likely near.
    fn nearest_from(&self, to: Vector, reach: f64, start: Option<u32>) -> Option<u32> {
        let reach_squared = (reach * reach).min(f64::from(f32::MAX)) as f32;
        // Nudged up, so that the starting triangle itself may win again.
        let bound = start.map_or(reach_squared, |t| {
            let known = squared_distance(to, &self.corners[t as usize]);
            (known * (1.0 + 4.0 * f32::EPSILON) + f32::MIN_POSITIVE).min(reach_squared)
        });
        self.tree
            .find_best(
                bound,
                |node: &BvhNode, _| (to.max(node.mins()).min(node.maxs()) - to).length_squared(),
                |leaf, _| Some(squared_distance(to, &self.corners[leaf as usize])),
            )
            .map(|(leaf, _)| leaf)
    }

    fn measured(&self, to: &Point3<f64>, triangle: u32) -> Nearest {
        let corners = &self.exact[triangle as usize];
        let weights = nearest_weights(to, corners);
        let point = Point3::from(
            corners[0].coords * weights[0]
                + corners[1].coords * weights[1]
                + corners[2].coords * weights[2],
        );
        Nearest {
            point,
            triangle,
            distance: (to - point).norm(),
            weights,
        }
    }
}

fn single(v: &Vector3<f64>) -> Vector {
    Vector::new(v.x as f32, v.y as f32, v.z as f32)
}

/// Squared distance from a point to a triangle (Ericson, Real-Time Collision
/// Detection, 2005, section 5.1.5).
#[inline]
fn squared_distance(p: Vector, &[a, b, c]: &[Vector; 3]) -> f32 {
    let (ab, ac, ap) = (b - a, c - a, p - a);
    let (d1, d2) = (ab.dot(ap), ac.dot(ap));
    if d1 <= 0.0 && d2 <= 0.0 {
        return ap.length_squared();
    }
    let bp = p - b;
    let (d3, d4) = (ab.dot(bp), ac.dot(bp));
    if d3 >= 0.0 && d4 <= d3 {
        return bp.length_squared();
    }
    let vc = d1 * d4 - d3 * d2;
    if vc <= 0.0 && d1 >= 0.0 && d3 <= 0.0 {
        return (ap - ab * (d1 / (d1 - d3))).length_squared();
    }
    let cp = p - c;
    let (d5, d6) = (ab.dot(cp), ac.dot(cp));
    if d6 >= 0.0 && d5 <= d6 {
        return cp.length_squared();
    }
    let vb = d5 * d2 - d1 * d6;
    if vb <= 0.0 && d2 >= 0.0 && d6 <= 0.0 {
        return (ap - ac * (d2 / (d2 - d6))).length_squared();
    }
    let va = d3 * d6 - d5 * d4;
    if va <= 0.0 && d4 - d3 >= 0.0 && d5 - d6 >= 0.0 {
        let w = (d4 - d3) / ((d4 - d3) + (d5 - d6));
        return (bp - (c - b) * w).length_squared();
    }
    let scale = 1.0 / (va + vb + vc);
    (ap - ab * (vb * scale) - ac * (vc * scale)).length_squared()
}

/// Barycentric weights of the point of a triangle nearest to `p`; same source
/// as [`squared_distance`]. A triangle without area gives one of its corners or
/// a point of its longest edge.
fn nearest_weights(p: &Point3<f64>, &[a, b, c]: &[Point3<f64>; 3]) -> [f64; 3] {
    let (ab, ac, ap) = (b - a, c - a, p - a);
    let (d1, d2) = (ab.dot(&ap), ac.dot(&ap));
    if d1 <= 0.0 && d2 <= 0.0 {
        return [1.0, 0.0, 0.0];
    }
    let bp = p - b;
    let (d3, d4) = (ab.dot(&bp), ac.dot(&bp));
    if d3 >= 0.0 && d4 <= d3 {
        return [0.0, 1.0, 0.0];
    }
    let vc = d1 * d4 - d3 * d2;
    if vc <= 0.0 && d1 >= 0.0 && d3 <= 0.0 {
        let v = d1 / (d1 - d3);
        return [1.0 - v, v, 0.0];
    }
    let cp = p - c;
    let (d5, d6) = (ab.dot(&cp), ac.dot(&cp));
    if d6 >= 0.0 && d5 <= d6 {
        return [0.0, 0.0, 1.0];
    }
    let vb = d5 * d2 - d1 * d6;
    if vb <= 0.0 && d2 >= 0.0 && d6 <= 0.0 {
        let w = d2 / (d2 - d6);
        return [1.0 - w, 0.0, w];
    }
    let va = d3 * d6 - d5 * d4;
    if va <= 0.0 && d4 - d3 >= 0.0 && d5 - d6 >= 0.0 {
        let w = (d4 - d3) / ((d4 - d3) + (d5 - d6));
        return [0.0, 1.0 - w, w];
    }
    let scale = 1.0 / (va + vb + vc);
    let (v, w) = (vb * scale, vc * scale);
    [1.0 - v - w, v, w]
}

/// Distance along a ray to a triangle, either side (Möller and Trumbore 1997).
#[inline]
fn hit(ray: &Ray, &[a, b, c]: &[Vector; 3]) -> Option<f32> {
    let (ab, ac) = (b - a, c - a);
    let across = ray.dir.cross(ac);
    let determinant = ab.dot(across);
    if determinant == 0.0 {
        return None;
    }
    let inverse = 1.0 / determinant;
    let from_a = ray.origin - a;
    let u = from_a.dot(across) * inverse;
    let turned = from_a.cross(ab);
    let v = ray.dir.dot(turned) * inverse;
    let distance = ac.dot(turned) * inverse;
    (u >= 0.0 && v >= 0.0 && u + v <= 1.0 && distance >= 0.0).then_some(distance)
}

/// Numbers of the points in Morton order (30 bits) of their box.
fn spatial_order(points: &[Point3<f64>]) -> Vec<u32> {
    let Some(first) = points.first() else {
        return Vec::new();
    };
    let (low, high) = points
        .iter()
        .fold((first.coords, first.coords), |(l, h), p| {
            (l.inf(&p.coords), h.sup(&p.coords))
        });
    let cells = (high - low).map(|extent| if extent > 0.0 { 1023.0 / extent } else { 0.0 });
    let mut keyed: Vec<(u32, u32)> = points
        .par_iter()
        .enumerate()
        .map(|(i, p)| {
            let cell = (p.coords - low).component_mul(&cells);
            let key =
                spread(cell.x as u32) | spread(cell.y as u32) << 1 | spread(cell.z as u32) << 2;
            (key, i as u32)
        })
        .collect();
    keyed.par_sort_unstable();
    keyed.into_iter().map(|(_, i)| i).collect()
}

/// Ten bits moved apart so that two more numbers fit between them.
fn spread(ten_bits: u32) -> u32 {
    let x = ten_bits & 0x3ff;
    let x = (x | x << 16) & 0x0300_00ff;
    let x = (x | x << 8) & 0x0300_f00f;
    let x = (x | x << 4) & 0x030c_30c3;
    (x | x << 2) & 0x0924_9249
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A sphere of radius 10 about (100, 0, 0) as a fine grid of triangles.
    fn sphere() -> Mesh {
        let (rows, columns) = (200_u32, 400_u32);
        let mut vertices = Vec::new();
        for i in 0..=rows {
            for j in 0..columns {
                let polar = std::f64::consts::PI * f64::from(i) / f64::from(rows);
                let azimuth = std::f64::consts::TAU * f64::from(j) / f64::from(columns);
                vertices.push(Point3::new(
                    100.0 + 10.0 * polar.sin() * azimuth.cos(),
                    10.0 * polar.sin() * azimuth.sin(),
                    10.0 * polar.cos(),
                ));
            }
        }
        let mut triangles = Vec::new();
        for i in 0..rows {
            for j in 0..columns {
                let k = (j + 1) % columns;
                let (a, b) = (i * columns + j, i * columns + k);
                let (c, d) = (a + columns, b + columns);
                triangles.extend([[a, c, d], [a, d, b]]);
            }
        }
        Mesh::new(vertices, triangles, None).expect("grid indices are in range")
    }

    #[test]
    fn distances_to_a_sphere_agree_with_its_formula() {
        let index = SpatialIndex::new(&sphere());
        let points: Vec<Point3<f64>> = (0..2000)
            .map(|i| {
                let t = f64::from(i);
                Point3::new(
                    100.0 + 14.0 * (0.7 * t).sin(),
                    13.0 * (1.3 * t).cos(),
                    9.0 * (0.11 * t).sin(),
                )
            })
            .collect();
        for (p, nearest) in points
            .iter()
            .zip(index.nearest_many(&points, f64::INFINITY))
        {
            let formula = ((p - Point3::new(100.0, 0.0, 0.0)).norm() - 10.0).abs();
            let found = nearest.expect("the reach is unlimited");
            // The facets lie up to r (1 - cos(step)) = 1.3e-3 inside the sphere.
            assert!(
                (found.distance - formula).abs() < 1.5e-3,
                "{p}: {} {formula}",
                found.distance
            );
            let alone = index
                .nearest(p, f64::INFINITY)
                .expect("the reach is unlimited");
            assert!((alone.distance - found.distance).abs() < 1e-5);
        }
    }

    #[test]
    fn nothing_is_found_beyond_the_reach() {
        let index = SpatialIndex::new(&sphere());
        assert!(index.nearest(&Point3::new(115.0, 0.0, 0.0), 4.9).is_none());
        assert!(index.nearest(&Point3::new(115.0, 0.0, 0.0), 5.1).is_some());
    }

    #[test]
    fn a_ray_through_the_centre_meets_the_sphere_at_its_radius() {
        let index = SpatialIndex::new(&sphere());
        let direction = Vector3::new(0.3, -0.5, 0.7).normalize();
        let hit = index.ray(
            &(Point3::new(100.0, 0.0, 0.0) - direction * 30.0),
            &direction,
            100.0,
        );
        assert!((hit.expect("the ray passes the centre") - 20.0).abs() < 2e-3);
        assert!(
            index
                .ray(&Point3::new(100.0, 0.0, 15.0), &Vector3::x(), 100.0)
                .is_none()
        );
    }
}
