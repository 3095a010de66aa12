//! What a member of the broad family was drawn as, in words and figures.

use super::notch::NotchShape;
use crate::options::FlangeSide;
use serde::Serialize;

/// The form of the residual ridge.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum RidgeForm {
    /// As most are.
    Usual,
    /// With deep vestibules.
    High,
    /// With shallow vestibules and a broad trough.
    Flat,
    /// With a sharp edge.
    KnifeEdged,
    /// With flanges that lean over it a little.
    Undercut,
}

/// The back of one side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum BackForm {
    /// The hamular notch is a ridge with surface behind it.
    HamularNotch,
    /// The retromolar pad is a hollow that closes behind it.
    PadClosed,
    /// The border crosses the retromolar pad.
    PadOpen,
}

/// A tray's handle.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum HandleForm {
    /// The tray has none.
    None,
    /// Down a step and level.
    Stepped,
    /// Level with the tray's floor.
    Flat,
    /// Level, just below the front wall's edge.
    High,
    /// Level, below the floor.
    Low,
    /// Slopes down.
    Steep,
}

/// The back of one side, as drawn.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub(crate) struct DrawnEnd {
    /// Its form.
    pub form: BackForm,
    /// Height of the hamular notch's ridge or depth of the pad below the
    /// ridge's level, mm.
    pub relief_mm: f64,
    /// Length of the pad along the arch, mm; none of a hamular notch.
    pub length_mm: Option<f64>,
    /// Arc length of the notch's ridge or of the pad's middle, mm.
    #[serde(skip)]
    pub along: f64,
}

/// A notch of the border, as drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct DrawnFrenum {
    /// Its name in the trade.
    pub name: &'static str,
    /// In which flange.
    pub flange: FlangeSide,
    /// The outline of the notch.
    pub shape: NotchShape,
    /// Arc length of its bottom, mm.
    pub along: f64,
    /// Depth below the border without it, mm.
    pub depth_mm: f64,
    /// Width at half its depth, mm.
    pub width_mm: f64,
    /// Whether there is one on each side.
    pub paired: bool,
}

/// The wave of a border, as drawn.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct DrawnWave {
    /// Of which flange.
    pub flange: FlangeSide,
    /// From trough to crest, mm.
    pub height_mm: f64,
    /// From crest to crest, mm.
    pub length_mm: f64,
}

/// What a member was drawn as; lengths in mm.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Drawn {
    /// The form of the ridge.
    pub ridge: RidgeForm,
    /// Height of the vault (maxilla).
    pub vault_mm: Option<f64>,
    /// Height of the torus, where there is one.
    pub torus_mm: Option<f64>,
    /// Radii of the outer border's roll, at the front and toward the back.
    pub rolls_mm: [f64; 2],
    /// How much higher the border stands on the patient's left, mm.
    pub left_over_right_mm: f64,
    /// Every notch that a frenum leaves.
    pub frena: Vec<DrawnFrenum>,
    /// Every wave.
    pub waves: Vec<DrawnWave>,
    /// The backs: of negative x, then of positive x.
    pub ends: [DrawnEnd; 2],
    /// Margin of the posterior palatal seal in the midline (maxilla): how far
    /// behind the line material goes, and where the line runs: y in the midline
    /// and its change for each mm² aside.
    pub seal: Option<[f64; 2]>,
    /// The tray's handle.
    pub handle: HandleForm,
    /// Whether material laps over most of the tray's outside.
    pub lapped: bool,
    /// Arc length at which the tray ends, mm.
    pub tray_end_mm: f64,
}
