//! What upper and lower members of the broad family share.

use super::drawn::{DrawnFrenum, HandleForm, RidgeForm};
use super::flange::FlangeLine;
use super::ranges::{
    BACK_OVER_MIDDLE, BASE_RADIUS, BORDER_RADIUS, BUCCAL_OVER_LABIAL, CREST_WAVE, GROOVE,
    HANDLE_LENGTH, HANDLE_WIDTH, LAPPED, Range, SIDE_DIFFERENCE,
};
use super::{flange::BorderWave, frena};
use crate::border::Overflow;
use crate::design::{Scatter, Wanted};
use crate::mouth::{Features, FrenumPlace};
use crate::options::FlangeSide;
use crate::plan::Plan;
use crate::shaping::rise;
use crate::stations::{Stations, Wave};
use crate::tray::Handle;
use crate::trough::Trough;
use rand::{Rng, RngExt};

/// How far from the bottom of a notch's outline the bottom of its surface may
/// lie, mm.
const BOTTOM_REACH_MM: f64 = 0.6;
/// How often material laps over most of the tray's outside.
const LAPPED_OFTEN: f64 = 0.2;

/// A random form of the ridge.
pub(crate) fn ridge_form(rng: &mut impl Rng) -> RidgeForm {
    match rng.random_range(0..20) {
        0..6 => RidgeForm::Usual,
        6..10 => RidgeForm::High,
        10..14 => RidgeForm::Flat,
        14..17 => RidgeForm::KnifeEdged,
        _ => RidgeForm::Undercut,
    }
}

/// The bottom of a trough of this form; a knife edge ends toward the back.
pub(crate) fn trough(rng: &mut impl Rng, form: RidgeForm, end: f64) -> Trough {
    let depth = GROOVE.draw(rng);
    let [bowl, radius] = match form {
        RidgeForm::Usual => [1.6, 8.0],
        RidgeForm::High => [2.2, 6.5],
        RidgeForm::Flat => [0.7, 11.0],
        RidgeForm::KnifeEdged => [1.2, 9.0],
        RidgeForm::Undercut => [1.1, 9.0],
    };
    let groove = |along: f64| depth * (1.0 - rise(along.abs(), 22.0, 36.0));
    Trough {
        bowl,
        radius,
        groove: (form == RidgeForm::KnifeEdged).then(|| Stations::new(end, groove)),
        inner_fall: 0.0,
    }
}

/// The level of the ridge along the arch, without what its ends add, freed from
/// tilt, and its place across the arch.
pub(crate) struct Crest {
    /// Height, mm.
    pub level: Stations<f64>,
    /// The bottom of the trough across the arch.
    pub trough: Trough,
    wave: Wave,
    shelf: f64,
}

impl Crest {
    /// A random ridge that leaves the middle of the tray toward the tongue by
    /// `shelf` mm at the back.
    pub(crate) fn random(rng: &mut impl Rng, plan: &Plan, trough: Trough, shelf: f64) -> Self {
        let [height, wave] = [90.0, 60.0].map(|period| Wave::random(rng, period));
        let size = CREST_WAVE.draw(rng);
        let mut crest = Self {
            level: Stations::new(plan.end(), |_| 0.0),
            trough,
            wave,
            shelf,
        };
        crest.level = plan.levelled(|along| size * height.at(along), |along| crest.out(along));
        crest
    }

    /// Place across the arch, mm.
    pub(crate) fn out(&self, along: f64) -> f64 {
        0.25 * self.wave.at(along) - self.shelf * rise(along.abs(), 20.0, 38.0)
    }

    /// Height of the trough's bottom, mm.
    pub(crate) fn height(&self, along: f64) -> f64 {
        let groove = self.trough.groove.as_ref().map_or(0.0, |g| g.at(along));
        self.level.at(along) - groove
    }

    /// The lowest of the trough's bottom, mm.
    pub(crate) fn lowest(&self) -> f64 {
        let heights = self.level.iter().map(|(along, _)| self.height(along));
        heights.fold(f64::INFINITY, f64::min)
    }
}

