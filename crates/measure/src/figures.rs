//! What measuring gives: plain data for judging and reporting.

use crate::border::Border;
use crate::defects::TissueSurface;
use crate::facing::Turned;
use crate::landmarks::{Landmark, LandmarkMark};
use crate::tray_colour::TrayColour;
use crate::tray_fit::TrayFit;
use crate::wash::Wash;
use mesh::Integrity;
use nalgebra::{Isometry3, Point3, Vector3};
use thiserror::Error;

/// Which jaw.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Arch {
    /// Upper jaw.
    Maxillary,
    /// Lower jaw.
    Mandibular,
}

/// The patient's side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Side {
    /// The patient's right.
    Right,
    /// The patient's left.
    Left,
}

/// Named part of the arch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs, reason = "the names are the trade's own")]
pub enum Zone {
    LabialFlange,
    BuccalFlange,
    ResidualRidge,
    Tuberosity,
    HamularNotch,
    PosteriorPalatalSeal,
    Palate,
    Rugae,
    IncisivePapilla,
    BuccalShelf,
    RetromolarPad,
    Distobuccal,
    LingualFlange,
    Retromylohyoid,
}

/// Why a figure could not be obtained.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NotMeasured {
    #[error("no tray scan was given")]
    NoTray,
    #[error(
        "the scan shows the tissue side only, so no tray surface is seen to register the tray scan on"
    )]
    NoOuterSurface,
    #[error(
        "the tray scan does not fit the outer surface of the impression: only {fitting_percent:.0} % of it lies on the tray"
    )]
    TrayDoesNotFit { fitting_percent: f64 },
    #[error(
        "the tray scan is of another size: {tray_mm:.0} mm across, the impression with its tray {impression_mm:.0} mm"
    )]
    TrayOtherSize { tray_mm: f64, impression_mm: f64 },
    #[error(
        "the tray scan fits the impression only as in a mirror: one of the two scans is mirrored, and right and left are not sure"
    )]
    TrayMirrored,
    #[error(
        "the tray scan could be placed in more than one way; the placings differ by {spread_mm:.2} mm"
    )]
    AmbiguousRegistration { spread_mm: f64 },
    #[error(
        "the tray scan lacks its inner surface, or is inside out: over {missing_percent:.0} % of the tissue surface it shows its back"
    )]
    TrayInsideMissing { missing_percent: f64 },
    #[error(
        "the median edge is {median_edge_mm:.2} mm, too coarse to measure cover (1 mm at most)"
    )]
    TooCoarse { median_edge_mm: f64 },
    #[error(
        "the earlier impression does not fit on this one: only {fitting_percent:.0} % of it lies there"
    )]
    EarlierDoesNotFit { fitting_percent: f64 },
    #[error(
        "the earlier impression fits on this one only as in a mirror: one of the two scans is mirrored, or they are of two mouths"
    )]
    EarlierMirrored,
    #[error(
        "this scan does not lie on the first: only {fitting_percent:.0} % of it fits; it may be of another impression, or be mirrored"
    )]
    RepeatDoesNotFit { fitting_percent: f64 },
    #[error(
        "of first pass or wash only the tissue side was scanned; laid on one another by it, an even wash could not be seen"
    )]
    NoOuterSurfaceForWash,
    #[error(
        "the {} impression is not found in the scan of the record: only {fitting_percent:.0} % of its tissue side lies on it",
        if *arch == Arch::Maxillary { "maxillary" } else { "mandibular" }
    )]
    NotInRecord { arch: Arch, fitting_percent: f64 },
    #[error("the case holds no impression of the {} jaw to be laid on the record", if *arch == Arch::Maxillary { "upper" } else { "lower" })]
    JawMissing { arch: Arch },
    #[error(
        "in the scan of the record the two impressions do not stand opposite each other with right and left alike; one of the scans may be mirrored, or the record be of another case"
    )]
    JawsNotOpposed,
    #[error(
        "too little of the tray's outer face shows opposite the tissue surface to measure its thickness"
    )]
    TooLittleTraySeen,
    #[error(
        "the scan has colours, but the tray's was not given and none stands out on the outer surface"
    )]
    TrayColourUnknown,
    #[error(
        "the colours of tray and material differ by {difference:.0} in CIELAB, too little to tell them apart (10 at least)"
    )]
    TrayColourAlike { difference: f64 },
    #[error(
        "the colours of the scan are too uneven to tell tray from material: they lie {separation:.1} standard deviations apart (6 at least)"
    )]
    ColourTooUneven { separation: f64 },
    #[error("no border line could be followed round the scan")]
    NoBorder,
    #[error(
        "the median edge is {median_edge_mm:.2} mm, too coarse to see defects of the surface (0.75 mm at most)"
    )]
    TooCoarseForDefects { median_edge_mm: f64 },
    #[error("not an impression: {0}")]
    NotAnImpression(NotAnImpression),
}

