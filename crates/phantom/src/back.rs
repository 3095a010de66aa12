//! Where an impression ends toward the back.

use crate::shaping::rise;

/// A place of the back where material ends further to the front.
#[derive(Debug, Clone, Copy)]
pub struct Bite {
    /// Its middle along x, mm.
    pub x: f64,
    /// Half its width, mm.
    pub half_width: f64,
    /// How far to the front, mm.
    pub depth: f64,
}

/// How the back differs from a level one.
#[derive(Debug, Clone)]
pub struct Back {
    /// How much further back material goes on each side of x, mm.
    pub shifts: [f64; 2],
    /// Where it goes less far.
    pub bites: Vec<Bite>,
    /// Lower than this the border does not lie there, mm.
    pub lowest: f64,
}

impl Default for Back {
    fn default() -> Self {
        Self {
            shifts: [0.0; 2],
            bites: Vec::new(),
            lowest: -4.0,
        }
    }
}

impl Back {
    /// How much further back material goes at a place along x, mm.
    pub(crate) fn shift(&self, x: f64) -> f64 {
        let [one, other] = self.shifts;
        let bitten: f64 = (self.bites.iter())
            .map(|b| {
                b.depth * (1.0 - rise((x - b.x).abs(), b.half_width - 2.0, b.half_width + 2.0))
            })
            .sum();
        one + (other - one) * rise(x, -9.0, 9.0) - bitten
    }
}
