//! Flanges along the arch: how high the border stands, where frena notch it,
//! and how far material laps over the tray.

use crate::mouth::{BASE_Z, Flange};
use crate::profile::Wall;
use crate::shaping::{bell, rise};
use crate::stations::{Stations, Wave, arc_lengths, eroded};
use nalgebra::{Matrix3, Vector3};
use rand::{Rng, RngExt};

/// A notch that a frenum leaves in a border.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Notch {
    /// Arc length of its middle, mm.
    pub along: f64,
    /// Depth, mm.
    pub depth: f64,
    /// Standard width, mm.
    pub width: f64,
}

impl Notch {
    /// 1 over a stretch as long as the notch is wide, 0 away from it.
    pub(crate) fn stretch(&self, along: f64) -> f64 {
        let half = self.width / 2.0;
        1.0 - rise((along - self.along).abs(), half - 1.5, half + 1.5)
    }
}

/// A flange from front to back on both sides.
#[derive(Debug, Clone)]
pub(crate) struct Border {
    /// Heights of the border: at the front, in the middle, toward the back and
    /// at the very end, for each side of x.
    pub heights: [[f64; 4]; 2],
    /// Where along the arch the middle is half reached and where the back is, mm.
    pub turns: [f64; 2],
    /// Notches.
    pub notches: Vec<Notch>,
    /// Stretches where the border stands lower: depth, and length as the width.
    pub shortages: Vec<Notch>,
    /// Stretches where the border is sharp: radius as the depth, and length as
    /// the width.
    pub knife_edges: Vec<Notch>,
    /// Radii of the roll: at the front and toward the back, mm.
    pub rolls: [f64; 2],
    /// Radius at the base, mm.
    pub base_radius: f64,
    /// Wave of the height.
    pub height_wave: Wave,
    /// Wave of place and thickness.
    pub side_wave: Wave,
}

/// The notched border stands at least this high, mm.
const LEAST_HEIGHT_MM: f64 = 4.2;
/// The flange's middle lies this much nearer to the tissue than the tray's wall, mm.
const INSET_MM: f64 = 0.8;
/// How much shorter the tray is where material runs out into a knife edge, mm.
const KNIFE_BEYOND_TRAY_MM: f64 = 1.0;
/// Radius at the base of a flange with a knife edge, as a multiple of its roll.
const KNIFE_TAPER: f64 = 3.0;

impl Border {
    /// Height of the border at an arc length; `end` is where the material ends.
    fn height(&self, along: f64, end: f64) -> f64 {
        let [front, middle, back, last] = self.heights[usize::from(along >= 0.0)];
        let other = self.heights[usize::from(along < 0.0)][0];
        let reach = along.abs();
        // Both sides meet smoothly in the midline.
        let front = front + 0.5 * (other - front) * (1.0 - rise(reach, 0.0, 10.0));
        let [first, second] = self.turns;
        let mut height = front + (middle - front) * rise(reach, first - 7.0, first + 7.0);
        height += (back - middle) * rise(reach, second - 8.0, second + 6.0);
        height += 0.35 * self.height_wave.at(along);
        let dip: f64 = self
            .notches
            .iter()
            .map(|n| n.depth * bell((along - n.along) / n.width))
            .sum();
        let short: f64 = self
            .shortages
            .iter()
            .map(|n| n.depth * n.stretch(along))
            .sum();
        let notched = soft_floor(height - dip, LEAST_HEIGHT_MM) - short;
        notched + (last - notched) * rise(reach, end - 9.0, end - 0.5)
    }

    /// The flange along the arch, and the height of the tray wall's edge that
    /// stays `overlap` mm below the border. `sense` is +1 for the outer wall
    /// and -1 for an inner one.
    pub(crate) fn stations(
        &self,
        wall: &Wall,
        sense: f64,
        overlap: f64,
        end: f64,
        overflow: &Overflow,
    ) -> (Stations<Flange>, Stations<f64>) {
        let form = FlangeForm {
            knife_edges: &self.knife_edges,
            rolls: self.rolls,
            roll_limits: [0.85, 2.4],
            base_radius: self.base_radius,
            lean: 0.0,
            turn: self.turns[0],
            side_wave: &self.side_wave,
        };
        let heights = Stations::new(end, |along| self.height(along, end));
        form.stations(heights, wall, sense, overlap, overflow)
    }
}