/// What a scan is instead of an impression.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NotAnImpression {
    #[error("its longest side is {longest_mm:.0} mm, an impression in its tray has 35 to 160 mm")]
    WrongSize { longest_mm: f64 },
    #[error(
        "the arch stands up as a ridge, as on a cast or in the mouth; an impression has a trough there"
    )]
    Positive,
    #[error("no arch-shaped trough was found")]
    NoTrough,
    #[error("{teeth} teeth or parts of teeth stand up side by side: a tooth-bearing arch")]
    Teeth { teeth: usize },
    #[error("{sockets} hollows as of teeth lie side by side: a tooth-bearing arch was impressed")]
    Sockets { sockets: usize },
    #[error(
        "two separate scans lie side by side in the file, of {larger_mm2:.0} and {smaller_mm2:.0} mm²"
    )]
    TwoScans { larger_mm2: f64, smaller_mm2: f64 },
    #[error(
        "it is a part of the larger scan that was given as the tray: impression and tray seem exchanged"
    )]
    Exchanged,
    #[error("its tissue surface lies on the tray everywhere: this is the empty tray")]
    EmptyTray,
}

/// Impression frame, found from the surface alone.
#[derive(Debug, Clone, PartialEq)]
pub struct Frame {
    /// Origin: centre of the crest line, in scan coordinates, mm.
    pub origin: Point3<f64>,
    /// Unit vector toward the patient's right, scan coordinates.
    pub right: Vector3<f64>,
    /// Unit vector toward the patient's front, scan coordinates.
    pub anterior: Vector3<f64>,
    /// Unit vector from tray toward tissue, scan coordinates.
    pub seating: Vector3<f64>,
    /// Maxillary or mandibular, as found.
    pub arch: Arch,
    /// 0 (a guess) to 1 (no other arch comes near), for the arch found.
    pub arch_confidence: f64,
    /// 0 to 1, for the axes.
    pub confidence: f64,
}

/// Where the tray scan lies in the impression scan.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayRegistration {
    /// `impression_from_tray * point_in_tray_scan` lies in impression scan coordinates (mm).
    pub impression_from_tray: Isometry3<f64>,
    /// Root mean square distance of the outer surface points that lie on the tray, mm.
    pub rms_mm: f64,
    /// Expanded uncertainty (k = 2) of the tray's place at the tissue surface, mm.
    pub uncertainty_mm: f64,
    /// Area of the impression's outer surface that lies on the tray, mm².
    pub tray_seen_mm2: f64,
    /// Share of the outer surface that lies on the tray, 0 to 1.
    pub fitting_share: f64,
    /// Share of the outer surface that lies inside the tray's wall, 0 to 1:
    /// next to nothing for the right tray, rigid and unaltered.
    pub behind_share: f64,
}

/// How cover was had.
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
    /// How it was had.
    pub method: CoverMethod,
    /// The registered tray; `None` where cover was had without its scan.
    pub registration: Option<TrayRegistration>,
    /// Cover at each vertex of the impression mesh, mm, smoothed over the
    /// scan's noise; `None` off the tissue surface.
    pub at_vertex_mm: Vec<Option<f64>>,
    /// Expanded uncertainty (k = 2) of a cover value, mm.
    pub uncertainty_mm: f64,
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

