//! The files of a result.

use super::findings::Finding;
use super::impression::ImpressionResult;
use super::wash::Wash;
use crate::text::names;
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
    /// One page that goes with the parcel (HTML).
    Sheet,
    /// The same page as PDF.
    SheetPdf,
    /// One page for the clinic: what is asked of it (HTML).
    ReturnNote,
    /// The same page as PDF.
    ReturnNotePdf,
    /// The same as a plain text, to be pasted into a message.
    ReturnText,
}

impl FileKind {
    /// Whether it is a page for people rather than data.
    #[must_use]
    pub fn is_page(self) -> bool {
        match self {
            Self::Report
            | Self::Sheet
            | Self::SheetPdf
            | Self::ReturnNote
            | Self::ReturnNotePdf
            | Self::ReturnText => true,
            Self::CoverMap
            | Self::Surface
            | Self::WashMap
            | Self::BorderTable
            | Self::BorderChart
            | Self::SectionDrawing => false,
        }
    }
}

impl OutputFile {
    /// A page of the whole case.
    fn page(file: &str, kind: FileKind) -> Self {
        Self {
            file: file.to_owned(),
            kind,
            impression: None,
            finding: None,
        }
    }

    /// The files of a return note.
    pub(crate) fn of_return_note() -> [Self; 3] {
        [
            (names::RETURN_FILE, FileKind::ReturnNote),
            (names::RETURN_PDF_FILE, FileKind::ReturnNotePdf),
            (names::RETURN_TEXT_FILE, FileKind::ReturnText),
        ]
        .map(|(file, kind)| Self::page(file, kind))
    }
}

/// The files that the parts of a result name.
pub(super) fn files_of(
    impressions: &[ImpressionResult],
    washes: &[Wash],
    findings: &[Finding],
) -> Vec<OutputFile> {
    let of_impressions = impressions.iter().zip(0u64..).flat_map(|(one, number)| {
        let surface_kind = match one.cover.as_ref().and_then(|cover| cover.map.as_ref()) {
            Some(_) => FileKind::CoverMap,
            None => FileKind::Surface,
        };
        let surface = one.surface.as_ref();
        let border = one.border.as_ref();
        [
            surface.map(|surface| (&surface.file, surface_kind)),
            border.map(|border| (&border.table, FileKind::BorderTable)),
            border.map(|border| (&border.chart, FileKind::BorderChart)),
        ]
        .into_iter()
        .flatten()
        .map(move |(file, kind)| OutputFile {
            file: file.clone(),
            kind,
            impression: Some(number),
            finding: None,
        })
    });
    let of_washes = washes.iter().filter_map(|wash| {
        Some(OutputFile {
            file: wash.map.as_ref()?.file.clone(),
            kind: FileKind::WashMap,
            impression: Some(wash.impression),
            finding: None,
        })
    });
    let of_findings = findings.iter().filter_map(|finding| {
        Some(OutputFile {
            file: finding.drawing.clone()?,
            kind: FileKind::SectionDrawing,
            impression: finding.impression,
            finding: Some(finding.id.clone()),
        })
    });
    let pages = [
        (names::SHEET_FILE, FileKind::Sheet),
        (names::SHEET_PDF_FILE, FileKind::SheetPdf),
        (names::REPORT_FILE, FileKind::Report),
    ];
    let pages = pages.map(|(file, kind)| OutputFile::page(file, kind));
    of_impressions
        .chain(of_washes)
        .chain(of_findings)
        .chain(pages)
        .collect()
}
