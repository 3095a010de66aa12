//! Connected patches of a surface whose values lie in a range.

use mesh::Mesh;
use nalgebra::{Point3, Vector3};

/// A patch of surface where values lie in a range.
#[derive(Debug, Clone)]
pub struct Patch {
    /// Area-weighted centre.
    pub centre: Point3<f64>,
    /// Area, mm².
    pub area_mm2: f64,
    /// Least value.
    pub min: f64,
    /// Its vertices, ascending.
    pub vertices: Vec<u32>,
}

/// Patches where `low` < value <= `high`, joined through edges both of whose
/// ends lie in the range. Areas follow the level lines of the linearly
/// interpolated values, not the triangles' edges. Largest first.
pub fn patches(mesh: &Mesh, values: &[Option<f64>], low: f64, high: f64) -> Vec<Patch> {
    let inside = |v: u32| values[v as usize].is_some_and(|x| x > low && x <= high);
    let mut sets = DisjointSets::new(mesh.vertices().len());
    for corners in mesh.triangles() {
        for k in 0..3 {
            let (a, b) = (corners[k], corners[(k + 1) % 3]);
            if inside(a) && inside(b) {
                sets.join(a, b);
            }
        }
    }
    let mut sums: std::collections::BTreeMap<u32, (f64, Vector3<f64>)> = Default::default();
    for (t, corners) in mesh.triangles().iter().enumerate() {
        let Some(&member) = corners.iter().find(|&&v| inside(v)) else {
            continue;
        };
        let [Some(a), Some(b), Some(c)] = corners.map(|v| values[v as usize]) else {
            continue;
        };
        let [p, q, r] = mesh.corners(t);
        let polygon = [(p, a), (q, b), (r, c)];
        let kept = clipped(&clipped(&polygon, high, 1.0), low, -1.0);
        let sum = sums.entry(sets.root(member)).or_default();
        for pair in kept.windows(2).skip(1) {
            let (a, b, c) = (kept[0].0, pair[0].0, pair[1].0);
            let area = (b - a).cross(&(c - a)).norm() / 2.0;
            sum.0 += area;
            sum.1 += (a.coords + b.coords + c.coords) / 3.0 * area;
        }
    }
    let mut members: std::collections::BTreeMap<u32, Vec<u32>> = Default::default();
    for v in 0..values.len() as u32 {
        if inside(v) {
            members.entry(sets.root(v)).or_default().push(v);
        }
    }
    let mut patches: Vec<Patch> = sums
        .into_iter()
        .filter(|(_, (area, _))| *area > 0.0)
        .map(|(root, (area, moment))| {
            let vertices = members.remove(&root).unwrap_or_default();
            let min = vertices
                .iter()
                .filter_map(|&v| values[v as usize])
                .fold(f64::INFINITY, f64::min);
            Patch {
                centre: Point3::from(moment / area),
                area_mm2: area,
                min,
                vertices,
            }
        })
        .collect();
    patches.sort_by(|a, b| b.area_mm2.total_cmp(&a.area_mm2));
    patches
}

/// The part of a polygon whose values are at most `level` (`sense` 1) or at
/// least `level` (`sense` -1), corners interpolated (Sutherland and Hodgman 1974).
fn clipped(polygon: &[(Point3<f64>, f64)], level: f64, sense: f64) -> Vec<(Point3<f64>, f64)> {
    let beyond = |value: f64| (value - level) * sense;
    let mut out = Vec::with_capacity(polygon.len() + 1);
    for i in 0..polygon.len() {
        let (from, to) = (polygon[i], polygon[(i + 1) % polygon.len()]);
        let (a, b) = (beyond(from.1), beyond(to.1));
        if a <= 0.0 {
            out.push(from);
        }
        if (a < 0.0 && b > 0.0) || (a > 0.0 && b < 0.0) {
            out.push((from.0 + (to.0 - from.0) * (a / (a - b)), level));
        }
    }
    out
}

/// How much the area of a patch changes between a lower level (`smaller`) and
/// a higher one (`larger`), mm².
pub fn area_between(patch: &Patch, smaller: &[Patch], larger: &[Patch]) -> f64 {
    let holds = |outer: &Patch, inner: &Patch| {
        inner
            .vertices
            .first()
            .is_some_and(|v| outer.vertices.binary_search(v).is_ok())
    };
    let least: f64 = smaller
        .iter()
        .filter(|s| holds(patch, s))
        .map(|s| s.area_mm2)
        .sum();
    let most = larger
        .iter()
        .find(|l| holds(l, patch))
        .map_or(patch.area_mm2, |l| l.area_mm2);
    most - least
}

/// The vertex of a patch nearest to its centre, so that a place reported lies
/// on the surface. A ring's centre falls inside it.
pub fn nearest_vertex(mesh: &Mesh, patch: &Patch) -> Point3<f64> {
    let distance = |v: &u32| (mesh.vertices()[*v as usize] - patch.centre).norm_squared();
    patch
        .vertices
        .iter()
        .min_by(|a, b| distance(a).total_cmp(&distance(b)))
        .map_or(patch.centre, |&v| mesh.vertices()[v as usize])
}

struct DisjointSets(Vec<u32>);

impl DisjointSets {
    fn new(count: usize) -> Self {
        Self((0..count as u32).collect())
    }

    fn root(&mut self, of: u32) -> u32 {
        let mut at = of;
        while self.0[at as usize] != at {
            let parent = self.0[at as usize];
            self.0[at as usize] = self.0[parent as usize];
            at = parent;
        }
        at
    }

    fn join(&mut self, a: u32, b: u32) {
        let (a, b) = (self.root(a), self.root(b));
        // The lower number leads, so that the outcome depends on nothing else.
        self.0[a.max(b) as usize] = a.min(b);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two cones of value on a plane: discs of known area under any level.
    #[test]
    fn areas_of_two_cones_agree_with_their_formula() {
        let side = 161_u32;
        let mut vertices = Vec::new();
        let mut values = Vec::new();
        for i in 0..side {
            for j in 0..side {
                let p = Point3::new(f64::from(j) * 0.25, f64::from(i) * 0.25, 0.0);
                let near = |x: f64, y: f64| (p - Point3::new(x, y, 0.0)).norm();
                values.push(Some(near(10.0, 10.0).min(near(30.0, 25.0) + 1.0)));
                vertices.push(p);
            }
        }
        let mut triangles = Vec::new();
        for i in 0..side - 1 {
            for j in 0..side - 1 {
                let a = i * side + j;
                triangles.extend([[a, a + 1, a + side], [a + 1, a + side + 1, a + side]]);
            }
        }
        let mesh = Mesh::new(vertices, triangles, None).expect("grid indices are in range");
        let found = patches(&mesh, &values, f64::NEG_INFINITY, 2.0);
        assert_eq!(found.len(), 2);
        for (patch, radius, x) in [(&found[0], 2.0, 10.0), (&found[1], 1.0, 30.0)] {
            let disc = std::f64::consts::PI * radius * radius;
            // A polygon inscribed in the circle lacks at most (edge / 2r)^2 of it.
            assert!(
                (patch.area_mm2 / disc - 1.0).abs() < 0.02,
                "{}",
                patch.area_mm2
            );
            assert!((patch.centre.x - x).abs() < 0.01);
        }
        let ring = patches(&mesh, &values, 1.0, 2.0);
        let expected = std::f64::consts::PI * 3.0;
        assert!((ring[0].area_mm2 / expected - 1.0).abs() < 0.02);
    }
}
