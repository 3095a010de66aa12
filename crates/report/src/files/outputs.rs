//! Writes everything that comes of a case into one folder, all or nothing.

use super::json::json_text;
use super::output::{Output, WriteError, write_together};
use super::{border_table, cover_map, wash_map};
use crate::result::{CaseResult, Contract, FileKind, OutputFile};
use crate::text::names::plain;
use crate::{drawing, page, picture, sheet};
use check::CheckedCase;
use chrono::{DateTime, Utc};
use judge::system_says;
use mesh::read::shown_path;
use messages::Language;
use messages::{Message, message};
use rayon::prelude::*;
use serde::Deserialize;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::time::SystemTime;
use thiserror::Error;

/// Name of the result file.
pub const RESULT_FILE: &str = "result.json";

/// Why a result could not be read back.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum ReadResultError {
    /// The system refused.
    Io {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// It is no result, or one of another version.
    NotAResult {
        /// The file.
        path: PathBuf,
        /// What does not fit, and where.
        reason: serde_json::Error,
    },
}

impl ReadResultError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Io { path, source } => message!(
                "result-unreadable",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::NotAResult { path, reason } => message!(
                "result-of-another-version",
                path = shown_path(path),
                reason = reason.to_string()
            ),
        }
    }
}

/// Reads the `result.json` of a folder that [`write_all`] wrote.
///
/// # Errors
/// When it cannot be read or is not by the contract.
pub fn read_result(folder: &Path) -> Result<CaseResult, ReadResultError> {
    let path = folder.join(RESULT_FILE);
    let bytes = mesh::read::bounded(&path, mesh::read::MAX_TABLE_BYTES).map_err(|source| {
        ReadResultError::Io {
            path: path.clone(),
            source,
        }
    })?;
    serde_json::from_slice(&bytes).map_err(|reason| ReadResultError::NotAResult { path, reason })
}

/// Where results go if nobody says: `archproof-CASE` in the current folder, of
/// letters that any system takes.
#[must_use]
pub fn default_folder(case: &str) -> PathBuf {
    PathBuf::from(format!("archproof-{}", plain(case)))
}

/// Where results go of a scan that nobody gave a case code: a folder of its own, by the time
/// (UTC) and the scan's SHA-256, so that two patients never share one.
#[must_use]
pub fn folder_without_case(at: SystemTime, sha256: &str) -> PathBuf {
    let time = DateTime::<Utc>::from(at).format("%Y%m%dT%H%M%SZ");
    let sum: String = sha256.chars().take(6).collect();
    PathBuf::from(format!("archproof-{time}-{}", plain(&sum)))
}

/// The text of `result.json`.
#[must_use]
pub fn result_json(result: &CaseResult) -> String {
    json_text(result)
}

/// Writes the files that `result` names and `result.json` into `folder`, which
/// is made if it is not there. Gives the names of the files. A file that was
/// taken off `result.files` is not made. Files that a result already there
/// names, and this one does not, are removed; nothing else is.
/// Pages and drawings are in `language`; tables and `result.json` hold keys besides English.
///
/// Everything is first written aside within the folder and then moved into
/// place, `result.json` last: whatever fails or is broken off, an earlier
/// result stays whole.
///
/// # Errors
/// When the folder or a file in it cannot be written.
pub fn write_all(
    checked: &CheckedCase,
    result: &CaseResult,
    folder: &Path,
    language: Language,
) -> Result<Vec<String>, WriteError> {
    write_all_watched(checked, result, folder, language, &|| {})
}

/// As [`write_all`]; `look` is called before each file is made. It may unwind, as
/// when nobody waits for the results any more: nothing was written then.
///
/// # Errors
/// As for [`write_all`].
pub fn write_all_watched(
    checked: &CheckedCase,
    result: &CaseResult,
    folder: &Path,
    language: Language,
    look: &(dyn Fn() + Sync),
) -> Result<Vec<String>, WriteError> {
    let outputs = outputs(checked, result, language, look)?;
    look();
    let is_new = !folder.exists();
    let earlier = earlier_files(folder);
    let written = write_together(&outputs, folder);
    if written.is_err() && is_new {
        // Only an empty folder goes; one that stays does no harm.
        let _ = fs::remove_dir(folder);
    }
    written?;
    remove_stale(&earlier, &outputs, folder);
    Ok(outputs.into_iter().map(|(name, _)| name).collect())
}

