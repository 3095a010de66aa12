//! Cover in a result.

use super::{Point, Side};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How cover was had.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum CoverMethod {
    /// Distance to the registered scan of the empty tray.
    TrayScan,
    /// Total thickness less a stated tray thickness.
    TwoSided,
    /// The colours of tray and material told apart.
    Colour,
}

/// Cover over the tissue surface.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Cover {
    /// How it was had.
    pub method: CoverMethod,
    /// Root mean square distance of the outer surface from the registered tray,
    /// mm; this and what else is of the tray's scan is `null` without one.
    pub registration_rms_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the tray's place at the tissue surface, mm.
    pub registration_uncertainty_mm: Option<f64>,
    /// Area of the impression's outer surface that lies on the tray, mm².
    pub tray_seen_mm2: Option<f64>,
    /// Share of the outer surface that lies on the tray, 0 to 1.
    pub fitting_share: Option<f64>,
    /// Share of the outer surface that lies inside the tray's wall, 0 to 1: next
    /// to nothing for the right tray, rigid and unaltered.
    pub behind_share: Option<f64>,
    /// Stated thickness of the tray that was taken off, mm; `null` where none was.
    pub tray_thickness_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub tray_thickness_uncertainty_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of a cover value, mm; this and the values are
    /// `null` where colours alone told of the tray.
    pub uncertainty_mm: Option<f64>,
    /// Scanned tissue surface, flange slopes included, over which cover (or
    /// whether tray shows) is known, mm².
    pub area_judged_mm2: f64,
    /// Least cover, mm.
    pub min_mm: Option<f64>,
    /// 5th percentile by area, mm.
    pub p05_mm: Option<f64>,
    /// Median by area, mm.
    pub median_mm: Option<f64>,
    /// Connected patches of little cover.
    pub spots: Vec<Spot>,
    /// The coloured mesh that was written beside the result; `null` where none was.
    pub map: Option<CoverMap>,
}

/// What a patch of little cover is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum SpotKind {
    /// At or below the show-through level.
    ShowThrough,
    /// Above show-through and below the thin level.
    Thin,
}

/// A connected patch of tissue surface with little cover.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Spot {
    /// Name within the case: C1, C2, …
    pub id: String,
    /// What it is.
    pub kind: SpotKind,
    /// Its centre, on the surface.
    pub centre: Point,
    /// Area, mm².
    pub area_mm2: f64,
    /// Expanded uncertainty (k = 2) of the area, mm².
    pub area_uncertainty_mm2: f64,
    /// Least cover in it, mm; `null` of a patch told by its colour where cover is
    /// not known.
    pub min_mm: Option<f64>,
    /// Of a patch told by its colour: how like the tray's that is, 0 to 1.
    pub confidence: Option<f64>,
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Number, from 0, of the declared tissue stop it belongs to: then it is as it should be.
    pub stop: Option<u64>,
    /// Name of the show-through that this thin patch borders: both are one place.
    pub around: Option<String>,
}

/// The cover map: the impression mesh with a colour and `cover_mm` at each vertex.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CoverMap {
    /// Name of the file, beside the result.
    pub file: String,
    /// Name of the colour scale.
    pub colours: String,
    /// Cover at the dark end, mm; less is drawn the same.
    pub from_mm: f64,
    /// Cover at the bright end, mm; more is drawn the same.
    pub to_mm: f64,
}
