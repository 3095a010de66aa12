//! Coordinate systems from axes.

use nalgebra::{Matrix3, Rotation3, UnitQuaternion, UnitVector3, Vector3};

/// Rotation that takes `anterior` to y and `seating` to z.
pub(super) fn rotation_to(anterior: &Vector3<f64>, seating: &Vector3<f64>) -> UnitQuaternion<f64> {
    let rows = Matrix3::from_rows(&[
        anterior.cross(seating).transpose(),
        anterior.transpose(),
        seating.transpose(),
    ]);
    UnitQuaternion::from_rotation_matrix(&Rotation3::from_matrix_unchecked(rows))
}

/// An orthonormal system whose z is `axis`.
pub(super) fn basis_along(axis: &UnitVector3<f64>) -> UnitQuaternion<f64> {
    UnitQuaternion::rotation_between_axis(axis, &Vector3::z_axis()).unwrap_or_else(|| {
        UnitQuaternion::from_axis_angle(&Vector3::x_axis(), std::f64::consts::PI)
    })
}
