//! Which cases lie in a folder: case files, folders of scans, result folders.

use check::proposal::is_scan;
use judge::system_says;
use mesh::read::shown_path;
use messages::{Message, message};
use report::RESULT_FILE;
use report::folder::CaseRecord;
use std::collections::{BTreeMap, BTreeSet};
use std::ffi::OsStr;
use std::fs::{self, DirEntry};
use std::io;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

/// How deep folders are looked into.
const DEPTH: usize = 8;

/// What a case is checked from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Input {
    /// A case file.
    CaseFile(PathBuf),
    /// A folder with scans and no case file.
    Scans(PathBuf),
}

/// A case in the folder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Found {
    /// Its path below the folder, with `/` between.
    pub place: String,
    /// What it is checked from, where that is known.
    pub input: Option<Input>,
    /// The folder of its results, or where a batch noted why there are none.
    pub results: Option<PathBuf>,
    /// Why its folder could not be looked into.
    pub problem: Option<Message>,
}

/// Whether a folder is a list of cases: it is no case and no result itself, and
/// at least one lies below it.
#[must_use]
pub fn holds_cases(folder: &Path) -> bool {
    let Ok(inside) = Inside::of(folder) else {
        return false;
    };
    if is_result(folder) || inside.case_file.is_some() || inside.has_scans {
        return false;
    }
    let mut walk = Walk::below(folder);
    walk.enough = 1;
    walk.look_into(folder, 0);
    walk.found.iter().any(|found| found.problem.is_none())
}

/// The cases below a folder, in the order of their places.
///
/// # Errors
/// When the folder itself cannot be looked into.
pub fn cases_in(folder: &Path) -> io::Result<Vec<Found>> {
    fs::read_dir(folder)?;
    let mut walk = Walk::below(folder);
    walk.look_into(folder, 0);
    let mut found = joined(walk.found, &walk.batches, folder);
    found.sort_by(|a, b| a.place.cmp(&b.place));
    Ok(found)
}

/// Why a folder could not be looked into.
pub(super) fn not_looked_into(folder: &Path, why: &io::Error) -> Message {
    message!(
        "queue-folder-unreadable",
        path = shown_path(folder),
        reason = system_says(why)
    )
}

/// A walk through folders.
struct Walk<'a> {
    root: &'a Path,
    found: Vec<Found>,
    /// Folders that a batch wrote.
    batches: Vec<PathBuf>,
    /// So many cases are enough.
    enough: usize,
}

/// What lies in a folder.
#[derive(Default)]
struct Inside {
    case_file: Option<PathBuf>,
    has_scans: bool,
    is_batch: bool,
    folders: Vec<PathBuf>,
}

impl Inside {
    fn of(folder: &Path) -> io::Result<Self> {
        let mut inside = Self::default();
        let mut case_files = Vec::new();
        for entry in fs::read_dir(folder)?.filter_map(Result::ok) {
            let (path, name) = (entry.path(), entry.file_name());
            let name = name.to_string_lossy();
            if name.starts_with('.') {
                continue;
            }
            if is_folder(&entry) {
                inside.folders.push(path);
            } else if name == INPUTS {
                inside.is_batch = true;
            } else if name.starts_with("case") && path.extension() == Some(OsStr::new("toml")) {
                case_files.push(path);
            } else {
                inside.has_scans |= is_scan(&path);
            }
        }
        // Where the desk wrote several, the last one counts.
        case_files.sort_by_cached_key(|path| (changed_at(path), path.clone()));
        inside.case_file = case_files.pop();
        inside.folders.sort();
        Ok(inside)
    }
}

/// Name of the table by which a batch joins results to case files.
const INPUTS: &str = "inputs.csv";

fn is_folder(entry: &DirEntry) -> bool {
    entry
        .file_type()
        .is_ok_and(|kind| kind.is_dir() || (kind.is_symlink() && entry.path().is_dir()))
}

fn changed_at(path: &Path) -> Option<SystemTime> {
    fs::metadata(path).and_then(|data| data.modified()).ok()
}

fn is_result(folder: &Path) -> bool {
    folder.join(RESULT_FILE).is_file()
}

fn is_record(folder: &Path) -> bool {
    folder.join(CaseRecord::FILE).is_file()
}

impl<'a> Walk<'a> {
    fn below(root: &'a Path) -> Self {
        Self {
            root,
            found: Vec::new(),
            batches: Vec::new(),
            enough: usize::MAX,
        }
    }

    fn look_into(&mut self, folder: &Path, depth: usize) {
        if depth > DEPTH || self.found.len() >= self.enough {
            return;
        }
        if depth > 0 && (is_result(folder) || is_record(folder)) {
            self.add(folder, None, Some(folder.to_owned()));
            return;
        }
        let inside = match Inside::of(folder) {
            Ok(inside) => inside,
            Err(why) => {
                self.add(folder, None, None);
                if let Some(last) = self.found.last_mut() {
                    last.problem = Some(not_looked_into(folder, &why));
                }
                return;
            }
        };
        if inside.is_batch {
            self.batches.push(folder.to_owned());
        }
        let input = match inside.case_file {
            Some(file) => Some(Input::CaseFile(file)),
            None => (inside.has_scans && depth > 0).then(|| Input::Scans(folder.to_owned())),
        };
        if input.is_some() && depth > 0 {
            let results = inside
                .folders
                .into_iter()
                .filter(|folder| is_result(folder));
            let newest = results.max_by_key(|folder| changed_at(&folder.join(RESULT_FILE)));
            self.add(folder, input, newest);
            return;
        }
        for folder in inside.folders {
            self.look_into(&folder, depth + 1);
        }
    }

