//! Upper members of the broad family.

use super::common::{
    Crest, features, front_top, handle, is_lapped, outer_line, overflow, ridge_form, trough,
};
use super::drawn::{BackForm, Drawn, DrawnEnd, DrawnFrenum, HandleForm, RidgeForm};
use super::flange::FlangeLine;
use super::palate::reliefs;
use super::ranges::{
    BASE_RADIUS, BEYOND_TRAY, END_DIFFERENCE, HAMULAR_DEEP, HAMULAR_MARGIN, HAMULAR_SHALLOW,
    HAMULAR_WIDTH, LIMB, SEAL_MARGIN, SHELL, TORUS, TRAY_INSIDE, UNDERCUT_LEAN, UPPER_DEPTH,
    UPPER_FLAT, UPPER_HALF_WIDTH, UPPER_HIGH, UPPER_USUAL, VAULT_DEEP, VAULT_MEDIUM, VAULT_SHALLOW,
};
use crate::back::{Back, Bite};
use crate::design::{Design, Scatter, Wanted};
use crate::jaw::Arch;
use crate::maxilla::{WALL_OUT_MM, lowest_dome, profile};
use crate::mouth::{Flange, Mouth, Palate, Relief, Section};
use crate::options::{Cut, CutPlace};
use crate::plan::{Plan, PlanRanges};
use crate::profile::Profile;
use crate::shaping::bell;
use crate::stations::{Stations, Wave};
use crate::trough::Trough;
use rand::{Rng, RngExt};

const PLAN: PlanRanges = PlanRanges {
    thickness: SHELL.within,
    half_width: UPPER_HALF_WIDTH.within,
    depth: UPPER_DEPTH.within,
    limb_length: LIMB.within,
    extension: [BEYOND_TRAY.within, [0.1, 0.5]],
};

/// Least cover that the tray's fit aims at over the palate, mm.
const PALATE_COVER_MM: f64 = 2.1;
/// Cover that it aims at under the ridge, mm.
const FLOOR_COVER_MM: [f64; 2] = [2.1, 3.2];
/// The tray's plate stands at least this much over its floor, mm.
const PLATE_OVER_FLOOR_MM: f64 = 2.5;
/// How far the trough's bottom falls under the palate, mm.
const INNER_FALL_MM: f64 = 6.0;
/// Standard width of a hamular notch's ridge across the arch, mm.
const HAMULAR_ACROSS_MM: f64 = 4.2;
/// Half the width of a place where the seal is lost, and its middle, mm.
const LOST_SEAL_MM: [f64; 2] = [5.5, 10.0];
/// Material that stays behind the tray where the seal is lost, mm.
const LEFT_BEHIND_TRAY_MM: f64 = 0.8;

/// How the back of an upper member ends.
struct Ends {
    /// How much further back than the plan's end on each side of x, mm.
    shifts: [f64; 2],
    /// Height of the notch's ridge, its standard width, and how far behind it
    /// material goes, mm, for each side of x.
    notches: [[f64; 3]; 2],
    /// How far material goes behind the seal's line in the midline, mm.
    seal_margin: f64,
    /// Depth of the place where the seal is lost, and the sign of its side.
    lost: Option<[f64; 2]>,
}

impl Ends {
    fn random(rng: &mut impl Rng, extension: f64, cut: Option<Cut>) -> Self {
        let mut shifts = [END_DIFFERENCE.draw(rng), 0.0];
        if rng.random_bool(0.5) {
            shifts.reverse();
        }
        let mut notches = [0, 1].map(|_| {
            let height = if rng.random_bool(0.4) {
                HAMULAR_SHALLOW.draw(rng)
            } else {
                HAMULAR_DEEP.draw(rng)
            };
            [height, HAMULAR_WIDTH.draw(rng), HAMULAR_MARGIN.draw(rng)]
        });
        let seal_margin = SEAL_MARGIN.draw(rng);
        let mut lost = None;
        match cut {
            Some(Cut {
                place: CutPlace::PosteriorLandmark,
                left,
                by_mm,
            }) => {
                let short = usize::from(left != (Arch::Maxillary.right_sign() > 0.0));
                // The other side keeps its place; this one ends before it.
                shifts[1 - short] += notches[short][2] + by_mm - shifts[short];
                shifts[short] = 0.0;
                notches[short][2] = -by_mm;
            }
            Some(Cut {
                place: CutPlace::Seal,
                left,
                by_mm,
            }) => {
                let side = if left { -1.0 } else { 1.0 } * Arch::Maxillary.right_sign();
                let depth = seal_margin + by_mm;
                let further = (depth + LEFT_BEHIND_TRAY_MM - extension).max(0.0);
                shifts = shifts.map(|shift| shift + further);
                lost = Some([depth, side]);
            }
            None => {}
        }
        Self {
            shifts,
            notches,
            seal_margin,
            lost,
        }
    }