/// The files that a result already in a folder names.
fn earlier_files(folder: &Path) -> Vec<String> {
    #[derive(Deserialize)]
    struct Earlier {
        #[serde(rename = "schema")]
        _schema: Contract,
        files: Vec<OutputFile>,
    }
    let path = folder.join(RESULT_FILE);
    let text = mesh::read::bounded(&path, mesh::read::MAX_TABLE_BYTES).unwrap_or_default();
    let earlier: Option<Earlier> = serde_json::from_slice(&text).ok();
    let files = earlier.into_iter().flat_map(|earlier| earlier.files);
    files.map(|file| file.file).collect()
}

/// Removes files of an earlier result that this one does not write. What is left behind by
/// a failure here is old, and named by no result.
fn remove_stale(earlier: &[String], outputs: &[Output], folder: &Path) {
    let is_plain = |name: &str| Path::new(name).file_name() == Some(name.as_ref());
    for name in earlier.iter().filter(|name| is_plain(name)) {
        if outputs.iter().all(|(written, _)| written != name) {
            let _ = fs::remove_file(folder.join(name));
        }
    }
}

/// Every file of a result with its bytes, `result.json` last.
pub(crate) fn outputs(
    checked: &CheckedCase,
    result: &CaseResult,
    language: Language,
    look: &(dyn Fn() + Sync),
) -> Result<Vec<Output>, WriteError> {
    let files: Vec<Output> = result
        .files
        .par_iter()
        .filter_map(|file| {
            look();
            let bytes = encoded(checked, result, file, language).transpose()?;
            Some(bytes.map(|bytes| (file.file.clone(), bytes)))
        })
        .collect::<Result<_, WriteError>>()?;
    let pages = pages(checked, result, &files, language, look)?;
    let json = (RESULT_FILE.to_owned(), result_json(result).into_bytes());
    Ok(files.into_iter().chain(pages).chain([json]).collect())
}

/// The pages for people. They share their pictures, which are drawn once.
fn pages(
    checked: &CheckedCase,
    result: &CaseResult,
    files: &[Output],
    language: Language,
    look: &(dyn Fn() + Sync),
) -> Result<Vec<Output>, WriteError> {
    let wanted: Vec<&OutputFile> = (result.files.iter())
        .filter(|file| file.kind.is_page())
        .collect();
    if wanted.is_empty() {
        return Ok(Vec::new());
    }
    look();
    let pictures = picture::pictures_watched(checked, look).map_err(WriteError::Picture)?;
    look();
    let sheet = sheet::sheet(result, &pictures, language);
    let note = || sheet::return_note(result, &pictures, language);
    (wanted.par_iter())
        .map(|file| {
            look();
            let bytes = match file.kind {
                FileKind::Sheet => sheet::page(&sheet).into_bytes(),
                FileKind::SheetPdf => sheet::pdf(&sheet).map_err(WriteError::Picture)?,
                FileKind::ReturnNote => sheet::page(&note()).into_bytes(),
                FileKind::ReturnNotePdf => sheet::pdf(&note()).map_err(WriteError::Picture)?,
                FileKind::ReturnText => sheet::return_text(result, language).into_bytes(),
                _ => page::report(result, &pictures, files, language).into_bytes(),
            };
            Ok((file.file.clone(), bytes))
        })
        .collect()
}

