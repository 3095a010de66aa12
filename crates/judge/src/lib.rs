//! From measured figures to findings and a verdict: the protocol and its
//! limits, the decision rule, the case file.
//!
//! Nothing is measured here. [`judge_case`] takes what measuring gave for each
//! impression of a [`Case`] and the [`Protocol`] to judge by, and gives a
//! [`JudgedCase`].

#![cfg_attr(test, allow(clippy::unwrap_used))]

mod artefact;
mod case;
mod checks;
mod decision;
mod finding;
mod judging;
mod landmarks;
mod located;
mod protocol;
mod scale;
mod stretch;
mod verdict;
mod wash;
pub mod words;

pub use artefact::{
    Artefact, ArtefactError, ArtefactFault, ArtefactLimits, Certified, CertifiedDistance,
    CertifiedSphere, CertifiedStep, Quantity, SizeReading,
};
pub use case::{
    BadColour, BadThickness, Case, CaseError, CaseFault, CaseProblem, Consignment, ImpressionInput,
    JawRelation, Stage, colour_from_hex, read_landmarks, thickness,
};
pub use checks::{Check, Remedy, UnknownCheck};
pub use decision::{Bound, Conformity, decide};
pub use finding::{Figure, Finding, NotJudged, Place, Severity};
pub use judging::{Evidence, JudgedCase, JudgedImpression, ScanFacts, judge_case};
pub use landmarks::{JudgedLandmark, LandmarkStatus};
pub use located::Located;
pub use protocol::{Level, Limit, LimitKey, Problem, Protocol, ProtocolError};
pub use scale::{PLAUSIBLE_MM, UnitReading};
pub use stretch::Stretch;
pub use verdict::Verdict;
pub use wash::PlaceState;
