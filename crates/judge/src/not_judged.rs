//! What was not judged, and why.

use crate::check::{Check, page};
use messages::{Language, Message};
use std::fmt;

/// Something that was not judged, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotJudged {
    /// What was not judged.
    pub what: Unjudged,
    /// The reason, in plain words.
    pub why: Message,
    /// Whether the case asked for it: a bare scan asks for nothing of the parcel.
    pub is_asked: bool,
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
    /// The border of an impression.
    Border,
    /// What a wash added to its first pass.
    Wash,
    /// The relation of the jaws.
    JawRelation,
    /// The parcel.
    Parcel,
    /// Whether the border is too long, which no scan shows.
    OverExtension,
    /// What lies at the cut between the parts of an impression.
    Cut,
}

impl Part {
    /// Every part.
    pub const ALL: [Self; 6] = [
        Self::Border,
        Self::Wash,
        Self::JawRelation,
        Self::Parcel,
        Self::OverExtension,
        Self::Cut,
    ];

    /// Its name in results.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Border => "border",
            Self::Wash => "wash",
            Self::JawRelation => "jaw-relation",
            Self::Parcel => "parcel",
            Self::OverExtension => "over-extension",
            Self::Cut => "cut",
        }
    }

    /// What it is in one sentence.
    #[must_use]
    pub fn gist(self) -> Message {
        Message::name("gist", self.name())
    }

    /// What it is in one sentence of a language.
    #[must_use]
    pub fn gist_in(self, language: Language) -> String {
        self.gist().text(language)
    }

    /// Its page in a language, in Markdown.
    #[must_use]
    pub fn page(self, language: Language) -> &'static str {
        match self {
            Self::Border => page!("parts", "border", language),
            Self::Wash => page!("parts", "wash", language),
            Self::JawRelation => page!("parts", "jaw-relation", language),
            Self::Parcel => page!("parts", "parcel", language),
            Self::OverExtension => page!("parts", "over-extension", language),
            Self::Cut => page!("parts", "cut", language),
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
