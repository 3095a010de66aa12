//! How the trays of a shelf suit a mouth, in their JSON.

use crate::result::{Arch, TraysTried};
use check::CheckedFit;
use schemars::JsonSchema;
use serde::Serialize;

/// How the trays of a shelf suit a mouth.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct FitResult {
    /// Name and version of this format: `archproof-fit/1`.
    pub schema: &'static str,
    /// Version of the program.
    pub program: &'static str,
    /// SHA-256 of the scan's file, lower-case hexadecimal.
    pub sha256: String,
    /// The jaw.
    pub arch: Arch,
    /// Whether the scan shows the mouth or a cast, and no impression.
    pub is_positive: bool,
    /// How they suit, and what to do.
    #[serde(flatten)]
    pub tried: TraysTried,
}

impl FitResult {
    /// The result of a shelf.
    #[must_use]
    pub fn of(checked: &CheckedFit) -> Self {
        Self {
            schema: "archproof-fit/1",
            program: env!("CARGO_PKG_VERSION"),
            sha256: checked.scan.sha256.clone(),
            arch: checked.trays.fit.arch.into(),
            is_positive: checked.trays.fit.is_positive,
            tried: TraysTried::of(&checked.trays, checked.scan.unit.unit()),
        }
    }
}
