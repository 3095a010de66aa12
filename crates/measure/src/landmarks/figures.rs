//! Landmarks: plain data.

use crate::border::Measured;
use crate::words::{Arch, Side, Zone};
use messages::{Message, Value, message, said_by_the_catalogue};
use nalgebra::Point3;

/// A landmark of an edentulous arch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(missing_docs, reason = "the names are the trade's own")]
pub enum LandmarkName {
    LabialFrenum,
    BuccalFrenum,
    LingualFrenum,
    IncisivePapilla,
    Rugae,
    FoveaePalatini,
    Tuberosity,
    HamularNotch,
    PosteriorPalatalSeal,
    RetromolarPad,
    BuccalShelf,
    LingualFlange,
}

impl LandmarkName {
    /// All of them.
    pub const ALL: [Self; 12] = [
        Self::LabialFrenum,
        Self::BuccalFrenum,
        Self::LingualFrenum,
        Self::IncisivePapilla,
        Self::Rugae,
        Self::FoveaePalatini,
        Self::Tuberosity,
        Self::HamularNotch,
        Self::PosteriorPalatalSeal,
        Self::RetromolarPad,
        Self::BuccalShelf,
        Self::LingualFlange,
    ];

    /// Its name in the trade.
    #[must_use]
    pub fn in_words(self) -> &'static str {
        match self {
            Self::LabialFrenum => "labial frenum",
            Self::BuccalFrenum => "buccal frenum",
            Self::LingualFrenum => "lingual frenum",
            Self::IncisivePapilla => "incisive papilla",
            Self::Rugae => "rugae",
            Self::FoveaePalatini => "foveae palatini",
            Self::Tuberosity => "tuberosity",
            Self::HamularNotch => "hamular notch",
            Self::PosteriorPalatalSeal => "posterior palatal seal",
            Self::RetromolarPad => "retromolar pad",
            Self::BuccalShelf => "buccal shelf",
            Self::LingualFlange => "lingual flange",
        }
    }

    /// Whether a jaw has it.
    #[must_use]
    pub fn belongs_to(self, arch: Arch) -> bool {
        match self {
            Self::LabialFrenum | Self::BuccalFrenum => true,
            Self::IncisivePapilla
            | Self::Rugae
            | Self::FoveaePalatini
            | Self::Tuberosity
            | Self::HamularNotch
            | Self::PosteriorPalatalSeal => arch == Arch::Maxillary,
            Self::LingualFrenum | Self::RetromolarPad | Self::BuccalShelf | Self::LingualFlange => {
                arch == Arch::Mandibular
            }
        }
    }

    /// Whether there is one on each side.
    #[must_use]
    pub fn is_paired(self) -> bool {
        matches!(
            self,
            Self::BuccalFrenum
                | Self::Tuberosity
                | Self::HamularNotch
                | Self::RetromolarPad
                | Self::BuccalShelf
                | Self::LingualFlange
        )
    }

    /// Whether it lies in the border itself, so that no border passes beyond it.
    #[must_use]
    pub fn is_of_border(self) -> bool {
        matches!(
            self,
            Self::LabialFrenum
                | Self::BuccalFrenum
                | Self::LingualFrenum
                | Self::PosteriorPalatalSeal
                | Self::LingualFlange
        )
    }

    /// How far it reaches from its middle, mm: what lies within spoils it.
    /// Pads by the means of LM-36 and LM-37, hamular notches by LM-46, buccal
    /// shelves by LM-44 (both from memory); the others are common practice, no
    /// source.
    #[must_use]
    pub fn reach_mm(self) -> f64 {
        match self {
            Self::LabialFrenum | Self::LingualFrenum => 2.0,
            Self::BuccalFrenum | Self::Tuberosity => 3.0,
            Self::IncisivePapilla => 2.5,
            Self::Rugae => 5.0,
            Self::FoveaePalatini => 1.5,
            Self::HamularNotch => 1.5,
            Self::PosteriorPalatalSeal => 2.0,
            Self::RetromolarPad => 4.0,
            Self::BuccalShelf => 2.5,
            Self::LingualFlange => 4.0,
        }
    }
}

impl std::fmt::Display for LandmarkName {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.in_words())
    }
}

/// A landmark that someone has marked.
#[derive(Debug, Clone, PartialEq)]
pub struct LandmarkMark {
    /// Which.
    pub name: LandmarkName,
    /// The patient's side; `None` for one on the midline.
    pub side: Option<Side>,
    /// Where, impression scan coordinates, mm.
    pub point: Point3<f64>,
}

