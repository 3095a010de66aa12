//! Says what came of a case: the result file and its schema, the coloured cover
//! map, drawings, the HTML report, the terminal summary. Nothing is decided or measured here.
//!
//! [`check::check_case`] gives a checked case. [`result::CaseResult::of`] puts it into
//! the words of the contract, from which [`summary`] and [`write_all`] speak.
//!
//! ```no_run
//! use check::CaseSource;
//! use report::result::CaseResult;
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! let source = CaseSource::of("case.toml".as_ref());
//! let case = source.case(|statement| "what is said of the scan")?;
//! let checked = source.check(case, &|step| { /* shown as it goes on */ })?;
//!
//! let result = CaseResult::of(&checked);
//! let language = report::Language::of_system();
//! let text = report::summary(&result, language);
//! let files = report::write_all(&checked, &result, "results".as_ref(), language)?;
//! # Ok(())
//! # }
//! ```

#![cfg_attr(test, allow(clippy::unwrap_used))]

pub mod again;
#[cfg(test)]
mod conversation;
mod drawing;
mod files;
pub mod folder;
mod page;
mod picture;
pub mod result;
mod scanning;
mod sheet;
#[cfg(test)]
mod snapshots;
mod studies;
#[cfg(test)]
mod testing;
mod text;

pub use files::MapError;
pub use files::WriteError;
pub use files::figured_mesh::{FiguredMesh, ReadSurfaceError, read_surface};
pub use files::head::{ImpressionHead, ResultHead, ScanHead, read_head};
pub use files::json::{json_line, json_text, schema_of, schema_text};
pub use files::outputs::{
    RESULT_FILE, ReadResultError, default_folder, folder_without_case, read_result, result_json,
    write_all, write_all_watched,
};
pub use files::repeats::write_repeats;
pub use messages::Language;
pub use page::{control_page, fit_page};
pub use result::Conclusion;
pub use scanning::scanning_page;
pub use sheet::add_return_note;
pub use studies::agreement::AgreementResult;
pub use studies::artefact::{ArtefactResult, Outcome};
pub use studies::comparable::{comparable_figures, kept_figures};
pub use studies::control::{ControlError, ControlResult, InControl, Standard, check_standard};
pub use studies::gauge::GaugeResult;
pub use studies::inspection::{InspectedScan, Inspection};
pub use studies::repeat::{KnownRepeatability, NotKnown, RepeatResult};
pub use studies::shelf_fit::FitResult;
pub use text::again::{AgainTally, again_head, again_line};
pub use text::agreement::agreement_text;
pub use text::artefact::artefact_text;
pub use text::control::control_text;
pub use text::figures;
pub use text::gauge::gauge_text;
pub use text::inspection::{inspection_head, inspection_row};
pub use text::names::{REPORT_FILE, RETURN_FILE, RETURN_TEXT_FILE, SHEET_FILE, plain};
pub use text::repeat::repeat_text;
pub use text::shelf_fit::fit_text;
pub use text::summary::summary;

/// The words for what a result holds, the same in summary, report and window.
pub mod words {
    pub use crate::text::headline::what_to_do;
    pub use crate::text::measured::finding_figure;
    pub use crate::text::words::{
        cause_word, check_names, exit_status, finding_place, impression_name, landmark_word,
        side_word, verdict_word, zone_name,
    };
}
