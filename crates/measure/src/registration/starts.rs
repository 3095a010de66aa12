//! Poses to start from.

use nalgebra::{Isometry3, Point3, Quaternion, Translation3, UnitQuaternion, Vector3};
use std::f64::consts::TAU;

/// Poses around one that is nearly right: turned and moved by as much as the
/// frames of an impression and of its tray are apart at worst. `about` is the
/// point that turns leave in place, in target coordinates.
pub fn around(
    pose: &Isometry3<f64>,
    about: &Point3<f64>,
    up: &Vector3<f64>,
    forward: &Vector3<f64>,
) -> Vec<Isometry3<f64>> {
    const TURN: f64 = 0.15;
    const STEP_MM: f64 = 4.0;
    let across = forward.cross(up);
    let turns = [*up, -up, across, -across, *forward, -forward]
        .map(|axis| UnitQuaternion::from_scaled_axis(axis * TURN))
        .map(|turn| {
            let back = about.coords - turn * about.coords;
            Isometry3::from_parts(Translation3::from(back), turn)
        });
    let steps = [
        up * STEP_MM,
        -up * STEP_MM,
        forward * STEP_MM,
        -forward * STEP_MM,
    ]
    .map(|step| Isometry3::from_parts(Translation3::from(step), UnitQuaternion::identity()));
    std::iter::once(*pose)
        .chain(turns.into_iter().chain(steps).map(|change| change * pose))
        .collect()
}

/// Poses in every orientation, evenly spread by super-Fibonacci spirals (Alexa
/// 2022), that bring one centre onto another.
pub fn anywhere(from: &Point3<f64>, to: &Point3<f64>, count: usize) -> Vec<Isometry3<f64>> {
    // The two constants of the paper: the square root of 2, and the positive
    // root of x^4 = x + 4.
    const PSI: f64 = 1.533_751_168_755_204_3;
    let phi = 2f64.sqrt();
    (0..count)
        .map(|i| {
            let s = i as f64 + 0.5;
            let t = s / count as f64;
            let (r, big_r) = (t.sqrt(), (1.0 - t).sqrt());
            let (alpha, beta) = (TAU * s / phi, TAU * s / PSI);
            let turn = UnitQuaternion::from_quaternion(Quaternion::new(
                big_r * beta.cos(),
                r * alpha.sin(),
                r * alpha.cos(),
                big_r * beta.sin(),
            ));
            Isometry3::from_parts(Translation3::from(to.coords - turn * from.coords), turn)
        })
        .collect()
}
