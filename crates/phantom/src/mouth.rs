//! The mouth as the impression records it: what changes along the arch, the
//! palate, and the fine relief of the tissue.

use crate::arch_curve::{ArchCurve, ArchPlace};
use crate::back::Back;
use crate::jaw::Arch;
use crate::options::FlangeSide;
use crate::shaping::{bell, norm, rise};
use crate::stations::{Stations, mix_fields};
use crate::trough::Trough;
use nalgebra::Point2;

/// A section through one flange: a capsule that tapers from its base to the
/// roll of the border. "Out" is the signed distance from the arch curve.
#[derive(Debug, Clone, Copy, Default)]
pub struct Flange {
    /// Height of the border, mm.
    pub border_z: f64,
    /// Place of the border across the arch, mm.
    pub border_out: f64,
    /// Radius of the roll, mm.
    pub roll: f64,
    /// Place of the base's centre across the arch, mm.
    pub base_out: f64,
    /// Radius at the base, mm.
    pub base_radius: f64,
    /// Height down to which material laps over the tray's outer face, mm.
    pub overflow_z: f64,
    /// Thickness of that material, mm.
    pub overflow: f64,
}
mix_fields!(Flange {
    border_z,
    border_out,
    roll,
    base_out,
    base_radius,
    overflow_z,
    overflow
});

/// Height of the centre of every flange's base, mm.
pub(crate) const BASE_Z: f64 = -1.0;

/// How much further back material goes in the middle of a limb than beside it, mm.
const LIMB_BULGE_MM: f64 = 1.6;

/// What a section across the arch is made of.
#[derive(Debug, Clone, Copy, Default)]
pub struct Section {
    /// Height of the bottom of the trough, mm.
    pub crest_z: f64,
    /// Place of the bottom of the trough across the arch, mm.
    pub crest_out: f64,
    /// Labial or buccal flange.
    pub outer: Flange,
    /// Lingual flange (mandible).
    pub inner: Flange,
    /// Where the palatal slope starts, mm toward the palate (maxilla).
    pub slope_out: f64,
    /// Steepness of the palatal slope, radians (maxilla).
    pub slope_angle: f64,
}
mix_fields!(Section {
    crest_z,
    crest_out,
    outer,
    inner,
    slope_out,
    slope_angle
});

impl Section {
    /// One of its flanges.
    #[must_use]
    pub fn flange(&self, which: FlangeSide) -> &Flange {
        match which {
            FlangeSide::Outer => &self.outer,
            FlangeSide::Lingual => &self.inner,
        }
    }
}

/// A frenum, as the notch that it leaves in a border.
#[derive(Debug, Clone, Copy)]
pub struct FrenumPlace {
    /// Its name in the trade.
    pub name: &'static str,
    /// In which flange.
    pub flange: FlangeSide,
    /// Arc length at which it was made, mm.
    pub along: f64,
    /// How far from there the bottom of its notch may lie, mm.
    pub reach: f64,
    /// Whether there is one on each side.
    pub paired: bool,
}

/// Where landmarks were made. Sides are those of x: 0 for negative, 1 for
/// positive.
#[derive(Debug, Clone, Default)]
pub struct Features {
    /// Frena.
    pub frena: Vec<FrenumPlace>,
    /// Arc lengths of the hamular notches (maxilla) or retromolar pads (mandible).
    pub posterior: [f64; 2],
}

/// How far from where it was made the bottom of a usual notch may lie, mm.
const USUAL_REACH_MM: f64 = 3.0;

impl Features {
    /// One frenum each: labial, buccal on both sides and, in a mandible, lingual.
    #[must_use]
    pub fn usual(outer: [f64; 3], lingual: Option<f64>, posterior: [f64; 2]) -> Self {
        let place = |name, flange, along, paired| FrenumPlace {
            name,
            flange,
            along,
            reach: USUAL_REACH_MM,
            paired,
        };
        let [labial, one, other] = outer;
        let mut frena = vec![
            place("labial frenum", FlangeSide::Outer, labial, false),
            place("buccal frenum", FlangeSide::Outer, one, true),
            place("buccal frenum", FlangeSide::Outer, other, true),
        ];
        frena.extend(
            lingual.map(|along| place("lingual frenum", FlangeSide::Lingual, along, false)),
        );
        Self { frena, posterior }
    }
}

/// The dome of the palate, as a height over the plan.
#[derive(Debug, Clone, Copy)]
pub struct Palate {
    /// Height of its top, mm.
    pub vault: f64,
    /// Place of its top along y, mm.
    pub top_y: f64,
    /// How much lower it is at 14 mm to the side, mm.
    pub fall_aside: f64,
    /// How much lower it is at 22 mm before or behind the top, mm.
    pub fall_along: f64,
}

impl Palate {
    /// Height of the dome, mm.
    #[must_use]
    pub fn height(&self, x: f64, y: f64) -> f64 {
        let (aside, along) = (x / 14.0, (y - self.top_y) / 22.0);
        self.vault - self.fall_aside * aside * aside - self.fall_along * along * along
    }
}