/// Why a landmark could not be made out.
#[derive(Debug, Clone, Copy, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum Unseen {
    NoNotch { least_mm: f64 },
    NoBorder,
    NoRelief { least_mm: f64 },
    TooCoarse { edge_mm: f64, coarsest_mm: f64 },
    TroughOpen { open_mm: f64 },
    NoNeighbour,
    NoSurface,
}

impl Unseen {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NoNotch { least_mm } => {
                message!("unseen-no-notch", least = Value::number(*least_mm, 1))
            }
            Self::NoBorder => message!("unseen-no-border"),
            Self::NoRelief { least_mm } => {
                message!("unseen-no-relief", least = Value::number(*least_mm, 2))
            }
            Self::TooCoarse {
                edge_mm,
                coarsest_mm,
            } => message!(
                "unseen-too-coarse",
                edge = Value::number(*edge_mm, 2),
                most = Value::number(*coarsest_mm, 2)
            ),
            Self::TroughOpen { open_mm } => {
                message!("unseen-trough-open", open = Value::number(*open_mm, 1))
            }
            Self::NoNeighbour => message!("unseen-no-neighbour"),
            Self::NoSurface => message!("missing-no-surface"),
        }
    }
}

said_by_the_catalogue!(Unseen);

/// A landmark seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seen {
    /// Its place on the surface, scan coordinates, mm.
    pub point: Point3<f64>,
    /// Expanded uncertainty (k = 2) of the place, mm.
    pub uncertainty_mm: f64,
    /// 0 (a guess) to 1 (unmistakable).
    pub confidence: f64,
    /// Depth of the notch or hollow, height of the ridge, mm; `None` for a
    /// place known by its neighbours.
    pub relief_mm: Option<f64>,
}

/// How far an impression goes on at a landmark.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Extent {
    /// From the landmark to the border line, in plan; below 0 where the landmark
    /// lies beyond the border. Of a hamular notch: from the bottom of the notch to
    /// where the border line crosses the trough. Of a landmark that was not seen: from
    /// where its fellow on the other side puts it.
    pub margin: Option<Measured>,
    /// How much of the landmark's own area lies inside the border.
    pub covered: Option<Covered>,
}

/// A share of an area, and its expanded uncertainty (k = 2).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Covered {
    /// The share, %.
    pub percent: f64,
    /// Its expanded uncertainty, %.
    pub uncertainty_percent: f64,
}

/// How a landmark came to be known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LandmarkSource {
    /// Found on the surface.
    Detected,
    /// Marked by someone.
    Marked,
}

/// What lies near a landmark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum NearbyKind {
    /// The scan ends.
    ScanEnds,
    /// The border is short of its neighbourhood: the dip, by its number.
    ShortBorder(usize),
    /// A defect, by its number.
    Defect(usize),
    /// A place where the tray shows, by its number among the spots.
    ShowThrough(usize),
}

/// Something near a landmark that may spoil it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nearby {
    /// What.
    pub kind: NearbyKind,
    /// From the landmark's own reach to its edge, mm; below 0 where they overlap.
    pub distance_mm: f64,
}

/// A landmark, seen or looked for in vain.
#[derive(Debug, Clone, PartialEq)]
pub struct Landmark {
    /// Which.
    pub name: LandmarkName,
    /// The patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// How it came to be known.
    pub source: LandmarkSource,
    /// Where it is, or why that is not known.
    pub seen: Result<Seen, Unseen>,
    /// Where it was looked for, where it was not seen; scan coordinates, mm.
    pub expected: Option<Point3<f64>>,
    /// Part of the arch that it lies in; `None` where no place is known.
    pub zone: Option<Zone>,
    /// How far the impression goes on there.
    pub extent: Extent,
    /// What lies within [`NEARBY_MM`] of it, nearest first.
    pub nearby: Vec<Nearby>,
}

impl Landmark {
    /// Whether the surface itself, or someone's mark, shows where it is.
    #[must_use]
    pub fn is_verified(&self) -> bool {
        let has_relief = |seen: &Seen| seen.relief_mm.is_some();
        self.source == LandmarkSource::Marked || self.seen.as_ref().is_ok_and(has_relief)
    }

    /// Where it was seen, else where it was looked for; scan coordinates, mm.
    #[must_use]
    pub fn place(&self) -> Option<Point3<f64>> {
        match &self.seen {
            Ok(seen) => Some(seen.point),
            Err(_) => self.expected,
        }
    }
}

/// How far round a landmark its surroundings are told, mm.
pub const NEARBY_MM: f64 = 8.0;
