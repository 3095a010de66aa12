//! Gaussian noise.

use rand::{Rng, RngExt};
use std::f64::consts::TAU;

/// A standard normal number (Box-Muller).
pub(crate) fn gauss(rng: &mut impl Rng) -> f64 {
    let radius = (-2.0 * rng.random_range(f64::EPSILON..1.0).ln()).sqrt();
    radius * (TAU * rng.random_range(0.0..1.0)).cos()
}