/// The bytes of one of the files that a result names.
fn encoded(
    checked: &CheckedCase,
    result: &CaseResult,
    file: &OutputFile,
    language: Language,
) -> Result<Option<Vec<u8>>, WriteError> {
    let number = file.impression.and_then(|n| usize::try_from(n).ok());
    let Some(number) = number.filter(|&n| n < result.impressions.len()) else {
        return Ok(None);
    };
    let border = result.impressions[number].border.as_ref();
    Ok(match file.kind {
        FileKind::CoverMap | FileKind::Surface => cover_map::encoded(checked, number)?,
        FileKind::WashMap => wash_map::encoded(checked, number)?,
        FileKind::BorderTable => border
            .map(border_table::encoded)
            .transpose()
            .map_err(WriteError::Table)?,
        FileKind::BorderChart => drawing::border_chart(checked, number, language),
        FileKind::SectionDrawing => {
            let finding = result
                .findings
                .iter()
                .position(|f| Some(&f.id) == file.finding.as_ref());
            finding.and_then(|finding| drawing::finding_section(checked, finding, language))
        }
        // It shows the other files, and is made of them.
        FileKind::Report
        | FileKind::Sheet
        | FileKind::SheetPdf
        | FileKind::ReturnNote
        | FileKind::ReturnNotePdf
        | FileKind::ReturnText => None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::result::CaseResult;
    use crate::testing::{checked_with_border, checked_with_spots, checked_without_cover};
    use crate::text::names::{REPORT_FILE, SHEET_FILE, SHEET_PDF_FILE};

    #[test]
    fn everything_is_written_and_nothing_else_is_left() {
        let parent = tempfile::tempdir().unwrap();
        let folder = parent.path().join("new/results");
        let checked = checked_with_spots();
        let result = CaseResult::of(&checked);
        let files = write_all(&checked, &result, &folder, Language::English).unwrap();
        let expected = [
            "cover-maxillary-first-pass.ply",
            "border-maxillary-first-pass.csv",
            "border-maxillary-first-pass.svg",
            SHEET_FILE,
            SHEET_PDF_FILE,
            REPORT_FILE,
            RESULT_FILE,
        ];
        assert_eq!(files, expected);
        let mut sorted = expected;
        sorted.sort_unstable();
        assert_eq!(names_in(&folder), sorted);
        assert_eq!(
            fs::read_to_string(folder.join(RESULT_FILE)).unwrap(),
            result_json(&result)
        );
    }

    #[test]
    fn a_result_is_read_back_and_refused_by_its_reason() {
        let parent = tempfile::tempdir().unwrap();
        let error = read_result(parent.path()).unwrap_err().to_string();
        assert!(error.contains("result.json: cannot be read"), "{error}");
        let checked = checked_with_spots();
        let result = CaseResult::of(&checked);
        write_all(&checked, &result, parent.path(), Language::English).unwrap();
        assert_eq!(read_result(parent.path()).unwrap(), result);
        fs::write(parent.path().join(RESULT_FILE), "{\"schema\": 1}").unwrap();
        let error = read_result(parent.path()).unwrap_err().to_string();
        assert!(error.contains("is no result of this version"), "{error}");
        assert!(!error.contains('\n'));
    }

    #[test]
    fn the_cover_map_is_the_scan_with_colours() {
        let parent = tempfile::tempdir().unwrap();
        let checked = checked_with_spots();
        let files = write_all(
            &checked,
            &CaseResult::of(&checked),
            parent.path(),
            Language::English,
        )
        .unwrap();
        let map = mesh::read_scan(&parent.path().join(&files[0]))
            .unwrap()
            .mesh;
        assert_eq!(map.vertices(), checked.impressions[0].scan.mesh.vertices());
        let colours = map.colours().unwrap();
        // Bright end of viridis at 3 mm and beyond, grey where nothing is known.
        assert_eq!(colours[1..], [[253, 231, 37], [176, 176, 176]]);
    }

    #[test]
    fn without_cover_the_surface_is_kept_without_a_map() {
        let parent = tempfile::tempdir().unwrap();
        let checked = checked_without_cover();
        let files = write_all(
            &checked,
            &CaseResult::of(&checked),
            parent.path(),
            Language::English,
        )
        .unwrap();
        assert_eq!(files[0], "surface-maxillary-first-pass.ply");
        let surface = crate::read_surface(&parent.path().join(&files[0])).unwrap();
        let figures: Vec<&str> = surface.figures.keys().map(String::as_str).collect();
        assert_eq!(figures, ["part", "station"]);
    }

    #[test]
    fn every_file_that_the_result_names_is_written() {
        let parent = tempfile::tempdir().unwrap();
        let checked = checked_with_border();
        let result = CaseResult::of(&checked);
        write_all(&checked, &result, parent.path(), Language::English).unwrap();
        let drawings: Vec<&str> = result
            .findings
            .iter()
            .filter_map(|f| f.drawing.as_deref())
            .collect();
        assert_eq!(drawings, ["section-F1.svg", "section-F2.svg"]);
        let mut named: Vec<&str> = result.files.iter().map(|f| f.file.as_str()).collect();
        named.push(RESULT_FILE);
        named.sort_unstable();
        assert_eq!(names_in(parent.path()), named);
    }

    #[test]
    fn a_second_check_leaves_no_file_of_the_first_and_touches_nothing_else() {
        let parent = tempfile::tempdir().unwrap();
        let first = checked_with_border();
        write_all(
            &first,
            &CaseResult::of(&first),
            parent.path(),
            Language::English,
        )
        .unwrap();
        fs::write(parent.path().join("notes.txt"), "the clinic's own").unwrap();
        fs::write(parent.path().join("section-F9.svg"), "not from here").unwrap();
        let second = checked_without_cover();
        let result = CaseResult::of(&second);
        let mut expected = write_all(&second, &result, parent.path(), Language::English).unwrap();
        expected.extend(["notes.txt".to_owned(), "section-F9.svg".to_owned()]);
        expected.sort_unstable();
        assert_eq!(names_in(parent.path()), expected);
    }

    #[test]
    fn a_list_of_files_names_nothing_outside_its_folder() {
        let parent = tempfile::tempdir().unwrap();
        let folder = parent.path().join("results");
        fs::create_dir(&folder).unwrap();
        fs::write(parent.path().join("precious"), "").unwrap();
        let kind = "\"kind\": \"report\", \"impression\": null, \"finding\": null";
        let text = format!(
            "{{\"schema\": \"archproof-result/1\", \"files\": [{{\"file\": \"../precious\", {kind}}}]}}"
        );
        fs::write(folder.join(RESULT_FILE), text).unwrap();
        assert_eq!(earlier_files(&folder), ["../precious"]);
        let checked = checked_with_spots();
        write_all(
            &checked,
            &CaseResult::of(&checked),
            &folder,
            Language::English,
        )
        .unwrap();
        assert!(parent.path().join("precious").exists());
    }

    #[test]
    fn two_scans_without_a_case_code_never_share_a_folder() {
        let at = std::time::UNIX_EPOCH + std::time::Duration::from_secs(1_700_000_000);
        let [one, other] = ["1a2b3c4d", "9f8e7d6c"].map(|sum| folder_without_case(at, sum));
        assert_eq!(one, Path::new("archproof-20231114T221320Z-1a2b3c"));
        assert_ne!(one, other);
    }

    #[test]
    fn a_failure_leaves_the_earlier_result_and_no_rubbish() {
        let parent = tempfile::tempdir().unwrap();
        let checked = checked_with_spots();
        let result = CaseResult::of(&checked);
        // A folder in the place of a file cannot be replaced by one.
        fs::create_dir(parent.path().join("cover-maxillary-first-pass.ply")).unwrap();
        fs::write(parent.path().join(RESULT_FILE), "earlier").unwrap();
        let error = write_all(&checked, &result, parent.path(), Language::English).unwrap_err();
        assert!(error.to_string().contains("cover-maxillary-first-pass.ply"));
        assert_eq!(
            fs::read_to_string(parent.path().join(RESULT_FILE)).unwrap(),
            "earlier"
        );
        assert_eq!(names_in(parent.path()).len(), 2);

        let in_a_file = parent.path().join(RESULT_FILE).join("results");
        let error = write_all(&checked, &result, &in_a_file, Language::English).unwrap_err();
        assert!(!error.to_string().contains('\n'));
    }

    fn names_in(folder: &Path) -> Vec<String> {
        let mut names: Vec<String> = fs::read_dir(folder)
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        names
    }
}
