//! Colours that a scanner might give the vertices of an impression.

use crate::gauss::gauss;
use crate::impression::Impression;
use crate::mesher::Solid;
use crate::options::Colouring;
use nalgebra::{Point3, Vector3};
use rand::{Rng, RngExt};

/// sRGB colours of elastomers: violet, blue, pink, green, yellow, brown.
const ELASTOMERS: [[u8; 3]; 6] = [
    [132, 98, 178],
    [74, 132, 196],
    [222, 118, 150],
    [96, 172, 132],
    [226, 196, 84],
    [150, 92, 70],
];
/// sRGB colours of trays: white, grey metal, ivory, clear blue.
const TRAYS: [[u8; 3]; 4] = [
    [236, 236, 230],
    [148, 152, 156],
    [214, 206, 186],
    [60, 96, 168],
];
/// Colours of material and tray differ by at least this much, in sRGB steps.
const LEAST_DIFFERENCE: f64 = 90.0;

/// Colours of the material and the tray, sRGB.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
pub struct Colours {
    /// Of the elastomer.
    pub material: [u8; 3],
    /// Of the tray.
    pub tray: [u8; 3],
}

impl Colours {
    /// A random pair that can be told apart.
    pub fn random(rng: &mut impl Rng) -> Self {
        loop {
            let material = ELASTOMERS[rng.random_range(0..ELASTOMERS.len())];
            let tray = TRAYS[rng.random_range(0..TRAYS.len())];
            let difference: f64 = (0..3)
                .map(|k| (f64::from(material[k]) - f64::from(tray[k])).powi(2))
                .sum();
            if difference.sqrt() > LEAST_DIFFERENCE {
                return Self { material, tray };
            }
        }
    }

    /// The colour of each vertex (in made coordinates).
    pub fn painted(
        &self,
        impression: &Impression,
        vertices: &[Point3<f64>],
        how: &Colouring,
        rng: &mut impl Rng,
    ) -> Vec<[u8; 3]> {
        let light = Vector3::from_fn(|_, _| gauss(rng))
            .try_normalize(1e-9)
            .unwrap_or_else(Vector3::z);
        vertices
            .iter()
            .map(|p| {
                let base = if impression.shows_tray(p) {
                    self.tray
                } else {
                    self.material
                };
                let shade = 1.0 + how.shading * light.dot(&p.coords) / 40.0;
                base.map(|c| {
                    (f64::from(c) * shade + 255.0 * how.noise * gauss(rng))
                        .round()
                        .clamp(0.0, 255.0) as u8
                })
            })
            .collect()
    }
}

impl Impression {
    /// Whether the surface at a point is the tray's own.
    #[must_use]
    pub fn shows_tray(&self, p: &Point3<f64>) -> bool {
        let parts = self.parts(&self.column(p.x, p.y), p.z);
        parts.tray <= parts.material + 0.01
    }
}
