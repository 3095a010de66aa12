//! Lower members of the broad family.

use super::common::{
    Crest, features, front_top, handle, is_lapped, outer_line, overflow, ridge_form, sides, trough,
};
use super::drawn::{BackForm, Drawn, DrawnEnd, DrawnFrenum, HandleForm, RidgeForm};
use super::flange::{BorderWave, FlangeLine};
use super::frena;
use super::ranges::{
    BASE_RADIUS, BEYOND_TRAY, BORDER_RADIUS, END_DIFFERENCE, LIMB, LINGUAL_BACK, LINGUAL_FRONT,
    LINGUAL_MIDDLE, LOWER_DEPTH, LOWER_FLAT, LOWER_HALF_WIDTH, LOWER_HIGH, LOWER_USUAL, PAD_BELOW,
    PAD_CLEAR, PAD_COVERED, PAD_HOLLOW, PAD_LENGTH, PAD_RIM, PAD_WIDTH, SHELL, TRAY_INSIDE,
    UNDERCUT_LEAN,
};
use crate::back::Back;
use crate::design::{Design, Mark, Scatter, Wanted};
use crate::jaw::Arch;
use crate::mandible::{WALLS_OUT_MM, profile};
use crate::mouth::{Mouth, Relief, Section};
use crate::options::{Cut, FlangeSide};
use crate::plan::{Plan, PlanRanges};
use crate::shaping::{bell, rise};
use crate::stations::{Stations, Wave};
use rand::{Rng, RngExt};

const PLAN: PlanRanges = PlanRanges {
    thickness: SHELL.within,
    half_width: LOWER_HALF_WIDTH.within,
    depth: LOWER_DEPTH.within,
    limb_length: LIMB.within,
    extension: [BEYOND_TRAY.within, [0.1, 0.4]],
};

/// Least cover that the tray's fit aims at under the trough, mm.
const FLOOR_COVER_MM: f64 = 1.9;
/// How much lower the lingual border may stand over the mylohyoid ridge than in
/// front, mm.
const MYLOHYOID_DIP_MM: f64 = 1.0;
/// Share of a pad that an impression is to cover.
pub(crate) const PAD_ASKED: f64 = 2.0 / 3.0;
/// A pad's hollow fades out over this much of its half length.
const PAD_FADE: f64 = 1.15;

/// The back of one side.
#[derive(Clone, Copy)]
struct Pad {
    /// Whether the trough closes behind it.
    closed: bool,
    /// Length and width, mm.
    size: [f64; 2],
    /// Depth of its own hollow, and how far the ridge's level sinks toward it, mm.
    depth: [f64; 2],
    /// How far the trough rises behind it, mm.
    rim: f64,
    /// From its middle to where material ends, mm.
    to_end: f64,
    /// How much further back than the plan's end material goes, mm.
    shift: f64,
}

impl Pad {
    fn random(rng: &mut impl Rng, closed: bool) -> Self {
        let length = PAD_LENGTH.draw(rng);
        let to_end = if closed {
            PAD_FADE * length / 2.0 + PAD_CLEAR.draw(rng)
        } else {
            (PAD_COVERED.draw(rng) - 0.5) * length
        };
        Self {
            closed,
            size: [length, PAD_WIDTH.draw(rng)],
            depth: [PAD_HOLLOW.draw(rng), PAD_BELOW.draw(rng)],
            rim: if closed { PAD_RIM.draw(rng) } else { 0.0 },
            to_end,
            shift: 0.0,
        }
    }
}

fn random_pads(rng: &mut impl Rng, cut: Option<Cut>) -> [Pad; 2] {
    let closed = rng.random_bool(0.5);
    let mut pads = [0, 1].map(|_| Pad::random(rng, closed));
    let longer = usize::from(rng.random_bool(0.5));
    pads[longer].shift = END_DIFFERENCE.draw(rng);
    if let Some(cut) = cut {
        let short = usize::from(cut.left != (Arch::Mandibular.right_sign() > 0.0));
        let [length, _] = pads[short].size;
        let to_end = (PAD_ASKED - 0.5) * length - cut.by_mm;
        pads[1 - short].shift += pads[short].to_end - to_end - pads[short].shift;
        pads[short] = Pad {
            closed: false,
            rim: 0.0,
            to_end,
            shift: 0.0,
            ..pads[short]
        };
    }
    // Material never ends before the plan's end.
    let least = pads[0].shift.min(pads[1].shift).min(0.0);
    pads.map(|pad| Pad {
        shift: pad.shift - least,
        ..pad
    })
}

