//! What a scan is instead of an impression.

use crate::anatomy::PLAUSIBLE_LENGTH_MM;
use crate::parts_not_joined::PartsNotJoined;
use messages::{Message, Value, message, said_by_the_catalogue};

/// What a scan is instead of an impression.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NotAnImpression {
    WrongSize { longest_mm: f64 },
    Positive,
    Cast,
    Half,
    Shell { wall_mm: f64 },
    RecordRim { depth_mm: f64 },
    NoTrough,
    Teeth { teeth: usize },
    Sockets { sockets: usize },
    TwoScans { larger_mm2: f64, smaller_mm2: f64 },
    Exchanged,
    Parts(PartsNotJoined),
    EmptyTray,
}

impl NotAnImpression {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::WrongSize { longest_mm } => message!(
                "none-wrong-size",
                longest = Value::number(*longest_mm, 0),
                least = Value::figure(PLAUSIBLE_LENGTH_MM.start().to_string()),
                most = Value::figure(PLAUSIBLE_LENGTH_MM.end().to_string())
            ),
            Self::Positive => message!("none-positive"),
            Self::Cast => message!("none-cast"),
            Self::Half => message!("none-half"),
            Self::Shell { wall_mm } => message!("none-shell", wall = Value::number(*wall_mm, 1)),
            Self::RecordRim { depth_mm } => {
                message!("none-record-rim", depth = Value::number(*depth_mm, 0))
            }
            Self::NoTrough => message!("none-no-trough"),
            Self::Teeth { teeth } => message!("none-teeth", teeth = *teeth),
            Self::Sockets { sockets } => message!("none-sockets", sockets = *sockets),
            Self::TwoScans {
                larger_mm2,
                smaller_mm2,
            } => message!(
                "none-two-scans",
                larger = Value::number(*larger_mm2, 0),
                smaller = Value::number(*smaller_mm2, 0)
            ),
            Self::Exchanged => message!("none-exchanged"),
            Self::Parts(why) => message!("none-parts", why = why),
            Self::EmptyTray => message!("none-empty-tray"),
        }
    }
}

said_by_the_catalogue!(NotAnImpression);

impl NotAnImpression {
    /// What it is, in a word or two.
    #[must_use]
    pub fn name(&self) -> Message {
        match self {
            Self::WrongSize { .. } => message!("shows-wrong-size"),
            Self::Positive => message!("shows-positive"),
            Self::Cast => message!("shows-cast"),
            Self::Half => message!("shows-half-arch"),
            Self::Shell { .. } => message!("shows-tray-or-base"),
            Self::RecordRim { .. } => message!("shows-record-rim"),
            Self::NoTrough => message!("shows-no-arch"),
            Self::Teeth { .. } => message!("shows-toothed-arch"),
            Self::Sockets { .. } => message!("shows-toothed-impression"),
            Self::TwoScans { .. } => message!("shows-two-scans"),
            Self::Exchanged => message!("shows-tray"),
            Self::Parts(_) => message!("shows-parts"),
            Self::EmptyTray => message!("shows-empty-tray"),
        }
    }
}