/// What a patch of little cover is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SpotKind {
    /// Cover at or below the show-through level.
    ShowThrough,
    /// Cover above show-through and below the thin level.
    Thin,
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
    /// Of a patch told by its colour: how like the tray's that is, 0 to 1.
    pub confidence: Option<f64>,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Number of the declared tissue stop that this show-through belongs to.
    pub stop: Option<usize>,
    /// Number (in the list of spots) of the show-through that this thin patch
    /// borders: both are one place.
    pub around: Option<usize>,
    /// The scan's vertices in the patch, ascending.
    pub vertices: Vec<u32>,
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

/// What one impression scan gave.
#[derive(Debug, Clone, PartialEq)]
pub struct ImpressionMeasurement {
    /// Figures of the mesh itself (mm).
    pub integrity: Integrity,
    /// What was turned so that the scan faces outward.
    pub turned: Turned,
    /// The impression frame.
    pub frame: Result<Frame, NotMeasured>,
    /// Whether lips', cheeks' and tray's side was scanned too; `None` where that cannot be told.
    pub has_outer_surface: Option<bool>,
    /// Standard deviation of the scan's noise along the normal, mm.
    pub noise_mm: Option<f64>,
    /// Cover over the tissue surface.
    pub cover: Result<Cover, NotMeasured>,
    /// How the tray suits the mouth; `None` without a registered tray.
    pub tray_fit: Option<TrayFit>,
    /// Patches of little cover, largest of each kind first.
    pub spots: Vec<Spot>,
    /// Declared tissue stops.
    pub stops: Vec<StopReading>,
    /// The border line and its sections.
    pub border: Result<Border, NotMeasured>,
    /// The tissue surface: its defects, and how well it was scanned.
    pub tissue: Result<TissueSurface, NotMeasured>,
    /// What its colours tell of the tray; `None` where the scan has none. Where
    /// cover was not measured, `spots` are the patches of the tray's colour.
    pub colour: Option<Result<TrayColour, NotMeasured>>,
    /// What it added over its first pass; `None` where the case has none.
    pub wash: Option<Result<Wash, NotMeasured>>,
    /// Landmarks of the jaw; empty where the scan is no impression.
    pub landmarks: Vec<Landmark>,
    /// Where each vertex of the mesh lies in the arch, `None` off the tissue
    /// surface; empty where the scan is no impression.
    pub places: Vec<Option<VertexPlace>>,
}

/// Where a vertex of the tissue surface lies in the arch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct VertexPlace {
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// On a flange: number of the station of the border that it belongs to.
    pub station: Option<usize>,
}

/// What measuring must be told, in mm: levels at which patches are outlined,
/// not limits that anything is judged by.
#[derive(Debug, Clone, PartialEq)]
pub struct MeasureSettings {
    /// Cover at or below which a patch is outlined as show-through, mm.
    pub show_through_mm: f64,
    /// Cover below which a patch is outlined as thin, mm.
    pub thin_cover_mm: f64,
    /// Patches smaller than this are noise, mm².
    pub least_area_mm2: f64,
    /// Declared tissue stops, tray scan coordinates, mm.
    pub stops: Vec<Point3<f64>>,
    /// Half side of a tissue stop, mm.
    pub stop_radius_mm: f64,
    /// Depth below the border at which flange thickness is taken, mm.
    pub flange_depth_mm: f64,
    /// Thickness of the tray, where it was said.
    pub tray_thickness: Option<TrayThickness>,
    /// Colour of the tray in the scan, sRGB, where it was said.
    pub tray_colour: Option<[u8; 3]>,
    /// Landmarks that someone has marked.
    pub marks: Vec<LandmarkMark>,
}

/// Common practice, with nothing said about the impression. A road fills in the
/// levels of its protocol.
impl Default for MeasureSettings {
    fn default() -> Self {
        Self {
            show_through_mm: 0.2,
            thin_cover_mm: 1.0,
            least_area_mm2: 1.0,
            stops: Vec::new(),
            stop_radius_mm: 2.0,
            flange_depth_mm: 3.0,
            tray_thickness: None,
            tray_colour: None,
            marks: Vec::new(),
        }
    }
}
