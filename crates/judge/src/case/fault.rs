//! What can be wrong in a case file, or in a landmarks file that it names.

use super::labels::BadLabel;
use super::scanned_at::BadTime;
use super::tray::{BadColour, BadThickness};
use crate::located::{Located, TomlFault, TomlFileError};
use crate::scanner::ScannerProblem;
use crate::toml_problem::TomlProblem;
use measure::landmarks::LandmarkName;
use messages::{Message, message};
use thiserror::Error;

/// Why a case file, or a landmarks file, cannot be used.
pub type CaseError = TomlFileError<CaseFault>;

/// What is wrong in a case file, and in which line.
pub type CaseProblem = Located<CaseFault>;

/// What can be wrong in a case file.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{}", self.message())]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum CaseFault {
    Toml(TomlProblem),
    NoId,
    NoImpression,
    EmptyJaw,
    OneStepAndStages,
    ReadingNotFinite,
    ValueAndReadings,
    Hours,
    Scanner(ScannerProblem),
    StopNotFinite,
    StopsWithoutTray,
    RelievedAlone,
    SentAlone,
    NoParts,
    PartsWithoutTray,
    NoPieces,
    PiecesNotWhole,
    ScannedAt(#[from] BadTime),
    Label(#[from] BadLabel),
    Colour(#[from] BadColour),
    Thickness(#[from] BadThickness),
    UnknownLandmark { name: String },
    LandmarkSide(LandmarkName),
    MarkNotFinite,
    MarkedTwice(LandmarkName),
}

impl TomlFault for CaseFault {
    fn wanted() -> Message {
        message!("wanted-case-file")
    }

    fn message(&self) -> Message {
        self.message()
    }
}

impl CaseFault {
    pub(super) fn unknown_landmark(name: &str) -> Self {
        Self::UnknownLandmark {
            name: name.escape_default().to_string(),
        }
    }

    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Toml(problem) => problem.message(),
            Self::NoId => message!("case-no-id"),
            Self::NoImpression => message!("case-no-impression"),
            Self::EmptyJaw => message!("case-empty-jaw"),
            Self::OneStepAndStages => message!("case-one-step-and-stages"),
            Self::ReadingNotFinite => message!("case-reading-not-finite"),
            Self::ValueAndReadings => message!("case-value-and-readings"),
            Self::Hours => message!("case-hours"),
            Self::Scanner(problem) => problem.message(),
            Self::StopNotFinite => message!("case-stop-not-finite"),
            Self::StopsWithoutTray => message!("case-stops-without-tray"),
            Self::RelievedAlone => message!("case-relieved-alone"),
            Self::SentAlone => message!("case-sent-alone"),
            Self::NoParts => message!("case-no-parts"),
            Self::PartsWithoutTray => message!("case-parts-without-tray"),
            Self::NoPieces => message!("case-no-pieces"),
            Self::PiecesNotWhole => message!("case-pieces-not-whole"),
            Self::ScannedAt(why) => why.message(),
            Self::Label(why) => why.message(),
            Self::Colour(why) => why.message(),
            Self::Thickness(why) => why.message(),
            Self::UnknownLandmark { name } => message!(
                "case-unknown-landmark",
                name = name.as_str(),
                known = LandmarkName::ALL.map(LandmarkName::in_words).join(", ")
            ),
            Self::LandmarkSide(name) => message!(
                "case-landmark-side",
                landmark = Message::name("landmark", name.in_words()),
                lies = if name.is_paired() { "aside" } else { "midline" }
            ),
            Self::MarkNotFinite => message!("case-mark-not-finite"),
            Self::MarkedTwice(name) => message!(
                "case-marked-twice",
                landmark = Message::name("landmark", name.in_words())
            ),
        }
    }
}
