//! From measured figures to findings and a verdict: the protocol and its
//! limits, the decision rule, the case file.
//!
//! Nothing is measured here. [`judge_case`] takes what measuring gave for each
//! impression of a [`Case`] and the [`Protocol`] to judge by, and gives a
//! [`JudgedCase`].
//!
//! A figure conforms to its limit only where it meets it by more than its
//! uncertainty:
//!
//! ```
//! use judge::{Bound, Conformity, LimitKey, Protocol, decide};
//!
//! let protocol = Protocol::from_text("[limits.thin_cover_mm]\nvalue = 1.2")?;
//! let least = Bound::AtLeast(protocol.value(LimitKey::ThinCover));
//! let uncertainty_mm = 0.2;
//! assert_eq!(decide(1.5, uncertainty_mm, least), Conformity::Conforming);
//! assert_eq!(decide(1.3, uncertainty_mm, least), Conformity::Borderline);
//! assert_eq!(decide(0.9, uncertainty_mm, least), Conformity::NotConforming);
//!
//! let mistyped = Protocol::from_text("[limits.thin_cover_mm]\nvalue = -1.2");
//! assert!(mistyped.is_err_and(|problem| problem.line == Some(2)));
//! # Ok::<(), judge::ProtocolProblem>(())
//! ```

#![cfg_attr(test, allow(clippy::unwrap_used))]
#![warn(unreachable_pub)]

pub mod again;
mod bands;
mod case;
mod cause;
mod check;
mod checks;
mod decision;
pub mod explained;
mod finding;
mod judging;
mod landmarks;
pub mod located;
mod nearest;
mod not_judged;
mod protocol;
mod relief;
mod scale;
mod scanner;
mod severity;
pub mod shelf_fit;
mod stretch;
mod subject;
mod system;
mod toml_problem;
mod verdict;
mod wash;
pub mod words;

pub use case::{
    BadColour, BadLabel, BadThickness, BadTime, Case, CaseError, CaseFault, CaseProblem,
    CentricRelationBy, Consignment, ImpressionInput, JawRelation, Labels, MarkedLandmarks,
    Material, Stage, VerticalDimensionBy, colour_from_hex, read_landmarks, thickness,
};
pub use cause::Cause;
pub use check::{Check, Remedy, UnknownCheck};
pub use checks::station_figure_of;
pub use decision::{Bound, Conformity, decide};
pub use finding::{Figure, Finding, Place};
pub use judging::{JudgedCase, JudgedImpression, judge_case};
pub use landmarks::{JudgedLandmark, LandmarkStatus};
pub use located::{Located, TomlFault, TomlFileError};
pub use not_judged::{NotJudged, Part, Unjudged};
pub use protocol::{
    Limit, LimitKey, Protocol, ProtocolError, ProtocolFault, ProtocolProblem, scanner_source,
};
pub use relief::Relief;
pub use scale::UnitReading;
pub use scanner::{Scanner, ScannerError, ScannerFault, ScannerProblem};
pub use severity::{Level, Severity};
pub use stretch::Stretch;
pub use subject::{Evidence, ScanFacts};
pub use system::system_says;
pub use toml_problem::TomlProblem;
pub use verdict::Verdict;
pub use wash::PlaceState;
