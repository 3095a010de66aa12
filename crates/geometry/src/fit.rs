//! Least-squares fits.

use nalgebra::{Matrix3, Matrix4, Point3, Unit, UnitVector3, Vector3, Vector4};

/// A plane through a point.
#[derive(Debug, Clone, Copy)]
pub struct Plane {
    /// A point of the plane: the centroid of what it was fitted to.
    pub point: Point3<f64>,
    /// Its normal; the sign is arbitrary.
    pub normal: UnitVector3<f64>,
}

impl Plane {
    /// The plane of least squared distances: through the centroid, normal along
    /// the axis of least variance (Pearson 1901). `None` for fewer than three
    /// points or points on one line.
    pub fn fit(points: &[Point3<f64>]) -> Option<Self> {
        let spread = PrincipalAxes::of(points)?;
        let on_a_line = spread.variances[1] <= 1e-12 * spread.variances[2];
        (points.len() >= 3 && !on_a_line).then(|| Self {
            point: spread.centre,
            normal: spread.axes[0],
        })
    }

    /// Signed distance of a point from the plane.
    pub fn distance(&self, to: &Point3<f64>) -> f64 {
        self.normal.dot(&(to - self.point))
    }
}

/// A sphere.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sphere {
    /// Its centre.
    pub centre: Point3<f64>,
    /// Its radius.
    pub radius: f64,
}

impl Sphere {
    /// The sphere of least squared distances: begun with the algebraic fit and
    /// finished by Gauss-Newton steps. `None` for fewer than four points or
    /// points in one plane.
    pub fn fit(points: &[Point3<f64>]) -> Option<Self> {
        const STEPS: usize = 100;
        const STILL: f64 = 1e-13;
        // Near the origin and of size 1, whatever the units.
        let spread = PrincipalAxes::of(points)?;
        let size = spread.variances.iter().sum::<f64>().sqrt();
        let is_flat = spread.variances[0] <= 1e-14 * size * size;
        if points.len() < 4 || is_flat {
            return None;
        }
        let near: Vec<Point3<f64>> = points
            .iter()
            .map(|p| Point3::from((p - spread.centre) / size))
            .collect();
        let mut sphere = Self::algebraic(&near)?;
        for _ in 0..STEPS {
            let step = sphere.step(&near)?;
            sphere.centre += step.xyz();
            sphere.radius += step.w;
            if step.norm() <= STILL * sphere.radius.abs().max(1.0) {
                break;
            }
        }
        let found = Self {
            centre: spread.centre + sphere.centre.coords * size,
            radius: sphere.radius * size,
        };
        (found.radius > 0.0 && found.radius.is_finite()).then_some(found)
    }

    /// Signed distance of a point from the sphere, positive outside.
    pub fn distance(&self, to: &Point3<f64>) -> f64 {
        (to - self.centre).norm() - self.radius
    }

    /// Covariance of centre and radius of a sphere fitted to these points, if
    /// they err independently and alike. `None` where they do not hold it.
    pub fn covariance(&self, points: &[Point3<f64>]) -> Option<Matrix4<f64>> {
        let freedom = points.len().checked_sub(4).filter(|&f| f > 0)? as f64;
        let squares: f64 = points.iter().map(|p| self.distance(p).powi(2)).sum();
        let (normal, _) = self.equations(points);
        Some(normal.cholesky()?.inverse() * (squares / freedom))
    }

    /// The sphere on which |p|² - 2 p·c + const is least squared: linear in its
    /// unknowns.
    fn algebraic(points: &[Point3<f64>]) -> Option<Self> {
        let (mut normal, mut right) = (Matrix4::zeros(), Vector4::zeros());
        for p in points {
            let row = Vector4::new(2.0 * p.x, 2.0 * p.y, 2.0 * p.z, 1.0);
            normal += row * row.transpose();
            right += row * p.coords.norm_squared();
        }
        let found = normal.cholesky()?.solve(&right);
        Some(Self {
            centre: Point3::from(found.xyz()),
            radius: (found.w + found.xyz().norm_squared()).sqrt(),
        })
    }

    /// What a Gauss-Newton step adds to centre and radius.
    fn step(&self, points: &[Point3<f64>]) -> Option<Vector4<f64>> {
        let (normal, right) = self.equations(points);
        Some(normal.cholesky()?.solve(&right))
    }

    /// Normal equations of the distances, linear about this sphere.
    fn equations(&self, points: &[Point3<f64>]) -> (Matrix4<f64>, Vector4<f64>) {
        let (mut normal, mut right) = (Matrix4::zeros(), Vector4::zeros());
        for p in points {
            let outward = (p - self.centre).try_normalize(0.0).unwrap_or_default();
            let row = Vector4::new(outward.x, outward.y, outward.z, 1.0);
            normal += row * row.transpose();
            right += row * self.distance(p);
        }
        (normal, right)
    }
}

/// How points are spread about their centroid.
pub struct PrincipalAxes {
    /// The centroid.
    pub centre: Point3<f64>,
    /// The axes, that of least variance first.
    pub axes: [UnitVector3<f64>; 3],
    /// Variance along each axis.
    pub variances: [f64; 3],
}

