//! Every check: its code, its page, and what it makes of the measured figures.
//!
//! A check lives in a file of its own beside its page. To add one: a variant
//! and a row below, `checks/<name>.rs`, `checks/<code>.md`, and a row in
//! `protocol/default.toml` where it has a limit.

mod along_border;
mod arch_mismatch;
mod border_asymmetry;
mod border_change;
mod border_not_judged;
mod border_overlap;
mod border_radius;
mod cover_not_judged;
mod cover_uncertainty;
mod defects;
mod disinfection_not_stated;
mod file_unclear;
mod flange_height;
mod flange_thickness;
mod fold;
mod hole;
mod interarch_space;
mod interocclusal_distance;
mod jaw_relation_not_judged;
mod landmark_cut_short;
mod landmark_not_found;
mod landmark_obscured;
mod landmarks;
mod lip_length;
mod nodule;
mod not_an_impression;
mod on_case;
mod orientation_unclear;
mod parcel_incomplete;
mod prescription_missing;
mod ridge_angle;
mod scan_ends;
mod scan_quality;
mod scan_resolution;
mod show_through;
mod show_through_extent;
mod thin_cover;
mod tissue_area;
mod tissue_stop;
mod tray_at_border;
mod tray_seating;
mod tray_size;
mod under_extension;
mod unit_unclear;
mod void;
mod wash_open;
mod wash_thickness;
mod wash_uneven;

pub(crate) use file_unclear::same_files;
pub(crate) use jaw_relation_not_judged::not_judged_on_case;
pub(crate) use on_case::CaseSubject;

use crate::finding::{Finding, NotJudged};
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::{NotMeasured, TissueSurface};
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
                match self { $(Self::$variant => include_str!(concat!($code, ".md")),)+ }
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
    /// Which jaw, or which side is which, was not told surely.
    OrientationUnclear = "orientation-unclear", LookAgain;
    /// Tray shows through the material.
    ShowThrough = "show-through", Rework;
    /// Tray shows through over too much of the surface for relief and a wash.
    ShowThroughExtent = "show-through-extent", Retake;
    /// A declared tissue stop does not show: the tray was not fully seated.
    TissueStop = "tissue-stop", Retake;
    /// Material is thin.
    ThinCover = "thin-cover", Rework;
    /// The tray did not stand where its cover would have been even.
    TraySeating = "tray-seating", Retake;
    /// The tray is too small or too large for the mouth.
    TraySize = "tray-size", Retake;
    /// Tray shows at the border itself.
    TrayAtBorder = "tray-at-border", Rework;
    /// A stretch of border is short.
    UnderExtension = "under-extension", Rework;
    /// The border is sharp instead of rounded.
    BorderRadius = "border-radius", Rework;
    /// A flange is low.
    FlangeHeight = "flange-height", Rework;
    /// A flange is thin or thick.
    FlangeThickness = "flange-thickness", Rework;
    /// The tray ends too near to the border or too far from it.
    BorderOverlap = "border-overlap", Rework;
    /// A flange is much lower than the other side's.
    BorderAsymmetry = "border-asymmetry", Rework;
    /// The border is lower than on the first pass.
    BorderChange = "border-change", Rework;
    /// A bare or thin place of the first pass is still so under the wash.
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
    /// A bump stands on the tissue surface.
    Nodule = "nodule", Rework;
    /// A groove where material met without joining.
    Fold = "fold", Rework;
    /// Nothing was scanned at a place of the tissue surface.
    Hole = "hole", LookAgain;
    /// Border or scan end at a landmark or before it.
    LandmarkCutShort = "landmark-cut-short", Rework;
    /// A defect or bare tray lies over a landmark.
    LandmarkObscured = "landmark-obscured", Rework;
    /// A landmark could not be made out.
    LandmarkNotFound = "landmark-not-found", LookAgain;
    /// Cover could not be measured.
    CoverNotJudged = "cover-not-judged", LookAgain;
    /// Cover was measured with too large an uncertainty.
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
    /// Rest vertical dimension less that of occlusion is unusual or impossible.
    InterocclusalDistance = "interocclusal-distance", LookAgain;
    /// The upper lip length is one that hardly anyone has.
    LipLength = "lip-length", LookAgain;
    /// Something that must be in the parcel is not.
    ParcelIncomplete = "parcel-incomplete", LookAgain;
    /// No written prescription goes with the parcel.
    PrescriptionMissing = "prescription-missing", LookAgain;
    /// How the set was disinfected is not stated with it.
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

