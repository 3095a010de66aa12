//! How the trays of a shelf suit a mouth, in a result.

use super::{Point, Side};
use crate::text::rounding::{figure, point, share};
use check::SuitedTrays;
use judge::shelf_fit::Advice;
use judge::words;
use measure::tray::{Clearance, EdgeToBorder, Touch, TraySuits, WANTED_CLEARANCE_MM};
use mesh::Unit;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How the trays of a shelf suit a mouth, and what to do.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TraysTried {
    /// What to do.
    pub conclusion: Conclusion,
    /// The tray that the conclusion is about; `null` without one.
    pub tray: Option<String>,
    /// Where to bend it away from the tissue, and how deep it reaches into it.
    pub bend: Vec<TouchResult>,
    /// Where to shorten it: its edge reaches past the border.
    pub shorten: Vec<ShortenResult>,
    /// The clearance that is wanted, mm: from, to.
    pub wanted_clearance_mm: [f64; 2],
    /// Each tray, in the order of their names.
    pub trays: Vec<TrayResult>,
}

/// What to do.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Conclusion {
    /// Take the tray as it is.
    Take,
    /// None fits as it is: adapt this one.
    Adapt,
    /// None comes near: make an individual tray.
    Individual,
    /// There is no tray of this jaw on the shelf.
    NoneOfThisJaw,
}

/// How a tray suits.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrayResult {
    /// The name of its file, without the ending.
    pub name: String,
    /// SHA-256 of its file, lower-case hexadecimal.
    pub sha256: String,
    /// Whether it is a tray of the other jaw.
    pub is_of_the_other_jaw: bool,
    /// In the place of most even clearance; `null` where it could not be tried in.
    pub clearance: Option<ClearanceResult>,
}

/// The room that a tray leaves.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ClearanceResult {
    /// The least, but for the nearest 0.2 % of the tissue, mm; below 0 where the tray
    /// reaches into the tissue.
    pub least_mm: f64,
    /// Median, mm.
    pub median_mm: f64,
    /// Expanded uncertainty (k = 2) of both, mm.
    pub uncertainty_mm: f64,
    /// Half of what the middle 68 % of the clearances span, mm.
    pub unevenness_mm: f64,
    /// Share of the tissue over the tray with the wanted clearance, 0 to 1.
    pub wanted_share: f64,
    /// Share of the tissue surface that lies over the tray, 0 to 1.
    pub over_tray_share: f64,
    /// Where the tray touches the tissue.
    pub touches: Vec<TouchResult>,
    /// From its edge to the border, or to where the scan of a mouth or a cast ends.
    pub edges: Vec<EdgeResult>,
}

/// Where a tray touches the tissue, in one part of the arch.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TouchResult {
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Greatest depth to which it reaches into the tissue, mm.
    pub depth_mm: f64,
    /// Area over which it does, mm².
    pub area_mm2: f64,
    /// Where it is deepest, in the coordinates of the scan.
    pub at: Point,
}

/// From a tray's edge to the border, in one part of the arch.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct EdgeResult {
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Least, mm; below 0 where the edge reaches past the border.
    pub least_mm: f64,
    /// Median, mm.
    pub median_mm: f64,
}

/// Where a tray is too long.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ShortenResult {
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// How far its edge reaches past the border, mm (median).
    pub past_border_mm: f64,
}

impl TraysTried {
    /// Those tried in on a scan in this unit.
    pub(crate) fn of(tried: &SuitedTrays, unit: Unit) -> Self {
        let name = |tray: usize| Some(tried.shelf.trays()[tray].name.clone());
        let (conclusion, tray) = match &tried.advice {
            Advice::Take(tray) => (Conclusion::Take, name(*tray)),
            Advice::Adapt { tray, .. } => (Conclusion::Adapt, name(*tray)),
            Advice::Individual => (Conclusion::Individual, None),
            Advice::NoneOfThisJaw => (Conclusion::NoneOfThisJaw, None),
        };
        let (bend, shorten) = match &tried.advice {
            Advice::Adapt { bend, shorten, .. } => (&bend[..], &shorten[..]),
            _ => (&[][..], &[][..]),
        };
        Self {
            conclusion,
            tray,
            bend: bend
                .iter()
                .map(|touch| TouchResult::of(touch, unit))
                .collect(),
            shorten: (shorten.iter())
                .map(|(zone, side, mm)| ShortenResult {
                    zone: words::zone(*zone).to_owned(),
                    side: side.map(Into::into),
                    past_border_mm: figure(*mm),
                })
                .collect(),
            wanted_clearance_mm: [*WANTED_CLEARANCE_MM.start(), *WANTED_CLEARANCE_MM.end()],
            trays: (tried.fit.trays.iter().enumerate())
                .map(|(tray, suits)| TrayResult {
                    name: tried.shelf.trays()[tray].name.clone(),
                    sha256: tried.shelf.scan(tray).sha256.clone(),
                    is_of_the_other_jaw: *suits == TraySuits::OtherJaw,
                    clearance: match suits {
                        TraySuits::Placed(found) => Some(ClearanceResult::of(found, unit)),
                        TraySuits::OtherJaw | TraySuits::NotPlaced => None,
                    },
                })
                .collect(),
        }
    }

    /// The room that the tray of the conclusion leaves.
    #[must_use]
    pub fn clearance(&self) -> Option<&ClearanceResult> {
        let tray = self
            .trays
            .iter()
            .find(|tray| Some(&tray.name) == self.tray.as_ref())?;
        tray.clearance.as_ref()
    }
}

impl ClearanceResult {
    fn of(found: &Clearance, unit: Unit) -> Self {
        Self {
            least_mm: figure(found.least_mm.value),
            median_mm: figure(found.median_mm.value),
            uncertainty_mm: figure(found.median_mm.uncertainty),
            unevenness_mm: figure(found.unevenness_mm),
            wanted_share: share(found.wanted_share),
            over_tray_share: share(found.over_tray_share),
            touches: (found.touches.iter())
                .map(|touch| TouchResult::of(touch, unit))
                .collect(),
            edges: found.edges.iter().map(EdgeResult::of).collect(),
        }
    }
}

impl TouchResult {
    fn of(touch: &Touch, unit: Unit) -> Self {
        Self {
            zone: words::zone(touch.zone).to_owned(),
            side: touch.side.map(Into::into),
            depth_mm: figure(touch.depth_mm),
            area_mm2: figure(touch.area_mm2),
            at: point(&touch.at, unit),
        }
    }
}

impl EdgeResult {
    fn of(edge: &EdgeToBorder) -> Self {
        Self {
            zone: words::zone(edge.zone).to_owned(),
            side: edge.side.map(Into::into),
            least_mm: figure(edge.least_mm),
            median_mm: figure(edge.median_mm),
        }
    }
}
