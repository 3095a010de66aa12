//! What measuring gives: plain data for judging and reporting.

use crate::border::{Border, NoBorder, VertexPlace};
use crate::cover::{
    Contrast, Cover, NoColour, NoCover, PlaceOnTray, Spot, StopReading, TrayColour,
};
use crate::frame::Frame;
use crate::landmarks::Landmark;
use crate::not_an_impression::NotAnImpression;
use crate::outer_excess::OuterExcess;
use crate::tissue::{NoTissue, TissueSurface};
use crate::tray_fit::TrayFit;
use geometry::winding::{Turned, righted};
use mesh::{Integrity, Mesh, Topology};
use std::borrow::Cow;

/// What a scan gave.
#[derive(Debug, Clone, PartialEq)]
pub enum Scanned {
    /// It shows an impression.
    Impression(Box<Measurement>),
    /// It shows something else.
    Else(NotAnImpression, ScanFigures),
}

impl Scanned {
    /// What was measured of the impression; `None` of anything else.
    #[must_use]
    pub fn impression(&self) -> Option<&Measurement> {
        match self {
            Self::Impression(measurement) => Some(measurement),
            Self::Else(..) => None,
        }
    }

    /// What is known of the scan whatever it shows.
    #[must_use]
    pub fn figures(&self) -> &ScanFigures {
        match self {
            Self::Impression(measurement) => &measurement.scan,
            Self::Else(_, figures) => figures,
        }
    }
}

impl ScanFigures {
    /// The scan (mm) as it was measured: what faced the wrong way is turned.
    #[must_use]
    pub fn outward<'a>(&self, scan: &'a Mesh) -> Cow<'a, Mesh> {
        if self.turned == Turned::default() {
            Cow::Borrowed(scan)
        } else {
            Cow::Owned(righted(scan, &Topology::of(scan)).0)
        }
    }
}

/// What is known of a scan whatever it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct ScanFigures {
    /// Figures of the mesh itself (mm).
    pub integrity: Integrity,
    /// What was turned so that the scan faces outward.
    pub turned: Turned,
    /// What the scanner itself may add to a length, expanded uncertainty (k = 2), mm; of an
    /// impression in parts, where they lie as well.
    pub scanner_uncertainty_mm: f64,
    /// Width of the cuts, mm, of an impression in parts.
    pub cut_width_mm: Option<f64>,
}

/// What one impression scan gave.
#[derive(Debug, Clone, PartialEq)]
pub struct Measurement {
    /// What is known of the scan whatever it shows.
    pub scan: ScanFigures,
    /// The impression frame.
    pub frame: Frame,
    /// Whether lips', cheeks' and tray's side was scanned too.
    pub has_outer_surface: bool,
    /// Standard deviation of the scan's noise along the normal, mm.
    pub noise_mm: Option<f64>,
    /// Cover over the tissue surface.
    pub cover: Result<Cover, NoCover>,
    /// How the tray suits the mouth; `None` without a registered tray.
    pub tray_fit: Option<TrayFit>,
    /// Material on the outer faces of the tray; `None` where there is none, or where the tray was
    /// not placed or the border not found.
    pub outer_excess: Option<OuterExcess>,
    /// Patches of little cover, largest of each kind first.
    pub spots: Vec<Spot>,
    /// Where each of them lies on the tray's own scan; `None` for each where no tray scan
    /// was placed.
    pub on_tray: Vec<Option<PlaceOnTray>>,
    /// Declared tissue stops.
    pub stops: Vec<StopReading>,
    /// The border line and its sections.
    pub border: Result<Border, NoBorder>,
    /// The tissue surface: its defects, and how well it was scanned.
    pub tissue: Result<TissueSurface, NoTissue>,
    /// What its colours tell of the tray; `None` where the scan has none. Where
    /// cover was not measured, `spots` are the patches of the tray's colour.
    pub colour: Option<Result<TrayColour, NoColour>>,
    /// Patches of another colour than the material's, where the tray's colour is not
    /// known.
    pub contrasts: Vec<Contrast>,
    /// Landmarks of the jaw.
    pub landmarks: Vec<Landmark>,
    /// Where each vertex of the mesh lies in the arch; `None` off the tissue surface.
    pub places: Vec<Option<VertexPlace>>,
}