/// What a flange is like beside its height.
pub(crate) struct FlangeForm<'a> {
    /// Stretches where the border is sharp: radius as the depth, and length as
    /// the width.
    pub knife_edges: &'a [Notch],
    /// Radii of the roll: at the front and toward the back, mm.
    pub rolls: [f64; 2],
    /// Least and greatest radius of the roll, mm.
    pub roll_limits: [f64; 2],
    /// Radius at the base, mm.
    pub base_radius: f64,
    /// How far the border leans over the trough, mm.
    pub lean: f64,
    /// Where along the arch the roll is half that of the back, mm.
    pub turn: f64,
    /// Wave of place and thickness.
    pub side_wave: &'a Wave,
}

impl FlangeForm<'_> {
    /// How much a knife edge there is at an arc length, 0 to 1.
    fn knife(&self, along: f64) -> f64 {
        let shares = self.knife_edges.iter().map(|k| k.stretch(along));
        shares.fold(0.0, f64::max)
    }

    /// A radius of the section, where a knife edge makes it `share` of its own.
    fn sharpened(&self, along: f64, radius: f64, share: f64) -> f64 {
        self.knife_edges.iter().fold(radius, |radius, knife| {
            radius + (share * knife.depth - radius) * knife.stretch(along)
        })
    }

    /// The flange of these heights along the arch, and the height of the tray
    /// wall's edge that stays `overlap` mm below the border. `sense` is +1 for
    /// the outer wall and -1 for an inner one.
    pub(crate) fn stations(
        &self,
        heights: Stations<f64>,
        wall: &Wall,
        sense: f64,
        overlap: f64,
        overflow: &Overflow,
    ) -> (Stations<Flange>, Stations<f64>) {
        let end = heights.reach();
        let low = eroded(&heights, 2.5);
        let edge = Stations::new(end, |along| {
            low.at(along) - overlap - KNIFE_BEYOND_TRAY_MM * self.knife(along)
        });
        let flange = Stations::new(end, |along| {
            let border_z = heights.at(along);
            let share = rise(along.abs(), self.turn - 8.0, self.turn + 8.0);
            let wave = self.side_wave.at(along);
            let roll = self.rolls[0] + (self.rolls[1] - self.rolls[0]) * share + 0.12 * wave;
            let [least, most] = self.roll_limits;
            let middle =
                |z: f64, swing: f64| wall.at_height(z)[0] - sense * (INSET_MM - swing * wave);
            Flange {
                border_z,
                border_out: middle(border_z, 0.3) - sense * self.lean,
                roll: self.sharpened(along, roll.clamp(least, most), 1.0),
                base_out: middle(BASE_Z, -0.15),
                base_radius: self.sharpened(along, self.base_radius + 0.2 * wave, KNIFE_TAPER),
                overflow_z: soft_floor(edge.at(along) - overflow.reach(along), wall.foot() - 0.8),
                overflow: overflow.thickness,
            }
        });
        (flange, edge)
    }
}

/// Like the greater of both, without a corner.
pub(crate) fn soft_floor(value: f64, least: f64) -> f64 {
    let over = value - least;
    least + 0.5 * (over + over.hypot(0.6))
}

/// How far, in tongues, material laps down over a wall's outer face.
#[derive(Debug, Clone)]
pub(crate) struct Overflow {
    /// Thickness, mm.
    pub thickness: f64,
    least: f64,
    tongues: Vec<Notch>,
}

impl Overflow {
    /// Random overflow; `amount` 1 is usual, more covers more of the tray.
    pub(crate) fn random(rng: &mut impl Rng, amount: f64, end: f64) -> Self {
        let count = rng.random_range(9..15);
        let tongues = (0..count)
            .map(|_| Notch {
                along: rng.random_range(-end..end),
                depth: amount * rng.random_range(1.2..5.0),
                width: rng.random_range(1.5..4.5),
            })
            .collect();
        Self {
            thickness: rng.random_range(0.4..1.1),
            least: amount * rng.random_range(0.8..2.2),
            tongues,
        }
    }

    fn reach(&self, along: f64) -> f64 {
        self.least
            + self
                .tongues
                .iter()
                .map(|t| t.depth * bell((along - t.along) / t.width))
                .sum::<f64>()
    }
}

/// A height along the arch freed from tilt: what is left has a level mean plane.
pub(crate) fn levelled(
    end: f64,
    height: impl Fn(f64) -> f64,
    plan: impl Fn(f64) -> [f64; 2],
) -> Stations<f64> {
    let row = |along: f64| {
        let [x, y] = plan(along);
        Vector3::new(1.0, x, y)
    };
    let (mut normal, mut right) = (Matrix3::zeros(), Vector3::zeros());
    for along in arc_lengths(end) {
        normal += row(along) * row(along).transpose();
        right += row(along) * height(along);
    }
    let plane = normal.lu().solve(&right).unwrap_or_default();
    Stations::new(end, |along| height(along) - plane.dot(&row(along)))
}
