//! Finds the cases below a folder: case files, or scans by a pattern of their
//! names.

use crate::digest;
use crate::error::BatchError;
use crate::pattern::Pattern;
use crate::settings::LOCK;
use std::ffi::OsStr;
use std::path::{Path, PathBuf};
use walkdir::WalkDir;

/// Where a case comes from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Source {
    /// A case file.
    CaseFile(PathBuf),
    /// A folder that cannot be looked into.
    Closed(std::io::ErrorKind),
    /// A bare scan.
    Scan {
        /// The impression scan.
        scan: PathBuf,
        /// The scan of its tray.
        tray: Option<PathBuf>,
        /// What the star of the pattern stands for.
        star: String,
    },
}

/// A case that was found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Found {
    /// Path of the case file or scan below the folder, with `/` between.
    pub place: String,
    /// SHA-256 of the place.
    pub digest: String,
    /// Where it comes from.
    pub source: Source,
}

/// The cases below a folder, in the order of their places; what lies in a
/// folder of results is none. With a pattern, scans of such names; else every
/// TOML file that speaks of a case. A folder below it that cannot be looked
/// into stands for the cases that may be in it.
///
/// # Errors
/// When the folder itself cannot be looked through.
pub fn find(folder: &Path, pattern: Option<&Pattern>) -> Result<Vec<Found>, BatchError> {
    let mut found = Vec::new();
    let entries = WalkDir::new(folder)
        .follow_links(true)
        .into_iter()
        .filter_entry(|entry| entry.depth() == 0 || !is_results(entry.path()));
    for entry in entries {
        let (path, source) = match entry {
            Ok(entry) if entry.file_type().is_dir() => continue,
            Ok(entry) => {
                let source = source(entry.path(), pattern);
                (entry.into_path(), source)
            }
            // Without a path, the list of a folder itself broke off.
            Err(error) if error.depth() == 0 || error.path().is_none() => {
                return Err(BatchError::Folder {
                    path: folder.to_owned(),
                    source: error.into(),
                });
            }
            Err(error) => {
                let path = error.path().unwrap_or(folder).to_owned();
                let source = if path.is_dir() {
                    Some(Source::Closed(std::io::Error::from(error).kind()))
                } else {
                    source(&path, pattern)
                };
                (path, source)
            }
        };
        if let Some(source) = source {
            let place = path.strip_prefix(folder).unwrap_or(&path);
            found.push(Found {
                digest: digest(place),
                place: shown(place),
                source,
            });
        }
    }
    found.sort_by(|a, b| (&a.place, &a.digest).cmp(&(&b.place, &b.digest)));
    Ok(found)
}

fn is_results(folder: &Path) -> bool {
    folder.join(LOCK).exists()
}

fn source(path: &Path, pattern: Option<&Pattern>) -> Option<Source> {
    let Some(pattern) = pattern else {
        return is_case_file(path).then(|| Source::CaseFile(path.to_owned()));
    };
    let name = path.file_name()?.to_string_lossy();
    let star = pattern.scans.star(&name)?;
    let tray = pattern.trays.as_ref().map(|trays| trays.name(star));
    (tray.as_deref() != Some(&*name)).then(|| Source::Scan {
        scan: path.to_owned(),
        tray: tray.map(|tray| path.with_file_name(tray)),
        star: star.to_owned(),
    })
}

/// A TOML file is a case file unless it is plainly something else, as a
/// protocol is: one that is broken has its row and is not passed over.
fn is_case_file(path: &Path) -> bool {
    let is_toml = path
        .extension()
        .is_some_and(|ending| ending.eq_ignore_ascii_case("toml"));
    let speaks_of_a_case = |text: String| match text.parse::<toml::Table>() {
        Ok(table) => ["case", "maxillary", "mandibular"]
            .iter()
            .any(|key| table.contains_key(*key)),
        Err(_) => true,
    };
    is_toml && mesh::read::settings_text(path).map_or(true, speaks_of_a_case)
}

/// A path with `/` between its parts, whatever the system.
fn shown(place: &Path) -> String {
    let parts = place.components().map(|part| part.as_os_str());
    let parts: Vec<_> = parts.map(|part| part.to_string_lossy()).collect();
    parts.join("/")
}

/// Of the bytes of the path: what is shown of two may be the same.
fn digest(place: &Path) -> String {
    let parts = place.components().map(|part| part.as_os_str());
    let parts: Vec<_> = parts.map(OsStr::as_encoded_bytes).collect();
    digest::of_bytes(&parts.join(&b'/'))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;

    fn write(folder: &Path, files: &[(&str, &str)]) {
        for (name, text) in files {
            let path = folder.join(name);
            fs::create_dir_all(path.parent().unwrap()).unwrap();
            fs::write(path, text).unwrap();
        }
    }

    fn places(found: &[Found]) -> Vec<&str> {
        found.iter().map(|f| f.place.as_str()).collect()
    }

    #[test]
    fn case_files_are_found_and_protocols_and_results_are_none() {
        let folder = tempfile::tempdir().unwrap();
        write(
            folder.path(),
            &[
                ("b/case.toml", "case = \"b\""),
                ("a/deep/case.toml", "case = \"a\""),
                ("broken.toml", "case = "),
                ("ours.toml", "name = \"p\"\n[limits]"),
                ("out/cases/x/case.toml", "case = \"x\""),
                ("out/.archproof-batch.lock", ""),
                ("b/upper.ply", ""),
            ],
        );
        let found = find(folder.path(), None).unwrap();
        assert_eq!(
            places(&found),
            ["a/deep/case.toml", "b/case.toml", "broken.toml"]
        );
        assert!(find(&folder.path().join("absent"), None).is_err());
    }

    #[test]
    fn scans_are_paired_with_trays_by_what_the_star_stands_for() {
        let folder = tempfile::tempdir().unwrap();
        write(
            folder.path(),
            &[
                ("1-upper.ply", ""),
                ("1-tray.stl", ""),
                ("x/2-upper.ply", ""),
            ],
        );
        let pattern = Pattern {
            scans: "*-upper.ply".parse().unwrap(),
            trays: Some("*-tray.stl".parse().unwrap()),
        };
        let found = find(folder.path(), Some(&pattern)).unwrap();
        assert_eq!(places(&found), ["1-upper.ply", "x/2-upper.ply"]);
        let Source::Scan { tray, star, .. } = &found[1].source else {
            panic!("not a scan");
        };
        assert_eq!(star, "2");
        assert_eq!(tray.as_deref(), Some(&*folder.path().join("x/2-tray.stl")));
    }
}
