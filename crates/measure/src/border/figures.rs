//! What is measured round the border: plain data.

use crate::words::{Side, Zone};
use geometry::section::SectionPoint;
use messages::{Message, message, said_by_the_catalogue};
use nalgebra::Point3;

/// Distance between stations along the border, mm, at most. The heights that dips
/// are read from lie as far apart in plan, so that about one station belongs to
/// each of them.
pub(crate) const STATION_STEP_MM: f64 = 0.5;
/// Expanded uncertainty (k = 2) of a station's place along the border, mm: planes that two
/// observers lay across one place of the border lie within 1 mm of each other.
pub(crate) const STATION_PLACE_MM: f64 = 1.0;

/// A measured length and its expanded uncertainty (k = 2).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    /// The length, mm.
    pub mm: f64,
    /// Its expanded uncertainty, mm.
    pub uncertainty_mm: f64,
}

/// Why an impression has no border line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoBorder {
    NoLine,
    NotRound,
}

impl NoBorder {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NoLine => message!("no-border-line"),
            Self::NotRound => message!("border-not-round"),
        }
    }
}

said_by_the_catalogue!(NoBorder);

/// Why a station lacks a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum Missing {
    TissueSideOnly,
    ScanEnds,
    NoSurface,
    NoCrest,
    FlangeTooLow,
    NoRoll,
    OffTheSummit,
    NoTray,
    AtTheCut,
}

impl Missing {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::TissueSideOnly => message!("missing-tissue-side-only"),
            Self::ScanEnds => message!("missing-scan-ends"),
            Self::NoSurface => message!("missing-no-surface"),
            Self::NoCrest => message!("missing-no-crest"),
            Self::FlangeTooLow => message!("missing-flange-too-low"),
            Self::NoRoll => message!("missing-no-roll"),
            Self::OffTheSummit => message!("missing-off-the-summit"),
            Self::NoTray => message!("missing-no-tray"),
            Self::AtTheCut => message!("missing-at-the-cut"),
        }
    }
}

said_by_the_catalogue!(Missing);

/// A figure of a station, or why there is none.
pub type Reading = Result<Measured, Missing>;

/// The figures that every station has or lacks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum StationFigure {
    /// From the crest point up to the border point, along the seating axis.
    Height,
    /// Between tissue face and outer face, `flange_depth_mm` below the border.
    Thickness,
    /// Radius of the least-squares circle through the roll.
    Radius,
    /// From the border point to the nearest point of the tray.
    Overlap,
}

impl StationFigure {
    /// Every figure, in the order of the result.
    pub const ALL: [Self; 4] = [Self::Height, Self::Thickness, Self::Radius, Self::Overlap];
}

/// Which stretch of the closed border.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum BorderPart {
    /// Labial and buccal.
    Outer,
    /// Lingual, of a mandibular impression.
    Lingual,
    /// Across the back: behind the palate, behind tuberosities or pads.
    Posterior,
}

/// The border of one impression.
#[derive(Debug, Clone, PartialEq)]
pub struct Border {
    /// Whether the line closes on scanned surface: gaps of a few millimetres are
    /// bridged.
    pub closed: bool,
    /// Length of the closed line, mm.
    pub length_mm: f64,
    /// Half a millimetre or less apart, from the labial midline toward the
    /// patient's left and all the way round.
    pub stations: Vec<Station>,
    /// Where the border stands lower than its neighbourhood.
    pub dips: Vec<Dip>,
    /// The crest line, scan coordinates, mm, from the patient's right to the left.
    pub crest_line: Vec<Point3<f64>>,
}

/// One position on the border.
#[derive(Debug, Clone, PartialEq)]
pub struct Station {
    /// Share of the border's length, 0 to 1.
    pub s: f64,
    /// Which stretch of the border.
    pub part: BorderPart,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// The border point, scan coordinates, mm.
    pub point: Point3<f64>,
    /// Expanded uncertainty (k = 2) of the border point along the seating axis,
    /// mm; `None` where no surface was scanned and the point was put in between.
    pub uncertainty_mm: Option<f64>,
    /// The scan ends here before the border turns over.
    pub scan_ends: bool,
    /// [`StationFigure::Height`].
    pub flange_height: Reading,
    /// [`StationFigure::Thickness`].
    pub flange_thickness: Reading,
    /// [`StationFigure::Radius`].
    pub border_radius: Reading,
    /// [`StationFigure::Overlap`].
    pub overlap: Reading,
    /// Number of the station that lies opposite, on the other side of the midline.
    pub opposite: Option<usize>,
    /// The cut through the impression here.
    pub section: Section,
}

impl Station {
    /// One of its figures.
    ///
    /// # Errors
    /// Why the station lacks it.
    pub fn figure(&self, figure: StationFigure) -> Reading {
        match figure {
            StationFigure::Height => self.flange_height,
            StationFigure::Thickness => self.flange_thickness,
            StationFigure::Radius => self.border_radius,
            StationFigure::Overlap => self.overlap,
        }
    }

    /// Leaves every figure out, for one reason.
    pub(crate) fn without_figures(&mut self, why: Missing) {
        self.flange_height = Err(why);
        self.flange_thickness = Err(why);
        self.border_radius = Err(why);
        self.overlap = Err(why);
    }
}

/// The cut of the mesh by the plane of a station. Its points lie across the arch
/// (away from its inside) and along the seating axis, mm; the border point is
/// the origin.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Section {
    /// Tissue face, each polyline in order.
    pub tissue: Vec<Vec<SectionPoint>>,
    /// Outer face, each polyline in order.
    pub outer: Vec<Vec<SectionPoint>>,
    /// The tray, where it is registered.
    pub tray: Vec<Vec<SectionPoint>>,
    /// The crest point.
    pub crest: Option<SectionPoint>,
    /// The two points between which thickness is taken: tissue face, outer face.
    pub thickness: Option<[SectionPoint; 2]>,
    /// Centre of the circle through the roll.
    pub roll_centre: Option<SectionPoint>,
}

/// What a dip of the border is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DipKind {
    /// Where a frenum may lie, and narrow or pointed, as a frenum leaves it.
    Notch,
    /// Where a frenum may lie and no wider than the broadest frenum, but blunt or
    /// very deep: a frenum or a short stretch. Its shape alone does not say which.
    BroadNotch,
    /// A stretch that no frenum explains, since it is too wide or lies where no frena
    /// lie, and that ends steeply.
    Short,
    /// Such a stretch that falls and rises gently: the vestibule's own course, or a
    /// border that is short over a long way.
    Wave,
}

impl DipKind {
    /// Whether a frenum may have left it.
    #[must_use]
    pub fn may_be_frenum(self) -> bool {
        matches!(self, Self::Notch | Self::BroadNotch)
    }
}

/// A place where the border stands lower than its neighbourhood.
#[derive(Debug, Clone, PartialEq)]
pub struct Dip {
    /// What it is.
    pub kind: DipKind,
    /// Number of the station where it begins.
    pub from: usize,
    /// Number of the station where it ends; less than `from` where the dip
    /// lies across the first station.
    pub to: usize,
    /// Number of its lowest station.
    pub bottom: usize,
    /// How far its lowest station lies below the neighbourhood.
    pub depth: Measured,
    /// Width at half depth, mm.
    pub width_mm: f64,
    /// Of a dip that may be a frenum's: it is steep and wide, and lies beside another
    /// notch that is more like a frenum's.
    pub is_rather_short: bool,
}