/// How far the ridge's level changes toward a pad and behind it, mm, for a pad at
/// an arc length and material that ends at another.
fn toward_pad(pad: &Pad, at: f64, end: f64, along: f64) -> f64 {
    let front = at - pad.size[0] / 2.0;
    let sunk = pad.depth[1] * rise(along.abs(), front - 6.0, front + 2.0);
    pad.rim * bell((along.abs() - end + 0.8) / 1.7) - sunk
}

/// A member with its tray.
pub(crate) fn design(rng: &mut impl Rng, wanted: &Wanted, cut: Option<Cut>) -> Design {
    let plan = Plan::random(rng, &PLAN);
    let tray_end = plan.tray_end();
    let pads = random_pads(rng, cut);
    let reach = pads.map(|pad| plan.end() + pad.shift);
    let pad_at = [0, 1].map(|i| reach[i] - pads[i].to_end);
    let end = reach[0].max(reach[1]);

    let ridge = ridge_form(rng);
    let trough = trough(rng, ridge, end);
    let shelf = rng.random_range(0.8..2.0);
    let crest = Crest::random(rng, &plan, trough, shelf);
    let crest_z = |along: f64| {
        let side = usize::from(along >= 0.0);
        crest.height(along) + toward_pad(&pads[side], pad_at[side], reach[side], along)
    };
    let deepest = pads.map(|pad| pad.depth[0] + pad.depth[1]);
    let lowest = crest.lowest().min(-deepest[0].max(deepest[1]));
    let floor = lowest - FLOOR_COVER_MM - plan.thickness / 2.0;
    let profile = profile(floor);

    let height = match ridge {
        RidgeForm::High => LOWER_HIGH,
        RidgeForm::Flat => LOWER_FLAT,
        _ => LOWER_USUAL,
    };
    let buccal = outer_line(rng, &height, ridge, reach, wanted, tray_end);
    let lingual = lingual_line(rng, ridge, reach, wanted, tray_end);
    let lapped = is_lapped(rng);
    let laps = [0, 1].map(|_| overflow(rng, wanted.overflow, end, lapped));
    let overlap = TRAY_INSIDE.draw(rng) + plan.thickness / 2.0;
    let (outer, outer_top) = buccal.stations(profile.outer(), overlap, &crest_z, &laps[0]);
    let inner_wall = profile.inner().unwrap_or(profile.outer());
    let (inner, inner_top) = lingual.stations(inner_wall, overlap, &crest_z, &laps[1]);
    let sections = Stations::new(end, |along| Section {
        crest_z: crest_z(along),
        crest_out: crest.out(along),
        outer: outer.at(along),
        inner: inner.at(along),
        slope_out: 0.0,
        slope_angle: 0.0,
    });
    let frena = [buccal.drawn_frena(), lingual.drawn_frena()].concat();
    let features = features(&frena, [-pad_at[0], pad_at[1]]);
    let mut mouth = plan.mouth(Arch::Mandibular, sections, None, features);
    mouth.trough = crest.trough.clone();
    mouth.behind = Back {
        shifts: pads.map(|pad| pad.shift),
        lowest: lowest - 3.0,
        ..Back::default()
    };
    let (reliefs, marks) = pad_reliefs(rng, &mouth, &pads, &crest);
    mouth.reliefs = reliefs;
    let front = plan.arch.depth() + WALLS_OUT_MM[0];
    let (handle_form, handle) = handle(rng, front, floor, front_top(&outer_top));
    let drawn = Drawn {
        handle: handle_form,
        lapped,
        ..drawn(ridge, [&buccal, &lingual], frena, &pads, &mouth)
    };
    let handle = handle.filter(|_| wanted.handle);
    Design {
        mouth,
        tray: plan.tray(profile, [outer_top, inner_top], handle),
        overflow_ramp: Scatter::overflow_ramp(rng),
        marks,
        drawn: Some(drawn),
    }
}

