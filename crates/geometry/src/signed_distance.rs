//! Signed distance to the surface of a thin-walled solid.

use mesh::{Mesh, Nearest, SpatialIndex, Topology};
use nalgebra::{Point3, Unit, UnitVector3, Vector3};

/// Barycentric weight below which a place lies on the edge opposite the corner.
const ON_EDGE: f64 = 1e-6;

/// How a point lies beside a solid.
#[derive(Debug, Clone, Copy)]
pub struct Beside {
    /// Signed distance, mm, negative inside the solid's wall.
    pub mm: f64,
    /// Away from the solid: from its nearest place to the point, or its outward
    /// normal where the two nearly coincide.
    pub away: UnitVector3<f64>,
    /// The nearest place, solid coordinates.
    pub place: Point3<f64>,
    /// Angle between `away` and the normal of the nearest triangle, rad: above 0
    /// on an edge or corner alone.
    pub off_normal: f64,
    /// Whether the nearest place lies on an edge of one triangle alone, where the
    /// surface ends.
    pub on_open_edge: bool,
}

/// A thin-walled solid ready to be measured from.
pub struct Solid<'a> {
    mesh: &'a Mesh,
    topology: &'a Topology,
    index: &'a SpatialIndex,
    corner_normals: &'a [Vector3<f64>],
    half_wall_mm: f64,
}

impl<'a> Solid<'a> {
    /// A solid in mm, wound outward, with the normals that
    /// [`angle_weighted_normals`] gives for it. No point inside it lies deeper
    /// than `half_wall_mm`: a larger distance is outside, whatever the normals say.
    pub fn new(
        mesh: &'a Mesh,
        topology: &'a Topology,
        index: &'a SpatialIndex,
        corner_normals: &'a [Vector3<f64>],
        half_wall_mm: f64,
    ) -> Self {
        Self {
            mesh,
            topology,
            index,
            corner_normals,
            half_wall_mm,
        }
    }

    /// Signed distances, mm, of points (solid coordinates) to the solid, negative
    /// inside its wall. `None` where the nearest part of it shows its back: the
    /// wall between was not scanned, or no solid lies there.
    #[must_use]
    pub fn distances(&self, points: &[Point3<f64>]) -> Vec<Option<f64>> {
        self.beside(points)
            .into_iter()
            .map(|beside| Some(beside?.mm))
            .collect()
    }

    /// How points (solid coordinates) lie beside the solid; `None` as for
    /// [`distances`](Self::distances).
    #[must_use]
    pub fn beside(&self, points: &[Point3<f64>]) -> Vec<Option<Beside>> {
        self.index
            .nearest_many(points, f64::INFINITY)
            .iter()
            .zip(points)
            .map(|(nearest, point)| {
                let nearest = nearest.as_ref()?;
                self.at(point, nearest, self.signed(point, nearest)?)
            })
            .collect()
    }

    fn at(&self, point: &Point3<f64>, nearest: &Nearest, mm: f64) -> Option<Beside> {
        /// Nearer than this, mm, the way from one place to the other says nothing.
        const COINCIDE_MM: f64 = 0.02;
        let triangle = nearest.triangle as usize;
        let off = (point - nearest.point) * mm.signum();
        let normal = unit_normal(self.mesh, triangle);
        let away = Unit::try_new(off, COINCIDE_MM).or_else(|| Unit::try_new(normal, 0.0))?;
        Some(Beside {
            mm,
            away,
            place: nearest.point,
            off_normal: away.angle(&normal),
            on_open_edge: self.is_on_open_edge(nearest),
        })
    }

    fn is_on_open_edge(&self, nearest: &Nearest) -> bool {
        let triangle = nearest.triangle as usize;
        let corners = self.mesh.triangles()[triangle];
        (0..3)
            .filter(|&opposite| nearest.weights[opposite] < ON_EDGE)
            .any(|opposite| {
                let edge = [(opposite + 1) % 3, (opposite + 2) % 3].map(|k| corners[k]);
                let mut neighbours = self.topology.neighbours(triangle);
                !neighbours.any(|n| edge.iter().all(|v| self.mesh.triangles()[n].contains(v)))
            })
    }

    /// The sign is that of the pseudonormal of the nearest face, edge or corner
    /// (Baerentzen and Aanaes 2005), which is exact for a closed surface.
    fn signed(&self, point: &Point3<f64>, nearest: &Nearest) -> Option<f64> {
        /// Cosine from which a back is meant; at the rim of an open scan the
        /// sign alone says nothing.
        const BACK: f64 = -0.5;
        let off = point - nearest.point;
        let outward = self.pseudonormal(nearest);
        if nearest.distance <= self.half_wall_mm {
            let inside = outward.dot(&off) < 0.0;
            return Some(if inside {
                -nearest.distance
            } else {
                nearest.distance
            });
        }
        let cosine = outward.dot(&off) / (outward.norm() * off.norm()).max(f64::MIN_POSITIVE);
        (cosine > BACK).then_some(nearest.distance)
    }

    fn pseudonormal(&self, nearest: &Nearest) -> Vector3<f64> {
        let triangle = nearest.triangle as usize;
        let corners = self.mesh.triangles()[triangle];
        let off: Vec<usize> = (0..3).filter(|&k| nearest.weights[k] < ON_EDGE).collect();
        match off[..] {
            [] => unit_normal(self.mesh, triangle),
            [opposite] => {
                let edge = [(opposite + 1) % 3, (opposite + 2) % 3].map(|k| corners[k]);
                let across = self
                    .topology
                    .neighbours(triangle)
                    .find(|&n| edge.iter().all(|v| self.mesh.triangles()[n].contains(v)));
                unit_normal(self.mesh, triangle)
                    + across.map_or_else(Vector3::zeros, |n| unit_normal(self.mesh, n))
            }
            _ => {
                let corner = (0..3).find(|k| !off.contains(k)).unwrap_or(0);
                self.corner_normals[corners[corner] as usize]
            }
        }
    }
}

fn unit_normal(mesh: &Mesh, triangle: usize) -> Vector3<f64> {
    mesh.area_vector(triangle)
        .try_normalize(0.0)
        .unwrap_or_default()
}

/// Sum of the unit normals round each vertex, weighted by the angle at it.
#[must_use]
pub fn angle_weighted_normals(mesh: &Mesh) -> Vec<Vector3<f64>> {
    let mut sums = vec![Vector3::zeros(); mesh.vertices().len()];
    for t in 0..mesh.triangles().len() {
        let normal = unit_normal(mesh, t);
        let p = mesh.corners(t);
        for k in 0..3 {
            let angle = (p[(k + 1) % 3] - p[k]).angle(&(p[(k + 2) % 3] - p[k]));
            sums[mesh.triangles()[t][k] as usize] += normal * angle;
        }
    }
    sums
}
