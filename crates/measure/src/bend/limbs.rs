//! The ways in which a tray, or an impression, can bend.
//!
//! A tray is a horseshoe that its front and handle hold. Each limb bends up or
//! down, and in or out, as a beam does whose curvature is even between a few
//! places along it (a quadratic spline). Where a limb bends, its sections turn with
//! it, which moves them along the arch as well: by how much is left open, since a
//! wide tray is no slender beam. An impression may become evenly larger or smaller, too.

use nalgebra::{Point3, SVector, Vector3};

/// How many amounts describe a bend.
pub(crate) const MODES: usize = 2 * OF_LIMB + 1;

/// How many of them are of one limb.
const OF_LIMB: usize = 2 * CURVED_FROM.len() + 2;

/// The amount by which all of it is larger or smaller.
pub(super) const SIZE: usize = MODES - 1;

/// Where along a limb its curvature may change, as parts of its length.
const CURVED_FROM: [f64; 4] = [0.0, 0.25, 0.5, 0.75];

/// The amounts of a bend, mm at the end of a limb.
pub(crate) type Amounts = SVector<f64, MODES>;

/// Amount that is expected beforehand, as a standard deviation, mm: the end of a
/// limb that shows no tray at all is then taken to have moved by no more than
/// 0.6 mm (k = 2). Common practice, no source: stock trays of plastic yield by
/// some tenths of a millimetre under a finger.
pub(crate) const EXPECTED_MM: f64 = 0.15;
/// The limbs blend into each other over this half width at the front and across
/// the palate, mm.
const BLEND_MM: f64 = 10.0;
/// Behind the end of the crest line a limb goes on bending for this part of
/// its length, and is straight from there on.
const BEYOND: f64 = 1.3;

/// The limbs of a tray, by the crest line of the impression in it: local
/// coordinates, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Limbs {
    front_y: f64,
    length_mm: f64,
    half_width_mm: f64,
    /// Where the tray ends at the back, by limb.
    tray_back_y: [f64; 2],
    may_change_size: bool,
}

/// What bending does at a place, before its amounts.
struct BentAt {
    /// Of each curvature, mm for each mm at the end of a limb.
    reach: [f64; CURVED_FROM.len()],
    /// By how much sections are turned, rad for each mm.
    turn: f64,
    /// How far the place belongs to each limb, 0 to 1.
    parts: [f64; 2],
    /// Its distance from the middle of each limb, mm.
    from_limb: [f64; 2],
}

/// The end of a limb.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Limb {
    /// Where x is positive.
    PositiveX,
    /// Where x is negative.
    NegativeX,
}

impl Limbs {
    /// The limbs of a tray, by its vertices where it about lies, under a crest
    /// line that is centred on the origin.
    pub(crate) fn under(crest: &[Point3<f64>], tray: impl Iterator<Item = Point3<f64>>) -> Self {
        let front_y = crest.iter().map(|p| p.y).fold(f64::MIN, f64::max);
        let ends = [crest[0], crest[crest.len() - 1]];
        let back_y = ends.iter().map(|p| p.y).fold(f64::MAX, f64::min);
        let mut tray_back_y = [front_y; 2];
        for p in tray.filter(|p| p.x.abs() > BLEND_MM) {
            let own = &mut tray_back_y[usize::from(p.x < 0.0)];
            *own = own.min(p.y);
        }
        Self {
            front_y,
            length_mm: (front_y - back_y).max(1.0),
            half_width_mm: (ends[0].x - ends[1].x).abs().max(1.0) / 2.0,
            tray_back_y,
            may_change_size: false,
        }
    }

    /// The same where all of it may have become evenly larger or smaller as well, which a
    /// tray does not.
    pub(crate) fn of_any_size(self) -> Self {
        Self {
            may_change_size: true,
            ..self
        }
    }

    /// The length over which the amounts of a bend are reached, mm.
    pub(super) fn length_mm(&self) -> f64 {
        self.length_mm
    }

    /// Where the tray ends at the back on one side of the midline, mm.
    pub(crate) fn back_y(&self, x: f64) -> f64 {
        self.tray_back_y[usize::from(x < 0.0)]
    }

    /// A place on a limb, this part of the way from the front to where the tray
    /// ends at the back, at the level of the crest line's centre.
    pub(crate) fn on(&self, limb: Limb, part: f64) -> Point3<f64> {
        let (x, back_y) = match limb {
            Limb::PositiveX => (self.half_width_mm, self.tray_back_y[0]),
            Limb::NegativeX => (-self.half_width_mm, self.tray_back_y[1]),
        };
        Point3::new(x, self.front_y + part * (back_y - self.front_y), 0.0)
    }

    /// How far each curvature reaches to a place.
    fn bent_at(&self, place: &Point3<f64>) -> BentAt {
        let along = ((self.front_y - place.y) / self.length_mm).max(0.0);
        let (inside, beyond) = (along.min(BEYOND), (along - BEYOND).max(0.0));
        let slope = |from: f64| 2.0 * (inside - from).max(0.0) / (1.0 - from).powi(2);
        let aside = place.x / (place.x * place.x + BLEND_MM * BLEND_MM).sqrt();
        BentAt {
            reach: CURVED_FROM.map(|from| slope(from) * ((inside - from).max(0.0) / 2.0 + beyond)),
            turn: slope(0.0) / self.length_mm,
            parts: [1.0, -1.0].map(|sign| f64::midpoint(1.0, sign * aside)),
            from_limb: [1.0, -1.0].map(|sign| place.x - sign * self.half_width_mm),
        }
    }

    /// What one millimetre of each amount moves a place by.
    pub(crate) fn modes(&self, place: &Point3<f64>) -> [Vector3<f64>; MODES] {
        let bent = self.bent_at(place);
        let mut modes = [Vector3::zeros(); MODES];
        for (limb, own) in modes.chunks_exact_mut(OF_LIMB).enumerate() {
            let part = bent.parts[limb];
            for (k, reach) in bent.reach.into_iter().enumerate() {
                own[2 * k].z = part * reach;
                own[2 * k + 1].x = part * reach;
            }
            own[OF_LIMB - 2].y = part * bent.turn * place.z;
            own[OF_LIMB - 1].y = part * bent.turn * bent.from_limb[limb];
        }
        if self.may_change_size {
            modes[SIZE] = place.coords / self.length_mm;
        }
        modes
    }

    /// What a bend moves a place by, mm.
    pub(crate) fn moved_by(&self, place: &Point3<f64>, amounts: &Amounts) -> Vector3<f64> {
        let bent = self.bent_at(place);
        let mut moved = Vector3::zeros();
        for (limb, own) in amounts.as_slice().chunks_exact(OF_LIMB).enumerate() {
            let mut of_limb = Vector3::zeros();
            for (k, reach) in bent.reach.into_iter().enumerate() {
                of_limb.z += reach * own[2 * k];
                of_limb.x += reach * own[2 * k + 1];
            }
            of_limb.y =
                bent.turn * (place.z * own[OF_LIMB - 2] + bent.from_limb[limb] * own[OF_LIMB - 1]);
            moved += of_limb * bent.parts[limb];
        }
        if self.may_change_size {
            moved += place.coords * (amounts[SIZE] / self.length_mm);
        }
        moved
    }

    /// Where a place of the bent tray lay before it bent.
    pub(crate) fn unbent(&self, place: &Point3<f64>, amounts: &Amounts) -> Point3<f64> {
        let nearly = place - self.moved_by(place, amounts);
        place - self.moved_by(&nearly, amounts)
    }
}
