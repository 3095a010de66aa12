//! What a scan is in a case, and how surely.

use judge::Stage;
use measure::Arch;
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

impl fmt::Display for Role {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Impression { arch, stage } => {
                let jaw = judge::words::arch(*arch);
                f.write_str(jaw)?;
                f.write_str(match stage {
                    Some(Stage::FirstPass) => " impression before the wash",
                    Some(Stage::Wash) => " wash",
                    Some(Stage::Single) => " impression, one-step",
                    None => " impression",
                })
            }
            Self::Tray { arch } => write!(f, "{} tray", judge::words::arch(*arch)),
            Self::RelievedTray { arch } => {
                write!(f, "{} tray after relief", judge::words::arch(*arch))
            }
            Self::Record => f.write_str("jaw-relation record"),
            Self::LeftOut => f.write_str("left out"),
        }
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

impl fmt::Display for Surety {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Clear => "clear",
            Self::Likely => "likely",
            Self::Stated => "stated",
            Self::Open => "open",
        })
    }
}
