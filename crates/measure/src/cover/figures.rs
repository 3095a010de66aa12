//! Cover and its spots: plain data.

use crate::amount::Amount;
use crate::tray::{TrayNotPlaced, TrayRegistration};
use crate::words::{Side, Zone};
use geometry::field::quantile;
use messages::{Message, Value, message, said_by_the_catalogue};
use nalgebra::Point3;

/// Why cover could not be measured.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoCover {
    Tray(TrayNotPlaced),
    TrayInsideMissing { missing_percent: f64 },
    TooLittleTraySeen,
}

impl NoCover {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Tray(why) => why.message(),
            Self::TrayInsideMissing { missing_percent } => message!(
                "no-cover-inside-missing",
                share = Value::number(*missing_percent, 0)
            ),
            Self::TooLittleTraySeen => message!("no-cover-too-little-tray"),
        }
    }
}

said_by_the_catalogue!(NoCover);

impl From<TrayNotPlaced> for NoCover {
    fn from(reason: TrayNotPlaced) -> Self {
        Self::Tray(reason)
    }
}

/// How cover was obtained.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CoverMethod {
    /// Distance to the registered scan of the empty tray.
    TrayScan,
    /// Thickness of material and tray together, less that of the tray.
    TwoSided {
        /// What was taken off.
        tray: TrayThickness,
    },
}

/// How thick the tray was said to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrayThickness {
    /// Thickness, mm.
    pub mm: f64,
    /// Its expanded uncertainty (k = 2), mm.
    pub uncertainty_mm: f64,
}

/// Cover over the tissue surface.
#[derive(Debug, Clone, PartialEq)]
pub struct Cover {
    /// How it was obtained.
    pub method: CoverMethod,
    /// The registered tray; `None` where cover was measured without its scan.
    pub registration: Option<TrayRegistration>,
    /// Cover at each vertex of the impression mesh, mm, smoothed over the
    /// scan's noise, but not across a bare edge of the tray; `None` off the tissue surface.
    pub at_vertex_mm: Vec<Option<f64>>,
    /// Expanded uncertainty (k = 2) of the value at each vertex, mm.
    pub uncertainty_at_vertex_mm: Vec<f64>,
    /// Expanded uncertainty (k = 2) of a cover value, mm: root mean square over
    /// the area.
    pub uncertainty_mm: f64,
    /// Where cover is not known although the tray was placed, largest first.
    pub gaps: Vec<CoverGap>,
    /// Strips of bare tray along its edges: narrow, so that cover in them is averaged along
    /// the strip alone.
    pub bare_edges: Vec<BareEdge>,
    /// Tissue surface area over which cover is known, mm².
    pub area_judged_mm2: f64,
    /// Least cover, mm.
    pub min_mm: f64,
    /// 5th percentile by area, mm.
    pub p05_mm: f64,
    /// Median by area, mm.
    pub median_mm: f64,
    /// 95th percentile by area, mm.
    pub p95_mm: f64,
}

/// Why cover is not known at a place although the tray was placed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoCoverHere {
    NoTray,
    OuterSurfaceDiffers,
}

impl NoCoverHere {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NoTray => message!("no-cover-here-no-tray"),
            Self::OuterSurfaceDiffers => message!("no-cover-here-differs"),
        }
    }
}

said_by_the_catalogue!(NoCoverHere);

/// A part of the arch over which cover is not known.
#[derive(Debug, Clone, PartialEq)]
pub struct CoverGap {
    /// Why.
    pub why: NoCoverHere,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Tissue surface without cover, mm².
    pub area_mm2: f64,
}

/// What a patch of little cover is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SpotKind {
    /// Cover at or below the show-through level.
    ShowThrough,
    /// Cover above show-through and below the thin level.
    Thin,
}

/// A narrow strip of bare tray along an edge of it: a rim, an opening, a stop, the joint
/// between two pieces.
#[derive(Debug, Clone, PartialEq)]
pub struct BareEdge {
    /// The scan's vertices in it, ascending.
    pub vertices: Vec<u32>,
    /// Length along the surface, of a closed ring half way round, mm.
    pub length_mm: Amount,
}

/// How long and how wide a strip of show-through along an edge of the tray is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EdgeExtent {
    /// Length along the surface, of a closed ring half way round, mm.
    pub length_mm: Amount,
    /// Mean width, mm.
    pub width_mm: Amount,
}

