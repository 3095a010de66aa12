//! Random mandibular mouths and trays that fit them.

use crate::border::{Border, Overflow};
use crate::design::{Design, Mark, Scatter, Wanted, handle};
use crate::jaw::Arch;
use crate::mouth::{Features, Mouth, Relief, Section};
use crate::options::FlangeSide;
use crate::plan::{Plan, PlanRanges, lowest};
use crate::profile::Profile;
use crate::random_border::{OuterRanges, notch, outer_border};
use crate::shaping::{bell, rise};
use crate::stations::{Stations, Wave};
use rand::{Rng, RngExt};

/// Where the walls of the tray stand, from the arch curve, mm.
pub(crate) const WALLS_OUT_MM: [f64; 2] = [8.0, -7.2];
/// Least cover that the tray's fit aims at under the trough, mm.
const FLOOR_COVER_MM: f64 = 2.0;

const PLAN: PlanRanges = PlanRanges {
    thickness: [1.8, 2.4],
    half_width: [22.5, 26.0],
    depth: [28.0, 34.0],
    limb_length: [9.0, 14.0],
    extension: [[3.6, 4.4], [0.1, 0.4]],
};

const BUCCAL: OuterRanges = OuterRanges {
    front: [6.5, 9.0],
    middle: [6.5, 8.5],
    middle_spread: 0.5,
    back: [-0.8, 0.8],
    last: [0.9, 1.5],
    turns: [16.0, 36.0],
    buccal: [20.0, 24.0],
    buccal_spread: 1.0,
    buccal_notch: [[2.4, 0.6], [2.4, 0.4]],
    labial_notch: [[2.6, 0.6], [1.4, 0.2]],
    rolls: [[0.95, 1.4], [1.3, 2.0]],
    base_radius: [2.8, 3.3],
};

/// A random mouth with its tray.
pub(crate) fn random(rng: &mut impl Rng, wanted: &Wanted) -> Design {
    let plan = Plan::random(rng, &PLAN);
    let end = plan.end();
    let waves: [Wave; 2] = [90.0, 60.0].map(|period| Wave::random(rng, period));

    // The ridge leaves the middle of the tray toward the tongue where the
    // buccal shelf widens the trough.
    let shelf = rng.random_range(1.0..1.8);
    let crest_out = |along: f64| -shelf * rise(along.abs(), 20.0, 38.0) + 0.2 * waves[1].at(along);
    let crest_size = rng.random_range(0.2..0.5);
    let level = plan.levelled(|along| crest_size * waves[0].at(along), crest_out);
    let rim = rng.random_range(2.4..3.2);
    let crest_z = |along: f64| level.at(along) + rim * bell((along.abs() - end + 0.8) / 1.7);

    let pad_depth = rng.random_range(1.0..1.4);
    let floor = lowest(&level) - pad_depth - FLOOR_COVER_MM + 0.6 - plan.thickness / 2.0;
    let profile = profile(floor);

    let mut buccal = outer_border(rng, &BUCCAL, rim);
    let mut lingual = lingual_border(rng, rim, end);
    let planted = |flange| wanted.planted(flange, plan.tray_end());
    (buccal.shortages, buccal.knife_edges) = planted(FlangeSide::Outer);
    (lingual.shortages, lingual.knife_edges) = planted(FlangeSide::Lingual);
    let overflows = [0, 1].map(|_| Overflow::random(rng, wanted.overflow, end));
    let overlap = rng.random_range(3.0..3.6) + plan.thickness / 2.0 - 1.0;
    let (outer, outer_top) = buccal.stations(profile.outer(), 1.0, overlap, end, &overflows[0]);
    let (inner, inner_top) = match profile.inner() {
        Some(wall) => lingual.stations(wall, -1.0, overlap, end, &overflows[1]),
        None => (outer.clone(), outer_top.clone()),
    };
    let sections = Stations::new(end, |along| Section {
        crest_z: crest_z(along),
        crest_out: crest_out(along),
        outer: outer.at(along),
        inner: inner.at(along),
        slope_out: 0.0,
        slope_angle: 0.0,
    });
    let pads = [-1.0, 1.0].map(|side| side * (end - rng.random_range(6.8..7.6)));
    let outer_frena = [0, 1, 2].map(|i| buccal.notches[i].along);
    let features = Features::usual(outer_frena, Some(lingual.notches[0].along), pads);
    let mut mouth = plan.mouth(Arch::Mandibular, sections, None, features);
    let (reliefs, marks) = retromolar_pads(rng, &mouth, crest_out, pad_depth);
    mouth.reliefs = reliefs;
    let front = plan.arch.depth() + WALLS_OUT_MM[0];
    let handle = wanted.handle.then(|| handle(rng, front, floor));
    Design {
        mouth,
        tray: plan.tray(profile, [outer_top, inner_top], handle),
        overflow_ramp: Scatter::overflow_ramp(rng),
        marks,
        drawn: None,
    }
}

/// The tray's section: a trough between two walls, open upward.
pub(crate) fn profile(floor: f64) -> Profile {
    let wall = |out: f64, flare: f64, z: f64| [out + flare * z, z];
    Profile::rounded(
        &[
            wall(WALLS_OUT_MM[0], 0.08, 30.0),
            wall(WALLS_OUT_MM[0], 0.08, floor),
            wall(WALLS_OUT_MM[1], -0.07, floor),
            wall(WALLS_OUT_MM[1], -0.07, 30.0),
        ],
        &[2.6, 2.6],
        true,
    )
}

/// A pad at the back of each side, and where the pads are.
fn retromolar_pads(
    rng: &mut impl Rng,
    mouth: &Mouth,
    crest_out: impl Fn(f64) -> f64,
    depth: f64,
) -> (Vec<Relief>, Vec<Mark>) {
    let pad = |along: f64| {
        let at = mouth.plan(along, crest_out(along) + Scatter::around(rng, 0.3));
        let relief = Relief::Pad {
            at,
            half_axes: [rng.random_range(3.1..3.9), rng.random_range(4.5..5.5)],
            height: -depth,
        };
        let mark = Mark {
            name: "retromolar pad",
            at,
            paired: true,
        };
        (relief, mark)
    };
    mouth.features.posterior.map(pad).into_iter().unzip()
}

/// The lingual flange: shallow over the mylohyoid ridge, deep behind it.
fn lingual_border(rng: &mut impl Rng, rim: f64, end: f64) -> Border {
    let front = rng.random_range(6.0..7.8);
    let middle = rng.random_range(6.0..7.6);
    let heights = [0, 1].map(|_| {
        [
            front + rng.random_range(-0.3..0.3),
            middle + rng.random_range(-0.4..0.4),
            middle + rng.random_range(1.8..3.2),
            rim + rng.random_range(1.0..2.0),
        ]
    });
    let along = Scatter::around(rng, 0.8);
    let frenum = notch(rng, along, [[2.2, 0.5], [1.7, 0.2]]);
    Border {
        heights,
        turns: [16.0, end - 14.0],
        notches: vec![frenum],
        shortages: Vec::new(),
        knife_edges: Vec::new(),
        rolls: [rng.random_range(1.0..1.5), rng.random_range(1.1..1.7)],
        base_radius: rng.random_range(2.7..3.2),
        height_wave: Wave::random(rng, 45.0),
        side_wave: Wave::random(rng, 40.0),
    }
}
