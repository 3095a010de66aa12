//! Least-squares fits.

use nalgebra::{Matrix3, Point3, Unit, UnitVector3, Vector3};

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

    /// NIST "L2 reference pairs": least-squares planes of 30 data sets. Published
    /// for self-checking; no certification is claimed.
    #[test]
    #[allow(clippy::print_stderr, reason = "a skipped test says so")]
    fn planes_equal_the_nist_reference_pairs() {
        let folder =
            Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/data/nist-l2/Plane");
        if !folder.exists() {
            eprintln!("skipped: {} is absent", folder.display());
            return;
        }
        for set in 1..=30 {
            let read = |kind: &str| {
                std::fs::read_to_string(folder.join(format!("pla{set}.{kind}")))
                    .expect("the set is complete")
            };
            let data = numbers(&read("ds"));
            let points: Vec<Point3<f64>> = data[1..]
                .chunks_exact(3)
                .map(|c| Point3::new(c[0], c[1], c[2]))
                .collect();
            assert_eq!(points.len(), data[0] as usize);
            let expected = numbers(&read("fit"));
            let plane = Plane::fit(&points).expect("the points span a plane");
            let normal = Vector3::new(expected[3], expected[4], expected[5]);
            assert!(plane.normal.cross(&normal).norm() < 1e-7, "set {set}");
            let reference_point = Point3::new(expected[0], expected[1], expected[2]);
            assert!(plane.distance(&reference_point).abs() < 1e-6, "set {set}");
        }
    }
}