    fn add(&mut self, folder: &Path, input: Option<Input>, results: Option<PathBuf>) {
        let below = folder.strip_prefix(self.root).unwrap_or(folder);
        let parts = below.components().map(|part| part.as_os_str());
        let parts: Vec<_> = parts.map(|part| part.to_string_lossy()).collect();
        self.found.push(Found {
            place: parts.join("/"),
            input,
            results,
            problem: None,
        });
    }
}

/// Joins what a batch wrote to the case files that it was checked from, so that
/// no case stands in the list twice.
fn joined(found: Vec<Found>, batches: &[PathBuf], root: &Path) -> Vec<Found> {
    let mut file_of: BTreeMap<PathBuf, PathBuf> = BTreeMap::new();
    for batch in batches {
        let given = batch.parent().unwrap_or(root);
        for row in batch::read_inputs(batch).unwrap_or_default() {
            let results = batch.join("cases").join(&row.folder);
            let file = given.join(&row.place);
            if file.is_file() {
                file_of.insert(results, file);
            }
        }
    }
    if file_of.is_empty() {
        return found;
    }
    let mut results_of: BTreeMap<&Path, &Path> = BTreeMap::new();
    let mut of_batch = Vec::new();
    let mut cases = Vec::new();
    for one in found {
        match one
            .results
            .as_ref()
            .and_then(|results| file_of.get(results))
        {
            Some(file) if one.input.is_none() => of_batch.push((one, file)),
            _ => cases.push(one),
        }
    }
    for (results, file) in &file_of {
        results_of.insert(file, results);
    }
    let mut listed = BTreeSet::new();
    for case in &mut cases {
        let Some(Input::CaseFile(file)) = &case.input else {
            continue;
        };
        if let Some(results) = results_of.get(file.as_path()) {
            listed.insert(file.clone());
            case.results.get_or_insert_with(|| results.to_path_buf());
        }
    }
    for (mut one, file) in of_batch {
        if !listed.contains(file) {
            one.input = Some(Input::CaseFile(file.clone()));
            cases.push(one);
        }
    }
    cases
}

#[cfg(test)]
mod tests {
    use super::*;

    fn write(folder: &Path, files: &[(&str, &str)]) {
        for (name, text) in files {
            let path = folder.join(name);
            fs::create_dir_all(path.parent().unwrap()).unwrap();
            fs::write(path, text).unwrap();
        }
    }

    fn places(folder: &Path) -> Vec<String> {
        let found = cases_in(folder).unwrap().into_iter();
        found.map(|found| found.place).collect()
    }

    #[test]
    fn case_files_scans_and_results_are_cases_and_each_is_listed_once() {
        let folder = tempfile::tempdir().unwrap();
        let root = folder.path();
        write(
            root,
            &[
                ("a/case.toml", "case = \"A\""),
                ("a/upper.ply", ""),
                ("b/deep/case.toml", "case = \"B\""),
                ("b/deep/archproof-B/result.json", "{}"),
                ("b/deep/archproof-B/cover.ply", ""),
                ("c/scan.stl", ""),
                ("results/D/result.json", "{}"),
                ("results/E/record.json", "{}"),
                (".hidden/F/result.json", "{}"),
                ("notes/readme.txt", ""),
            ],
        );
        assert_eq!(places(root), ["a", "b/deep", "c", "results/D", "results/E"]);
        let found = cases_in(root).unwrap();
        assert_eq!(found[1].results, Some(root.join("b/deep/archproof-B")));
        assert_eq!(found[2].input, Some(Input::Scans(root.join("c"))));
        for (folder, is_list) in [
            ("", true),
            ("a", false),
            ("b", true),
            ("c", false),
            ("results", true),
            ("results/D", false),
            ("notes", false),
            ("absent", false),
        ] {
            assert_eq!(holds_cases(&root.join(folder)), is_list, "{folder}");
        }
        assert!(cases_in(&root.join("absent")).is_err());
    }

    #[test]
    fn results_of_a_batch_are_joined_to_their_case_files() {
        let folder = tempfile::tempdir().unwrap();
        let root = folder.path();
        write(
            root,
            &[
                ("a/case.toml", "case = \"A\""),
                ("b/case.toml", "case = \"B\""),
                ("c/case.toml", "case = \"C\""),
                (
                    "out/inputs.csv",
                    "folder,place\nA-1,a/case.toml\nB-2,b/case.toml\n",
                ),
                ("out/cases/A-1/result.json", "{}"),
                ("out/cases/B-2/record.json", "{}"),
            ],
        );
        assert_eq!(places(root), ["a", "b", "c"]);
        let found = cases_in(root).unwrap();
        assert_eq!(found[0].results, Some(root.join("out/cases/A-1")));
        assert_eq!(found[1].results, Some(root.join("out/cases/B-2")));
        assert_eq!(found[2].results, None);
        // Opened by itself, the batch still knows its case files.
        let alone = cases_in(&root.join("out")).unwrap();
        let file = Input::CaseFile(root.join("a/case.toml"));
        assert_eq!((alone.len(), &alone[0].input), (2, &Some(file)));
    }
}
