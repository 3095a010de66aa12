//! Every check by name: its code, its page, and what mends what it finds.

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

macro_rules! checks {
    ($($(#[doc = $doc:literal])+ $variant:ident = $code:literal, $remedy:ident;)+) => {
        /// Every check there is.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Check {
            $($(#[doc = $doc])+ $variant,)+
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

            /// What it is in one sentence.
            #[must_use]
            pub fn gist(self) -> &'static str {
                match self { $(Self::$variant => concat!($($doc),+).trim_ascii(),)+ }
            }

            /// Its page, in Markdown: what, why, how, limits of knowledge, source.
            #[must_use]
            pub fn page(self) -> &'static str {
                match self { $(Self::$variant => include_str!(concat!("checks/", $code, ".md")),)+ }
            }
        }
    };
}

checks! {
    /// The file could mean two things, or one file is given as two.
    FileUnclear = "file-unclear", Answer;
    /// The unit of the scan cannot be told from its size.
    UnitUnclear = "unit-unclear", Answer;
    /// The scan shows something else than an impression.
    NotAnImpression = "not-an-impression", Answer;
    /// The jaw found is not the jaw declared.
    ArchMismatch = "arch-mismatch", Answer;
    /// Which jaw it is, or which side is which, is not certain.
    OrientationUnclear = "orientation-unclear", Answer;
    /// Tray shows through the material.
    ShowThrough = "show-through", Rework;
    /// Another colour than the material's shows, and the tray's is not known.
    OtherColour = "other-colour", LookAgain;
    /// Tray shows through over too much of the surface for relief and a wash.
    ShowThroughExtent = "show-through-extent", Retake;
    /// A declared tissue stop does not show: the tray was not fully seated.
    TissueStop = "tissue-stop", Retake;
    /// Material is thin.
    ThinCover = "thin-cover", Rework;
    /// The tray was not where the material would have been of even thickness.
    TraySeating = "tray-seating", Retake;
    /// The tray bent between its scan and the impression.
    TrayBent = "tray-bent", Retake;
    /// The pieces of the tray were not fully joined.
    TrayJoint = "tray-joint", Retake;
    /// The impression changed between the scan in which it was sent and the one in which it arrived.
    ChangedInTransit = "changed-in-transit", LookAgain;
    /// The tray is too small or too large for the mouth.
    TraySize = "tray-size", Retake;
    /// Material lies on the outer faces of the tray.
    OuterExcess = "outer-excess", Rework;
    /// Tray shows at the border itself.
    TrayAtBorder = "tray-at-border", Rework;
    /// A stretch of border is short, or may be.
    UnderExtension = "under-extension", Rework;
    /// The border is sharp instead of rounded.
    BorderRadius = "border-radius", Rework;
    /// A flange is low.
    FlangeHeight = "flange-height", Rework;
    /// A flange is thinner or thicker than its guide.
    FlangeThickness = "flange-thickness", Rework;
    /// The tray ends too near to the border or too far from it.
    BorderOverlap = "border-overlap", Rework;
    /// A flange is much lower than the other side's.
    BorderAsymmetry = "border-asymmetry", Rework;
    /// The border is lower than before the wash.
    BorderChange = "border-change", Rework;
    /// A place that was bare or thin before the wash still is.
    WashOpen = "wash-open", Rework;
    /// The wash is thick.
    WashThickness = "wash-thickness", LookAgain;
    /// The wash is much thicker in some places than in others.
    WashUneven = "wash-uneven", LookAgain;
    /// The scan ends before the border turns over.
    ScanEnds = "scan-ends", LookAgain;
    /// The border could not be measured.
    BorderNotJudged = "border-not-judged", LookAgain;
    /// Air left a pit in the tissue surface.
    Void = "void", Rework;
    /// The scan is too coarse to show a void that would fail.
    VoidUnseen = "void-unseen", LookAgain;
    /// There is a bump on the tissue surface.
    Nodule = "nodule", Rework;
    /// A groove where two fronts of material met without bonding.
    Fold = "fold", Rework;
    /// Nothing was scanned at a place of the tissue surface.
    Hole = "hole", LookAgain;
    /// Border or scan end at a landmark or before it, or may.
    LandmarkCutShort = "landmark-cut-short", Rework;
    /// A defect or bare tray lies over a landmark.
    LandmarkObscured = "landmark-obscured", Rework;
    /// A landmark was not detected.
    LandmarkNotFound = "landmark-not-found", LookAgain;
    /// The material thickness could not be measured.
    CoverNotJudged = "cover-not-judged", LookAgain;
    /// The material thickness was measured with too large an uncertainty.
    CoverUncertainty = "cover-uncertainty", LookAgain;
    /// Too little tissue surface was scanned.
    TissueArea = "tissue-area", LookAgain;
    /// The triangles of the scan are too coarse.
    ScanResolution = "scan-resolution", LookAgain;
    /// A part of the arch was not scanned well enough for what is measured there.
    ScanQuality = "scan-quality", LookAgain;
    /// There is little room between the ridges.
    InterarchSpace = "interarch-space", LookAgain;
    /// The ridges are far from parallel.
    RidgeAngle = "ridge-angle", LookAgain;
    /// The jaw-relation record was given but could not be measured.
    JawRelationNotJudged = "jaw-relation-not-judged", LookAgain;
    /// A jaw is still before its wash.
    WashMissing = "wash-missing", LookAgain;
    /// The impression is older than its material allows.
    ImpressionAge = "impression-age", LookAgain;
    /// Rest vertical dimension less that of occlusion is unusual or impossible.
    InterocclusalDistance = "interocclusal-distance", LookAgain;
    /// The length of the upper lip is outside the plausible range.
    LipLength = "lip-length", LookAgain;
    /// A required item is missing from the parcel.
    ParcelIncomplete = "parcel-incomplete", LookAgain;
    /// The written prescription is missing from the parcel.
    PrescriptionMissing = "prescription-missing", LookAgain;
    /// Disinfection details are missing.
    DisinfectionNotStated = "disinfection-not-stated", LookAgain;
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
        const HEADINGS: [&str; 5] = [
            "## What",
            "## Why it matters to the patient",
            "## How it is measured",
            "## Limits of knowledge",
            "## Source",
        ];
        for check in Check::ALL {
            assert_eq!(check.code().parse(), Ok(check));
            assert!(
                check
                    .code()
                    .chars()
                    .all(|c| c.is_ascii_lowercase() || c == '-'),
                "{check} is kebab-case"
            );
            let page = check.page();
            assert!(page.starts_with(&format!("# {check}\n")), "{check}");
            let places: Vec<usize> = HEADINGS
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