/// What a member was drawn as, less its tray.
fn drawn(
    ridge: RidgeForm,
    [buccal, lingual]: [&FlangeLine; 2],
    frena: Vec<DrawnFrenum>,
    pads: &[Pad; 2],
    mouth: &Mouth,
) -> Drawn {
    let drawn_end = |i: usize| DrawnEnd {
        form: match pads[i].closed {
            true => BackForm::PadClosed,
            false => BackForm::PadOpen,
        },
        relief_mm: pads[i].depth[0] + pads[i].depth[1],
        length_mm: Some(pads[i].size[0]),
        along: mouth.features.posterior[i],
    };
    Drawn {
        ridge,
        vault_mm: None,
        torus_mm: None,
        rolls_mm: buccal.rolls,
        // The patient's left is the side of positive x in a mandible.
        left_over_right_mm: buccal.heights[1][1] - buccal.heights[0][1],
        frena,
        waves: vec![
            buccal.wave.drawn(buccal.flange),
            lingual.wave.drawn(lingual.flange),
        ],
        ends: [drawn_end(0), drawn_end(1)],
        seal: None,
        handle: HandleForm::None,
        lapped: false,
        tray_end_mm: mouth.arch.curved_length() + mouth.limb_length,
    }
}

/// The lingual flange: low or high in front, shallow over the mylohyoid ridge,
/// deep behind it.
fn lingual_line(
    rng: &mut impl Rng,
    ridge: RidgeForm,
    ends: [f64; 2],
    wanted: &Wanted,
    tray_end: f64,
) -> FlangeLine {
    let front = LINGUAL_FRONT.draw(rng);
    // Between front and back it makes no dip that only a frenum would explain.
    let middle = LINGUAL_MIDDLE.draw(rng).max(front - MYLOHYOID_DIP_MM);
    let back = middle + LINGUAL_BACK.draw(rng);
    let undercut = ridge == RidgeForm::Undercut;
    let most = if undercut { 2.0 } else { 2.6 };
    let least_end = ends[0].min(ends[1]);
    let mut line = FlangeLine {
        flange: FlangeSide::Lingual,
        heights: sides(rng, [front, middle, back]),
        turns: [rng.random_range(14.0..20.0), least_end - 14.0],
        last: [0, 1].map(|_| rng.random_range(0.9..2.0)),
        ends,
        frena: Vec::new(),
        wave: BorderWave::random(rng),
        planted: wanted.planted(FlangeSide::Lingual, tray_end),
        rolls: [0, 1].map(|_| BORDER_RADIUS.draw_below(rng, most)),
        base_radius: if undercut { 2.4 } else { BASE_RADIUS.draw(rng) },
        lean: if undercut {
            UNDERCUT_LEAN.draw(rng)
        } else {
            0.0
        },
        side_wave: Wave::random(rng, 40.0),
    };
    line.frena = frena::lingual(rng, &|along| line.plain(along));
    line
}

/// A pad at the back of each side, and where the pads are.
fn pad_reliefs(
    rng: &mut impl Rng,
    mouth: &Mouth,
    pads: &[Pad; 2],
    crest: &Crest,
) -> (Vec<Relief>, Vec<Mark>) {
    let made = (mouth.features.posterior.into_iter().zip(pads)).map(|(along, pad)| {
        let at = mouth.plan(along, crest.out(along) + Scatter::around(rng, 0.3));
        let [length, width] = pad.size;
        let relief = Relief::Pad {
            at,
            half_axes: [width / 2.0, length / 2.0],
            height: -pad.depth[0],
        };
        let mark = Mark {
            name: "retromolar pad",
            at,
            paired: true,
        };
        (relief, mark)
    });
    made.unzip()
}