impl PrincipalAxes {
    /// The axes of a set of points; `None` for none.
    pub fn of(points: &[Point3<f64>]) -> Option<Self> {
        if points.is_empty() {
            return None;
        }
        let count = points.len() as f64;
        let centre = points.iter().map(|p| p.coords).sum::<Vector3<f64>>() / count;
        let covariance = points.iter().fold(Matrix3::zeros(), |sum, p| {
            let d = p.coords - centre;
            sum + d * d.transpose()
        }) / count;
        let eigen = covariance.symmetric_eigen();
        let mut order = [0, 1, 2];
        order.sort_by(|&a, &b| eigen.eigenvalues[a].total_cmp(&eigen.eigenvalues[b]));
        Some(Self {
            centre: Point3::from(centre),
            axes: order.map(|i| Unit::new_normalize(eigen.eigenvectors.column(i).into_owned())),
            variances: order.map(|i| eigen.eigenvalues[i]),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::Path;

    fn numbers(text: &str) -> Vec<f64> {
        text.split_whitespace()
            .map(|word| word.parse().expect("the file holds numbers"))
            .collect()
    }

    /// NIST "L2 reference pairs": 30 data sets of a kind with their
    /// least-squares fits. Published for self-checking; no certification is
    /// claimed.
    #[allow(clippy::print_stderr, reason = "a skipped test says so")]
    fn reference_pairs(kind: &str, short: &str) -> Vec<(Vec<Point3<f64>>, Vec<f64>)> {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("../../../shared/data/nist-l2")
            .join(kind);
        if !folder.exists() {
            eprintln!("skipped: {} is absent", folder.display());
            return Vec::new();
        }
        let pair = |set| {
            let read = |ending: &str| {
                let text = std::fs::read_to_string(folder.join(format!("{short}{set}.{ending}")));
                numbers(&text.expect("the set is complete"))
            };
            let data = read("ds");
            let points: Vec<Point3<f64>> = data[1..]
                .chunks_exact(3)
                .map(|c| Point3::new(c[0], c[1], c[2]))
                .collect();
            assert_eq!(points.len(), data[0] as usize);
            (points, read("fit"))
        };
        (1..=30).map(pair).collect()
    }

    #[test]
    fn planes_equal_the_nist_reference_pairs() {
        for (points, expected) in reference_pairs("Plane", "pla") {
            let plane = Plane::fit(&points).expect("the points span a plane");
            let normal = Vector3::new(expected[3], expected[4], expected[5]);
            assert!(plane.normal.cross(&normal).norm() < 1e-7, "{expected:?}");
            let reference_point = Point3::new(expected[0], expected[1], expected[2]);
            let off = plane.distance(&reference_point).abs();
            assert!(off < 1e-6, "{expected:?}: {off}");
        }
    }

    #[test]
    #[allow(clippy::print_stdout, reason = "the figures are what the test is for")]
    fn spheres_equal_the_nist_reference_pairs() {
        let mut worst = (0.0_f64, 0.0_f64);
        for (points, expected) in reference_pairs("Sphere", "sph") {
            let sphere = Sphere::fit(&points).expect("the points span a sphere");
            let centre = Point3::new(expected[0], expected[1], expected[2]);
            let off = (sphere.centre - centre).norm();
            let wide = (2.0 * sphere.radius - expected[3]).abs();
            assert!(off < 1e-6 && wide < 1e-6, "{expected:?}: {off}, {wide}");
            worst = (worst.0.max(off), worst.1.max(wide));
        }
        println!(
            "spheres: centre {:.1e}, diameter {:.1e} mm at most",
            worst.0, worst.1
        );
    }

    /// Four points hold a sphere exactly; of more the spread follows from the
    /// residuals. Over a whole sphere of n points the radius has the variance
    /// s²/n, each coordinate of the centre 3 s²/n.
    #[test]
    fn covariance_over_a_whole_sphere_is_that_of_the_formula() {
        let turn = std::f64::consts::PI * (3.0 - 5.0_f64.sqrt());
        let points: Vec<Point3<f64>> = (0..2000)
            .map(|i| {
                let z = 1.0 - (f64::from(i) + 0.5) / 1000.0;
                let (sin, cos) = (turn * f64::from(i)).sin_cos();
                let wide = (1.0 - z * z).sqrt();
                let radius = if i % 2 == 0 { 5.01 } else { 4.99 };
                Point3::new(3.0, -1.0, 7.0) + Vector3::new(wide * cos, wide * sin, z) * radius
            })
            .collect();
        let sphere = Sphere::fit(&points).expect("the points span a sphere");
        assert!((sphere.radius - 5.0).abs() < 1e-5, "{sphere:?}");
        let covariance = sphere.covariance(&points).expect("the points hold it");
        let unit = 0.01 * 0.01 / 2000.0;
        for (k, times) in [3.0, 3.0, 3.0, 1.0].into_iter().enumerate() {
            let ratio = covariance[(k, k)] / (unit * times);
            assert!((ratio - 1.0).abs() < 0.02, "{k}: {ratio}");
        }
        assert_eq!(sphere.covariance(&points[..4]), None);
    }

    #[test]
    fn points_in_a_plane_span_no_sphere() {
        let flat: Vec<Point3<f64>> = (0..9)
            .map(|i| Point3::new(f64::from(i % 3), f64::from(i / 3), 0.0))
            .collect();
        assert_eq!(Sphere::fit(&flat), None);
        assert_eq!(Sphere::fit(&flat[..3]), None);
        let nowhere = [Point3::new(f64::NAN, 0.0, 0.0); 5];
        assert_eq!(Sphere::fit(&nowhere), None);
    }
}