/// Every finding on one impression, in the order of the checks.
pub(crate) fn on_impression(subject: &Subject<'_>) -> Vec<Finding> {
    const ON_ANY_SCAN: [fn(&Subject<'_>) -> Vec<Finding>; 3] = [
        file_unclear::judge,
        unit_unclear::judge,
        not_an_impression::judge,
    ];
    const ON_AN_IMPRESSION: [fn(&Subject<'_>) -> Vec<Finding>; 32] = [
        arch_mismatch::judge,
        orientation_unclear::judge,
        judge_spots,
        show_through_extent::judge,
        tissue_stop::judge,
        tray_seating::judge,
        tray_size::judge,
        tray_at_border::judge,
        under_extension::judge,
        border_radius::judge,
        flange_height::judge,
        flange_thickness::judge,
        border_overlap::judge,
        border_asymmetry::judge,
        border_change::judge,
        wash_open::judge,
        wash_thickness::judge,
        wash_uneven::judge,
        scan_ends::judge,
        border_not_judged::judge,
        void::judge,
        nodule::judge,
        fold::judge,
        hole::judge,
        landmark_cut_short::judge,
        landmark_obscured::judge,
        landmark_not_found::judge,
        cover_not_judged::judge,
        cover_uncertainty::judge,
        tissue_area::judge,
        scan_resolution::judge,
        scan_quality::judge,
    ];
    let mut findings: Vec<Finding> = ON_ANY_SCAN
        .iter()
        .flat_map(|judge| judge(subject))
        .collect();
    if not_an_impression::kind(subject).is_none() {
        findings.extend(ON_AN_IMPRESSION.iter().flat_map(|judge| judge(subject)));
    }
    findings
}

/// Every finding on the case as a whole.
pub(crate) fn on_whole_case(subject: &CaseSubject<'_>) -> Vec<Finding> {
    [
        interarch_space::judge,
        ridge_angle::judge,
        jaw_relation_not_judged::judge,
        interocclusal_distance::judge,
        lip_length::judge,
        parcel_incomplete::judge,
        prescription_missing::judge,
        disinfection_not_stated::judge,
    ]
    .iter()
    .flat_map(|judge| judge(subject))
    .collect()
}

/// Each spot is judged as show-through and as thin; the more severe finding
/// stands for it, so that one place is one finding.
fn judge_spots(subject: &Subject<'_>) -> Vec<Finding> {
    let spots = &subject.measurement().spots;
    let Ok(cover) = &subject.measurement().cover else {
        return (0..spots.len())
            .filter_map(|number| show_through::by_colour(subject, number))
            .collect();
    };
    (0..spots.len())
        // Tray that shows at a declared stop is as it should be, and the thin
        // ring of a show-through is the same place as that.
        .filter(|&number| spots[number].stop.is_none() && spots[number].around.is_none())
        .filter_map(|number| {
            let spot = &spots[number];
            if spot.is_by_colour() {
                return match spot.min_mm {
                    Some(_) => show_through::beside_cover(subject, number),
                    None => show_through::by_colour(subject, number),
                };
            }
            [
                show_through::judge(subject, cover, number),
                thin_cover::judge(subject, cover, number),
            ]
            .into_iter()
            .flatten()
            .min_by_key(|finding| finding.severity)
        })
        .collect()
}

/// What was not judged on an impression.
pub(crate) fn not_judged(subject: &Subject<'_>) -> Vec<NotJudged> {
    let mut entries = Vec::new();
    let mut enter = |check: &str, why: &dyn fmt::Display| {
        entries.push(NotJudged {
            check: check.to_owned(),
            why: why.to_string(),
        });
    };
    let measurement = subject.measurement();
    if let Err(why) = &measurement.frame
        && !matches!(why, NotMeasured::NotAnImpression(_))
    {
        enter("frame", why);
    }
    if let Err(why) = &measurement.cover {
        match &measurement.colour {
            Some(Ok(_)) => {}
            Some(Err(of_colour)) => enter(
                Check::ShowThrough.code(),
                &format!("{why}; by colour: {of_colour}"),
            ),
            None => enter(Check::ShowThrough.code(), why),
        }
        enter(Check::ThinCover.code(), why);
        if !subject.input.stops.is_empty() {
            enter(Check::TissueStop.code(), why);
        }
    }
    if measurement
        .tray_fit
        .as_ref()
        .is_none_or(|fit| fit.seating.is_none())
    {
        let why = measurement.cover.as_ref().err();
        let why = why.map_or_else(
            || "the scan of the tray was not laid on the impression".to_owned(),
            ToString::to_string,
        );
        for check in [Check::TraySeating, Check::TraySize] {
            enter(check.code(), &why);
        }
    }
    if let Some(Err(why)) = &measurement.wash {
        for check in [Check::WashOpen, Check::WashThickness, Check::WashUneven] {
            enter(check.code(), why);
        }
        if *why != NotMeasured::NoOuterSurfaceForWash {
            enter(Check::BorderChange.code(), why);
        }
    }
    match &measurement.tissue {
        Err(why) => {
            for check in [Check::Void, Check::Nodule, Check::Fold, Check::Hole] {
                enter(check.code(), why);
            }
        }
        Ok(tissue) => {
            if let Some(why) = too_small_to_see(subject, tissue) {
                for check in [Check::Void, Check::Nodule] {
                    enter(check.code(), &why);
                }
            }
        }
    }
    entries.extend(border_not_judged::entries(subject));
    entries
}

/// What voids and nodules the scan is too coarse to show, where these would be
/// judged.
fn too_small_to_see(subject: &Subject<'_>, tissue: &TissueSurface) -> Option<String> {
    let least = tissue.zones.iter().map(|zone| zone.least_across_mm);
    let least_mm = least.max_by(f64::total_cmp)?;
    (least_mm > subject.limit(LimitKey::CriticalVoid).value)
        .then(|| format!("those narrower than {least_mm:.1} mm cannot be seen on this scan"))
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
    fn an_unknown_code_is_told() {
        assert_eq!(
            "shine-through".parse::<Check>().unwrap_err().to_string(),
            "'shine-through' is not the code of a check"
        );
    }
}
