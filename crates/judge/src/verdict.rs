//! From findings to a verdict.

use crate::cause::Cause;
use crate::check::Remedy;
use crate::finding::Finding;
use crate::severity::Severity;

/// What is to become of an impression or a case; most pressing first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// The impression must be taken again.
    Retake,
    /// Relieve or add, then a wash.
    Rework,
    /// Something is missing, or too close to call: see [`crate::Cause`].
    Undecided,
    /// It can be worked from, subject to what was not judged.
    Accept,
}

impl Verdict {
    /// The word for it in results.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Accept => "accept",
            Self::Rework => "rework",
            Self::Retake => "retake",
            Self::Undecided => "undecided",
        }
    }

    /// The verdict that findings on one impression lead to.
    ///
    /// A question (what is this scan at all?) leaves everything else in doubt. Then what
    /// clearly fails decides, whatever its remedy, then what could not be decided.
    #[must_use]
    pub fn from_findings<'a>(findings: impl Iterator<Item = &'a Finding> + Clone) -> Self {
        let any = |cause| findings.clone().any(|f| f.cause() == cause);
        let mut faults = findings.clone().filter(|f| f.cause() == Cause::Fault);
        if any(Cause::Question) {
            Self::Undecided
        } else if faults.any(|f| f.check.remedy() == Remedy::Retake) {
            Self::Retake
        } else if any(Cause::Fault) {
            Self::Rework
        } else if findings.clone().any(|f| f.severity != Severity::Note) {
            Self::Undecided
        } else {
            Self::Accept
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::check::Check;
    use messages::Message;
    use rstest::rstest;

    fn finding((severity, check): (Severity, Check)) -> Finding {
        Finding {
            severity,
            check,
            impression: Some(0),
            arch: None,
            place: None,
            figure: None,
            spot: None,
            stretch: None,
            defect: None,
            landmark: None,
            is_held_back: false,
            instruction: Message::default(),
        }
    }

    #[rstest]
    #[case(&[], Verdict::Accept)]
    #[case(&[(Severity::Note, Check::ThinCover)], Verdict::Accept)]
    #[case(&[(Severity::Borderline, Check::ShowThrough)], Verdict::Undecided)]
    #[case(&[(Severity::Borderline, Check::ShowThrough), (Severity::Fail, Check::ShowThrough)], Verdict::Rework)]
    #[case(&[(Severity::Fail, Check::ShowThrough), (Severity::Fail, Check::ShowThroughExtent)], Verdict::Retake)]
    #[case(&[(Severity::Fail, Check::TissueStop)], Verdict::Retake)]
    #[case(&[(Severity::Borderline, Check::ArchMismatch), (Severity::Fail, Check::ShowThrough)], Verdict::Undecided)]
    #[case(&[(Severity::Fail, Check::InterocclusalDistance)], Verdict::Rework)]
    #[case(&[(Severity::Fail, Check::PrescriptionMissing), (Severity::Borderline, Check::ShowThrough)], Verdict::Rework)]
    fn findings_lead_to_a_verdict(
        #[case] findings: &[(Severity, Check)],
        #[case] expected: Verdict,
    ) {
        let findings: Vec<Finding> = findings.iter().copied().map(finding).collect();
        assert_eq!(Verdict::from_findings(findings.iter()), expected);
    }
}