    fn notch_at(&self, plan: &Plan) -> [f64; 2] {
        [0, 1].map(|i| plan.end() + self.shifts[i] - self.notches[i][2])
    }

    /// The ridges that the notches leave.
    fn ridges(&self, mouth: &Mouth) -> [Relief; 2] {
        [0, 1].map(|i| {
            let [height, width, _] = self.notches[i];
            let at = mouth.plan(mouth.features.posterior[i], 0.0);
            Relief::Bell {
                at,
                widths: [HAMULAR_ACROSS_MM, width],
                height,
            }
        })
    }

    /// What the notches add to the ridge's level.
    fn raised(&self, notch_at: [f64; 2], along: f64) -> f64 {
        let side = usize::from(along >= 0.0);
        let [height, width, _] = self.notches[side];
        height * bell((along.abs() - notch_at[side]) / width)
    }
}

/// The palate, and the section of the tray that fits it.
struct Roof {
    palate: Palate,
    /// Height of the torus, where there is one, mm.
    torus: Option<f64>,
    slope_out: f64,
    slope_angle: f64,
    slope_wave: Wave,
    floor: f64,
    profile: Profile,
}

impl Roof {
    fn random(rng: &mut impl Rng, plan: &Plan, crest: &Crest) -> Self {
        let palate = random_palate(rng);
        let edge_of_dome = palate.vault - palate.fall_aside;
        let slope_angle = edge_of_dome.atan2(rng.random_range(7.6..8.8));
        let slope_out = rng.random_range(3.3..4.2);
        let torus = (palate.vault > 6.0 && rng.random_bool(0.3)).then(|| TORUS.draw(rng));
        let half = plan.thickness / 2.0;
        let plate = lowest_dome(&palate, plan) - torus.unwrap_or(0.0) - PALATE_COVER_MM - half;
        let floor = crest.lowest() - Scatter::within(rng, FLOOR_COVER_MM) - half;
        let floor = floor.min(plate - PLATE_OVER_FLOOR_MM);
        Self {
            palate,
            torus,
            slope_out,
            slope_angle,
            slope_wave: Wave::random(rng, 50.0),
            floor,
            profile: profile(floor, plate, slope_out, slope_angle, plan.thickness),
        }
    }
}

/// A member with its tray.
pub(crate) fn design(rng: &mut impl Rng, wanted: &Wanted, cut: Option<Cut>) -> Design {
    let plan = Plan::random(rng, &PLAN);
    let ends = Ends::random(rng, plan.extension[0], cut);
    let notch_at = ends.notch_at(&plan);
    let reach = ends.shifts.map(|shift| plan.end() + shift);
    let end = reach[0].max(reach[1]);

    let ridge = ridge_form(rng);
    let trough = Trough {
        inner_fall: INNER_FALL_MM,
        ..trough(rng, ridge, end)
    };
    let crest = Crest::random(rng, &plan, trough, 0.0);
    let with_notches = |along: f64| crest.height(along) + ends.raised(notch_at, along);
    let roof = Roof::random(rng, &plan, &crest);

    let line = flange_line(rng, ridge, reach, wanted, plan.tray_end());
    let lapped = is_lapped(rng);
    let lap = overflow(rng, wanted.overflow, end, lapped);
    let overlap = TRAY_INSIDE.draw(rng) + plan.thickness / 2.0;
    let (outer, outer_top) = line.stations(roof.profile.outer(), overlap, &with_notches, &lap);
    let sections = Stations::new(end, |along| Section {
        crest_z: crest.height(along),
        crest_out: crest.out(along),
        outer: outer.at(along),
        inner: Flange::default(),
        slope_out: roof.slope_out + 0.25 * roof.slope_wave.at(along),
        slope_angle: roof.slope_angle + 0.02 * roof.slope_wave.at(along + 17.0),
    });
    let front = plan.arch.depth() + WALL_OUT_MM;
    let (handle_form, handle) = handle(rng, front, roof.floor, front_top(&outer_top));
    let frena = line.drawn_frena();
    let features = features(&frena, [-notch_at[0], notch_at[1]]);
    let mut mouth = plan.mouth(Arch::Maxillary, sections, Some(roof.palate), features);
    mouth.trough = crest.trough.clone();
    mouth.behind = behind(&ends);
    let seal = seal_line(&mouth, &ends);
    let (mut reliefs, marks) = reliefs(rng, &mouth, roof.slope_out, roof.torus, seal);
    reliefs.extend(ends.ridges(&mouth));
    mouth.reliefs = reliefs;
    let drawn = Drawn {
        vault_mm: Some(roof.palate.vault),
        torus_mm: roof.torus,
        seal: Some(seal),
        handle: handle_form,
        lapped,
        ..drawn(ridge, &line, frena, &ends, &mouth)
    };
    let inner_top = Stations::new(end, |_| 0.0);
    let handle = handle.filter(|_| wanted.handle);
    Design {
        mouth,
        tray: plan.tray(roof.profile, [outer_top, inner_top], handle),
        overflow_ramp: Scatter::overflow_ramp(rng),
        marks,
        drawn: Some(drawn),
    }
}

