//! What an impression is made of, and for how long it has been set.

use serde::{Deserialize, Serialize};

/// Impression materials.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[allow(missing_docs, reason = "the names say it")]
pub enum Material {
    AdditionSilicone,
    CondensationSilicone,
    Polyether,
    Polysulfide,
    ZincOxideEugenol,
    Alginate,
    Other,
}

impl Material {
    /// The words for it.
    #[must_use]
    pub fn in_words(self) -> &'static str {
        match self {
            Self::AdditionSilicone => "addition silicone",
            Self::CondensationSilicone => "condensation silicone",
            Self::Polyether => "polyether",
            Self::Polysulfide => "polysulfide",
            Self::ZincOxideEugenol => "zinc oxide eugenol",
            Self::Alginate => "alginate",
            Self::Other => "another material",
        }
    }
}
