//! Measured figures judged again by other limits: which checks that can be done for from the
//! figures of a result, and which limits each check heeds.

use crate::case::Case;
use crate::check::Check;
use crate::checks;
use crate::finding::Finding;
use crate::protocol::{LimitKey, Protocol};
use crate::subject::{Evidence, ScanSubject};

/// The checks that judge nothing but figures which a result holds.
pub const JUDGED_AGAIN: [Check; 20] = [
    Check::ScanResolution,
    Check::CoverUncertainty,
    Check::TissueArea,
    Check::WashThickness,
    Check::WashUneven,
    Check::BorderChange,
    Check::Void,
    Check::VoidUnseen,
    Check::Nodule,
    Check::Fold,
    Check::Hole,
    Check::ScanQuality,
    Check::ScanEnds,
    Check::FlangeHeight,
    Check::UnderExtension,
    Check::BorderAsymmetry,
    Check::FlangeThickness,
    Check::BorderRadius,
    Check::BorderOverlap,
    Check::TrayAtBorder,
];

/// The limits that are heeded in measuring already: after a change of one of these values,
/// what hangs on it must be measured again.
pub const MEASURED_BY: [LimitKey; 5] = [
    LimitKey::ShowThrough,
    LimitKey::ThinCover,
    LimitKey::LeastSpotArea,
    LimitKey::StopSize,
    LimitKey::FlangeDepth,
];

/// What came of some checks on one impression.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct JudgedAgain {
    /// What they found.
    pub findings: Vec<Finding>,
    /// Those that were made.
    pub made: Vec<Check>,
}

/// Makes the checks of [`JUDGED_AGAIN`] on the impression of this number.
#[must_use]
pub fn judge_again(
    case: &Case,
    number: usize,
    evidence: &Evidence<'_>,
    protocol: &Protocol,
) -> JudgedAgain {
    let subject = ScanSubject {
        number,
        input: &case.impressions[number],
        evidence,
        protocol,
    };
    let judged = checks::some_on_impression(subject, &JUDGED_AGAIN);
    JudgedAgain {
        findings: judged.findings,
        made: judged.made,
    }
}

/// The limits that a check heeds: with any others it comes out the same.
#[must_use]
pub fn limits_of(check: Check) -> &'static [LimitKey] {
    use LimitKey as K;
    match check {
        Check::FileUnclear
        | Check::UnitUnclear
        | Check::NotAnImpression
        | Check::ArchMismatch
        | Check::CoverNotJudged
        | Check::BorderNotJudged
        | Check::JawRelationNotJudged => &[],
        Check::ImpressionAge => &[K::AlginateAge, K::SiliconeAge],
        Check::LandmarkCutShort | Check::LandmarkObscured | Check::LandmarkNotFound => LANDMARKS,
        Check::OrientationUnclear => &[K::Orientation],
        Check::ScanResolution => &[K::MedianEdge],
        Check::ShowThrough | Check::ThinCover | Check::WashOpen => SPOTS,
        Check::ShowThroughExtent => EXTENT,
        Check::OtherColour => &[K::LeastSpotArea, K::ShowThrough],
        Check::TissueArea => &[K::MaxillaryTissueArea, K::MandibularTissueArea],
        Check::CoverUncertainty => &[K::CoverUncertainty],
        Check::TissueStop => &[K::StopCover, K::StopSize],
        Check::TraySeating => &[K::TrayShift, K::TrayTilt],
        Check::TrayBent => &[K::TrayBend],
        Check::TrayJoint => &[K::TrayJoint],
        Check::ChangedInTransit => &[K::ArchChange, K::LocalChange],
        Check::OuterExcess => &[K::OuterExcess],
        Check::TraySize => &[K::TrayWidth],
        Check::WashThickness => &[K::WashMost],
        Check::WashUneven => &[K::WashSpread],
        Check::BorderChange => &[K::BorderDrop, K::LeastStretch],
        Check::Void => VOIDS,
        Check::VoidUnseen => &[K::CriticalVoidRedo],
        Check::Nodule => &[
            K::Nodule,
            K::CriticalNodule,
            K::CriticalVoid,
            K::BorderMargin,
        ],
        Check::Fold => &[K::Fold, K::CriticalFold, K::BorderMargin],
        Check::Hole => &[K::Hole, K::CriticalHole, K::BorderMargin],
        Check::ScanQuality => &[K::SmallestVoidSeen, K::ScanNoise, K::DoubleLayer],
        Check::ScanEnds => &[K::LeastStretch],
        Check::FlangeHeight => &[K::FlangeHeight, K::UnderExtension, K::LeastStretch],
        Check::UnderExtension => &[K::UnderExtension, K::LeastStretch],
        Check::BorderAsymmetry => &[K::Asymmetry, K::UnderExtension, K::LeastStretch],
        Check::FlangeThickness => THICKNESS,
        Check::BorderRadius => &[K::BorderRadius, K::LeastStretch],
        Check::BorderOverlap => OVERLAP,
        Check::TrayAtBorder => &[K::ShowThrough, K::LeastStretch],
        Check::InterarchSpace => &[K::InterarchLeast],
        Check::RidgeAngle => &[K::RidgeAngle],
        Check::InterocclusalDistance => INTEROCCLUSAL,
        Check::WashMissing => &[K::WashRequired],
        Check::LipLength => LIP,
        Check::ParcelIncomplete => &[K::BothArchesRequired, K::RecordRequired],
        Check::PrescriptionMissing => &[K::PrescriptionRequired],
        Check::DisinfectionNotStated => DISINFECTION,
    }
}

