//! Random maxillary mouths and trays that fit them.

use crate::arch_curve::ArchCurve;
use crate::border::Overflow;
use crate::design::{Design, Mark, Scatter, Wanted, handle};
use crate::jaw::Arch;
use crate::mouth::{Features, Flange, Mouth, Palate, Relief, Section};
use crate::options::FlangeSide;
use crate::plan::{Plan, PlanRanges, lowest};
use crate::profile::Profile;
use crate::random_border::{OuterRanges, outer_border};
use crate::shaping::bell;
use crate::stations::{Stations, Wave};
use nalgebra::Point2;
use rand::{Rng, RngExt};

/// Where the outer wall of the tray stands, from the arch curve, mm.
pub(crate) const WALL_OUT_MM: f64 = 8.7;
/// Least cover that the tray's fit aims at over the palate, mm.
const PALATE_COVER_MM: f64 = 1.9;

const PLAN: PlanRanges = PlanRanges {
    thickness: [1.8, 2.5],
    half_width: [22.8, 25.8],
    depth: [29.0, 36.0],
    limb_length: [8.0, 13.0],
    extension: [[3.5, 4.4], [0.1, 0.5]],
};

const BORDER: OuterRanges = OuterRanges {
    front: [7.5, 11.0],
    middle: [7.0, 10.0],
    middle_spread: 0.6,
    back: [0.2, 1.6],
    last: [0.9, 1.4],
    turns: [18.0, 36.0],
    buccal: [23.0, 27.0],
    buccal_spread: 1.2,
    buccal_notch: [[2.8, 0.8], [2.6, 0.4]],
    labial_notch: [[3.6, 0.8], [1.35, 0.2]],
    rolls: [[1.1, 1.7], [1.4, 2.1]],
    base_radius: [3.1, 3.8],
};

/// A random mouth with its tray.
pub(crate) fn random(rng: &mut impl Rng, wanted: &Wanted) -> Design {
    let plan = Plan::random(rng, &PLAN);
    let end = plan.end();

    let palate = random_palate(rng, &plan.arch);
    let edge_of_dome = palate.vault - palate.fall_aside;
    let slope_angle = edge_of_dome.atan2(rng.random_range(7.6..8.6));
    let slope_out = rng.random_range(3.3..4.0);
    let notch = rng.random_range(3.0..4.2);
    let notch_at = [0, 1].map(|_| end - rng.random_range(1.0..1.8));
    let waves: [Wave; 3] = [90.0, 60.0, 50.0].map(|period| Wave::random(rng, period));

    let crest_size = rng.random_range(0.2..0.5);
    let crest_out = |along: f64| 0.25 * waves[1].at(along);
    let level = plan.levelled(|along| crest_size * waves[0].at(along), crest_out);
    let crest_z = |along: f64| {
        let at = notch_at[usize::from(along >= 0.0)];
        level.at(along) + notch * bell((along.abs() - at) / 2.3)
    };

    let floor = lowest(&level) - rng.random_range(2.1..2.9) - plan.thickness / 2.0;
    let plate = lowest_dome(&palate, &plan) - PALATE_COVER_MM - plan.thickness / 2.0;
    let profile = profile(floor, plate, slope_out, slope_angle, plan.thickness);

    let mut border = outer_border(rng, &BORDER, notch);
    (border.shortages, border.knife_edges) = wanted.planted(FlangeSide::Outer, plan.tray_end());
    let overflow = Overflow::random(rng, wanted.overflow, end);
    let overlap = rng.random_range(3.0..3.7) + plan.thickness / 2.0 - 1.0;
    let (outer, outer_top) = border.stations(profile.outer(), 1.0, overlap, end, &overflow);
    let sections = Stations::new(end, |along| Section {
        crest_z: crest_z(along),
        crest_out: crest_out(along),
        outer: outer.at(along),
        inner: Flange::default(),
        slope_out: slope_out + 0.25 * waves[1].at(along),
        slope_angle: slope_angle + 0.03 * waves[2].at(along),
    });
    let outer_frena = [0, 1, 2].map(|i| border.notches[i].along);
    let features = Features::usual(outer_frena, None, [-notch_at[0], notch_at[1]]);
    let front = plan.arch.depth() + WALL_OUT_MM;
    let handle = wanted.handle.then(|| handle(rng, front, floor));
    let mut mouth = plan.mouth(Arch::Maxillary, sections, Some(palate), features);
    let (reliefs, marks) = random_reliefs(rng, &mouth, slope_out);
    mouth.reliefs = reliefs;
    let inner_top = Stations::new(end, |_| 0.0);
    Design {
        mouth,
        tray: plan.tray(profile, [outer_top, inner_top], handle),
        overflow_ramp: Scatter::overflow_ramp(rng),
        marks,
        drawn: None,
    }
}

