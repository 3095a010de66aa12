//! What was not judged, and why.

use crate::check::Check;
use std::fmt;

/// Something that was not judged, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotJudged {
    /// What was not judged.
    pub what: Unjudged,
    /// The reason, in plain words.
    pub why: String,
}

/// What was not judged: one check, or every check that needs a part of the result.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unjudged {
    /// A check.
    Check(Check),
    /// Every check that needs this part.
    Part(Part),
}

/// A part of the result that several checks need.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// The impression frame.
    Frame,
    /// The border of an impression.
    Border,
    /// What a wash added to its first pass.
    Wash,
    /// The relation of the jaws.
    JawRelation,
    /// The parcel.
    Consignment,
}

impl Part {
    /// Its name in results.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Frame => "frame",
            Self::Border => "border",
            Self::Wash => "wash",
            Self::JawRelation => "jaw_relation",
            Self::Consignment => "consignment",
        }
    }
}

impl Unjudged {
    /// Code of the check, or name of the part.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Check(check) => check.code(),
            Self::Part(part) => part.name(),
        }
    }
}

impl fmt::Display for Unjudged {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

impl From<Check> for Unjudged {
    fn from(check: Check) -> Self {
        Self::Check(check)
    }
}

impl From<Part> for Unjudged {
    fn from(part: Part) -> Self {
        Self::Part(part)
    }
}