/// A small change of the tissue surface's height over the plan.
#[derive(Debug, Clone, Copy)]
pub enum Relief {
    /// A bell-shaped hollow (height below 0) or bump.
    Bell {
        /// Its middle.
        at: Point2<f64>,
        /// Standard widths along x and y, mm.
        widths: [f64; 2],
        /// Height of the middle, mm.
        height: f64,
    },
    /// A hollow or bump with a level middle.
    Pad {
        /// Its middle.
        at: Point2<f64>,
        /// Half axes along x and y, mm.
        half_axes: [f64; 2],
        /// Height of the middle, mm.
        height: f64,
    },
    /// A fold that runs from near the midline to one side.
    Fold {
        /// +1 or -1: the side of x.
        side: f64,
        /// Place along y at the midline, and how much further back it runs for each mm aside.
        from: [f64; 2],
        /// Where along x it begins and ends, mm.
        span: [f64; 2],
        /// Standard width, mm.
        width: f64,
        /// Height of its middle, mm.
        height: f64,
    },
    /// A line from side to side that bends to the front or back.
    Arc {
        /// Place along y at the midline, mm, and its change for each mm² aside.
        middle: [f64; 2],
        /// How far aside it goes, mm.
        aside: f64,
        /// Standard width, mm.
        width: f64,
        /// Height of its middle, mm.
        height: f64,
    },
    /// A line along the midline between two places along y.
    Midline {
        /// Where it begins and ends, mm.
        span: [f64; 2],
        /// Standard width, mm.
        width: f64,
        /// Height of its middle, mm.
        height: f64,
    },
}

impl Relief {
    /// Height at a point of the plan, mm.
    #[must_use]
    pub fn height(&self, x: f64, y: f64) -> f64 {
        match *self {
            Self::Bell { at, widths, height } => {
                height * bell(norm((x - at.x) / widths[0], (y - at.y) / widths[1]))
            }
            Self::Pad {
                at,
                half_axes,
                height,
            } => {
                let rho = norm((x - at.x) / half_axes[0], (y - at.y) / half_axes[1]);
                height * (1.0 - rise(rho, 0.25, 1.3))
            }
            Self::Fold {
                side,
                from,
                span,
                width,
                height,
            } => {
                let aside = x * side;
                if aside < span[0] - 2.0 || aside > span[1] + 2.0 {
                    return 0.0;
                }
                let middle = from[0] - from[1] * aside + 0.4 * (0.7 * aside + from[0]).sin();
                let ends = rise(aside, span[0] - 1.0, span[0] + 1.5)
                    * (1.0 - rise(aside, span[1] - 2.0, span[1] + 1.0));
                height * ends * bell((y - middle) / width)
            }
            Self::Arc {
                middle,
                aside,
                width,
                height,
            } => {
                let ends = 1.0 - rise(x.abs(), aside - 4.0, aside);
                height * ends * bell((y - middle[0] - middle[1] * x * x) / width)
            }
            Self::Midline {
                span,
                width,
                height,
            } => {
                let ends =
                    rise(y, span[0], span[0] + 6.0) * (1.0 - rise(y, span[1] - 6.0, span[1]));
                height * ends * bell((x - 0.3 * (0.2 * y).sin()) / width)
            }
        }
    }
}

/// The mouth's side of an impression.
#[derive(Debug, Clone)]
pub struct Mouth {
    /// Which jaw.
    pub kind: Arch,
    /// Plan of the ridge, shared with the tray.
    pub arch: ArchCurve,
    /// Length of the straight limbs to the tray's end, mm.
    pub limb_length: f64,
    /// How far material goes behind the tray's end: mean, and how much it swings.
    pub extension: [f64; 2],
    /// How the back differs from a level one.
    pub behind: Back,
    /// The bottom of the trough across the arch.
    pub trough: Trough,
    /// What changes along the arch.
    pub sections: Stations<Section>,
    /// The palate of a maxilla.
    pub palate: Option<Palate>,
    /// Fine relief.
    pub reliefs: Vec<Relief>,
    /// Where landmarks are.
    pub features: Features,
}

impl Mouth {
    /// Arc length from the front to the end of the material on the side of x
    /// that has the sign of `side`, mm.
    #[must_use]
    pub fn reach(&self, side: f64) -> f64 {
        let shift = self.behind.shifts[usize::from(side >= 0.0)];
        self.arch.curved_length() + self.limb_length + self.extension[0] + shift
    }

    /// Where material ends toward the back, along y.
    #[must_use]
    pub fn back(&self, x: f64) -> f64 {
        let [mean, swing] = self.extension;
        let phase = 0.13 * x + self.arch.depth();
        let rounded_limbs = LIMB_BULGE_MM * bell((x.abs() - self.arch.half_width()) / 5.0);
        -self.limb_length - mean - swing * phase.sin() - rounded_limbs - self.behind.shift(x)
    }

    /// Sum of the reliefs at a point of the plan, mm.
    #[must_use]
    pub fn relief(&self, x: f64, y: f64) -> f64 {
        self.reliefs.iter().map(|r| r.height(x, y)).sum()
    }

    /// The plan point at a place of the arch.
    #[must_use]
    pub fn plan(&self, along: f64, out: f64) -> Point2<f64> {
        self.arch.point(ArchPlace { along, out })
    }
}
