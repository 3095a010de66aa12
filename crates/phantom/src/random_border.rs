//! Random labial and buccal flanges.

use crate::border::{Border, Notch};
use crate::design::Scatter;
use crate::stations::Wave;
use rand::Rng;

/// From what an outer flange is drawn, mm; a spread is around 0.
pub(crate) struct OuterRanges {
    /// Height at the front.
    pub front: [f64; 2],
    /// Height in the middle.
    pub middle: [f64; 2],
    /// Spread of the middle's height between the sides.
    pub middle_spread: f64,
    /// What the back stands above the middle.
    pub back: [f64; 2],
    /// What the very end stands above the raised end of the ridge.
    pub last: [f64; 2],
    /// Where along the arch the middle is half reached and where the back is.
    pub turns: [f64; 2],
    /// Where along the arch the buccal frena are.
    pub buccal: [f64; 2],
    /// Spread of that place between the sides.
    pub buccal_spread: f64,
    /// Depth and width of a buccal frenum's notch, each with its spread.
    pub buccal_notch: [[f64; 2]; 2],
    /// Depth and width of the labial frenum's notch, each with its spread.
    pub labial_notch: [[f64; 2]; 2],
    /// Radii of the roll at the front and toward the back.
    pub rolls: [[f64; 2]; 2],
    /// Radius at the base.
    pub base_radius: [f64; 2],
}

/// A random labial and buccal flange on a ridge whose ends are raised by `rise`.
pub(crate) fn outer_border(rng: &mut impl Rng, ranges: &OuterRanges, rise: f64) -> Border {
    let front = Scatter::within(rng, ranges.front);
    let middle = Scatter::within(rng, ranges.middle);
    let heights = [0, 1].map(|_| {
        let middle = middle + Scatter::around(rng, ranges.middle_spread);
        [
            front + Scatter::around(rng, 0.4),
            middle,
            middle + Scatter::within(rng, ranges.back),
            rise + Scatter::within(rng, ranges.last),
        ]
    });
    let buccal = Scatter::within(rng, ranges.buccal);
    let along = Scatter::around(rng, 0.9);
    let labial = notch(rng, along, ranges.labial_notch);
    let [right, left] = [-1.0, 1.0].map(|side| {
        let along = side * (buccal + Scatter::around(rng, ranges.buccal_spread));
        notch(rng, along, ranges.buccal_notch)
    });
    Border {
        heights,
        turns: ranges.turns,
        notches: vec![labial, right, left],
        shortages: Vec::new(),
        knife_edges: Vec::new(),
        rolls: ranges.rolls.map(|range| Scatter::within(rng, range)),
        base_radius: Scatter::within(rng, ranges.base_radius),
        height_wave: Wave::random(rng, 40.0),
        side_wave: Wave::random(rng, 45.0),
    }
}

/// A random notch of given depth and width, each with its spread.
pub(crate) fn notch(rng: &mut impl Rng, along: f64, [depth, width]: [[f64; 2]; 2]) -> Notch {
    let mut about = |[usual, spread]: [f64; 2]| usual + Scatter::around(rng, spread);
    Notch {
        along,
        depth: about(depth),
        width: about(width),
    }
}
