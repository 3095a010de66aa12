//! Spheres of known size in a scan: every vertex votes for the centre that it
//! would have on a sphere, one radius below it (Kimme, Ballard and Sklansky
//! 1975, in space); where many votes fall together, a sphere is fitted.

use geometry::field::vertex_areas;
use geometry::fit::Sphere;
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use std::collections::BTreeMap;

/// A sphere in the scan.
#[derive(Debug, Clone)]
pub struct Candidate {
    /// The least-squares sphere, mm.
    pub sphere: Sphere,
    /// The vertices that it was fitted to: within three standard deviations.
    pub points: Vec<Point3<f64>>,
    /// All vertices on it, what lies off by a twentieth of the radius included.
    pub seen: Vec<Point3<f64>>,
}

/// Cell of the votes, as a share of the radius: wide enough for noisy normals.
const CELL: f64 = 0.15;
/// Solid angle over which a sphere must be seen, sr. A flat piece gives less
/// than a fifth of it to any place.
const LEAST_SEEN_SR: f64 = 1.5;
/// More spheres of a size are not looked at.
const MOST: usize = 40;
/// Spheres of fewer vertices are not fitted.
const LEAST_POINTS: usize = 30;
/// What lies farther off a sphere, as a share of its radius, is not of it.
const OF_SPHERE: f64 = 0.05;
/// How far a radius may be off, as a share.
const PLAY: f64 = 0.15;

/// Every sphere of one of these radii, mm, in a scan that faces outward.
pub fn all(scan: &Mesh, radii: &[f64]) -> Vec<Candidate> {
    let mut sizes = radii.to_vec();
    sizes.sort_by(f64::total_cmp);
    // Sizes that cannot be told apart by voting are looked for once.
    sizes.dedup_by(|larger, smaller| *larger < *smaller * (1.0 + PLAY / 2.0));
    let surface = Surface::of(scan);
    let mut found: Vec<Candidate> = Vec::new();
    for radius in sizes {
        for centre in surface.centres(radius) {
            let Some(candidate) = surface.fitted(centre, radius) else {
                continue;
            };
            let is_new = found.iter().all(|other| {
                let apart = (other.sphere.centre - candidate.sphere.centre).norm();
                apart > 0.5 * other.sphere.radius
            });
            if is_new {
                found.push(candidate);
            }
        }
    }
    found
}

struct Surface<'a> {
    points: &'a [Point3<f64>],
    normals: Vec<Vector3<f64>>,
    areas: Vec<f64>,
}

type Cell = [i64; 3];

impl<'a> Surface<'a> {
    fn of(scan: &'a Mesh) -> Self {
        Self {
            points: scan.vertices(),
            normals: scan.vertex_normals(),
            areas: vertex_areas(scan, |_| true),
        }
    }

    /// Where many votes for a sphere of this radius fall together.
    fn centres(&self, radius: f64) -> Vec<Point3<f64>> {
        let width = CELL * radius;
        let mut votes: BTreeMap<Cell, (f64, Vector3<f64>)> = BTreeMap::new();
        for ((point, normal), area) in self.points.iter().zip(&self.normals).zip(&self.areas) {
            let centre = (point - normal * radius).coords;
            let cell = [centre.x, centre.y, centre.z].map(|c| (c / width).floor() as i64);
            let sum = votes.entry(cell).or_default();
            sum.0 += area;
            sum.1 += centre * *area;
        }
        let around = |cell: &Cell| {
            let mut sum = (0.0, Vector3::zeros());
            for step in 0..27 {
                let near = [step % 3, step / 3 % 3, step / 9].map(|s: i64| s - 1);
                let there = [0, 1, 2].map(|k| cell[k] + near[k]);
                if let Some((area, moment)) = votes.get(&there) {
                    sum.0 += area;
                    sum.1 += moment;
                }
            }
            sum
        };
        let mut peaks: Vec<(f64, Point3<f64>)> = votes
            .keys()
            .map(around)
            .filter(|(area, _)| area / (radius * radius) >= LEAST_SEEN_SR)
            .map(|(area, moment)| (area, Point3::from(moment / area)))
            .collect();
        peaks.sort_by(|a, b| b.0.total_cmp(&a.0));
        let mut chosen: Vec<Point3<f64>> = Vec::new();
        for (_, peak) in peaks {
            if chosen.len() < MOST && chosen.iter().all(|c| (c - peak).norm() > radius) {
                chosen.push(peak);
            }
        }
        chosen
    }

    /// The sphere through the vertices about a centre; the band that they are
    /// taken from narrows to three standard deviations of what is in it.
    fn fitted(&self, centre: Point3<f64>, radius: f64) -> Option<Candidate> {
        const ROUNDS: usize = 12;
        const LEAST_BAND_MM: f64 = 0.005;
        let mut sphere = Sphere { centre, radius };
        let mut band = PLAY * radius;
        let mut points = Vec::new();
        for _ in 0..ROUNDS {
            points = self.near(&sphere, band);
            if points.len() < LEAST_POINTS {
                return None;
            }
            sphere = Sphere::fit(&points)?;
            let mut off: Vec<f64> = points.iter().map(|p| sphere.distance(p).abs()).collect();
            let middle = off.len() / 2;
            let (_, median, _) = off.select_nth_unstable_by(middle, f64::total_cmp);
            let own = (3.0 * 1.4826 * *median).max(LEAST_BAND_MM);
            if own >= band {
                break;
            }
            // Not faster than the fit can follow.
            band = own.max(0.3 * band);
        }
        let is_as_large = (sphere.radius / radius - 1.0).abs() <= PLAY;
        is_as_large.then(|| Candidate {
            sphere,
            points,
            seen: self.near(&sphere, OF_SPHERE * sphere.radius),
        })
    }

    /// The vertices in a band about a sphere that face away from its centre.
    fn near(&self, sphere: &Sphere, band: f64) -> Vec<Point3<f64>> {
        /// Cosine between normal and radius: stems and bases stand across.
        const ALIKE: f64 = 0.8;
        let of_sphere = |(p, normal): &(&Point3<f64>, &Vector3<f64>)| {
            let out = *p - sphere.centre;
            (out.norm() - sphere.radius).abs() <= band && out.dot(normal) > ALIKE * out.norm()
        };
        let all = self.points.iter().zip(&self.normals);
        all.filter(of_sphere).map(|(p, _)| *p).collect()
    }
}
