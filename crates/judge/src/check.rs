//! Every check by name: its code, its page, and what mends what it finds. What it is in one
//! sentence is in the catalogue of messages.

use messages::{Language, Message};
use std::fmt;
use std::str::FromStr;
use thiserror::Error;

/// What mends a failed check; most pressing first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Remedy {
    /// A question must be answered (or another scan given) before anything can be judged.
    Answer,
    /// The impression must be taken again.
    Retake,
    /// Relief or added material, then a wash.
    Rework,
    /// A better scan, or a look at the impression itself.
    LookAgain,
}

/// The page of a code in a language, from the folder of its kind.
macro_rules! page {
    ($folder:literal, $code:literal, $language:expr) => {
        match $language {
            Language::English => include_str!(concat!($folder, "/", $code, ".md")),
            Language::German => include_str!(concat!($folder, "/de/", $code, ".md")),
            Language::Spanish => include_str!(concat!($folder, "/es/", $code, ".md")),
        }
    };
}
pub(crate) use page;

macro_rules! checks {
    ($($variant:ident = $code:literal, $remedy:ident;)+) => {
        /// Every check there is.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Check {
            $(#[doc = concat!("`", $code, "`")] $variant,)+
        }

        impl Check {
            /// Every check, most fundamental first.
            pub const ALL: [Self; [$($code),+].len()] = [$(Self::$variant),+];

            /// The code, in kebab-case.
            #[must_use]
            pub fn code(self) -> &'static str {
                match self { $(Self::$variant => $code,)+ }
            }

            /// What mends it when it fails.
            #[must_use]
            pub fn remedy(self) -> Remedy {
                match self { $(Self::$variant => Remedy::$remedy,)+ }
            }

            /// Its page in a language, in Markdown: what, why, how, limits of knowledge, source.
            #[must_use]
            pub fn page(self, language: Language) -> &'static str {
                match self { $(Self::$variant => page!("checks", $code, language),)+ }
            }
        }
    };
}

checks! {
    FileUnclear = "file-unclear", Answer;
    UnitUnclear = "unit-unclear", Answer;
    NotAnImpression = "not-an-impression", Answer;
    ArchMismatch = "arch-mismatch", Answer;
    OrientationUnclear = "orientation-unclear", Answer;
    ShowThrough = "show-through", Rework;
    OtherColour = "other-colour", LookAgain;
    ShowThroughExtent = "show-through-extent", Retake;
    TissueStop = "tissue-stop", Retake;
    ThinCover = "thin-cover", Rework;
    TraySeating = "tray-seating", Retake;
    TrayBent = "tray-bent", Retake;
    TrayJoint = "tray-joint", Retake;
    ChangedInTransit = "changed-in-transit", LookAgain;
    TraySize = "tray-size", Retake;
    OuterExcess = "outer-excess", Rework;
    TrayAtBorder = "tray-at-border", Rework;
    UnderExtension = "under-extension", Rework;
    BorderRadius = "border-radius", Rework;
    FlangeHeight = "flange-height", Rework;
    FlangeThickness = "flange-thickness", Rework;
    BorderOverlap = "border-overlap", Rework;
    BorderAsymmetry = "border-asymmetry", Rework;
    BorderChange = "border-change", Rework;
    WashOpen = "wash-open", Rework;
    WashThickness = "wash-thickness", LookAgain;
    WashUneven = "wash-uneven", LookAgain;
    ScanEnds = "scan-ends", LookAgain;
    BorderNotJudged = "border-not-judged", LookAgain;
    Void = "void", Rework;
    VoidUnseen = "void-unseen", LookAgain;
    Nodule = "nodule", Rework;
    Fold = "fold", Rework;
    Hole = "hole", LookAgain;
    LandmarkCutShort = "landmark-cut-short", Rework;
    LandmarkObscured = "landmark-obscured", Rework;
    LandmarkNotFound = "landmark-not-found", LookAgain;
    CoverNotJudged = "cover-not-judged", LookAgain;
    CoverUncertainty = "cover-uncertainty", LookAgain;
    TissueArea = "tissue-area", LookAgain;
    ScanResolution = "scan-resolution", LookAgain;
    ScanQuality = "scan-quality", LookAgain;
    InterarchSpace = "interarch-space", LookAgain;
    RidgeAngle = "ridge-angle", LookAgain;
    JawRelationNotJudged = "jaw-relation-not-judged", LookAgain;
    WashMissing = "wash-missing", LookAgain;
    ImpressionAge = "impression-age", LookAgain;
    InterocclusalDistance = "interocclusal-distance", LookAgain;
    LipLength = "lip-length", LookAgain;
    ParcelIncomplete = "parcel-incomplete", LookAgain;
    PrescriptionMissing = "prescription-missing", LookAgain;
    DisinfectionNotStated = "disinfection-not-stated", LookAgain;
}

