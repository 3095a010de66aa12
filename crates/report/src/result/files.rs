//! The files of a result.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A file that belongs to a result.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct OutputFile {
    /// Its name; it lies beside `result.json`.
    pub file: String,
    /// What it is.
    pub kind: FileKind,
    /// Number, from 0, of the impression that it is of.
    pub impression: Option<u64>,
    /// Name of the finding that it is of.
    pub finding: Option<String>,
}

/// What a file of a result is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum FileKind {
    /// The impression coloured by its cover.
    CoverMap,
    /// The impression with figures at its vertices, where cover was not measured.
    Surface,
    /// The wash coloured by its thickness over the first pass.
    WashMap,
    /// A row for each station of the border.
    BorderTable,
    /// The border unrolled, with its figures and limits.
    BorderChart,
    /// The section at the worst place of a finding, with its dimensions.
    SectionDrawing,
    /// Everything in one file, to be read, printed and handed over.
    Report,
}
