//! Random frena: of every shape, shifted, doubled, or absent.

use super::flange::Frenum;
use super::notch::{NotchShape, ShapedNotch};
use super::ranges::{
    BUCCAL_PLACE, BUCCAL_SHIFT, BUCCAL_WIDTH, FRENUM_DEPTH, LABIAL_WIDTH, LINGUAL_WIDTH,
    MIDLINE_SHIFT, Range, TWIN_APART,
};
use rand::{Rng, RngExt};

/// How often a frenum is absent.
const ABSENT: f64 = 0.1;
/// How often a frenum is doubled.
const DOUBLED: f64 = 0.12;
/// A notch is no deeper than so many of its widths: its sides would be walls.
const STEEPEST: f64 = 1.4;
/// Each of two notches is no wider than this share of the way between them, so
/// that the border rises between.
const TWIN_WIDTH: f64 = 0.5;
/// Border that a notch leaves over the crest, mm.
const LEFT_MM: f64 = 1.6;

/// Frena of a labial and buccal flange whose height is given.
pub(crate) fn outer(rng: &mut impl Rng, height: &dyn Fn(f64) -> f64) -> Vec<Frenum> {
    let middle = MIDLINE_SHIFT.draw(rng);
    let mut frena = one(rng, "labial frenum", middle, &LABIAL_WIDTH, height);
    let place = BUCCAL_PLACE.draw(rng);
    for side in [-1.0, 1.0] {
        let along = side * (place + 0.5 * side * BUCCAL_SHIFT.draw(rng));
        frena.extend(one(rng, "buccal frenum", along, &BUCCAL_WIDTH, height));
    }
    frena
}

/// The frenum of a lingual flange whose height is given.
pub(crate) fn lingual(rng: &mut impl Rng, height: &dyn Fn(f64) -> f64) -> Vec<Frenum> {
    let middle = MIDLINE_SHIFT.draw(rng);
    one(rng, "lingual frenum", middle, &LINGUAL_WIDTH, height)
}

/// A frenum at a place: none, one notch or two beside each other.
fn one(
    rng: &mut impl Rng,
    name: &'static str,
    along: f64,
    widths: &Range,
    height: &dyn Fn(f64) -> f64,
) -> Vec<Frenum> {
    if rng.random_bool(ABSENT) {
        return Vec::new();
    }
    let single = notch(rng, along, widths, height);
    let notches = if rng.random_bool(DOUBLED) {
        let apart = TWIN_APART.draw(rng);
        let beside = |rng: &mut _, sense: f64| {
            let twin = notch(rng, along + sense * apart / 2.0, widths, height);
            let width = twin.width.min(TWIN_WIDTH * apart);
            ShapedNotch {
                width,
                depth: twin.depth.min(STEEPEST * width),
                ..twin
            }
        };
        vec![beside(rng, -1.0), beside(rng, 1.0)]
    } else {
        vec![single]
    };
    let named = |notch| Frenum {
        name,
        paired: name == "buccal frenum",
        notch,
    };
    notches.into_iter().map(named).collect()
}

fn notch(
    rng: &mut impl Rng,
    along: f64,
    widths: &Range,
    height: &dyn Fn(f64) -> f64,
) -> ShapedNotch {
    let width = widths.draw(rng);
    let room = (height(along) - LEFT_MM).min(STEEPEST * width);
    ShapedNotch {
        shape: [NotchShape::V, NotchShape::U, NotchShape::Bell][rng.random_range(0..3)],
        along,
        depth: FRENUM_DEPTH.draw_below(rng, room),
        width,
    }
}
