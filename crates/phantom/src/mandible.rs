//! Random mandibular mouths and trays that fit them.

use crate::arch_curve::ArchPlace;
use crate::border::{Border, Notch, Overflow, levelled};
use crate::design::{Design, Mark, Scatter, Wanted, arch_curve, handle};
use crate::mouth::{Arch, Features, Mouth, Relief, Section};
use crate::options::FlangeSide;
use crate::profile::Profile;
use crate::shaping::{bell, rise};
use crate::stations::{Stations, Wave};
use crate::tray::{Tray, TrayParts};
use rand::{Rng, RngExt};

/// Where the walls of the tray stand, from the arch curve, mm.
const WALLS_OUT_MM: [f64; 2] = [8.0, -7.2];
/// Least cover that the tray's fit aims at under the trough, mm.
const FLOOR_COVER_MM: f64 = 2.0;

/// A random mouth with its tray.
pub fn random(rng: &mut impl Rng, wanted: &Wanted) -> Design {
    let thickness = rng.random_range(1.8..2.4);
    let arch = arch_curve(rng, [22.5, 26.0], [28.0, 34.0]);
    let limb_length = rng.random_range(9.0..14.0);
    let extension = [rng.random_range(3.6..4.4), rng.random_range(0.1..0.4)];
    let end = arch.curved_length() + limb_length + extension[0];
    let waves: [Wave; 2] = [90.0, 60.0].map(|period| Wave::random(rng, period));

    // The ridge leaves the middle of the tray toward the tongue where the
    // buccal shelf widens the trough.
    let shelf = rng.random_range(1.0..1.8);
    let crest_out = |along: f64| -shelf * rise(along.abs(), 20.0, 38.0) + 0.2 * waves[1].at(along);
    let crest_size = rng.random_range(0.2..0.5);
    let level = levelled(
        end,
        |s| crest_size * waves[0].at(s),
        |s| {
            let p = arch.point(ArchPlace {
                along: s,
                out: crest_out(s),
            });
            [p.x, p.y]
        },
    );
    let rim = rng.random_range(2.4..3.2);
    let crest_z = |along: f64| level.at(along) + rim * bell((along.abs() - end + 0.8) / 1.7);

    let pad_depth = rng.random_range(1.0..1.4);
    let lowest = level.iter().map(|(_, &z)| z).fold(f64::INFINITY, f64::min);
    let floor = lowest - pad_depth - FLOOR_COVER_MM + 0.6 - thickness / 2.0;
    let wall = |out: f64, flare: f64, z: f64| [out + flare * z, z];
    let profile = Profile::rounded(
        &[
            wall(WALLS_OUT_MM[0], 0.08, 30.0),
            wall(WALLS_OUT_MM[0], 0.08, floor),
            wall(WALLS_OUT_MM[1], -0.07, floor),
            wall(WALLS_OUT_MM[1], -0.07, 30.0),
        ],
        &[2.6, 2.6],
        true,
    );

    let mut buccal = buccal_border(rng, rim);
    let mut lingual = lingual_border(rng, rim, end);
    let tray_end = arch.curved_length() + limb_length;
    wanted.plant(FlangeSide::Outer, tray_end, &mut buccal);
    wanted.plant(FlangeSide::Lingual, tray_end, &mut lingual);
    let overflows = [0, 1].map(|_| Overflow::random(rng, wanted.overflow, end));
    let overlap = rng.random_range(3.0..3.6) + thickness / 2.0 - 1.0;
    let (outer, outer_top) = buccal.stations(profile.outer(), 1.0, overlap, end, &overflows[0]);
    let inner_wall = profile.inner().copied();
    let (inner, inner_top) = match &inner_wall {
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
    let features = Features {
        labial_frenum: buccal.notches[0].along,
        buccal_frena: [buccal.notches[1].along, buccal.notches[2].along],
        lingual_frenum: lingual.notches[0].along,
        posterior: pads,
    };
    let mut mouth = Mouth {
        kind: Arch::Mandibular,
        arch: arch.clone(),
        limb_length,
        extension,
        sections,
        palate: None,
        reliefs: Vec::new(),
        features,
    };
    mouth.reliefs = pads
        .map(|along| Relief::Pad {
            at: mouth.plan(along, crest_out(along) + Scatter::around(rng, 0.3)),
            half_axes: [rng.random_range(3.1..3.9), rng.random_range(4.5..5.5)],
            height: -pad_depth,
        })
        .to_vec();
    let marks = mouth
        .reliefs
        .iter()
        .filter_map(|r| match *r {
            Relief::Pad { at, .. } => Some(Mark {
                name: "retromolar pad",
                at,
                paired: true,
            }),
            _ => None,
        })
        .collect();
    let handle = wanted
        .handle
        .then(|| handle(rng, arch.depth() + WALLS_OUT_MM[0], floor));
    let tray = Tray::new(TrayParts {
        arch,
        profile,
        thickness,
        limb_length,
        outer_top,
        inner_top,
        handle,
    });
    Design {
        mouth,
        tray,
        overflow_ramp: Scatter::overflow_ramp(rng),
        marks,
    }
}

fn buccal_border(rng: &mut impl Rng, rim: f64) -> Border {
    let front = rng.random_range(6.5..9.0);
    let middle = rng.random_range(6.5..8.5);
    let heights = [0, 1].map(|_| {
        let middle = middle + rng.random_range(-0.5..0.5);
        [
            front + rng.random_range(-0.4..0.4),
            middle,
            middle + rng.random_range(-0.8..0.8),
            rim + rng.random_range(0.9..1.5),
        ]
    });
    let at = rng.random_range(20.0..24.0);
    let beside = |rng: &mut _, side: f64| Notch {
        along: side * (at + Scatter::around(rng, 1.0)),
        depth: 2.4 + Scatter::around(rng, 0.6),
        width: 2.4 + Scatter::around(rng, 0.4),
    };
    let labial = Notch {
        along: Scatter::around(rng, 0.9),
        depth: 2.6 + Scatter::around(rng, 0.6),
        width: 1.4 + Scatter::around(rng, 0.2),
    };
    Border {
        heights,
        turns: [16.0, 36.0],
        notches: vec![labial, beside(rng, -1.0), beside(rng, 1.0)],
        shortages: Vec::new(),
        knife_edges: Vec::new(),
        rolls: [rng.random_range(0.95..1.4), rng.random_range(1.3..2.0)],
        base_radius: rng.random_range(2.8..3.3),
        height_wave: Wave::random(rng, 40.0),
        side_wave: Wave::random(rng, 45.0),
    }
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
    let frenum = Notch {
        along: Scatter::around(rng, 0.8),
        depth: 2.2 + Scatter::around(rng, 0.5),
        width: 1.7 + Scatter::around(rng, 0.2),
    };
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