fn flange_line(
    rng: &mut impl Rng,
    ridge: RidgeForm,
    ends: [f64; 2],
    wanted: &Wanted,
    tray_end: f64,
) -> FlangeLine {
    let height = match ridge {
        RidgeForm::High => UPPER_HIGH,
        RidgeForm::Flat => UPPER_FLAT,
        _ => UPPER_USUAL,
    };
    let mut line = outer_line(rng, &height, ridge, ends, wanted, tray_end);
    if ridge == RidgeForm::Undercut {
        line.lean = UNDERCUT_LEAN.draw(rng);
        line.base_radius = BASE_RADIUS.within[0];
    }
    line
}

/// What a member was drawn as, less what only the upper jaw has.
fn drawn(
    ridge: RidgeForm,
    line: &FlangeLine,
    frena: Vec<DrawnFrenum>,
    ends: &Ends,
    mouth: &Mouth,
) -> Drawn {
    let drawn_end = |i: usize| DrawnEnd {
        form: BackForm::HamularNotch,
        relief_mm: ends.notches[i][0],
        length_mm: None,
        along: mouth.features.posterior[i],
    };
    Drawn {
        ridge,
        vault_mm: None,
        torus_mm: None,
        rolls_mm: line.rolls,
        // The patient's left is the side of negative x in a maxilla.
        left_over_right_mm: line.heights[0][1] - line.heights[1][1],
        frena,
        waves: vec![line.wave.drawn(line.flange)],
        ends: [drawn_end(0), drawn_end(1)],
        seal: None,
        handle: HandleForm::None,
        lapped: false,
        tray_end_mm: mouth.arch.curved_length() + mouth.limb_length,
    }
}

fn random_palate(rng: &mut impl Rng) -> Palate {
    let vault = [VAULT_SHALLOW, VAULT_MEDIUM, VAULT_DEEP][rng.random_range(0..3)].draw(rng);
    Palate {
        vault,
        top_y: rng.random_range(-3.5..3.5),
        fall_aside: rng.random_range(1.1..2.4f64).min(0.3 * vault),
        fall_along: rng.random_range(0.7..1.6f64).min(0.2 * vault),
    }
}

fn behind(ends: &Ends) -> Back {
    let [half_width, x] = LOST_SEAL_MM;
    let bite = |[depth, side]: [f64; 2]| Bite {
        x: side * x,
        half_width,
        depth,
    };
    Back {
        shifts: ends.shifts,
        bites: ends.lost.map(bite).into_iter().collect(),
        ..Back::default()
    }
}

/// The line of the posterior palatal seal, from notch to notch: y in the
/// midline, and its change for each mm² aside.
fn seal_line(mouth: &Mouth, ends: &Ends) -> [f64; 2] {
    let notch_y = (mouth.features.posterior)
        .map(|along| mouth.plan(along, 0.0).y)
        .iter()
        .sum::<f64>()
        / 2.0;
    let middle = mouth.back(0.0) + ends.seal_margin;
    [middle, (notch_y - middle) / mouth.arch.half_width().powi(2)]
}
