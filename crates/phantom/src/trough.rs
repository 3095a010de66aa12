//! The bottom of the trough that a ridge leaves.

use crate::shaping::{bell, rise};
use crate::stations::Stations;

/// The bottom of the trough across the arch: a bowl, and a groove in it where
/// the ridge has a sharp edge.
#[derive(Debug, Clone)]
pub struct Trough {
    /// How far it rises from its middle, at most, mm.
    pub bowl: f64,
    /// Its radius in the middle, mm.
    pub radius: f64,
    /// Depth of the groove along the arch, mm.
    pub groove: Option<Stations<f64>>,
    /// How far it falls below a palate, which then covers it, mm.
    pub inner_fall: f64,
}

/// Standard width of a sharp ridge's groove, mm.
const GROOVE_WIDTH_MM: f64 = 1.3;

impl Default for Trough {
    fn default() -> Self {
        Self {
            bowl: 1.6,
            radius: 8.0,
            groove: None,
            inner_fall: 0.0,
        }
    }
}

impl Trough {
    /// Height over the crest and slope, `aside` mm of it.
    #[must_use]
    pub fn rise(&self, along: f64, aside: f64) -> [f64; 2] {
        let bend = aside * aside / (2.0 * self.radius * self.bowl);
        let slope = aside / self.radius / ((1.0 + bend) * (1.0 + bend));
        let height = self.bowl * bend / (1.0 + bend);
        let height = match self.inner_fall > 0.0 {
            true => height - self.inner_fall * rise(-aside, 2.5, 10.0),
            false => height,
        };
        let Some(groove) = &self.groove else {
            return [height, slope];
        };
        let (depth, share) = (groove.at(along), aside / GROOVE_WIDTH_MM);
        let filled = bell(share);
        [
            height + depth * (1.0 - filled),
            slope + depth * share / GROOVE_WIDTH_MM * filled,
        ]
    }
}
