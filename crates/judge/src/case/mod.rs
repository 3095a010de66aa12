//! A case: what was given to be judged.

mod arch_entry;
mod fault;
mod file;
mod labels;
mod marks;
mod material;
mod relation;
mod scanned_at;
mod tray;

pub use fault::{CaseError, CaseFault, CaseProblem};
pub use labels::{BadLabel, Labels};
pub use marks::{MarkedLandmarks, read_landmarks};
pub use material::Material;
pub use relation::{CentricRelationBy, JawRelation, VerticalDimensionBy};
pub use scanned_at::BadTime;
pub use tray::{BadColour, BadThickness, colour_from_hex, thickness};

use crate::protocol::Protocol;
use crate::scanner::Scanner;
use measure::landmarks::LandmarkMark;
use measure::{Arch, TrayThickness};
use nalgebra::Point3;
use serde::Deserialize;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// What was given to be judged.
#[derive(Debug, Clone, PartialEq)]
pub struct Case {
    /// A pseudonym, never a name.
    pub id: String,
    /// What the scanner of its scans adds to lengths, where the case says so; else the
    /// protocol does.
    pub scanner: Option<Scanner>,
    /// Folder with the scans of the empty stock trays, where the case names one; else the
    /// protocol does.
    pub trays: Option<PathBuf>,
    /// Each impression scan: maxillary before mandibular, first pass before wash.
    pub impressions: Vec<ImpressionInput>,
    /// The jaw-relation record.
    pub jaw_relation: Option<JawRelation>,
    /// What is in the parcel.
    pub consignment: Option<Consignment>,
    /// What results are compared by.
    pub labels: Labels,
    /// When its scans were made, where the case says so: a time in UTC (RFC 3339), or a date.
    pub scanned_at: Option<String>,
}

/// One impression scan and what belongs to it.
#[derive(Debug, Clone, PartialEq)]
pub struct ImpressionInput {
    /// The jaw that it is said to be of.
    pub declared: Option<Arch>,
    /// How far the impression has come.
    pub stage: Stage,
    /// File of the impression scan; of an impression that was cut apart, of its first part.
    pub scan: PathBuf,
    /// Files of its other parts.
    pub other_parts: Vec<PathBuf>,
    /// File of the scan of the same impression as it was sent, where this is as it arrived.
    pub as_sent: Option<PathBuf>,
    /// File of the scan of the empty tray; of a tray in pieces, of its first piece.
    pub tray: Option<PathBuf>,
    /// Files of its other pieces.
    pub other_pieces: Vec<PathBuf>,
    /// File of the scan of the tray after it was relieved, before the wash.
    pub tray_relieved: Option<PathBuf>,
    /// Thickness of the tray, where it was said.
    pub tray_thickness: Option<TrayThickness>,
    /// Colour of the tray in the scan, sRGB, where it was said.
    pub tray_colour: Option<[u8; 3]>,
    /// Declared tissue stops, in the numbers of the tray scan's file.
    pub stops: Vec<Point3<f64>>,
    /// Whether the stops were relieved before the wash.
    pub stops_relieved: bool,
    /// Impression material, where it was said.
    pub material: Option<Material>,
    /// Time since the impression was taken, hours, where it was said.
    pub hours_since_taken: Option<f64>,
    /// Landmarks that an operator has marked, in the numbers of the impression
    /// scan's file.
    pub marks: Vec<LandmarkMark>,
    /// SHA-256 of the scan that they were marked on, where that is known: on another scan
    /// they do not count.
    pub marks_sha256: Option<String>,
    /// The file that they were read from.
    pub marks_file: Option<PathBuf>,
}

/// How far an impression has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    /// The heavy or medium body, before the wash.
    FirstPass,
    /// With the wash over it.
    Wash,
    /// Taken in one go, or not said.
    Single,
}

impl Stage {
    /// The word for it in results.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::FirstPass => "first_pass",
            Self::Wash => "wash",
            Self::Single => "single",
        }
    }
}

/// What must be in the parcel, and what has been put in.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Consignment {
    /// Why there is no jaw-relation record, where there is none on purpose.
    pub no_jaw_relation_because: Option<String>,
    /// Why only one jaw is sent, where it is so on purpose.
    pub one_arch_because: Option<String>,
    /// Whether a written prescription is enclosed.
    pub prescription: Option<bool>,
    /// What the set was disinfected with.
    pub disinfectant: Option<String>,
    /// For how long, minutes.
    pub disinfection_min: Option<f64>,
    /// What must be in the parcel.
    #[serde(default)]
    pub expected: Vec<String>,
    /// What has been put in.
    #[serde(default)]
    pub packed: Vec<String>,
}

