//! What a scan is instead of an impression.

use crate::anatomy::PLAUSIBLE_LENGTH_MM;
use crate::parts_not_joined::PartsNotJoined;
use thiserror::Error;

/// What a scan is instead of an impression.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NotAnImpression {
    #[error(
        "its longest side is {longest_mm:.0} mm, an impression in its tray has {} to {} mm",
        PLAUSIBLE_LENGTH_MM.start(),
        PLAUSIBLE_LENGTH_MM.end()
    )]
    WrongSize { longest_mm: f64 },
    #[error(
        "the arch stands up as a ridge, as on a cast or in the mouth; an impression has a trough there"
    )]
    Positive,
    #[error("the arch stands up as a ridge over a base that was trimmed flat: a cast")]
    Cast,
    #[error("its trough runs round one side of the arch only: one half of an arch")]
    Half,
    #[error(
        "its wall is {wall_mm:.1} mm thick, which leaves no room for a tray with material in it: \
         an empty tray or a denture base"
    )]
    Shell { wall_mm: f64 },
    #[error(
        "under its trough stands a block {depth_mm:.0} mm high with a level face: a record base \
         with its wax rim"
    )]
    RecordRim { depth_mm: f64 },
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
    #[error("its parts could not be joined: {0}")]
    Parts(PartsNotJoined),
    #[error("its tissue surface lies on the tray everywhere: this is the empty tray")]
    EmptyTray,
}

impl NotAnImpression {
    /// What it is, in a word or two.
    #[must_use]
    pub fn name(&self) -> &'static str {
        match self {
            Self::WrongSize { .. } => "wrong size",
            Self::Positive => "positive",
            Self::Cast => "cast",
            Self::Half => "half arch",
            Self::Shell { .. } => "tray or base",
            Self::RecordRim { .. } => "record rim",
            Self::NoTrough => "no arch",
            Self::Teeth { .. } => "toothed arch",
            Self::Sockets { .. } => "toothed impression",
            Self::TwoScans { .. } => "two scans",
            Self::Exchanged => "tray",
            Self::Parts(_) => "parts",
            Self::EmptyTray => "empty tray",
        }
    }
}
