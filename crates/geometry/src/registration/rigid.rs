//! The rigid motion between two sets of paired points, in closed form.

use nalgebra::{Isometry3, Matrix3, Point3, Rotation3, Translation3, UnitQuaternion, Vector3};

/// One weighted pair of points: `from` is to come to lie on `to`.
#[derive(Debug, Clone, Copy)]
pub struct Pair {
    /// Point to be moved.
    pub from: Point3<f64>,
    /// Where it is to lie.
    pub to: Point3<f64>,
    /// Weight, not negative.
    pub weight: f64,
}

/// The rotation and translation of least weighted squared distances (Arun,
/// Huang and Blostein 1987), never a reflection (Umeyama 1991). `None` when no
/// pair has weight.
#[must_use]
pub fn fit(pairs: &[Pair]) -> Option<Isometry3<f64>> {
    let total: f64 = pairs.iter().map(|p| p.weight).sum();
    if total <= 0.0 {
        return None;
    }
    let mean = |of: fn(&Pair) -> Point3<f64>| {
        pairs
            .iter()
            .map(|p| of(p).coords * p.weight)
            .sum::<Vector3<f64>>()
            / total
    };
    let (from, to) = (mean(|p| p.from), mean(|p| p.to));
    let covariance = pairs.iter().fold(Matrix3::zeros(), |sum, p| {
        sum + (p.to.coords - to) * (p.from.coords - from).transpose() * p.weight
    });
    let svd = covariance.svd(true, true);
    let (u, v_t) = (svd.u?, svd.v_t?);
    // Singular values come in descending order: the least one gives way.
    let proper = Matrix3::from_diagonal(&Vector3::new(1.0, 1.0, (u * v_t).determinant().signum()));
    let rotation = Rotation3::from_matrix_unchecked(u * proper * v_t);
    Some(Isometry3::from_parts(
        Translation3::from(to - rotation * from),
        UnitQuaternion::from_rotation_matrix(&rotation),
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pairs(from: &[[f64; 3]], to: &[[f64; 3]]) -> Vec<Pair> {
        from.iter()
            .zip(to)
            .map(|(&a, &b)| Pair {
                from: Point3::from(a),
                to: Point3::from(b),
                weight: 1.0,
            })
            .collect()
    }

    /// A corner tetrahedron against its mirror image: the residual sum of
    /// squares is exactly 1, and 0 only by reflection.
    #[test]
    fn a_mirrored_tetrahedron_is_not_fitted_by_reflection() {
        let corner = [[0., 0., 0.], [1., 0., 0.], [0., 1., 0.], [0., 0., 1.]];
        let mirrored = corner.map(|[x, y, z]: [f64; 3]| [x, y, -z]);
        let pairs = pairs(&corner, &mirrored);
        let motion = fit(&pairs).expect("the pairs have weight");
        let sum: f64 = pairs
            .iter()
            .map(|p| (motion * p.from - p.to).norm_squared())
            .sum();
        assert!((sum - 1.0).abs() < 1e-12);
        let rotation = motion.rotation.to_rotation_matrix();
        assert!((rotation.matrix().determinant() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_known_motion_is_found_again() {
        let motion = Isometry3::new(Vector3::new(3.0, -7.0, 11.0), Vector3::new(0.4, -1.1, 0.9));
        let from: Vec<[f64; 3]> = (0..20)
            .map(|i| {
                let t = f64::from(i);
                [(1.7 * t).sin() * 30.0, (0.9 * t).cos() * 20.0, t]
            })
            .collect();
        let to: Vec<[f64; 3]> = from
            .iter()
            .map(|&p| (motion * Point3::from(p)).coords.into())
            .collect();
        let found = fit(&pairs(&from, &to)).expect("the pairs have weight");
        assert!(
            found
                .translation
                .vector
                .metric_distance(&motion.translation.vector)
                < 1e-9
        );
        assert!(found.rotation.angle_to(&motion.rotation) < 1e-9);
    }
}