impl Consignment {
    /// Whether a thing that must be in the parcel has been put in.
    #[must_use]
    pub fn is_packed(&self, part: &str) -> bool {
        let plain = |part: &str| part.trim().to_lowercase();
        self.packed
            .iter()
            .any(|packed| plain(packed) == plain(part))
    }
}

impl ImpressionInput {
    /// A scan of which nothing else is stated.
    #[must_use]
    pub fn bare(declared: Option<Arch>, stage: Stage, scan: PathBuf) -> Self {
        Self {
            declared,
            stage,
            scan,
            other_parts: Vec::new(),
            as_sent: None,
            tray: None,
            other_pieces: Vec::new(),
            tray_relieved: None,
            tray_thickness: None,
            tray_colour: None,
            stops: Vec::new(),
            stops_relieved: false,
            material: None,
            hours_since_taken: None,
            marks: Vec::new(),
            marks_sha256: None,
            marks_file: None,
        }
    }
}

impl ImpressionInput {
    /// Files of the impression's scan: one, or one for each part.
    pub fn scan_files(&self) -> impl Iterator<Item = &PathBuf> {
        std::iter::once(&self.scan).chain(&self.other_parts)
    }

    /// The same impression as it was sent, as an input of its own; `None` where no scan of that
    /// was given. Landmarks are marked on the scan as it arrived.
    #[must_use]
    pub fn as_it_was_sent(&self) -> Option<Self> {
        Some(Self {
            scan: self.as_sent.clone()?,
            other_parts: Vec::new(),
            as_sent: None,
            marks: Vec::new(),
            marks_sha256: None,
            marks_file: None,
            ..self.clone()
        })
    }

    /// File of the scan of the tray as it was when this impression was taken.
    #[must_use]
    pub fn tray_then(&self) -> Option<&Path> {
        let relieved = (self.tray_relieved.as_deref()).filter(|_| self.stage == Stage::Wash);
        relieved.or(self.tray.as_deref())
    }

    /// Whether its tray is looked for on the shelf: where nothing is said of it.
    #[must_use]
    pub fn is_from_shelf(&self) -> bool {
        self.tray_then().is_none() && self.tray_thickness.is_none()
    }
}

impl Case {
    /// A case of one bare scan.
    #[must_use]
    pub fn of_one(id: impl Into<String>, impression: ImpressionInput) -> Self {
        Self {
            id: id.into(),
            scanner: None,
            trays: None,
            impressions: vec![impression],
            jaw_relation: None,
            consignment: None,
            labels: Labels::new(),
            scanned_at: None,
        }
    }

    /// The scanner of its scans: its own, else that of the protocol.
    #[must_use]
    pub fn scanner<'a>(&'a self, protocol: &'a Protocol) -> &'a Scanner {
        self.scanner.as_ref().unwrap_or_else(|| protocol.scanner())
    }

    /// Folder with the scans of the empty stock trays: its own, else that of the protocol;
    /// `None` also where no impression of the case needs one.
    #[must_use]
    pub fn shelf<'a>(&'a self, protocol: &'a Protocol) -> Option<&'a Path> {
        let is_asked = self.impressions.iter().any(ImpressionInput::is_from_shelf);
        let folder = self.trays.as_deref().or(protocol.trays());
        folder.filter(|_| is_asked)
    }

    /// Every scan file that the case names, each once, in the order of their paths.
    #[must_use]
    pub fn scans(&self) -> BTreeSet<&Path> {
        let record = self.jaw_relation.as_ref();
        let of_impressions = (self.impressions.iter()).flat_map(|input| {
            let trays = [&input.tray, &input.tray_relieved];
            let of_trays = trays.into_iter().flatten().chain(&input.other_pieces);
            (input.scan_files()).chain(&input.as_sent).chain(of_trays)
        });
        of_impressions
            .chain(record.and_then(|record| record.scan.as_ref()))
            .map(PathBuf::as_path)
            .collect()
    }

    /// Number of the first pass that a wash followed, if it is in the case.
    #[must_use]
    pub fn first_pass_of(&self, impression: usize) -> Option<usize> {
        let wash = &self.impressions[impression];
        (0..self.impressions.len()).find(|&other| {
            let other = &self.impressions[other];
            wash.stage == Stage::Wash
                && other.stage == Stage::FirstPass
                && other.declared == wash.declared
                && wash.declared.is_some()
        })
    }

    /// Whether a later stage of the same jaw is in the case, so that this
    /// impression is no longer the one to be worked from.
    #[must_use]
    pub fn is_superseded(&self, impression: usize) -> bool {
        let this = &self.impressions[impression];
        this.stage == Stage::FirstPass
            && this.declared.is_some()
            && self
                .impressions
                .iter()
                .any(|other| other.stage == Stage::Wash && other.declared == this.declared)
    }
}
