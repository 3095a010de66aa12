//! What a scan is in a case, and how surely.

use judge::Stage;
use measure::Arch;
use messages::{Message, message};
use std::fmt;

/// What a scan is in a case.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// An impression; the stage may be open.
    Impression {
        /// Of which jaw.
        arch: Arch,
        /// How far it has come.
        stage: Option<Stage>,
    },
    /// The empty tray of the impressions of a jaw.
    Tray {
        /// Of which jaw.
        arch: Arch,
    },
    /// The same tray, scanned again after it was relieved.
    RelievedTray {
        /// Of which jaw.
        arch: Arch,
    },
    /// The jaw-relation record.
    Record,
    /// Not part of the case.
    LeftOut,
}

impl Role {
    /// Whether several scans may show it: an impression that was cut apart, a tray in pieces.
    pub(super) fn may_be_in_parts(self) -> bool {
        matches!(
            self,
            Self::Impression { stage: Some(_), .. } | Self::Tray { .. }
        )
    }

    /// Everything that a scan can be stated to be.
    #[must_use]
    pub fn all() -> Vec<Self> {
        let of_jaw = |arch| {
            let stages = [Stage::FirstPass, Stage::Wash, Stage::Single];
            let impressions = stages.map(|stage| Self::Impression {
                arch,
                stage: Some(stage),
            });
            let trays = [Self::Tray { arch }, Self::RelievedTray { arch }];
            impressions.into_iter().chain(trays)
        };
        of_jaw(Arch::Maxillary)
            .chain(of_jaw(Arch::Mandibular))
            .chain([Self::Record, Self::LeftOut])
            .collect()
    }
}

impl Role {
    /// In words, as a message of the catalogue.
    #[must_use]
    pub fn message(self) -> Message {
        let jaw = |arch| match arch {
            Arch::Maxillary => "maxillary",
            Arch::Mandibular => "mandibular",
        };
        match self {
            Self::Impression { arch, stage } => match stage {
                Some(Stage::FirstPass) => message!("impression-before-wash", jaw = jaw(arch)),
                Some(Stage::Wash) => message!("impression-wash", jaw = jaw(arch)),
                Some(Stage::Single) => message!("role-one-step", jaw = jaw(arch)),
                None => message!("impression-one-step", jaw = jaw(arch)),
            },
            Self::Tray { arch } => message!("role-tray", jaw = jaw(arch)),
            Self::RelievedTray { arch } => message!("role-relieved-tray", jaw = jaw(arch)),
            Self::Record => message!("role-record"),
            Self::LeftOut => message!("role-left-out"),
        }
    }
}

/// In English.
impl fmt::Display for Role {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(f)
    }
}

/// How surely a scan is what it is taken for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Surety {
    /// The surfaces show it clearly.
    Clear,
    /// The surfaces show it, though not clearly.
    Likely,
    /// A person stated it.
    Stated,
    /// The surfaces do not show it.
    Open,
}

impl Surety {
    /// In words, as a message of the catalogue.
    #[must_use]
    pub fn message(self) -> Message {
        match self {
            Self::Clear => message!("surety-clear"),
            Self::Likely => message!("surety-likely"),
            Self::Stated => message!("surety-stated"),
            Self::Open => message!("surety-open"),
        }
    }
}

/// In English.
impl fmt::Display for Surety {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(f)
    }
}