fn random_palate(rng: &mut impl Rng, arch: &ArchCurve) -> Palate {
    Palate {
        vault: rng.random_range(6.5..13.5),
        top_y: rng.random_range(-0.1..0.1) * arch.depth(),
        fall_aside: rng.random_range(1.1..2.0),
        fall_along: rng.random_range(0.7..1.3),
    }
}

/// Least height of the dome over the part of the tray that is a level plate.
pub(crate) fn lowest_dome(palate: &Palate, plan: &Plan) -> f64 {
    let (arch, limb_length) = (&plan.arch, plan.limb_length);
    let aside = arch.half_width() - 12.0;
    let along = [arch.depth() - 13.0, -limb_length];
    along
        .map(|y| palate.height(0.0, y))
        .into_iter()
        .fold(palate.height(aside, palate.top_y), f64::min)
}

/// The tray's section: a trough between a wall and a slope that ends in a plate.
pub(crate) fn profile(
    floor: f64,
    plate: f64,
    slope_out: f64,
    slope_angle: f64,
    thickness: f64,
) -> Profile {
    let (sin, cos) = slope_angle.sin_cos();
    let away = 2.2 + thickness / 2.0;
    let foot = [-slope_out - away * sin, -away * cos];
    let on_slope = |z: f64| [foot[0] - (z - foot[1]) * cos / sin, z];
    let flare = 0.09;
    let wall = |z: f64| [WALL_OUT_MM + flare * z, z];
    let corners = [
        wall(30.0),
        wall(floor),
        on_slope(floor),
        on_slope(plate),
        [-80.0, plate],
    ];
    Profile::rounded(&corners, &[2.6, 3.0, 4.0], false)
}

/// Papilla, rugae, raphe, foveae and tuberosities, and where papilla and foveae are.
fn random_reliefs(rng: &mut impl Rng, mouth: &Mouth, slope_out: f64) -> (Vec<Relief>, Vec<Mark>) {
    let papilla = mouth.plan(
        Scatter::around(rng, 0.5),
        -slope_out - rng.random_range(1.0..1.8),
    );
    let mut reliefs = vec![Relief::Bell {
        at: papilla,
        widths: [rng.random_range(1.1..1.5), rng.random_range(1.6..2.2)],
        height: -rng.random_range(0.45..0.9),
    }];
    let mut marks = vec![Mark {
        name: "incisive papilla",
        at: papilla,
        paired: false,
    }];
    let back = mouth.back(0.0);
    reliefs.push(Relief::Midline {
        span: [back + 6.0, papilla.y - 3.0],
        width: rng.random_range(0.7..1.1),
        height: -rng.random_range(0.12..0.3),
    });
    for side in [-1.0, 1.0] {
        let mut y = papilla.y - rng.random_range(2.5..4.0);
        for _ in 0..rng.random_range(3..5) {
            reliefs.push(Relief::Fold {
                side,
                from: [y, rng.random_range(-0.1..0.25)],
                span: [rng.random_range(1.5..2.5), rng.random_range(8.0..12.0)],
                width: rng.random_range(0.6..0.85),
                height: -rng.random_range(0.3..0.5),
            });
            y -= rng.random_range(2.8..4.0);
        }
        // The tuberosity: a wider and a little deeper end of the trough.
        let [left, right] = mouth.features.posterior;
        let notch = if side < 0.0 { left } else { right };
        reliefs.push(Relief::Pad {
            at: mouth.plan(notch - side * 10.0, 0.3),
            half_axes: [5.0, 6.5],
            height: -rng.random_range(0.3..0.6),
        });
    }
    // Foveae cannot be found in one mouth of five.
    if rng.random_range(0.0..1.0) > 0.2 {
        for side in [-1.0, 1.0] {
            let at = Point2::new(
                side * rng.random_range(1.4..2.2),
                back + rng.random_range(4.0..5.0),
            );
            let (mark, relief) = fovea(at, rng.random_range(0.25..0.45));
            marks.push(mark);
            reliefs.push(relief);
        }
    }
    (reliefs, marks)
}

/// One of the foveae: its mark, and a pimple in the impression of this height, mm.
pub(crate) fn fovea(at: Point2<f64>, height: f64) -> (Mark, Relief) {
    let mark = Mark {
        name: "foveae palatini",
        at,
        paired: true,
    };
    let widths = [0.55, 0.55];
    (mark, Relief::Bell { at, widths, height })
}
