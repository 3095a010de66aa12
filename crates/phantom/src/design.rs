//! What both arches' random designs share.

use crate::border::Notch;
use crate::family::drawn::Drawn;
use crate::impression::Impression;
use crate::mouth::Mouth;
use crate::options::FlangeSide;
use crate::tray::{Handle, Tray};
use nalgebra::Point2;
use rand::{Rng, RngExt};

/// A mouth and a tray that fits it.
#[derive(Debug, Clone)]
pub(crate) struct Design {
    /// The tissue's side.
    pub mouth: Mouth,
    /// The tray.
    pub tray: Tray,
    /// Over how many mm of height overflow thins out.
    pub overflow_ramp: f64,
    /// Landmarks that are a place of the plan: name, side of x, place.
    pub marks: Vec<Mark>,
    /// What a member of the broad family was drawn as.
    pub drawn: Option<Drawn>,
}

impl Design {
    /// The impression without what is planted.
    pub(crate) fn impression(&self) -> Impression {
        Impression {
            tray: self.tray.clone(),
            mouth: self.mouth.clone(),
            spots: Vec::new(),
            bare_edges: Vec::new(),
            pads: Vec::new(),
            beads: Vec::new(),
            overflow_ramp: self.overflow_ramp,
        }
    }
}

/// What is not left to chance.
#[derive(Debug, Clone)]
pub(crate) struct Wanted {
    /// How much material laps over the tray; 1 is usual.
    pub overflow: f64,
    /// Whether the tray has a handle.
    pub handle: bool,
    /// Stretches of border that are to differ.
    pub stretches: Vec<Stretch>,
}

/// A stretch of a border that is to differ.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Stretch {
    /// On which flange.
    pub flange: FlangeSide,
    /// Its middle, as a signed share of the tray's arc length.
    pub share: f64,
    /// Its length, mm.
    pub length_mm: f64,
    /// How it differs.
    pub change: Change,
}

/// How a stretch of border is to differ.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Change {
    /// It stands lower by this many mm.
    Lower(f64),
    /// Its roll has this radius, mm.
    Sharpen(f64),
}

impl Wanted {
    /// The stretches of one flange that are lower (with the depth as depth) and
    /// those that are sharp (with the radius as depth), on an arch whose tray
    /// ends at arc length `reach`.
    pub(crate) fn planted(&self, flange: FlangeSide, reach: f64) -> (Vec<Notch>, Vec<Notch>) {
        let (mut lower, mut sharp) = (Vec::new(), Vec::new());
        for stretch in self.stretches.iter().filter(|s| s.flange == flange) {
            let (depth, planted) = match stretch.change {
                Change::Lower(by) => (by, &mut lower),
                Change::Sharpen(radius) => (radius, &mut sharp),
            };
            planted.push(Notch {
                along: stretch.share * reach,
                depth,
                width: stretch.length_mm,
            });
        }
        (lower, sharp)
    }
}

/// A landmark at a place of the plan.
#[derive(Debug, Clone, Copy)]
pub struct Mark {
    /// Its name in the trade.
    pub name: &'static str,
    /// Its place.
    pub at: Point2<f64>,
    /// Whether there is one on each side.
    pub paired: bool,
}

/// Random amounts that several parts use.
pub(crate) struct Scatter;

impl Scatter {
    /// An even spread around 0.
    pub(crate) fn around(rng: &mut impl Rng, reach: f64) -> f64 {
        rng.random_range(-reach..reach)
    }

    /// An even spread over a range.
    pub(crate) fn within(rng: &mut impl Rng, [low, high]: [f64; 2]) -> f64 {
        rng.random_range(low..high)
    }

    /// Blunt in some impressions, feathered in others.
    pub(crate) fn overflow_ramp(rng: &mut impl Rng) -> f64 {
        rng.random_range(0.6..2.5)
    }
}

/// A stepped handle for a tray whose front wall and floor are given, mm.
pub(crate) fn handle(rng: &mut impl Rng, front: f64, floor: f64) -> Handle {
    let drop = rng.random_range(4.0..7.0);
    let length = rng.random_range(18.0..24.0);
    Handle {
        middle: [
            [front - 2.5, floor + 1.2],
            [front + 4.0, floor + 0.4],
            [front + 6.0, floor - drop],
            [front + 6.0 + length, floor - drop],
        ],
        width: rng.random_range(13.0..18.0),
        thickness: rng.random_range(2.2..2.8),
    }
}