impl Check {
    /// What it is in one sentence.
    #[must_use]
    pub fn gist(self) -> Message {
        Message::name("gist", self.code())
    }

    /// What it is in one sentence of a language.
    #[must_use]
    pub fn gist_in(self, language: Language) -> String {
        self.gist().text(language)
    }
}

impl fmt::Display for Check {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code())
    }
}

/// The text is no check's code.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("'{0}' is not the code of a check")]
pub struct UnknownCheck(pub String);

impl FromStr for Check {
    type Err = UnknownCheck;

    fn from_str(text: &str) -> Result<Self, UnknownCheck> {
        Self::ALL
            .into_iter()
            .find(|check| check.code() == text)
            .ok_or_else(|| UnknownCheck(text.to_owned()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_check_has_a_code_of_its_own_and_a_whole_page() {
        const ENGLISH: [&str; 5] = [
            "## What",
            "## Why it matters to the patient",
            "## How it is measured",
            "## Limits of knowledge",
            "## Source",
        ];
        const GERMAN: [&str; 5] = [
            "## Was",
            "## Warum es für den Patienten wichtig ist",
            "## Wie gemessen wird",
            "## Grenzen des Wissens",
            "## Quelle",
        ];
        const SPANISH: [&str; 5] = [
            "## Qué es",
            "## Por qué le importa al paciente",
            "## Cómo se mide",
            "## Límites del conocimiento",
            "## Fuente",
        ];
        let pages = Check::ALL.into_iter().flat_map(|check| {
            Language::ALL
                .into_iter()
                .zip([ENGLISH, GERMAN, SPANISH])
                .map(move |(language, headings)| (check, check.page(language), headings))
        });
        for (check, page, headings) in pages {
            assert_eq!(check.code().parse(), Ok(check));
            assert!(
                check
                    .code()
                    .chars()
                    .all(|c| c.is_ascii_lowercase() || c == '-'),
                "{check} is kebab-case"
            );
            assert!(page.starts_with(&format!("# {check}\n")), "{check}");
            let places: Vec<usize> = headings
                .iter()
                .map(|heading| {
                    let line = format!("\n{heading}\n");
                    let at = page
                        .find(&line)
                        .unwrap_or_else(|| panic!("{check}: {heading}"));
                    let text = page[at + line.len()..].split("\n## ").next().unwrap();
                    assert!(!text.trim().is_empty(), "{check}: {heading} is empty");
                    at
                })
                .collect();
            assert!(places.is_sorted(), "{check}: order of headings");
        }
        let mut codes = Check::ALL.map(Check::code);
        codes.sort_unstable();
        assert!(codes.windows(2).all(|pair| pair[0] != pair[1]));
    }

    #[test]
    fn an_unknown_code_is_named() {
        assert_eq!(
            "shine-through".parse::<Check>().unwrap_err().to_string(),
            "'shine-through' is not the code of a check"
        );
    }
}
