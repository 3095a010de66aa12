//! What can be wrong in a case file, or in a landmarks file that it names.

use super::labels::BadLabel;
use super::scanned_at::BadTime;
use super::tray::{BadColour, BadThickness};
use crate::located::{Located, TomlFault, TomlFileError};
use measure::landmarks::LandmarkName;
use thiserror::Error;

/// Why a case file, or a landmarks file, cannot be used.
pub type CaseError = TomlFileError<CaseFault>;

/// What is wrong in a case file, and in which line.
pub type CaseProblem = Located<CaseFault>;

/// What can be wrong in a case file.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum CaseFault {
    #[error("{0}")]
    Toml(String),
    #[error("the case needs a name of printable letters (a pseudonym, never a patient's name)")]
    NoId,
    #[error(
        "no impression is named; give before_wash, wash or one_step under [maxillary] or [mandibular]"
    )]
    NoImpression,
    #[error(
        "no impression of this jaw is named; give before_wash, wash or one_step, or leave the section out"
    )]
    EmptyJaw,
    #[error(
        "one_step is given beside before_wash or wash; give one_step alone, or the stages of a wash technique"
    )]
    OneStepAndStages,
    #[error("a reading under [jaw_relation] needs a finite number")]
    ReadingNotFinite,
    #[error("a vertical dimension is given both as a value and as readings; give one of the two")]
    ValueAndReadings,
    #[error("the hours since the impression was taken must be a number, 0 or more")]
    Hours,
    #[error("{0}")]
    Scanner(String),
    #[error("a tissue stop needs three finite numbers")]
    StopNotFinite,
    #[error("tissue stops are given but no tray; they are places on the tray scan")]
    StopsWithoutTray,
    #[error(
        "tray_relieved is the tray after relief, between two passes: give the tray's scan before relief as \
         tray, and the impressions as before_wash and wash"
    )]
    RelievedAlone,
    #[error(
        "a scan of the impression as it was sent is given, but none of it as it arrived; name that by the same key without _as_sent"
    )]
    SentAlone,
    #[error(
        "the list of the impression's parts is empty; name each part's scan, or one scan of the whole"
    )]
    NoParts,
    #[error(
        "an impression in parts needs the scan of its whole tray, on which they are laid; give it as tray"
    )]
    PartsWithoutTray,
    #[error(
        "the list of the tray's pieces is empty; name each piece's scan, or one scan of the whole"
    )]
    NoPieces,
    #[error(
        "a tray in pieces cannot be the frame of an impression in parts, nor be compared with tray_relieved; join the pieces and scan the tray whole"
    )]
    PiecesNotWhole,
    #[error(transparent)]
    ScannedAt(#[from] BadTime),
    #[error(transparent)]
    Label(#[from] BadLabel),
    #[error(transparent)]
    Colour(#[from] BadColour),
    #[error(transparent)]
    Thickness(#[from] BadThickness),
    #[error("'{name}' is no landmark; there are {known}")]
    UnknownLandmark { name: String, known: String },
    #[error("the {name} {}", if *paired { "lies on the right or left: give its side" } else { "lies on the midline: leave its side out" })]
    LandmarkSide { name: &'static str, paired: bool },
    #[error("a landmark's point needs three finite numbers")]
    MarkNotFinite,
    #[error("the {name} is marked twice")]
    MarkedTwice { name: &'static str },
}

impl TomlFault for CaseFault {
    const WANTED: &'static str = "the path of a case file or of a file that it names";
}

impl CaseFault {
    pub(super) fn unknown_landmark(name: &str) -> Self {
        Self::UnknownLandmark {
            name: name.escape_default().to_string(),
            known: LandmarkName::ALL.map(LandmarkName::in_words).join(", "),
        }
    }
}
