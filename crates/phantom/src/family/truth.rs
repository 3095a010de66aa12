//! What is true of a member of the broad family beside what is true of every
//! phantom.

use super::drawn::{BackForm, Drawn, DrawnEnd, DrawnWave, HandleForm, RidgeForm};
use super::lower::PAD_ASKED;
use super::notch::NotchShape;
use crate::impression::Impression;
use crate::jaw::{Arch, Side};
use crate::mouth::FrenumPlace;
use crate::options::FlangeSide;
use nalgebra::{Isometry3, Point3};
use serde::Serialize;

/// A notch that a frenum leaves in the border.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct FrenumTruth {
    /// Its name in the trade.
    pub name: &'static str,
    /// Its side, where there is one on each.
    pub side: Option<Side>,
    /// In which flange.
    pub flange: FlangeSide,
    /// Its outline.
    pub shape: NotchShape,
    /// Place from -1 at the tray's end on the right to 1 on the left.
    pub station: f64,
    /// The lowest border point in it, in scan coordinates.
    pub point: Option<Point3<f64>>,
    /// Depth below the border without it, mm.
    pub depth_mm: f64,
    /// Width at half its depth, mm.
    pub width_mm: f64,
}

/// How far the border lies behind a posterior landmark.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct EndTruth {
    /// The landmark's name in the trade.
    pub landmark: &'static str,
    /// Its side; of the posterior palatal seal, its half.
    pub side: Side,
    /// The form of the back; none of the seal.
    pub form: Option<BackForm>,
    /// From the landmark back to the border, mm; below 0 where the border lies
    /// before it. Of a hamular notch, from the top of its ridge; of a retromolar
    /// pad, from two thirds of its length; of the seal, the least along its half.
    pub margin_mm: f64,
    /// Share of the pad's length that is covered.
    pub covered_share: Option<f64>,
    /// Height of the notch's ridge or depth of the pad below the ridge's level, mm.
    pub relief_mm: Option<f64>,
}

/// What is true of a member of the broad family; lengths in mm.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct FamilyTruth {
    /// The form of the ridge.
    pub ridge: RidgeForm,
    /// Height of the vault (maxilla).
    pub vault_mm: Option<f64>,
    /// Height of the torus, where there is one.
    pub torus_mm: Option<f64>,
    /// Radii of the outer border's roll, at the front and toward the back.
    pub rolls_mm: [f64; 2],
    /// How much higher the border stands on the patient's left.
    pub left_over_right_mm: f64,
    /// The tray's handle.
    pub handle: HandleForm,
    /// Whether material laps over most of the tray's outside.
    pub lapped: bool,
    /// Every dip of the sound border that a frenum explains.
    pub frena: Vec<FrenumTruth>,
    /// Every wave of the border.
    pub waves: Vec<DrawnWave>,
    /// The posterior landmarks.
    pub ends: Vec<EndTruth>,
}

impl FamilyTruth {
    /// What is true of an impression that was drawn so and moved by `pose`.
    pub(crate) fn of(impression: &Impression, drawn: &Drawn, pose: &Isometry3<f64>) -> Self {
        let mut ends: Vec<EndTruth> = (drawn.ends.iter())
            .filter_map(|end| impression.end_truth(end))
            .collect();
        if let Some(seal) = drawn.seal {
            let halves = [-1.0, 1.0].map(|sense| impression.seal_truth(seal, sense));
            ends.extend(halves.into_iter().flatten());
        }
        let right = impression.mouth.kind.right_sign();
        let frena = drawn.frena.iter().map(|frenum| FrenumTruth {
            name: frenum.name,
            side: (frenum.paired).then(|| Side::of(frenum.along * right)),
            flange: frenum.flange,
            shape: frenum.shape,
            station: -right * frenum.along / drawn.tray_end_mm,
            point: (impression.notch_bottom(&FrenumPlace {
                name: frenum.name,
                flange: frenum.flange,
                along: frenum.along,
                reach: 0.6,
                paired: frenum.paired,
            }))
            .map(|point| pose * point),
            depth_mm: frenum.depth_mm,
            width_mm: frenum.width_mm,
        });
        Self {
            ridge: drawn.ridge,
            vault_mm: drawn.vault_mm,
            torus_mm: drawn.torus_mm,
            rolls_mm: drawn.rolls_mm,
            left_over_right_mm: drawn.left_over_right_mm,
            handle: drawn.handle,
            lapped: drawn.lapped,
            frena: frena.collect(),
            waves: drawn.waves.clone(),
            ends,
        }
    }
}

impl Impression {
    fn end_truth(&self, end: &DrawnEnd) -> Option<EndTruth> {
        let out = self.mouth.sections.at(end.along).crest_out;
        let middle = self.mouth.plan(end.along, out);
        let border = self.back_point(middle.x)?;
        let behind_middle = middle.y - border.y;
        let (landmark, margin_mm) = match end.length_mm {
            None => ("hamular notch", behind_middle),
            Some(length) => ("retromolar pad", behind_middle - (PAD_ASKED - 0.5) * length),
        };
        let covered = |length: f64| (0.5 + behind_middle / length).clamp(0.0, 1.0);
        Some(EndTruth {
            landmark,
            side: Side::of(middle.x * self.mouth.kind.right_sign()),
            form: Some(end.form),
            margin_mm,
            covered_share: end.length_mm.map(covered),
            relief_mm: Some(end.relief_mm),
        })
    }

    /// The seal's half on the side of x that has this sign.
    fn seal_truth(&self, [middle, bend]: [f64; 2], sense: f64) -> Option<EndTruth> {
        const STEP_MM: f64 = 1.0;
        let reach = self.mouth.arch.half_width() - 4.0;
        let steps = (reach / STEP_MM) as i32;
        let margin_mm = (0..=steps)
            .map(|i| sense * f64::from(i) * STEP_MM)
            .filter_map(|x| Some(middle + bend * x * x - self.back_point(x)?.y))
            .min_by(f64::total_cmp)?;
        Some(EndTruth {
            landmark: "posterior palatal seal",
            side: Side::of(sense * Arch::Maxillary.right_sign()),
            form: None,
            margin_mm,
            covered_share: None,
            relief_mm: None,
        })
    }
}