/// A random labial and buccal flange of about this height, whose material ends
/// at these arc lengths.
pub(crate) fn outer_line(
    rng: &mut impl Rng,
    height: &Range,
    ridge: RidgeForm,
    ends: [f64; 2],
    wanted: &Wanted,
    tray_end: f64,
) -> FlangeLine {
    let front = height.draw(rng);
    let middle = front + BUCCAL_OVER_LABIAL.draw(rng);
    let back = middle + BACK_OVER_MIDDLE.draw(rng);
    let most = match ridge {
        RidgeForm::Undercut => 2.2,
        _ => BORDER_RADIUS.within[1],
    };
    let mut line = FlangeLine {
        flange: FlangeSide::Outer,
        heights: sides(rng, [front, middle, back]),
        turns: [rng.random_range(14.0..20.0), rng.random_range(33.0..38.0)],
        last: [0, 1].map(|_| rng.random_range(0.9..2.0)),
        ends,
        frena: Vec::new(),
        wave: BorderWave::random(rng),
        planted: wanted.planted(FlangeSide::Outer, tray_end),
        rolls: [0, 1].map(|_| BORDER_RADIUS.draw_below(rng, most)),
        base_radius: BASE_RADIUS.draw(rng),
        lean: 0.0,
        side_wave: Wave::random(rng, 45.0),
    };
    line.frena = frena::outer(rng, &|along| line.plain(along));
    line
}

/// Heights of both sides of x, which differ.
pub(crate) fn sides(rng: &mut impl Rng, [front, middle, back]: [f64; 3]) -> [[f64; 3]; 2] {
    let difference = SIDE_DIFFERENCE.draw(rng);
    [-0.5, 0.5].map(|share| {
        let by = share * difference;
        [front + 0.4 * by, middle + by, back + by]
    })
}

/// Random overflow, and whether it covers most of the tray.
pub(crate) fn overflow(rng: &mut impl Rng, amount: f64, end: f64, lapped: bool) -> Overflow {
    let more = if lapped { LAPPED.draw(rng) } else { 1.0 };
    Overflow::random(rng, amount * more, end)
}

/// Whether a member's material laps over most of its tray.
pub(crate) fn is_lapped(rng: &mut impl Rng) -> bool {
    rng.random_bool(LAPPED_OFTEN)
}

/// Where a member's landmarks are.
pub(crate) fn features(frena: &[DrawnFrenum], posterior: [f64; 2]) -> Features {
    let place = |frenum: &DrawnFrenum| FrenumPlace {
        name: frenum.name,
        flange: frenum.flange,
        along: frenum.along,
        reach: BOTTOM_REACH_MM,
        paired: frenum.paired,
    };
    Features {
        frena: frena.iter().map(place).collect(),
        posterior,
    }
}

/// A random handle for a tray whose front wall stands at `front`, from its floor
/// to its edge, mm.
pub(crate) fn handle(
    rng: &mut impl Rng,
    front: f64,
    floor: f64,
    top: f64,
) -> (HandleForm, Option<Handle>) {
    let form = match rng.random_range(0..6) {
        0 => HandleForm::None,
        1 => HandleForm::Stepped,
        2 => HandleForm::Flat,
        3 => HandleForm::High,
        4 => HandleForm::Low,
        _ => HandleForm::Steep,
    };
    let length = HANDLE_LENGTH.draw(rng);
    let level = |z: f64| [[-2.5, z], [3.0, z], [6.0, z], [6.0 + length, z]];
    let drop = rng.random_range(4.0..8.0);
    let middle = match form {
        HandleForm::None | HandleForm::Flat => level(floor + 1.2),
        HandleForm::High => level((top - 1.5).max(floor + 1.2)),
        HandleForm::Low => [
            [-4.0, floor - 0.4],
            [3.0, floor - 0.8],
            [6.0, floor - 2.0],
            [6.0 + length, floor - 2.0],
        ],
        HandleForm::Stepped => [
            [-2.5, floor + 1.2],
            [4.0, floor + 0.4],
            [6.0, floor - drop],
            [6.0 + length, floor - drop],
        ],
        HandleForm::Steep => {
            let fall = Scatter::within(rng, [0.6, 1.1]);
            let at = |out: f64| [out, floor + 0.8 - fall * (out - 2.0)];
            [
                [-2.5, floor + 1.2],
                at(2.0),
                at(6.0),
                at(4.0 + 0.6 * length),
            ]
        }
    };
    let made = Handle {
        middle: middle.map(|[out, z]| [front + out, z]),
        width: HANDLE_WIDTH.draw(rng),
        thickness: rng.random_range(2.0..3.0),
    };
    (form, (form != HandleForm::None).then_some(made))
}

/// The lowest edge of a front wall behind the widest handle.
pub(crate) fn front_top(top: &Stations<f64>) -> f64 {
    let reach = HANDLE_WIDTH.within[1] / 2.0;
    let near = top.iter().filter(|(along, _)| along.abs() < reach);
    near.map(|(_, &z)| z).fold(f64::INFINITY, f64::min)
}