/// Of patches of little cover.
const SPOTS: &[LimitKey] = &[
    LimitKey::ShowThrough,
    LimitKey::ThinCover,
    LimitKey::LeastSpotArea,
    LimitKey::StopSize,
    LimitKey::ReliefRoom,
    LimitKey::TrayWallLeft,
];

/// Of landmarks, which defects, patches and short stretches may spoil.
const LANDMARKS: &[LimitKey] = &[
    LimitKey::LandmarkMargin,
    LimitKey::LandmarkReach,
    LimitKey::LandmarkCovered,
    LimitKey::LandmarkClearance,
    LimitKey::LandmarkSearch,
    LimitKey::CriticalFold,
    LimitKey::CriticalHole,
    LimitKey::CriticalNodule,
    LimitKey::CriticalVoidRedo,
    LimitKey::UnderExtension,
    LimitKey::LeastStretch,
    LimitKey::ShowThrough,
    LimitKey::ThinCover,
    LimitKey::LeastSpotArea,
    LimitKey::StopSize,
];

/// Of how much tray shows in all.
const EXTENT: &[LimitKey] = &[
    LimitKey::ShowThrough,
    LimitKey::ThinCover,
    LimitKey::LeastSpotArea,
    LimitKey::StopSize,
    LimitKey::ShowThroughShare,
];

/// Of voids.
const VOIDS: &[LimitKey] = &[
    LimitKey::Void,
    LimitKey::CriticalVoid,
    LimitKey::CriticalVoidRedo,
    LimitKey::BorderMargin,
];

/// Of flange thickness.
const THICKNESS: &[LimitKey] = &[
    LimitKey::FlangeThin,
    LimitKey::FlangeThick,
    LimitKey::FlangeDepth,
    LimitKey::LeastStretch,
];

/// Of how far material goes past the tray.
const OVERLAP: &[LimitKey] = &[
    LimitKey::OverlapLeast,
    LimitKey::OverlapMost,
    LimitKey::ShowThrough,
    LimitKey::LeastStretch,
];

/// Of the interocclusal distance.
const INTEROCCLUSAL: &[LimitKey] = &[
    LimitKey::InterocclusalLeast,
    LimitKey::InterocclusalMost,
    LimitKey::UsualInterocclusalLeast,
    LimitKey::UsualInterocclusalMost,
    LimitKey::ReadingUncertainty,
];

/// Of the lip line.
const LIP: &[LimitKey] = &[
    LimitKey::LipLeast,
    LimitKey::LipMost,
    LimitKey::PapillaLeast,
    LimitKey::PapillaMost,
    LimitKey::ReadingUncertainty,
];

/// Of disinfection.
const DISINFECTION: &[LimitKey] = &[
    LimitKey::DisinfectionLeast,
    LimitKey::DisinfectionMost,
    LimitKey::DisinfectionRequired,
];
