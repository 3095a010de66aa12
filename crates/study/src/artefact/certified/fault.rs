//! What can be wrong in the description of an artefact.

use judge::TomlProblem;
use judge::located::TomlFault;
use messages::{Message, message};

/// What can be wrong in the description of an artefact.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum ArtefactFault {
    Toml(TomlProblem),
    NoId,
    NoSphere,
    SphereName,
    Centre,
    Size,
    Uncertainty,
    Limit,
    Between,
    CentresElsewhere { certified_mm: f64, nominal_mm: f64 },
    StepName,
    StepPlace,
    StepReach,
    FacesElsewhere { certified_mm: f64, nominal_mm: f64 },
    StepUnplaced,
}

impl TomlFault for ArtefactFault {
    fn wanted() -> Message {
        message!("wanted-artefact")
    }

    fn message(&self) -> Message {
        match *self {
            Self::Toml(ref problem) => problem.message(),
            Self::NoId => message!("artefact-no-id"),
            Self::NoSphere => message!("artefact-no-sphere"),
            Self::SphereName => message!("artefact-sphere-name"),
            Self::Centre => message!("artefact-centre"),
            Self::Size => message!("artefact-size"),
            Self::Uncertainty => message!("artefact-uncertainty"),
            Self::Limit => message!("artefact-limit"),
            Self::Between => message!("artefact-between"),
            Self::CentresElsewhere {
                certified_mm,
                nominal_mm,
            } => message!(
                "artefact-centres-elsewhere",
                certified = certified_mm.to_string(),
                nominal = format!("{nominal_mm:.3}")
            ),
            Self::StepName => message!("artefact-step-name"),
            Self::StepPlace => message!("artefact-step-place"),
            Self::StepReach => message!("artefact-step-reach"),
            Self::FacesElsewhere {
                certified_mm,
                nominal_mm,
            } => message!(
                "artefact-faces-elsewhere",
                certified = certified_mm.to_string(),
                nominal = format!("{nominal_mm:.3}")
            ),
            Self::StepUnplaced => message!("artefact-step-unplaced"),
        }
    }
}
