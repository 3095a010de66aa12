//! A flange of the broad family along the arch.

use super::drawn::{DrawnFrenum, DrawnWave};
use super::notch::ShapedNotch;
use super::ranges::{WAVE_HEIGHT, WAVE_LENGTH};
use crate::border::{FlangeForm, Notch, Overflow, soft_floor};
use crate::mouth::Flange;
use crate::options::FlangeSide;
use crate::profile::Wall;
use crate::shaping::rise;
use crate::stations::{Stations, Wave};
use rand::{Rng, RngExt};
use std::f64::consts::TAU;

/// The border stands at least this much over the crest, mm.
const LEAST_OVER_CREST_MM: f64 = 0.8;
/// The material runs out over this much before its end, mm.
const RUN_OUT_MM: f64 = 9.0;

/// A wave of the border's height.
#[derive(Debug, Clone, Copy)]
pub(crate) struct BorderWave {
    height: f64,
    length: f64,
    phase: f64,
}

impl BorderWave {
    /// A random wave.
    pub(crate) fn random(rng: &mut impl Rng) -> Self {
        Self {
            height: WAVE_HEIGHT.draw(rng),
            length: WAVE_LENGTH.draw(rng),
            phase: rng.random_range(0.0..TAU),
        }
    }

    fn at(&self, along: f64) -> f64 {
        self.height / 2.0 * (TAU * along / self.length + self.phase).sin()
    }

    /// What was drawn.
    pub(crate) fn drawn(&self, flange: FlangeSide) -> DrawnWave {
        DrawnWave {
            flange,
            height_mm: self.height,
            length_mm: self.length,
        }
    }
}

/// A frenum's notch with its name.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Frenum {
    /// Its name in the trade.
    pub name: &'static str,
    /// Whether there is one on each side.
    pub paired: bool,
    /// The notch.
    pub notch: ShapedNotch,
}

/// A flange from front to back on both sides.
pub(crate) struct FlangeLine {
    /// Which flange.
    pub flange: FlangeSide,
    /// Heights of the border at the front, in the middle and toward the back,
    /// for each side of x.
    pub heights: [[f64; 3]; 2],
    /// Where along the arch the middle is half reached and where the back is, mm.
    pub turns: [f64; 2],
    /// What the very end stands over the crest there, for each side of x.
    pub last: [f64; 2],
    /// Arc lengths at which material ends, for each side of x, mm.
    pub ends: [f64; 2],
    /// Frena.
    pub frena: Vec<Frenum>,
    /// Wave of the height.
    pub wave: BorderWave,
    /// Stretches that stand lower, and stretches that are sharp.
    pub planted: (Vec<Notch>, Vec<Notch>),
    /// Radii of the roll: at the front and toward the back, mm.
    pub rolls: [f64; 2],
    /// Radius at the base, mm.
    pub base_radius: f64,
    /// How far the border leans over the trough, mm.
    pub lean: f64,
    /// Wave of place and thickness.
    pub side_wave: Wave,
}

impl FlangeLine {
    /// Height of the border at an arc length, without frena and planted faults.
    pub(crate) fn plain(&self, along: f64) -> f64 {
        let [front, middle, back] = self.heights[usize::from(along >= 0.0)];
        let other = self.heights[usize::from(along < 0.0)][0];
        let reach = along.abs();
        // Both sides meet smoothly in the midline.
        let front = front + 0.5 * (other - front) * (1.0 - rise(reach, 0.0, 12.0));
        let [first, second] = self.turns;
        let half_way = front + (middle - front) * rise(reach, first - 8.0, first + 8.0);
        half_way + (back - middle) * rise(reach, second - 8.0, second + 6.0) + self.wave.at(along)
    }

    fn dip(&self, along: f64) -> f64 {
        self.frena.iter().map(|f| f.notch.depth_at(along)).sum()
    }

    fn height(&self, along: f64, crest: &dyn Fn(f64) -> f64) -> f64 {
        let side = usize::from(along >= 0.0);
        let short: f64 = (self.planted.0.iter())
            .map(|n| n.depth * n.stretch(along))
            .sum();
        let notched = self.plain(along) - self.dip(along) - short;
        let end = self.ends[side];
        let last = crest(end.copysign(along)) + self.last[side];
        let out = notched + (last - notched) * rise(along.abs(), end - RUN_OUT_MM, end - 0.5);
        soft_floor(out, crest(along) + LEAST_OVER_CREST_MM)
    }

    /// The frena as they are: other notches and the wave move their bottoms.
    pub(crate) fn drawn_frena(&self) -> Vec<DrawnFrenum> {
        self.frena.iter().map(|f| self.as_drawn(f)).collect()
    }

    fn as_drawn(&self, frenum: &Frenum) -> DrawnFrenum {
        const STEP_MM: f64 = 0.02;
        let ShapedNotch {
            along,
            shape,
            width,
            ..
        } = frenum.notch;
        let steps = (0.4 * width / STEP_MM) as i32;
        let bottom = (-steps..=steps)
            .map(|i| along + f64::from(i) * STEP_MM)
            .min_by(|a, b| {
                let [a, b] = [a, b].map(|&s| self.plain(s) - self.dip(s));
                a.total_cmp(&b)
            })
            .unwrap_or(along);
        let notch = &frenum.notch;
        let half = |sense: f64| {
            let mut gone = 0.0;
            while gone < 2.0 * width && notch.depth_at(along + sense * gone) > notch.depth / 2.0 {
                gone += STEP_MM;
            }
            gone
        };
        DrawnFrenum {
            name: frenum.name,
            flange: self.flange,
            shape,
            along: bottom,
            depth_mm: self.dip(bottom),
            width_mm: half(-1.0) + half(1.0),
            paired: frenum.paired,
        }
    }

    /// The flange along the arch, and the height of the tray wall's edge that
    /// stays `overlap` mm below the border.
    pub(crate) fn stations(
        &self,
        wall: &Wall,
        overlap: f64,
        crest: &dyn Fn(f64) -> f64,
        overflow: &Overflow,
    ) -> (Stations<Flange>, Stations<f64>) {
        let form = FlangeForm {
            knife_edges: &self.planted.1,
            rolls: self.rolls,
            roll_limits: [0.8, 3.0],
            base_radius: self.base_radius,
            lean: self.lean,
            turn: self.turns[0],
            side_wave: &self.side_wave,
        };
        let sense = match self.flange {
            FlangeSide::Outer => 1.0,
            FlangeSide::Lingual => -1.0,
        };
        let end = self.ends[0].max(self.ends[1]);
        let heights = Stations::new(end, |along| self.height(along, crest));
        form.stations(heights, wall, sense, overlap, overflow)
    }
}