/// A connected patch of tissue surface with little cover.
#[derive(Debug, Clone, PartialEq)]
pub struct Spot {
    /// What it is.
    pub kind: SpotKind,
    /// Area-weighted centre, moved onto the surface; scan coordinates, mm.
    pub centre: Point3<f64>,
    /// Area of the patch, mm².
    pub area_mm2: f64,
    /// Expanded uncertainty (k = 2) of the area, mm².
    pub area_uncertainty_mm2: f64,
    /// Least cover in the patch, mm; `None` of a patch told by its colour where
    /// cover is not known.
    pub min_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the least cover, mm.
    pub min_uncertainty_mm: Option<f64>,
    /// Of a patch told by its colour: how like the tray's that is, 0 to 1.
    pub confidence: Option<f64>,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Of show-through along an edge of the tray: how long and wide it is.
    pub edge: Option<EdgeExtent>,
    /// Number of the declared tissue stop that this show-through belongs to.
    pub stop: Option<usize>,
    /// Number (in the list of spots) of the show-through that this thin patch
    /// borders: both are one place.
    pub around: Option<usize>,
    /// The scan's vertices in the patch, ascending.
    pub vertices: Vec<u32>,
}

/// A patch of little cover as it lies on the tray.
#[derive(Debug, Clone, PartialEq)]
pub struct PlaceOnTray {
    /// Where its centre lies on the tray's surface, tray scan coordinates, mm.
    pub at: Point3<f64>,
    /// Its vertices, and where each lies on the tray's surface, tray scan coordinates, mm.
    pub vertices: Vec<(u32, Point3<f64>)>,
    /// Thickness of the tray's wall under it, mm; `None` where the tray's scan does not
    /// show both faces of the wall.
    pub wall_mm: Option<Amount>,
    /// Straight distance from `at` to the nearest place of the tray's rim on the side of
    /// lip and cheek, mm; `None` where that rim was not found.
    pub to_outer_rim_mm: Option<Amount>,
    /// Straight distance from `at` to the middle of that rim at the front, mm.
    pub to_front_mm: Option<Amount>,
}

impl Spot {
    /// Whether the scan's colours told it: beside a cover map, where that shows
    /// no tray or nothing.
    #[must_use]
    pub fn is_by_colour(&self) -> bool {
        self.confidence.is_some()
    }
}

/// A declared tissue stop, looked for.
#[derive(Debug, Clone, PartialEq)]
pub struct StopReading {
    /// The place on the tissue surface, scan coordinates, mm.
    pub at: Point3<f64>,
    /// Least cover at the stop, mm; `None` where no surface was scanned.
    pub min_mm: Option<f64>,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
}

impl Cover {
    /// Least cover among vertices; `None` where it is known at none of them.
    #[must_use]
    pub fn least_of(&self, vertices: impl IntoIterator<Item = usize>) -> Option<Amount> {
        let known = vertices.into_iter().filter_map(|v| {
            Some(Amount {
                value: (*self.at_vertex_mm.get(v)?)?,
                uncertainty: *self.uncertainty_at_vertex_mm.get(v)?,
            })
        });
        known.min_by(|a, b| a.value.total_cmp(&b.value))
    }

    /// Cover known at vertices that each stand for an area (mm²); `None` where
    /// it is known nowhere.
    pub(crate) fn of(
        method: CoverMethod,
        at_vertex_mm: Vec<Option<f64>>,
        areas: &[f64],
        uncertainty_at_vertex_mm: Vec<f64>,
    ) -> Option<Self> {
        let (mut known_mm2, mut squares) = (0.0, 0.0);
        for ((_, area), doubt) in (at_vertex_mm.iter().zip(areas))
            .zip(&uncertainty_at_vertex_mm)
            .filter(|((mm, _), _)| mm.is_some())
        {
            known_mm2 += area;
            squares += area * doubt * doubt;
        }
        let mut weighted: Vec<(f64, f64)> = (at_vertex_mm.iter().zip(areas))
            .filter_map(|(mm, &area)| Some(((*mm)?, area)))
            .filter(|(_, area)| *area > 0.0)
            .collect();
        let area_judged_mm2 = weighted.iter().map(|w| w.1).sum();
        let mut part = |part| quantile(&mut weighted, part);
        Some(Self {
            min_mm: part(0.0)?,
            p05_mm: part(0.05)?,
            median_mm: part(0.5)?,
            p95_mm: part(0.95)?,
            method,
            registration: None,
            at_vertex_mm,
            uncertainty_at_vertex_mm,
            uncertainty_mm: (squares / known_mm2).sqrt(),
            gaps: Vec::new(),
            bare_edges: Vec::new(),
            area_judged_mm2,
        })
    }
}
