//! How the cases of a folder are to be checked.

use crate::digest;
use check::CheckOptions;
use judge::Stage;
use measure::Arch;
use report::Language;

/// Name of the file that is locked while a run writes into its folder. A folder
/// that has one is never looked through for cases.
pub(crate) const LOCK: &str = ".archproof-batch.lock";

/// How the cases of a folder are to be checked.
#[derive(Debug, Clone)]
pub struct Settings {
    /// Unit and protocol.
    pub options: CheckOptions,
    /// The jaw of scans that come without a case file.
    pub arch: Option<Arch>,
    /// The stage of such scans.
    pub stage: Stage,
    /// Whether what the star of their names stands for is a pseudonym.
    pub ids_from_names: bool,
    /// Whether the reports of the cases are left out.
    pub no_report: bool,
    /// The language of the cases' sheets.
    pub language: Language,
}

impl Settings {
    /// SHA-256 over all of them: a case checked by other settings is checked anew.
    pub(crate) fn digest(&self) -> String {
        let all = format!(
            "{}\n{:?}\n{:?}\n{:?}\n{}\n{}\n{}",
            self.options.protocol.to_toml(),
            self.options.unit,
            self.arch,
            self.stage,
            self.ids_from_names,
            self.no_report,
            self.language_written()
        );
        digest::of_bytes(all.as_bytes())
    }

    /// The language of what is written; none where no sheet is.
    fn language_written(&self) -> &'static str {
        if self.no_report {
            ""
        } else {
            self.language.code()
        }
    }
}
