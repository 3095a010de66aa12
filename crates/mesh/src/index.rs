//! Nearest points and rays on a mesh.
//!
//! Neighbouring triangles stand together in eights, which are measured at once
//! in `f32`, moved to the centre of the mesh; parry3d's bounding volume
//! hierarchy finds the eights. The triangle found is then measured in `f64`.

mod octet;
mod order;
#[cfg(test)]
mod tests;
mod triangle;

use crate::Mesh;
use fearless_simd::Level;
use nalgebra::{Point3, Vector3};
use octet::{LANES, Octet};
use parry3d::bounding_volume::Aabb;
use parry3d::math::Vector;
use parry3d::partitioning::{Bvh, BvhBuildStrategy, BvhNode};
use parry3d::query::Ray;
use rayon::prelude::*;

/// Queries per parallel task: enough that neighbours share their path through
/// the tree, few enough to keep every core busy. Fixed, so that the answers do
/// not depend on how many cores there are.
const TASK: usize = 512;

/// Coordinates are cut off here, so that no square overflows in `f32`.
const FARTHEST: f64 = 1e18;

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

/// Where a ray first meets a mesh.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hit {
    /// Distance along the ray, in the mesh's unit.
    pub distance: f64,
    /// The triangle that is met.
    pub triangle: u32,
}

/// A search tree over the triangles of a mesh.
///
/// Distances to the nearest place are good to 1e-5 mm, and distances along rays
/// to 1e-4 mm, on scans up to 100 mm across whose unit is mm.
#[derive(Clone)]
pub struct SpatialIndex {
    centre: Point3<f64>,
    /// Leaves are numbers of octets.
    tree: Bvh,
    octets: Vec<Octet>,
    /// The triangle in each lane of each octet.
    triangles: Vec<[u32; LANES]>,
    mesh: Mesh,
    /// What the processor can do.
    level: Level,
}

impl SpatialIndex {
    /// The tree of a mesh.
    #[must_use]
    pub fn new(mesh: &Mesh) -> Self {
        let centre = mesh
            .bounds()
            .map_or_else(Point3::origin, |(low, high)| nalgebra::center(&low, &high));
        let corners_of = |t: u32| mesh.corners(t as usize).map(|p| centred(&p, &centre));
        let count = mesh.triangles().len() as u32;
        let thrice_middles = (0..count).map(|t| {
            let [a, b, c] = corners_of(t);
            a + b + c
        });
        let triangles: Vec<[u32; LANES]> = order::in_groups(thrice_middles, LANES)
            .chunks(LANES)
            .map(filled)
            .collect();
        let (octets, boxes): (Vec<Octet>, Vec<Aabb>) = triangles
            .par_iter()
            .map(|lanes| {
                let corners = lanes.map(corners_of);
                (Octet::new(&corners), bounds(&corners))
            })
            .unzip();
        Self {
            tree: Bvh::from_leaves(BvhBuildStrategy::Binned, &boxes),
            octets,
            centre,
            triangles,
            mesh: mesh.clone(),
            level: Level::new(),
        }
    }

    /// The mesh.
    #[must_use]
    pub fn mesh(&self) -> &Mesh {
        &self.mesh
    }

    /// The nearest place on the mesh within `reach`, or `None`.
    #[must_use]
    pub fn nearest(&self, to: &Point3<f64>, reach: f64) -> Option<Nearest> {
        let found = self.nearest_lane(self.single(to), reach, None)?;
        Some(self.measured(to, found))
    }

    /// The nearest place for each of many points: much quicker than one by one,
    /// since points are taken in an order in which each answer bounds the next.
    #[must_use]
    pub fn nearest_many(&self, points: &[Point3<f64>], reach: f64) -> Vec<Option<Nearest>> {
        let order = order::along_a_curve(points);
        let found: Vec<Option<Nearest>> = order
            .par_chunks(TASK)
            .flat_map_iter(|chunk| {
                let mut last = None;
                chunk.iter().map(move |&i| {
                    let to = &points[i as usize];
                    let found = self.nearest_lane(self.single(to), reach, last)?;
                    last = Some(found);
                    Some(self.measured(to, found))
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
        self.first_hit(from, direction, reach)
            .map(|hit| hit.distance)
    }

    /// The first triangle along a ray (`direction` of unit length) within
    /// `reach`, whichever side it shows.
    #[must_use]
    pub fn first_hit(
        &self,
        from: &Point3<f64>,
        direction: &Vector3<f64>,
        reach: f64,
    ) -> Option<Hit> {
        let ray = Ray::new(self.single(from), vector(direction));
        let (from, along) = (ray.origin.to_array(), ray.dir.to_array());
        self.tree
            .find_best(
                reach as f32,
                |node: &BvhNode, best| node.cast_ray(&ray, best),
                |octet, _| Some(self.octets[octet as usize].first_hit(self.level, from, along)),
            )
            .map(|(octet, (distance, lane))| Hit {
                distance: f64::from(distance),
                triangle: self.triangles[octet as usize][lane],
            })
    }

    /// The nearest triangle, starting from one that is likely near.
    fn nearest_lane(&self, to: Vector, reach: f64, start: Option<Lane>) -> Option<Lane> {
        let squared_reach = (reach * reach).min(f64::from(f32::MAX)) as f32;
        let point = to.to_array();
        let better =
            |octet: u32, than: f32| self.octets[octet as usize].nearer(self.level, point, than);
        let first = start.and_then(|s| Some((s.octet, better(s.octet, squared_reach)?)));
        self.tree
            .find_best(
                first.map_or(squared_reach, |(_, (distance, _))| distance),
                |node: &BvhNode, _| (to.max(node.mins()).min(node.maxs()) - to).length_squared(),
                better,
            )
            .or(first)
            .map(|(octet, (_, lane))| Lane { octet, lane })
    }

    fn measured(&self, to: &Point3<f64>, at: Lane) -> Nearest {
        let triangle = self.triangles[at.octet as usize][at.lane];
        let corners = self.mesh.corners(triangle as usize);
        let weights = triangle::nearest_weights(to, &corners);
        let [a, b, c] = corners.map(|corner| corner.coords);
        let point = Point3::from(a * weights[0] + b * weights[1] + c * weights[2]);
        Nearest {
            point,
            triangle,
            distance: (to - point).norm(),
            weights,
        }
    }

    fn single(&self, p: &Point3<f64>) -> Vector {
        vector(&centred(p, &self.centre))
    }
}

/// One of the triangles of an octet.
#[derive(Clone, Copy)]
struct Lane {
    octet: u32,
    lane: usize,
}

fn centred(p: &Point3<f64>, centre: &Point3<f64>) -> Vector3<f64> {
    (p - centre).map(|c| c.clamp(-FARTHEST, FARTHEST))
}

fn vector(v: &Vector3<f64>) -> Vector {
    Vector::new(v.x as f32, v.y as f32, v.z as f32)
}

/// A group as lanes: the last of a short group stands in the rest too.
fn filled(group: &[u32]) -> [u32; LANES] {
    std::array::from_fn(|lane| group[lane.min(group.len() - 1)])
}

fn bounds(triangles: &[[Vector3<f64>; 3]; LANES]) -> Aabb {
    let corners = triangles.as_flattened();
    let (low, high) = corners
        .iter()
        .fold((corners[0], corners[0]), |(l, h), c| (l.inf(c), h.sup(c)));
    Aabb::new(vector(&low), vector(&high))
}
