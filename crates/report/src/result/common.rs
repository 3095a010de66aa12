//! Words that every part of a result uses.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A point: x, y, z.
pub type Point = [f64; 3];

/// What is to become of an impression or a case.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// It can be worked from, subject to what was not judged.
    Accept,
    /// Relieve or add, then a wash.
    Rework,
    /// The impression must be taken again.
    Retake,
    /// It cannot be judged from what was given.
    Undecided,
}

impl From<judge::Verdict> for Verdict {
    fn from(verdict: judge::Verdict) -> Self {
        match verdict {
            judge::Verdict::Accept => Self::Accept,
            judge::Verdict::Rework => Self::Rework,
            judge::Verdict::Retake => Self::Retake,
            judge::Verdict::Undecided => Self::Undecided,
        }
    }
}

/// Which jaw.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Arch {
    /// Upper jaw.
    Maxillary,
    /// Lower jaw.
    Mandibular,
}

impl From<Arch> for measure::Arch {
    fn from(arch: Arch) -> Self {
        match arch {
            Arch::Maxillary => Self::Maxillary,
            Arch::Mandibular => Self::Mandibular,
        }
    }
}

impl From<measure::Arch> for Arch {
    fn from(arch: measure::Arch) -> Self {
        match arch {
            measure::Arch::Maxillary => Self::Maxillary,
            measure::Arch::Mandibular => Self::Mandibular,
        }
    }
}

/// The patient's side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// The patient's right.
    Right,
    /// The patient's left.
    Left,
}

impl From<measure::Side> for Side {
    fn from(side: measure::Side) -> Self {
        match side {
            measure::Side::Right => Self::Right,
            measure::Side::Left => Self::Left,
        }
    }
}
