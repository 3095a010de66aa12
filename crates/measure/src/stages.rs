//! The stages of measuring: their order and their names in one table.

use crate::measuring::Measuring;
use messages::{Message, message};
use std::fmt;

/// A stage of measuring, for progress.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stage {
    /// How triangles hang together.
    Topology,
    /// Which way tissue, front and right lie.
    Frame,
    /// Tissue surface told from outer surface.
    TissueSide,
    /// The tray scan laid in its place.
    Registration,
    /// The border and its sections.
    Border,
    /// Cover over the tissue surface, and how the tray suits.
    Cover,
    /// Patches of little cover or of the tray's colour.
    Spots,
    /// Defects of the tissue surface, and how well it was scanned.
    Tissue,
    /// Landmarks, and what lies round them.
    Landmarks,
}

/// Obtains the quantities of a stage.
type Obtain = fn(&Measuring<'_>);

/// Every stage in the order in which it runs, with the quantities that it
/// obtains. A later stage finds those of the earlier ones at hand.
pub(crate) const STAGES: [(Stage, Obtain); 9] = [
    (Stage::Topology, |measuring| {
        // A tray can be made ready while the impression is looked at.
        rayon::join(|| measuring.surface(), || measuring.tray());
    }),
    (Stage::Frame, |measuring| {
        measuring.frame().ok();
    }),
    (Stage::TissueSide, |measuring| {
        rayon::join(|| measuring.impression(), || measuring.heights());
    }),
    (Stage::Registration, |measuring| {
        measuring.placed_tray();
    }),
    (Stage::Border, |measuring| {
        measuring.border();
    }),
    (Stage::Cover, |measuring| {
        measuring.cover();
        measuring.look();
        measuring.tray_fit();
        measuring.look();
        measuring.outer_excess();
    }),
    (Stage::Spots, |measuring| {
        measuring.spots();
        measuring.look();
        measuring.on_tray();
    }),
    (Stage::Tissue, |measuring| {
        measuring.tissue();
    }),
    (Stage::Landmarks, |measuring| {
        measuring.landmarks();
        measuring.look();
        measuring.places();
    }),
];

impl Stage {
    /// What is being done, as a message of the catalogue.
    #[must_use]
    pub fn message(self) -> Message {
        match self {
            Self::Topology => message!("stage-topology"),
            Self::Frame => message!("stage-frame"),
            Self::TissueSide => message!("stage-tissue-side"),
            Self::Registration => message!("stage-registration"),
            Self::Border => message!("stage-border"),
            Self::Cover => message!("stage-cover"),
            Self::Spots => message!("stage-spots"),
            Self::Tissue => message!("stage-tissue"),
            Self::Landmarks => message!("stage-landmarks"),
        }
    }
}

/// In English.
impl fmt::Display for Stage {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(f)
    }
}
