//! Poses to start from.

use nalgebra::{Isometry3, Point3, Quaternion, Translation3, UnitQuaternion, Vector3};
use std::f64::consts::TAU;

/// How far starts lie from the pose they surround.
#[derive(Debug, Clone, Copy)]
pub struct Scatter {
    /// Turn about each axis, rad.
    pub turn: f64,
    /// Step along each axis, mm.
    pub step_mm: f64,
}

/// A pose, and it turned and moved both ways along each axis of a frame (`up`,
/// `forward` and what is across them, in target coordinates). Turns leave
/// `about` in place.
pub fn around(
    pose: &Isometry3<f64>,
    about: &Point3<f64>,
    [up, forward]: [&Vector3<f64>; 2],
    scatter: Scatter,
) -> Vec<Isometry3<f64>> {
    let axes = [*up, *forward, forward.cross(up)];
    let both_ways = axes.into_iter().flat_map(|axis| [axis, -axis]);
    let turns = both_ways.clone().map(|axis| {
        let turn = UnitQuaternion::from_scaled_axis(axis * scatter.turn);
        let back = about.coords - turn * about.coords;
        Isometry3::from_parts(Translation3::from(back), turn)
    });
    let steps = both_ways.map(|axis| {
        let step = Translation3::from(axis * scatter.step_mm);
        Isometry3::from_parts(step, UnitQuaternion::identity())
    });
    std::iter::once(*pose)
        .chain(turns.chain(steps).map(|change| change * pose))
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
