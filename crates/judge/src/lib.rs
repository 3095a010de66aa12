//! From measured figures to findings and a verdict: the protocol and its
//! limits, the decision rule, the case file.
//!
//! Nothing is measured here. [`judge_case`] takes what measuring gave for each
//! impression of a [`Case`] and the [`Protocol`] to judge by, and gives a
//! [`JudgedCase`].

#![cfg_attr(test, allow(clippy::unwrap_used))]
#![warn(unreachable_pub)]

mod artefact;
mod case;
mod check;
mod checks;
mod decision;
mod finding;
mod judging;
mod landmarks;
mod located;
mod not_judged;
mod protocol;
mod scale;
mod severity;
mod stretch;
mod subject;
mod verdict;
mod wash;
pub mod words;

pub use artefact::{
    Artefact, ArtefactError, ArtefactFault, ArtefactLimits, ArtefactProblem, Certified,
    CertifiedDistance, CertifiedSphere, CertifiedStep, Quantity, SizeReading,
};
pub use case::{
    BadColour, BadThickness, Case, CaseError, CaseFault, CaseProblem, Consignment, ImpressionInput,
    JawRelation, Stage, colour_from_hex, read_landmarks, thickness,
};
pub use check::{Check, Remedy, UnknownCheck};
pub use decision::{Bound, Conformity, decide};
pub use finding::{Figure, Finding, Place};
pub use judging::{JudgedCase, JudgedImpression, judge_case};
pub use landmarks::{JudgedLandmark, LandmarkStatus};
pub use located::{Located, TomlFault, TomlFileError};
pub use not_judged::{NotJudged, Part, Unjudged};
pub use protocol::{Limit, LimitKey, Protocol, ProtocolError, ProtocolFault, ProtocolProblem};
pub use scale::{PLAUSIBLE_MM, UnitReading};
pub use severity::{Level, Severity};
pub use stretch::Stretch;
pub use subject::{Evidence, ScanFacts};
pub use verdict::Verdict;
pub use wash::PlaceState;
