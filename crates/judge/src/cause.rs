//! Why a finding bears on the verdict: what a person has to do about it next.

use crate::check::{Check, Remedy};
use crate::finding::Finding;
use crate::severity::Severity;

/// Why a finding bears on the verdict, or that it does not; what comes first is done first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Cause {
    /// A question that stands before everything else on its impression: answer it.
    Question,
    /// A limit is clearly missed: correct it.
    Fault,
    /// Something is missing that a verdict needs: send it, or scan it again.
    Missing,
    /// Too close to its limit to call, or for a person to see: look there.
    Look,
    /// The parcel is not complete; this says nothing about the impressions.
    Parcel,
    /// Worth knowing; changes no verdict.
    Note,
    /// Held back until a question on its impression is answered.
    HeldBack,
}

impl Cause {
    /// The word for it in results.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Question => "question",
            Self::Fault => "fault",
            Self::Missing => "missing",
            Self::Look => "look",
            Self::Parcel => "parcel",
            Self::Note => "note",
            Self::HeldBack => "held_back",
        }
    }
}

impl Finding {
    /// Why it bears on the verdict.
    #[must_use]
    pub fn cause(&self) -> Cause {
        match self.severity {
            _ if self.is_held_back => Cause::HeldBack,
            Severity::Note => Cause::Note,
            // Whatever its level: a question is answered, and fails nothing.
            _ if self.check.remedy() == Remedy::Answer => Cause::Question,
            Severity::Fail => Cause::Fault,
            Severity::Borderline => undecided(self),
        }
    }
}

/// What keeps a finding undecided that is no question.
fn undecided(finding: &Finding) -> Cause {
    use Check::{
        BorderNotJudged, CoverNotJudged, CoverUncertainty, DisinfectionNotStated, Hole,
        JawRelationNotJudged, ParcelIncomplete, PrescriptionMissing, ScanEnds, ScanQuality,
        ScanResolution, TissueArea, TissueStop, VoidUnseen, WashMissing,
    };
    match finding.check {
        ParcelIncomplete | PrescriptionMissing | DisinfectionNotStated => Cause::Parcel,
        CoverNotJudged | CoverUncertainty | BorderNotJudged | ScanEnds | VoidUnseen
        | ScanResolution | ScanQuality | TissueArea | Hole | JawRelationNotJudged | WashMissing => {
            Cause::Missing
        }
        // A stop where nothing was scanned has no figure.
        TissueStop if finding.figure.is_none() => Cause::Missing,
        _ => Cause::Look,
    }
}
