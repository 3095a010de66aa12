//! A found case made ready: what is to be checked, from which files.

use crate::digest;
use crate::find::{Found, Source};
use crate::settings::Settings;
use judge::{Case, CaseError, ImpressionInput, system_says};
use messages::{Message, message};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

/// A case ready to be checked.
pub struct Given {
    /// Name of its result folder.
    pub folder: String,
    /// What is to be checked, or why it cannot be.
    pub case: Result<Case, Message>,
    /// Every file of it, the case file first.
    pub files: Vec<PathBuf>,
}

/// Size and time of change of a file; `None` where it is not there.
pub type Look = Option<(u64, SystemTime)>;

impl Given {
    pub fn of(found: &Found, settings: &Settings) -> Self {
        let short = &found.digest[..16];
        let (case, first) = match &found.source {
            Source::CaseFile(file) => (read(file), Some(file)),
            Source::Closed(why) => (
                Err(message!(
                    "unread-folder",
                    reason = system_says(&io::Error::from(*why))
                )),
                None,
            ),
            Source::Scan { scan, tray, star } => {
                let id = if settings.ids_from_names {
                    star.clone()
                } else {
                    format!("scan-{short}")
                };
                let input = ImpressionInput {
                    tray: tray.clone(),
                    ..ImpressionInput::bare(settings.arch, settings.stage, scan.clone())
                };
                (Ok(Case::of_one(id, input)), None)
            }
        };
        let id = case.as_ref().map_or("unread", |case| case.id.as_str());
        let files = first.map(PathBuf::as_path).into_iter();
        let files = files.chain(case.iter().flat_map(named)).map(Path::to_owned);
        Self {
            folder: format!("{:.40}-{short}", report::plain(id)),
            files: files.collect(),
            case,
        }
    }

    /// Size and time of change of each file.
    pub fn looks(&self) -> Vec<Look> {
        let look = |path: &PathBuf| {
            let about = fs::metadata(path).ok()?;
            Some((about.len(), about.modified().ok()?))
        };
        self.files.iter().map(look).collect()
    }

    /// SHA-256 over the contents of all files, in the order in which they are
    /// spoken of. What cannot be read counts as such.
    pub fn inputs_sha256(&self) -> String {
        let each = self.files.iter().map(|file| {
            digest::of_file(file).unwrap_or_else(|error| format!("not read: {:?}", error.kind()))
        });
        digest::of_bytes(each.collect::<Vec<_>>().join("\n").as_bytes())
    }
}

/// The files that a case names.
fn named(case: &Case) -> impl Iterator<Item = &Path> {
    let marks = case
        .impressions
        .iter()
        .filter_map(|i| i.marks_file.as_deref());
    let scanner = case.scanner.as_ref().and_then(|s| s.file.as_deref());
    case.scans().into_iter().chain(marks).chain(scanner)
}

/// The reason leaves out the file's name, which may be a patient's.
fn read(file: &Path) -> Result<Case, Message> {
    Case::from_file(file).map_err(|error| {
        let (CaseError::Unreadable { path, .. } | CaseError::Faulty { path, .. }) = &error;
        let is_case = path == file;
        let problem = match &error {
            CaseError::Unreadable { source, .. } => {
                message!("unread-file", reason = system_says(source))
            }
            CaseError::Faulty { problem, .. } => problem.message(),
        };
        if is_case {
            message!("unread-case-file", problem = problem)
        } else {
            message!("unread-landmarks-file", problem = problem)
        }
    })
}
